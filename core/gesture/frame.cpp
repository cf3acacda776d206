// SPDX-License-Identifier: MIT
#include "core/gesture/frame.h"

#include <cmath>

#include "core/measure/ticks.h"

namespace matwright::gesture {

Vector vectorOf(Point p) {
    return {ticksOf(p.x), ticksOf(p.y)};
}

Vector turned(Vector v, Angle by) {
    const double c = by.cosine();
    const double s = by.sine();
    return {v.x * c - v.y * s, v.x * s + v.y * c};
}

Vector centreOf(const Piece& piece) {
    return {ticksOf(2 * piece.place.x + piece.size.width) / 2,
            ticksOf(2 * piece.place.y + piece.size.height) / 2};
}

Point placeAbout(Vector centre, Size size) {
    return {Length::roundedFromTicks(std::floor(centre.x - ticksOf(size.width) / 2 + 0.5)),
            Length::roundedFromTicks(std::floor(centre.y - ticksOf(size.height) / 2 + 0.5))};
}

}  // namespace matwright::gesture
