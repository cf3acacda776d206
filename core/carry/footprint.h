// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/sketch/sketch.h"

namespace matwright::carry {

enum class Axis { X, Y };
inline constexpr Axis bothAxes[] = {Axis::X, Axis::Y};

inline Interval along(const Rect& rect, Axis axis) {
    return axis == Axis::X ? rect.x : rect.y;
}
inline Length along(Size size, Axis axis) {
    return axis == Axis::X ? size.width : size.height;
}
inline double squareInches(Size size) {
    return size.width.toInches() * size.height.toInches();
}
inline Axis across(Axis axis) {
    return axis == Axis::X ? Axis::Y : Axis::X;
}

// Where a piece lies, upright boxes on the page. A piece turned by no multiple of 90 degrees has
// edges nobody lines up: for it both boxes are the box around all of it.
struct Footprint {
    PieceId id;
    const Piece* piece = nullptr;  // lives as long as the sketch is not changed
    Rect trim;
    Rect outer;  // around the outermost outline, mats and mitres included
    bool oblique = false;
};

Footprint footprint(PieceId id, const Piece& piece);
// From bottom to top: index + 1 is the piece's number.
std::vector<Footprint> footprints(const Sketch& sketch);

}  // namespace matwright::carry
