// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>
#include <QPointF>

#include "app/canvas/viewport.h"
#include "core/sketch/piece.h"

class QPainter;

namespace matwright::app {

// Where the padlock of a locked piece stands in the view: inside the upper right corner of a
// rectangle, turned with it, else in the middle.
QPointF padlockPlace(const Piece& piece, const Viewport& viewport);
// Whether a padlock there stays inside the piece and leaves something of it to be seen.
bool hasRoomForPadlock(const Piece& piece, const Viewport& viewport);
// About 14 pixels high around `at`, on a light halo.
void paintPadlock(QPainter& painter, QPointF at, const QColor& colour);

// Quiet, and still 4.5:1 on the halo.
inline constexpr QColor padlockColour(88, 96, 104);

}  // namespace matwright::app
