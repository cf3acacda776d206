// SPDX-License-Identifier: MIT
#include "app/canvas/viewport.h"

#include <algorithm>
#include <cmath>

namespace matwright::app {

namespace {

Length limited(double ticks) {
    const auto limit = static_cast<double>(Length::coordinateLimit().ticks());
    return Length::roundedFromTicks(std::clamp(ticks, -limit, limit));
}

}  // namespace

Viewport Viewport::fitting(const Rect& area, QSizeF view, double padding) {
    const double room = 2 * padding;
    const double across = std::max(view.width() - room, 16.0);
    const double down = std::max(view.height() - room, 16.0);
    const auto width = static_cast<double>(area.size().width.ticks());
    const auto height = static_cast<double>(area.size().height.ticks());
    const double scale = std::min(across / std::max(width, 1.0), down / std::max(height, 1.0));
    const QPointF middle{static_cast<double>(area.left().ticks()) + width / 2,
                         static_cast<double>(area.top().ticks()) + height / 2};
    return {scale, QPointF(view.width() / 2, view.height() / 2) - middle * scale};
}

Point Viewport::toPage(QPointF view) const {
    const QPointF at = (view - m_origin) / m_pixelsPerTick;
    return {limited(at.x()), limited(at.y())};
}

Rect Viewport::toPage(const QRectF& view) const {
    const QPointF low = (view.topLeft() - m_origin) / m_pixelsPerTick;
    const QPointF high = (view.bottomRight() - m_origin) / m_pixelsPerTick;
    return {{limited(std::floor(low.x())), limited(std::ceil(high.x()))},
            {limited(std::floor(low.y())), limited(std::ceil(high.y()))}};
}

Length Viewport::toLength(double pixels) const {
    return limited(pixels / m_pixelsPerTick);
}

Viewport Viewport::zoomedTo(double pixelsPerTick, QPointF anchor) const {
    return {pixelsPerTick, anchor - (anchor - m_origin) * (pixelsPerTick / m_pixelsPerTick)};
}

Viewport Viewport::aligned(double devicePixelRatio) const {
    const auto onPixel = [devicePixelRatio](double v) {
        return std::round(v * devicePixelRatio) / devicePixelRatio;
    };
    return {m_pixelsPerTick, {onPixel(m_origin.x()), onPixel(m_origin.y())}};
}

}  // namespace matwright::app
