// SPDX-License-Identifier: MIT
#include "core/carry/turned_sketch.h"

#include <utility>

#include "core/sketch/soundness.h"

namespace matwright {

namespace {

// How far the deeper bottom borders push the middle of the outermost box below that of the trim,
// doubled.
Length bottomExcess(const Piece& piece) {
    Length excess;
    for (const Mat& mat : piece.mats) {
        excess += mat.bottomBorder.value_or(mat.border) - mat.border;
    }
    return excess;
}

// The excess as a way on the page: down for a piece that is not turned.
Point excessWay(Length excess, Angle rotation) {
    return {(-excess).scaledRounded(rotation.sine()), excess.scaledRounded(rotation.cosine())};
}

// It is the outermost box whose middle goes where the turn says; `before` and `after` are the ways,
// doubled, that the bottom borders put it off the trim's middle.
Point placeOf(const Piece& piece, WholeTurn turn, Size page, Angle rotationAfter) {
    const Length excess = bottomExcess(piece);
    const Point before = excessWay(excess, piece.rotation);
    const Point after = excessWay(excess, rotationAfter);
    const Point end = piece.place + Point{piece.size.width, piece.size.height};
    const Point mirrored = {page.width - end.x, page.height - end.y};
    const auto half = [](Length sum) { return sum.halfRoundedDown(); };
    switch (turn) {
        case WholeTurn::MirroredLeftRight:
            return {mirrored.x - half(before.x + after.x),
                    piece.place.y + half(before.y - after.y)};
        case WholeTurn::MirroredTopBottom:
            return {piece.place.x + half(before.x - after.x),
                    mirrored.y - half(before.y + after.y)};
        case WholeTurn::UpsideDown:
            return {mirrored.x - half(before.x + after.x), mirrored.y - half(before.y + after.y)};
        case WholeTurn::QuarterClockwise:
            return {mirrored.y - half(before.y + after.x),
                    piece.place.x + half(before.x - after.y)};
        case WholeTurn::QuarterCounterClockwise:
            // The exact inverse of the clockwise turn, so one half is rounded the other way.
            return {piece.place.y - half(after.x - before.y),
                    mirrored.x - half(before.x + after.y)};
    }
    return piece.place;
}

Point turnedCorner(Point corner, WholeTurn turn, Size box) {
    switch (turn) {
        case WholeTurn::MirroredLeftRight:
            return {box.width - corner.x, corner.y};
        case WholeTurn::MirroredTopBottom:
            return {corner.x, box.height - corner.y};
        case WholeTurn::UpsideDown:
            return {box.width - corner.x, box.height - corner.y};
        case WholeTurn::QuarterClockwise:
            return {box.height - corner.y, corner.x};
        case WholeTurn::QuarterCounterClockwise:
            return {corner.y, box.width - corner.x};
    }
    return corner;
}

bool isMirror(WholeTurn turn) {
    return turn == WholeTurn::MirroredLeftRight || turn == WholeTurn::MirroredTopBottom;
}

Piece turnedPiece(Piece piece, WholeTurn turn, Size page) {
    const Angle rotation = isMirror(turn) ? -piece.rotation : piece.rotation;
    piece.place = placeOf(piece, turn, page, rotation);
    piece.rotation = rotation;
    if (auto* polygon = std::get_if<PolygonShape>(&piece.shape)) {
        for (Point& corner : polygon->corners) {
            corner = turnedCorner(corner, turn, piece.size);
        }
    }
    if (isQuarter(turn)) {
        piece.size = piece.size.turned();
        if (piece.printSize) {
            piece.printSize = piece.printSize->turned();
        }
    }
    return piece;
}

Margins turnedMargins(const Margins& m, WholeTurn turn) {
    switch (turn) {
        case WholeTurn::MirroredLeftRight:
            return {m.right, m.top, m.left, m.bottom};
        case WholeTurn::MirroredTopBottom:
            return {m.left, m.bottom, m.right, m.top};
        case WholeTurn::UpsideDown:
            return {m.right, m.bottom, m.left, m.top};
        case WholeTurn::QuarterClockwise:
            return {m.bottom, m.left, m.top, m.right};
        case WholeTurn::QuarterCounterClockwise:
            return {m.top, m.right, m.bottom, m.left};
    }
    return m;
}

}  // namespace

Result<Sketch> turned(const Sketch& sketch, WholeTurn turn) {
    if (isQuarter(turn) && sketch.page.doublePage) {
        return std::unexpected(
            Error{ErrorCode::Unsupported,
                  "A double page cannot be turned by a quarter, because its fold would lie across; "
                  "mirror it or turn it upside down.",
                  sketch.name});
    }
    Sketch result = sketch;
    result.page.margins = turnedMargins(sketch.page.margins, turn);
    if (isQuarter(turn)) {
        result.page.size = sketch.page.size.turned();
    }
    for (auto& [id, piece] : result.pieces) {
        piece = turnedPiece(std::move(piece), turn, surface(sketch.page).size());
        if (findFault(piece)) {
            return std::unexpected(Error{
                ErrorCode::OutOfRange,
                "The piece lies so far beside the page that it cannot be turned with it; move it "
                "nearer first.",
                displayName(piece)});
        }
    }
    return result;
}

}  // namespace matwright
