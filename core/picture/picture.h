// SPDX-License-Identifier: MIT
#pragma once

#include "core/drawing/drawing.h"
#include "core/measure/length_text.h"
#include "core/sketch/sketch.h"

namespace matwright {

// How a kind of piece looks wherever a sketch is shown: on the canvas, in a thumbnail, in the
// sketch file. Light paper tones with a darker edge; the kinds differ in shape marks too, not in
// colour alone (photo slots carry a horizon line and a sun, journaling ruled lines, titles a
// letter).
struct PieceLook {
    Colour fill;
    Colour edge;
    Colour mark;
};
PieceLook lookOf(PieceKind kind);
Colour matFill(std::size_t index);

// The items that draw one piece, mats first: fills, edges, marks, and no text but its size when
// `withSize`.
std::vector<DrawingItem> pieceItems(const Piece& piece, bool withSize);

// The sketch as a picture: the page (both pages and the fold), margins as a faint line, every piece
// bottom to top.
Drawing sketchPicture(const Sketch& sketch);

}  // namespace matwright
