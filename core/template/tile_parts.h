// SPDX-License-Identifier: MIT
#pragma once

#include "core/drawing/drawing.h"
#include "core/outline/path.h"

namespace matwright::tile {

// What the marks of a tile and its label have in common.
inline constexpr Colour white = {255, 255, 255};
inline constexpr Length pad = Length::millimetres(1);
inline constexpr Length crossArm = Length::millimetres(3);  // of a joining cross

inline Path line(Point from, Point to) {
    return linePath(vertexAt(from), vertexAt(to));
}

}  // namespace matwright::tile
