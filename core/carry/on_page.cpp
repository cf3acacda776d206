// SPDX-License-Identifier: MIT
#include "core/carry/on_page.h"

#include <algorithm>

#include "core/sketch/soundness.h"

namespace matwright::carry {

namespace {

Length shiftInto(Interval own, Interval room) {
    if (own.low < room.low) {
        return room.low - own.low;
    }
    return own.high > room.high ? room.high - own.high : Length();
}

Length smaller(Length side, Length step) {
    const Length less = std::min(side.scaledRounded(0.95).roundedTo(step), side - step);
    return std::max(less, std::min(side, smallestSide));
}

}  // namespace

Piece withinPrint(Piece piece) {
    if (!piece.printSize || piece.printSize->contains(piece.size)) {
        return piece;
    }
    const Size size = {std::min(piece.size.width, piece.printSize->width),
                       std::min(piece.size.height, piece.printSize->height)};
    return withBox(piece, Rect::at(piece.place, size));
}

Piece broughtOnPage(Piece piece, const Rect& surface, Length step) {
    // A side loses a twentieth or a step a time, so this ends.
    for (int i = 0; i < 400; ++i) {
        const Rect outer = footprint({}, piece).outer;
        if (surface.contains(outer)) {
            return piece;
        }
        if (surface.size().contains(outer.size())) {
            piece.place =
                piece.place + Point{shiftInto(outer.x, surface.x), shiftInto(outer.y, surface.y)};
            continue;
        }
        const bool wide = outer.size().width > surface.size().width;
        const bool tall = outer.size().height > surface.size().height;
        const bool swapped = piece.rotation.toMillidegrees() % 180'000 != 0;
        const bool both = !piece.rotation.isQuarterTurn();
        const Size before = piece.size;
        const Size size = {
            both || (swapped ? tall : wide) ? smaller(before.width, step) : before.width,
            both || (swapped ? wide : tall) ? smaller(before.height, step) : before.height};
        if (size == before) {
            break;
        }
        piece = withBox(piece, Rect::at(piece.place, size));
    }
    return piece;
}

}  // namespace matwright::carry
