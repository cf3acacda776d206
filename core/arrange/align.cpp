// SPDX-License-Identifier: MIT
#include <algorithm>

#include "core/arrange/arrange.h"
#include "core/arrange/selected.h"

namespace matwright {

namespace {

Length distance(Interval interval, Length v) {
    return std::max({interval.low - v, v - interval.high, Length()});
}

// The area inside the margins of the page whose sides are nearest to the piece's middle.
Rect areaFor(const PageSetup& setup, const Piece& piece) {
    const std::vector<Rect> all = pages(setup);
    const Length middle = trimBounds(piece).x.centreRoundedDown();
    const auto nearest = std::ranges::min_element(
        all, {}, [&](const Rect& page) { return distance(page.x, middle); });
    return insideMargins(setup)[static_cast<std::size_t>(nearest - all.begin())];
}

Point shiftTo(const Rect& target, const Rect& own, AlignTo to) {
    switch (to) {
        case AlignTo::Left:
            return {target.left() - own.left(), {}};
        case AlignTo::CentreX:
            return {target.x.centreRoundedDown() - own.x.centreRoundedDown(), {}};
        case AlignTo::Right:
            return {target.right() - own.right(), {}};
        case AlignTo::Top:
            return {{}, target.top() - own.top()};
        case AlignTo::CentreY:
            return {{}, target.y.centreRoundedDown() - own.y.centreRoundedDown()};
        case AlignTo::Bottom:
            return {{}, target.bottom() - own.bottom()};
    }
    return {};
}

}  // namespace

Edit aligned(const Sketch& sketch, std::span<const PieceId> ids, AlignTo to) {
    const auto pieces = arrange::selectedPieces(sketch, ids);
    if (pieces.empty()) {
        return {};
    }
    const Rect target = pieces.size() == 1 ? areaFor(sketch.page, *pieces.front().piece)
                                           : *arrange::boundsOf(pieces);
    return arrange::changedEach(pieces, [&](Piece piece) {
        piece.place = piece.place + shiftTo(target, trimBounds(piece), to);
        return piece;
    });
}

}  // namespace matwright
