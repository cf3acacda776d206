// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace matwright {

// Paths as a page file keeps them: bytes with slashes, no look at the disk.

// Whether `near` leads downwards from a folder and nowhere else: no slash at its start or end, no
// empty part, no "." and no "..".
bool leadsDown(std::string_view near);
// The path from `folder` to `path` where it leads down, else empty.
std::string nearTo(std::string_view folder, std::string_view path);
// The place that `near` names below `folder`.
std::string below(std::string_view folder, std::string_view near);

}  // namespace matwright
