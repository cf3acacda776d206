// SPDX-License-Identifier: MIT
#include "core/arrange/arrange.h"
#include "core/arrange/selected.h"

namespace matwright {

namespace {

Length swappedEnds(Length low, Length length, Interval within) {
    return within.low + within.high - low - length;
}

void mirrorCorners(Piece& piece, Direction direction) {
    auto* polygon = std::get_if<PolygonShape>(&piece.shape);
    if (!polygon) {
        return;
    }
    for (Point& corner : polygon->corners) {
        if (direction == Direction::Across) {
            corner.x = piece.size.width - corner.x;
        } else {
            corner.y = piece.size.height - corner.y;
        }
    }
}

Piece mirroredIn(Piece piece, const Rect& bounds, Direction direction) {
    if (direction == Direction::Across) {
        piece.place.x = swappedEnds(piece.place.x, piece.size.width, bounds.x);
    } else {
        piece.place.y = swappedEnds(piece.place.y, piece.size.height, bounds.y);
    }
    piece.rotation = -piece.rotation;
    mirrorCorners(piece, direction);
    return piece;
}

}  // namespace

Edit mirrored(const Sketch& sketch, std::span<const PieceId> ids, Direction direction) {
    auto pieces = arrange::selectedPieces(sketch, ids);
    std::erase_if(pieces, [](const arrange::Selected& s) { return s.piece->locked; });
    const auto bounds = arrange::boundsOf(pieces);
    return arrange::changedEach(
        pieces, [&](const Piece& piece) { return mirroredIn(piece, *bounds, direction); });
}

}  // namespace matwright
