// SPDX-License-Identifier: MIT
#include <algorithm>
#include <numeric>
#include <optional>

#include <fmt/format.h>

#include "core/sheets/cut_planner.h"

namespace matwright {

namespace {

std::string counted(std::size_t n, const char* what) {
    return fmt::format("{} {}{}", n, what, n == 1 ? "" : "s");
}

// The price of all sheets, if it is one and not 0.
std::optional<std::int64_t> onePrice(const CutJob& job) {
    if (job.sheets.empty() || job.sheets.front().price == 0) {
        return std::nullopt;
    }
    const std::int64_t price = job.sheets.front().price;
    const bool same = std::ranges::all_of(
        job.sheets, [&](const CutSheet& sheet) { return sheet.price == price; });
    return same ? std::optional(price) : std::nullopt;
}

}  // namespace

std::string boundText(const CutAnswer& answer, const CutJob& job) {
    const std::string sheets = counted(answer.plan.sheets.size(), "sheet");
    const int uncut = std::accumulate(answer.plan.uncut.begin(), answer.plan.uncut.end(), 0);
    if (uncut > 0) {
        return fmt::format("{}, {} not cut", sheets,
                           counted(static_cast<std::size_t>(uncut), "piece"));
    }
    const auto price = onePrice(job);
    if (answer.provedCheapest) {
        return fmt::format("{}, proved {}", sheets, price ? "fewest" : "cheapest");
    }
    if (price) {
        const std::int64_t least = (answer.costBound + *price - 1) / *price;
        return fmt::format("{}, at least {} {} needed", sheets, least, least == 1 ? "is" : "are");
    }
    if (answer.costBound <= 0) {
        return sheets + ", not proved cheapest";
    }
    const std::int64_t above =
        (100 * (answer.cost - answer.costBound) + answer.costBound - 1) / answer.costBound;
    return fmt::format("{}, at most {} % above the cheapest", sheets, above);
}

}  // namespace matwright
