// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "core/sketch/sketch.h"

namespace matwright {

// The place (Piece::place) for a new piece: the first free spot in reading order inside the
// margins, row by row, a gutter from the others, counted from mat edge to mat edge; of a double
// page the left page first. The piece's own place does not matter.
//
// A photo slot without mats is laid as if it had the commonest mat, placingMat all round: most
// photos get one next, and then margins and gutters are still right and nothing has to move. Where
// that leaves no room, it is laid without. Where there is still none, spots on strips and blocks
// count as free: papers lie under things. Nothing where there is no such spot either.
//
// Time grows with the square of the number of pieces that reach into the margins at worst.
inline constexpr Length placingMat = Length::inches(0, 1, 8);
std::optional<Point> freePlace(const Sketch& sketch, const Piece& piece);

// The place at which the piece's outermost bounds lie in the middle of the (left) page.
Point middlePlace(const Sketch& sketch, const Piece& piece);

}  // namespace matwright
