// SPDX-License-Identifier: MIT
#pragma once

#include "core/drawing/drawing.h"
#include "core/sketch/sketch.h"

namespace matwright {

// Whether a piece of this kind is cut from paper. Titles and embellishments are not: their places
// are reserved room.
bool isCut(PieceKind kind);

// Closed outlines only, for cutting machines: one layer per paper (its name, or the kind of piece
// where it has none), each trim line and mat edge whole, hidden parts included. Hairlines, no fill,
// no text. What is not cut is left out.
Drawing cutLineDrawing(const Sketch& sketch);

}  // namespace matwright
