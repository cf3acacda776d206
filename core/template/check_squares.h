// SPDX-License-Identifier: MIT
#pragma once

#include "core/drawing/drawing.h"
#include "core/template/occupancy.h"
#include "core/template/scene.h"

namespace matwright {

struct CheckSquares {
    Layer layer;
    bool complete = false;  // both squares, or as much as a small page can hold
};

// The 50 mm square with the 1 in square inside it, where there is bare paper, else over pieces but
// clear of everything placed. On a page too small for both only the 1 in square is drawn, on a
// smaller one still nothing. What is drawn is marked in `occupancy`.
CheckSquares checkSquares(const Scene& scene, Occupancy& occupancy);

}  // namespace matwright
