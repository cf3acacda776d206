// SPDX-License-Identifier: MIT
#include "core/sketchfile/file_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

namespace matwright {

FromText<std::int64_t> wholeFromText(std::string_view text, std::int64_t low, std::int64_t high) {
    std::int64_t value = 0;
    const auto [end, failure] = std::from_chars(text.begin(), text.end(), value);
    if (end != text.end() || failure == std::errc::invalid_argument) {
        return std::unexpected(NumberFault::NotANumber);
    }
    if (failure == std::errc::result_out_of_range || value < low || value > high) {
        return std::unexpected(NumberFault::OutOfRange);
    }
    return value;
}

FromText<Length> lengthFromText(std::string_view text) {
    constexpr std::int64_t limit = Length::coordinateLimit().ticks();
    const auto ticks = wholeFromText(text, -limit, limit);
    return ticks ? FromText<Length>(Length::fromTicks(*ticks)) : std::unexpected(ticks.error());
}

std::string lengthToText(Length length) {
    return fmt::to_string(length.ticks());
}

FromText<Angle> angleFromText(std::string_view text) {
    constexpr std::size_t mostDecimals = 3;
    if (text.starts_with('-')) {
        return std::unexpected(NumberFault::OutOfRange);
    }
    const std::size_t point = text.find('.');
    const auto whole = wholeFromText(text.substr(0, point), 0, 359);
    if (!whole) {
        return std::unexpected(whole.error());
    }
    if (point == std::string_view::npos) {
        return Angle::degrees(*whole);
    }
    std::string decimals(text.substr(point + 1));
    if (decimals.empty() || decimals.size() > mostDecimals ||
        !std::ranges::all_of(decimals, [](char c) { return c >= '0' && c <= '9'; })) {
        return std::unexpected(NumberFault::NotANumber);
    }
    decimals.resize(mostDecimals, '0');
    return Angle::millidegrees(*whole * 1000 + *wholeFromText(decimals, 0, 999));
}

std::string angleToText(Angle angle) {
    const int whole = angle.toMillidegrees() / 1000;
    const int thousandths = angle.toMillidegrees() % 1000;
    if (thousandths == 0) {
        return fmt::to_string(whole);
    }
    std::string text = fmt::format("{}.{:03}", whole, thousandths);
    text.erase(text.find_last_not_of('0') + 1);
    return text;
}

FromText<std::vector<Point>> cornersFromText(std::string_view text) {
    std::vector<Point> corners;
    for (;;) {
        const std::size_t space = text.find(' ');
        const std::string_view pair = text.substr(0, space);
        const std::size_t comma = pair.find(',');
        if (comma == std::string_view::npos) {
            return std::unexpected(NumberFault::NotANumber);
        }
        const auto x = lengthFromText(pair.substr(0, comma));
        const auto y = lengthFromText(pair.substr(comma + 1));
        if (!x || !y) {
            return std::unexpected(x ? y.error() : x.error());
        }
        corners.push_back({*x, *y});
        if (space == std::string_view::npos) {
            return corners;
        }
        text.remove_prefix(space + 1);
    }
}

std::string cornersToText(const std::vector<Point>& corners) {
    std::string text;
    for (const Point corner : corners) {
        fmt::format_to(std::back_inserter(text), "{}{},{}", text.empty() ? "" : " ",
                       corner.x.ticks(), corner.y.ticks());
    }
    return text;
}

}  // namespace matwright
