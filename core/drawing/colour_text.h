// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/drawing/drawing.h"

namespace matwright {

// "#c8aa82": red, green and blue as two hexadecimal digits each, as SVG and CSS have it.
std::string colourText(Colour colour);

// Digits of either case; nothing where it is anything else.
std::optional<Colour> parseColour(std::string_view text);

}  // namespace matwright
