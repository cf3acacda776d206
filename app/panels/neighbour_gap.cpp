// SPDX-License-Identifier: MIT
#include "app/panels/neighbour_gap.h"

#include <algorithm>

namespace matwright::app {

namespace {

// Negative where they overlap.
Length distance(Interval a, Interval b) {
    return std::max(a.low - b.high, b.low - a.high);
}

std::optional<Length> gapBetween(const Rect& a, const Rect& b) {
    const Length across = distance(a.x, b.x);
    const Length down = distance(a.y, b.y);
    if (!across.isNegative() && !down.isNegative()) {
        return std::nullopt;  // at most corner to corner
    }
    return std::max(across, down);
}

}  // namespace

std::optional<Length> tightestGap(const Sketch& sketch, std::span<const PieceId> ids) {
    std::optional<Length> tightest;
    for (const PieceId id : ids) {
        const Rect own = outermostBounds(sketch.pieces.at(id));
        for (const auto& [other, piece] : sketch.pieces) {
            if (other == id || isPaper(piece)) {
                continue;
            }
            const auto gap = gapBetween(own, outermostBounds(piece));
            if (gap && (!tightest || *gap < *tightest)) {
                tightest = gap;
            }
        }
    }
    return tightest;
}

}  // namespace matwright::app
