// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "core/sketch/edit.h"

namespace matwright {

// Whole-selection commands as edits. Locked pieces stay where they are in all of them; ids that do
// not exist are passed over. An edit without effect is empty. Bounds are trim bounds.

enum class AlignTo { Left, CentreX, Right, Top, CentreY, Bottom };
// One piece: to the area inside the margins of the page it is on. Several: to the bounds of the
// selection.
Edit aligned(const Sketch& sketch, std::span<const PieceId> ids, AlignTo to);

enum class Direction { Across, Down };
// Three or more pieces: equal gaps between neighbours, the outer two stay; rounding goes to the
// last gap, at most 1 tick each.
Edit spreadEvenly(const Sketch& sketch, std::span<const PieceId> ids, Direction direction);
// Two or more pieces: gaps set to the page's gutter, the first stays.
Edit spreadByGutter(const Sketch& sketch, std::span<const PieceId> ids, Direction direction);

// Mirrored within the bounds of the selection: places, rotations and polygon corners.
Edit mirrored(const Sketch& sketch, std::span<const PieceId> ids, Direction direction);

enum class OrderStep { ToFront, Forward, Backward, ToBack };
Edit reordered(const Sketch& sketch, std::span<const PieceId> ids, OrderStep step);

Edit lockedSet(const Sketch& sketch, std::span<const PieceId> ids, bool locked);
Edit movedAll(const Sketch& sketch, std::span<const PieceId> ids, Point by);
// A quarter turn clockwise of each piece about its own centre: upright slots become lying ones.
Edit quarterTurned(const Sketch& sketch, std::span<const PieceId> ids);

// Copies laid `offset` away, on top, in the same order as the originals.
Edit duplicated(const Sketch& sketch, std::span<const PieceId> ids, Point offset);

}  // namespace matwright
