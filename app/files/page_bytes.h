// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>

#include "core/making/page_file.h"

namespace matwright::app {

// The bytes of a page file with these small pictures; without any where it would be larger than
// what is read again. TooLarge where it is even so.
Result<std::string> savablePage(const Making& making,
                                const std::map<PieceId, std::string>& pictures);

}  // namespace matwright::app
