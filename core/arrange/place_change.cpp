// SPDX-License-Identifier: MIT
#include "core/arrange/arrange.h"
#include "core/arrange/selected.h"

namespace matwright {

namespace {

// Towards zero, so that halves of d and -d cancel and four turns give back the place.
Length halfTowardsZero(Length length) {
    return Length::fromTicks(length.ticks() / 2);
}

void turnCorners(Piece& piece) {
    if (auto* polygon = std::get_if<PolygonShape>(&piece.shape)) {
        for (Point& corner : polygon->corners) {
            corner = {piece.size.height - corner.y, corner.x};
        }
    }
}

// Turned by a quarter together with `group`, which keeps its centre within half a tick. Of one
// piece alone the group is its box.
Piece quarterTurnedWith(const Rect& group, Piece piece) {
    const Length shift = halfTowardsZero(group.size().width - group.size().height);
    const Point corner = group.topLeft() + Point{shift, -shift};
    const Point inGroup = piece.place - group.topLeft();
    turnCorners(piece);
    piece.place = corner + Point{group.size().height - inGroup.y - piece.size.height, inGroup.x};
    piece.size = piece.size.turned();
    if (piece.printSize) {
        piece.printSize = piece.printSize->turned();
    }
    return piece;
}

}  // namespace

Edit lockedSet(const Sketch& sketch, std::span<const PieceId> ids, bool locked) {
    Edit edit;
    for (const auto& [id, piece] : arrange::selectedPieces(sketch, ids)) {
        if (piece->locked != locked) {
            edit.pieces.emplace(id, *piece).first->second->locked = locked;
        }
    }
    return edit;
}

Edit movedAll(const Sketch& sketch, std::span<const PieceId> ids, Point by) {
    return arrange::changedEach(arrange::selectedPieces(sketch, ids), [&](Piece piece) {
        piece.place = piece.place + by;
        return piece;
    });
}

Edit quarterTurned(const Sketch& sketch, std::span<const PieceId> ids) {
    std::vector<arrange::Selected> pieces = arrange::selectedPieces(sketch, ids);
    std::erase_if(pieces, [](const arrange::Selected& each) { return each.piece->locked; });
    if (pieces.empty()) {
        return {};
    }
    const Rect group =
        pieces.size() == 1 ? trimBox(*pieces.front().piece) : *arrange::boundsOf(pieces);
    return arrange::changedEach(
        pieces, [&group](const Piece& piece) { return quarterTurnedWith(group, piece); });
}

}  // namespace matwright
