// SPDX-License-Identifier: MIT
#include "core/printers/number_line.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <charconv>

namespace matwright {

std::string numberLine(const std::vector<std::int64_t>& numbers) {
    return fmt::format("{}", fmt::join(numbers, " "));
}

std::optional<std::vector<std::int64_t>> parseNumberLine(std::string_view text, std::size_t count) {
    std::vector<std::int64_t> numbers;
    const char* at = text.data();
    const char* const end = at + text.size();
    while (at != end) {
        std::int64_t number = 0;
        const auto [after, failed] = std::from_chars(at, end, number);
        if (failed != std::errc() || (after != end && *after != ' ')) {
            return std::nullopt;
        }
        numbers.push_back(number);
        at = after == end ? end : after + 1;
    }
    // Only what would be written again: no "+", no spare spaces or zeros.
    if (numbers.size() != count || numberLine(numbers) != text) {
        return std::nullopt;
    }
    return numbers;
}

}  // namespace matwright
