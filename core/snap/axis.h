// SPDX-License-Identifier: MIT
#pragma once

#include "core/snap/snap.h"

namespace matwright::snapping {

// Rules are written once for both axes: `along` is the axis that is snapped, `across` the other.
constexpr Interval along(const Rect& rect, Axis axis) {
    return axis == Axis::Horizontal ? rect.x : rect.y;
}
constexpr Interval across(const Rect& rect, Axis axis) {
    return axis == Axis::Horizontal ? rect.y : rect.x;
}
inline constexpr Axis bothAxes[] = {Axis::Horizontal, Axis::Vertical};

constexpr bool lowMoves(const SnapEdges& edges, Axis axis) {
    return axis == Axis::Horizontal ? edges.left : edges.top;
}
constexpr bool highMoves(const SnapEdges& edges, Axis axis) {
    return axis == Axis::Horizontal ? edges.right : edges.bottom;
}
// The whole box moves along the axis, so that its centre may snap.
constexpr bool boxMoves(const SnapEdges& edges, Axis axis) {
    return lowMoves(edges, axis) && highMoves(edges, axis);
}

// The middle of what two intervals share, or of the room between them.
constexpr Length middleOfShared(Interval a, Interval b) {
    const Length low = a.low > b.low ? a.low : b.low;
    const Length high = a.high < b.high ? a.high : b.high;
    return low + (high - low).halfRoundedDown();
}

}  // namespace matwright::snapping
