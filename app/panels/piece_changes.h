// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <functional>
#include <span>
#include <vector>

#include "app/editing/session.h"

namespace matwright::app {

// What the piece panel does to one piece. All are pure; none moves the top left corner of the trim.

// The trim brought to a size; a print that no longer holds the trim is replaced (printSizeFor).
Piece withTrim(Piece piece, Size trim);
Piece withWidth(Piece piece, Length width, bool keepRatio);
Piece withHeight(Piece piece, Length height, bool keepRatio);
// Another print for a photo slot: an untrimmed slot takes its size, a trimmed one keeps its trim
// as long as that fits.
Piece withPrint(Piece piece, Size print);
// The trim brought back to the whole print.
Piece trimmedToPrint(Piece piece);
// One more mat with the usual 1/8 in border around a photo slot that has room for one.
Piece withOneMoreMat(Piece piece);
inline constexpr Length usualBorder = Length::inches(0, 1, 8);

// The trims people cut from a print, the whole print first: its square and every catalogue print
// that fits in it, either way up. No repeats.
std::vector<Size> commonTrims(Size print);

enum class ShapeKind { Rectangle, Rounded, Oval, Polygon };
ShapeKind shapeKindOf(const Shape& shape);
// A shape of that kind to begin with in a box of this size: rounded by a quarter of the shorter
// side up to 1/2 in, six corners.
Shape beginningShape(ShapeKind kind, Size box);

// "4 × 6 in", "10 × 15 cm": a print as it lies, in the words of the catalogue.
QString printName(Size print);

// The selected pieces, each replaced by what `change` leaves of it, as one undo step. Pieces that
// stay equal are not touched; where all do, `along` is not done either.
using PieceChange = std::function<void(Piece&)>;
Result<void> changeSelected(Session& session, const QString& label, int gesture,
                            const PieceChange& change, const PhotoEdit& along = {});

// What all have in common; nothing where they differ. `pieces` must not be empty.
template <typename Get>
auto commonOf(std::span<const Piece* const> pieces, Get get)
    -> std::optional<std::decay_t<decltype(get(*pieces.front()))>> {
    auto first = get(*pieces.front());
    for (const Piece* piece : pieces.subspan(1)) {
        if (!(get(*piece) == first)) {
            return std::nullopt;
        }
    }
    return first;
}

}  // namespace matwright::app
