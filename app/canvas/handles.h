// SPDX-License-Identifier: MIT
#pragma once

#include <QLineF>
#include <QPolygonF>
#include <optional>
#include <vector>

#include "app/canvas/viewport.h"
#include "core/gesture/gesture.h"
#include "core/sketch/piece.h"

namespace matwright::app {

// Where the handles of a selection stand in the view: at the corners and sides of one piece's trim
// box, turned with it; several pieces together only have the handle for turning.
struct HandleSpot {
    std::optional<Handle> resize;  // nothing: the handle for turning
    QPointF at;
};

struct HandleLayout {
    QPolygonF frame;  // the four corners, clockwise from the top left of the unturned box
    QLineF stalk;     // from the frame to the handle for turning
    std::vector<HandleSpot> spots;
    double degrees = 0;  // the frame's turn

    // The nearest spot whose area holds the point: 24 px wide, less inside a small frame so that
    // its middle can still be grabbed.
    const HandleSpot* spotAt(QPointF view) const;
};

// The handle for turning goes above the frame, or below it where it would leave the view.
HandleLayout handlesOf(const Piece& piece, const Viewport& viewport, const QRectF& view);
HandleLayout handlesOf(const Rect& bounds, const Viewport& viewport, const QRectF& view);

// The corners of `box` turned with the piece about its trim centre, in view coordinates.
QPolygonF turnedCorners(const Piece& piece, const Rect& box, const Viewport& viewport);

// The direction in which this handle pulls, in view coordinates, of an unturned box: each part -1,
// 0 or 1.
QPointF pullOf(Handle handle);
// The resize cursor for a handle of a box turned by `degrees`.
Qt::CursorShape cursorOf(Handle handle, double degrees);

}  // namespace matwright::app
