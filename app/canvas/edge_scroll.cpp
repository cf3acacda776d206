// SPDX-License-Identifier: MIT
#include "app/canvas/edge_scroll.h"

#include <algorithm>
#include <cmath>

namespace matwright::app {

namespace {

constexpr double deepest = 2 * edgeStrip;  // from here on it gets no faster
constexpr double pixelsPerDepth = 0.5;

double step(double at, double low, double high) {
    if (high - low < 4 * edgeStrip) {
        return 0;
    }
    const double before = std::clamp(low + edgeStrip - at, 0.0, deepest);
    const double after = std::clamp(at - (high - edgeStrip), 0.0, deepest);
    const double by = (before - after) * pixelsPerDepth;
    return by > 0 ? std::ceil(by) : std::floor(by);
}

}  // namespace

QPointF edgeScrollStep(QPointF pointer, const QRectF& view) {
    return {step(pointer.x(), view.left(), view.right()),
            step(pointer.y(), view.top(), view.bottom())};
}

}  // namespace matwright::app
