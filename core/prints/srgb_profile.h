// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "core/error/error.h"

namespace matwright {

// The ICC profile of sRGB that every print carries: libvips' own. Errors: WriteFailed.
Result<std::string> srgbProfile();

}  // namespace matwright
