// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "core/template/occupancy.h"
#include "core/template/scene.h"
#include "core/template/text_block.h"

namespace matwright {

// Kept free around everything that is written.
inline constexpr Length textClearance = Length::inches(0, 1, 32);

// The first place inside the visible part of the piece's trim where the block touches no line and
// nothing placed: from the top left in an upright rectangle, from the middle outwards in any other
// shape.
std::optional<Point> placeInPiece(const Scene& scene, const Occupancy& occupancy,
                                  const ScenePiece& piece, const TextBlock& block);

// A place for a room of this size near the piece: its top left corner and a leader line from its
// edge to a visible spot of the piece.
struct PlaceBeside {
    Point at;
    Vertex leaderFrom;
    Vertex leaderTo;
};
std::optional<PlaceBeside> placeBeside(const Scene& scene, const Occupancy& occupancy,
                                       const ScenePiece& piece, Size room);

// Whether some spot of the piece shows that nothing placed lies on.
bool showsSomewhere(const Scene& scene, const Occupancy& occupancy, const ScenePiece& piece);

// How free a place on the sheet must be.
enum class Freedom {
    BarePaper,    // no piece under it, no line through it
    NoLines,      // on a piece, but no line through it
    NothingElse,  // as few lines through it as possible, but nothing placed
};
enum class Corner { BottomLeft, BottomRight };
// The place nearest the bottom edge, then nearest the corner.
std::optional<Point> placeOnSheet(const Scene& scene, const Occupancy& occupancy, Size room,
                                  Freedom freedom, Corner corner);

}  // namespace matwright
