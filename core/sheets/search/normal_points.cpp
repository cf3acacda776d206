// SPDX-License-Identifier: MIT
#include <algorithm>
#include <iterator>

#include "core/sheets/search/cut_table.h"

namespace matwright::sheets {

namespace {

// The points and the same ones moved by a side, sorted, each once.
std::vector<std::int32_t> withSide(const std::vector<std::int32_t>& points, std::int32_t side,
                                   std::int32_t other, std::int32_t limit) {
    std::vector<std::int32_t> moved;
    for (const std::int32_t point : points) {
        for (const std::int32_t by : {side, other}) {
            if (by > 0 && by <= limit - point) {
                moved.push_back(point + by);
            }
        }
    }
    std::ranges::sort(moved);
    std::vector<std::int32_t> joined;
    std::ranges::set_union(points, moved, std::back_inserter(joined));
    const auto repeats = std::ranges::unique(joined);
    joined.erase(repeats.begin(), repeats.end());
    return joined;
}

}  // namespace

std::optional<std::vector<std::int32_t>> normalPoints(const Reduced& reduced,
                                                      std::span<const std::int64_t> values,
                                                      const Stock& stock, bool level, bool limited,
                                                      std::size_t most) {
    const std::int32_t limit = level ? stock.h : stock.w;
    std::vector<std::int32_t> points{0};
    for (std::size_t i = 0; i < reduced.kinds.size(); ++i) {
        const Kind& kind = reduced.kinds[i];
        if (values[i] <= 0) {
            continue;
        }
        std::int32_t side = 0;
        std::int32_t other = 0;
        if (kind.w <= stock.w && kind.h <= stock.h) {
            side = level ? kind.h : kind.w;
        }
        if (kind.turn && kind.h <= stock.w && kind.w <= stock.h) {
            other = level ? kind.w : kind.h;
        }
        for (int n = 0; (side > 0 || other > 0) && (!limited || n < kind.count); ++n) {
            auto more = withSide(points, side, other, limit);
            if (more.size() == points.size()) {
                break;
            }
            points = std::move(more);
            if (points.size() > most) {
                return std::nullopt;
            }
        }
    }
    return points;
}

std::size_t pointBelow(const std::vector<std::int32_t>& points, std::int32_t length) {
    return static_cast<std::size_t>(std::ranges::upper_bound(points, length) - points.begin()) - 1;
}

}  // namespace matwright::sheets
