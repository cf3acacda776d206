// SPDX-License-Identifier: MIT
#pragma once

#include <expected>
#include <filesystem>
#include <string_view>
#include <vector>

namespace matwright {

// rescueLeftovers() for one folder; the caller holds its lock.
std::vector<std::filesystem::path> rescueIn(const std::filesystem::path& folder);

// Moves a file, without replacing anything, to the first free name for `stem` in the folder,
// counted from `number`; where it is already called so, it stays. The error is the system's number.
std::expected<std::filesystem::path, int> moveToFreeName(const std::filesystem::path& file,
                                                         const std::filesystem::path& folder,
                                                         std::string_view stem, int number,
                                                         std::string_view suffix);

}  // namespace matwright
