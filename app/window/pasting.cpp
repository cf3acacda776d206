// SPDX-License-Identifier: MIT
#include "app/window/pasting.h"

#include <algorithm>

namespace matwright::app {
namespace {

void moveAll(std::vector<Piece>& pieces, Point by) {
    for (Piece& piece : pieces) {
        piece.place = piece.place + by;
    }
}

Rect boundsOf(const std::vector<Piece>& pieces) {
    Rect bounds = outermostBounds(pieces.front());
    for (const Piece& piece : pieces) {
        bounds = bounds.united(outermostBounds(piece));
    }
    return bounds;
}

// How far to move `inner` so that it lies inside `outer`; to its low end where it is too long.
Length wayInside(Interval inner, Interval outer) {
    if (inner.low < outer.low || inner.length() > outer.length()) {
        return outer.low - inner.low;
    }
    return inner.high > outer.high ? outer.high - inner.high : Length();
}

void moveOntoPage(const Sketch& sketch, std::vector<Piece>& pieces) {
    const Rect page = surface(sketch.page);
    const Rect bounds = boundsOf(pieces);
    if (!bounds.interiorIntersects(page)) {
        moveAll(pieces, {wayInside(bounds.x, page.x), wayInside(bounds.y, page.y)});
    }
}

bool hidesAnEqualPiece(const Sketch& sketch, const std::vector<Piece>& pieces) {
    return std::ranges::any_of(pieces, [&sketch](const Piece& piece) {
        return std::ranges::any_of(sketch.pieces, [&piece](const auto& entry) {
            const Piece& other = entry.second;
            return other.place == piece.place && other.size == piece.size &&
                   other.kind == piece.kind && other.rotation == piece.rotation;
        });
    });
}

}  // namespace

std::vector<Piece> placedForPaste(const Sketch& sketch, std::vector<Piece> pieces) {
    if (pieces.empty()) {
        return pieces;
    }
    moveOntoPage(sketch, pieces);
    while (hidesAnEqualPiece(sketch, pieces)) {
        moveAll(pieces, copyOffset);
    }
    return pieces;
}

}  // namespace matwright::app
