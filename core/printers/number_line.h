// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace matwright {

// Whole numbers in a text, one space between: how exact values stand in the store.
std::string numberLine(const std::vector<std::int64_t>& numbers);
// Nothing unless the text is exactly `count` such numbers.
std::optional<std::vector<std::int64_t>> parseNumberLine(std::string_view text, std::size_t count);

}  // namespace matwright
