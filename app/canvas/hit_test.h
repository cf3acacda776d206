// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/sketch/sketch.h"

namespace matwright::app {

// The pieces whose outermost outline covers the page point, from top to bottom. Where there is
// none, the pieces whose outermost bounds come within `tolerance` of it, so that a narrow strip can
// still be picked.
std::vector<PieceId> piecesAt(const Sketch& sketch, Point at, Length tolerance);

// The topmost piece there, or no piece (0).
PieceId topPieceAt(const Sketch& sketch, Point at, Length tolerance);

// The piece under `current` at this point; from the bottom one it goes round to the top. No piece
// (0) where there is none.
PieceId pieceBelow(const Sketch& sketch, Point at, Length tolerance, PieceId current);

// The pieces whose trim bounds lie wholly inside the rectangle, edges included, bottom to top.
std::vector<PieceId> piecesInside(const Sketch& sketch, const Rect& area);

}  // namespace matwright::app
