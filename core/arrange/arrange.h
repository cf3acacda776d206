// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "core/sketch/edit.h"

namespace matwright {

// Whole-selection commands as edits. Locked pieces stay where they are in all of them; ids that do
// not exist, or come twice, are passed over. An edit without effect is empty.
//
// Alignment and mirroring go by trim bounds, gaps by outermost bounds (from mat edge to mat edge,
// as a gutter is counted everywhere). Bounds are exact for pieces that are not turned and for
// quarter turns, within 1 tick for others; so are the results.

enum class AlignTo { Left, CentreX, Right, Top, CentreY, Bottom };
// One piece: to the area inside the margins of the page it is on (the nearer one, by its middle).
// Several: to the bounds of the selection, locked pieces included. Centres to the tick below.
Edit aligned(const Sketch& sketch, std::span<const PieceId> ids, AlignTo to);

enum class Direction { Across, Down };
// Three or more pieces: equal gaps between neighbours, in the order of their near edges. The outer
// two stay, and so does every locked piece: the pieces between two that stay are spread between
// them. Gaps that cannot be equal to the tick differ by 1 tick, the larger ones last; pieces too
// long for the room overlap evenly.
Edit spreadEvenly(const Sketch& sketch, std::span<const PieceId> ids, Direction direction);
// Two or more pieces: gaps set to the page's gutter, the first stays; so does every locked piece,
// and the row goes on behind it.
Edit spreadByGutter(const Sketch& sketch, std::span<const PieceId> ids, Direction direction);

// Mirrored within the bounds of the pieces that are not locked: places, rotations and polygon
// corners. Across swaps left and right. A mat's deeper bottom border stays at the bottom. Mirroring
// twice gives the same pieces: exactly when none is turned or all are by quarter turns, else
// places within 2 ticks.
Edit mirrored(const Sketch& sketch, std::span<const PieceId> ids, Direction direction);

enum class OrderStep { ToFront, Forward, Backward, ToBack };
// The pieces keep their order among themselves; a step forward passes over one other piece. Locked
// pieces are not taken along.
Edit reordered(const Sketch& sketch, std::span<const PieceId> ids, OrderStep step);

Edit lockedSet(const Sketch& sketch, std::span<const PieceId> ids, bool locked);
Edit movedAll(const Sketch& sketch, std::span<const PieceId> ids, Point by);
// A quarter turn clockwise: one piece about its own centre, several that are not locked about the
// centre of their trim bounds (within half a tick), so that they lie to each other as before.
// Upright slots become lying ones, with print size and polygon corners. The boxes are turned, not
// the angles, so the figures read the new way round and a deeper bottom border stays at the bottom.
// Four turns give back the pieces where none is turned or all are by quarter turns, else their
// places within 4 ticks; two turns of one piece give back its box.
Edit quarterTurned(const Sketch& sketch, std::span<const PieceId> ids);

}  // namespace matwright
