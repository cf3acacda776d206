// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace matwright {

// A title as the beginning of a file's name, for all usual systems: signs that some do not allow in
// names of files (/ \ : * ? " < > | and control characters) and a point at the beginning become
// "-". How long it may be is seen to by numberedFileName().
std::string stemOfTitle(std::string_view title);

}  // namespace matwright
