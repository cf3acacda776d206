// SPDX-License-Identifier: MIT
#include <cmath>
#include <numbers>

#include "core/gesture/frame.h"
#include "core/gesture/gesture.h"

namespace matwright {

namespace {

using gesture::Vector;

std::optional<double> degreesTo(Vector centre, Point p) {
    const Vector at = gesture::vectorOf(p);
    if (at.x == centre.x && at.y == centre.y) {
        return std::nullopt;
    }
    return std::atan2(at.y - centre.y, at.x - centre.x) * 180 / std::numbers::pi;
}

}  // namespace

Angle turnedTo(const Piece& start, Point grab, Point now, std::optional<Angle> step) {
    const Vector centre = gesture::centreOf(start);
    const auto from = degreesTo(centre, grab);
    const auto to = degreesTo(centre, now);
    const Angle by = from && to ? Angle::roundedFromDegrees(*to - *from) : Angle();
    const Angle angle = start.rotation + by;
    return step ? angle.roundedTo(*step) : angle;
}

Piece turnedAbout(Piece piece, Point centre, Angle by) {
    if (by.isZero()) {
        return piece;
    }
    const Vector about = gesture::vectorOf(centre);
    const Vector own = gesture::centreOf(piece);
    const Vector arm = gesture::turned({own.x - about.x, own.y - about.y}, by);
    piece.place = gesture::placeAbout({about.x + arm.x, about.y + arm.y}, piece.size);
    piece.rotation = piece.rotation + by;
    return piece;
}

}  // namespace matwright
