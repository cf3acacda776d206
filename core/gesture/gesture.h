// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/sketch/edit.h"

namespace matwright {

// The arithmetic of dragging, without a mouse: each function takes what was there at the start of
// the gesture and gives the pieces as they are now, so nothing drifts.

enum class Handle { TopLeft, Top, TopRight, Right, BottomRight, Bottom, BottomLeft, Left };

struct ResizeOptions {
    bool keepRatio = false;
    bool fromCentre = false;
    Length smallest = Length::inches(0, 1, 8);  // no side gets smaller than this
};

Piece movedBy(Piece piece, Point by);

// The start piece with `handle` pulled by `by` (page coordinates; turned pieces are resized along
// their own axes and the opposite corner or side stays where it is on the page, within 1 tick).
// A photo slot's print size follows only when it was equal to the trim: then it becomes the
// smallest catalogue print that holds the trim, or stays; see printSizeFor.
Piece resizedBy(const Piece& start, Handle handle, Point by, const ResizeOptions& options);

// The catalogue print that holds the trim and loses the least area, or the trim itself where none
// does.
Size printSizeFor(Size trim);

// The start piece turned so that its handle, grabbed at `grab`, points at `now`, both in page
// coordinates; with `step`, to the nearest multiple of it.
Angle turnedTo(const Piece& start, Point grab, Point now, std::optional<Angle> step);
// Pieces turned together about a common centre, each also about its own.
Piece turnedAbout(Piece piece, Point centre, Angle by);

}  // namespace matwright
