// SPDX-License-Identifier: MIT
#pragma once

#include "core/drawing/drawing.h"
#include "core/sketch/sketch.h"

namespace matwright {

// Closed outlines only, for cutting machines: one layer per paper (its name, or the kind of piece
// where it has none), each trim line and mat edge whole, hidden parts included. Hairlines, no fill,
// no text. Title and embellishment places are left out: they are reserved room, nothing to cut.
Drawing cutLineDrawing(const Sketch& sketch);

}  // namespace matwright
