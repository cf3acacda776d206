// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace matwright {

// A path or file name as people can be shown it: well-formed UTF-8 on one line. Control characters
// (line breaks too) and bytes that are no UTF-8 become \x and two hexadecimal digits a byte, and a
// backslash becomes two, so that different names stay different.
std::string printablePath(std::string_view path);

}  // namespace matwright
