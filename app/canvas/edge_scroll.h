// SPDX-License-Identifier: MIT
#pragma once

#include <QPointF>
#include <QRectF>

namespace matwright::app {

// How far the paper goes in one step (logical pixels, to be added to the viewport's origin) while a
// drag rests at `pointer`: nothing inside the view, and faster the deeper the pointer is in the
// strip along an edge, or beyond it. Null where the view is too small to have an inside.
QPointF edgeScrollStep(QPointF pointer, const QRectF& view);

inline constexpr double edgeStrip = 24;  // logical pixels
inline constexpr int edgeStepMs = 25;    // between two steps
inline constexpr int edgeDwellMs = 250;  // before the first: a drag may only be passing through

}  // namespace matwright::app
