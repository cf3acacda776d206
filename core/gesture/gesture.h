// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "core/measure/catalogue.h"
#include "core/sketch/piece.h"

namespace matwright {

// The arithmetic of dragging, without a mouse: each function takes what was there at the start of
// the gesture and gives the piece as it is now, so nothing drifts. Whether a locked piece may be
// dragged is for the caller to ask.

enum class Handle { TopLeft, Top, TopRight, Right, BottomRight, Bottom, BottomLeft, Left };

// Which way a handle lies from the centre: -1, 0 or 1 along the piece's own x and y.
struct HandleSide {
    int x;
    int y;
};
HandleSide sideOf(Handle handle);

struct ResizeOptions {
    bool keepRatio = false;
    bool fromCentre = false;
    // No side gets smaller than this, unless it was smaller at the start: then not smaller than it
    // was.
    Length smallest = Length::inches(0, 1, 8);
};

// Moved pieces may come to lie beyond the coordinate limit; apply() then refuses them.
Piece movedBy(Piece piece, Point by);

// The start piece with `handle` pulled by `by` (page coordinates). Turned pieces are resized along
// their own axes; the opposite corner, or the middle of the opposite side, stays where it is on the
// page within 1 tick (exactly where the piece is not turned and a corner or a side is pulled
// freely).
// - keepRatio: a corner follows the side that asks for the larger piece; a side takes the other two
//   sides along, evenly on both ends. The ratio holds within one tick of rounding a side.
// - fromCentre: the centre stays within 1 tick and both ends follow the pull.
// - Polygon corners are scaled from the start.
// - A photo slot's print follows only where it was equal to the trim and the trim changes: it stays
//   while no catalogue print that holds the trim is smaller, else it becomes printSizeFor(trim).
// A sound start piece gives a sound piece: a pull past a rule (largest side, coordinate limit, a
// polygon squeezed until it touches itself) stops at the last sound size on the way.
Piece resizedBy(const Piece& start, Handle handle, Point by, const ResizeOptions& options);

// The angle the start piece gets when its handle, grabbed at `grab`, points at `now`, both in page
// coordinates; with `step` (positive), the nearest multiple of it. A point at the very centre gives
// no direction: the start angle.
Angle turnedTo(const Piece& start, Point grab, Point now, std::optional<Angle> step);

// The piece turned clockwise about `centre`, and by the same angle about its own centre. Its centre
// lands within 1 tick. As for movedBy, apply() checks the coordinate limit.
Piece turnedAbout(Piece piece, Point centre, Angle by);

}  // namespace matwright
