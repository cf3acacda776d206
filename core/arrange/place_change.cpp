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

Piece quarterTurnedPiece(Piece piece) {
    const Length shift = halfTowardsZero(piece.size.width - piece.size.height);
    turnCorners(piece);
    piece.place = piece.place + Point{shift, -shift};
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
    return arrange::changedEach(arrange::selectedPieces(sketch, ids), quarterTurnedPiece);
}

Edit duplicated(const Sketch& sketch, std::span<const PieceId> ids, Point offset) {
    std::vector<Piece> copies;
    for (const auto& [id, piece] : arrange::selectedPieces(sketch, ids)) {
        Piece& copy = copies.emplace_back(*piece);
        copy.place = copy.place + offset;
        copy.locked = false;
    }
    return addPieces(sketch, copies);
}

}  // namespace matwright
