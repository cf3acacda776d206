// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/drawing/drawing.h"
#include "core/sketch/sketch.h"

namespace matwright {

// The picture of a sketch, as large as fits into `room` with its proportions kept, at the
// bottom, in the middle between left and right.
// All of it lies inside, pieces that stick out of their page too; texts too small to be read
// are left out and lines stay thick enough to print.
std::vector<DrawingItem> pictureIn(const Rect& room, const Sketch& sketch);

}  // namespace matwright
