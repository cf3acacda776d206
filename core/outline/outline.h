// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "core/outline/path.h"
#include "core/sketch/piece.h"

namespace matwright {

// Where a piece's edges lie on the page, turned. Rectangles and polygons are exact up to one tick
// of rounding in the turn; rounded corners and ovals are cubic curves (see ovalPath).

// The trim line: what is left after cutting.
Path trimOutline(const Piece& piece);
// The edge of mat `index` (0 is right under the photo). Rectangles grow by the border; rounded
// corners grow their radius by it; an oval's mat is the oval in the grown box; a polygon grows as
// grownPolygon() says: mitred, and towards the bottom border the more a side faces down. The mitres
// of a polygon may stick out of matBox().
Path matOutline(const Piece& piece, std::size_t index);
// The radius that is really drawn, of the trim line or of a mat around it. `shape` is the piece's.
Length cornerRadius(const Piece& piece, const RoundedRectangleShape& shape,
                    std::optional<std::size_t> mat = {});
// The edge of the print before trimming (always a rectangle); the trim box where there is none.
Path printOutline(const Piece& piece);
// The outline of all of the piece: its last mat, or its trim line.
Path outermostOutline(const Piece& piece);

// A box that nothing of the piece sticks out of, found without its outline: outermostBounds(), and
// for polygons with mats as much more as mitres may reach. Loose: for leaving out what is
// elsewhere.
Rect reachOf(const Piece& piece);

// Whether the page point lies on the piece (mats included), boundary included; within 1 tick.
bool covers(const Piece& piece, Point at);

}  // namespace matwright
