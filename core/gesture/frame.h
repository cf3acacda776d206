// SPDX-License-Identifier: MIT
#pragma once

#include "core/sketch/piece.h"

namespace matwright::gesture {

// A place or a way on the page, in ticks as doubles.
struct Vector {
    double x = 0;
    double y = 0;
};

Vector vectorOf(Point p);
// Turned clockwise as seen on the page.
Vector turned(Vector v, Angle by);

// The centre of the piece's trim box, which it is turned about. Exact.
Vector centreOf(const Piece& piece);
// The top left corner of a box of this size about `centre`, to the nearest tick; halves go towards
// plus infinity everywhere, so that a moved scene rounds alike.
Point placeAbout(Vector centre, Size size);

}  // namespace matwright::gesture
