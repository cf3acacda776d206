// SPDX-License-Identifier: MIT
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QTransform>

#include "core/measure/rect.h"
#include "core/outline/path.h"

namespace matwright::app {

// Where the page lies in the view, as a value: how many logical pixels one tick takes and where the
// page's top left corner stands. Positions in the view stay doubles; they become ticks once, in
// toPage(), and are never rounded to pixels on the way.
class Viewport {
  public:
    Viewport() = default;
    // `pixelsPerTick` is positive.
    Viewport(double pixelsPerTick, QPointF origin)
        : m_pixelsPerTick(pixelsPerTick), m_origin(origin) {}

    // The viewport that shows `area` centred in a view of this size with `padding` pixels around.
    static Viewport fitting(const Rect& area, QSizeF view, double padding);

    double pixelsPerTick() const { return m_pixelsPerTick; }
    double pixelsPerInch() const {
        return m_pixelsPerTick * static_cast<double>(Length::ticksPerInch);
    }
    QPointF origin() const { return m_origin; }

    QPointF toView(Vertex v) const {
        return {v.x * m_pixelsPerTick + m_origin.x(), v.y * m_pixelsPerTick + m_origin.y()};
    }
    QPointF toView(Point p) const { return toView(vertexAt(p)); }
    QRectF toView(const Rect& rect) const {
        return {toView(rect.topLeft()), toView(rect.bottomRight())};
    }
    // To the nearest tick, kept within +-Length::coordinateLimit().
    Point toPage(QPointF view) const;
    // The smallest page rectangle around the view rectangle, within the same limit.
    Rect toPage(const QRectF& view) const;
    // A distance in pixels, to the nearest tick.
    Length toLength(double pixels) const;
    // Ticks to view pixels, for a painter whose one unit is one tick.
    QTransform transform() const {
        return {m_pixelsPerTick, 0, 0, m_pixelsPerTick, m_origin.x(), m_origin.y()};
    }

    // The same page point stays under `anchor`.
    Viewport zoomedTo(double pixelsPerTick, QPointF anchor) const;
    Viewport scrolled(QPointF by) const { return {m_pixelsPerTick, m_origin + by}; }
    // The origin put on whole device pixels, so that cached pictures can be shifted without a blur.
    Viewport aligned(double devicePixelRatio) const;

    friend bool operator==(const Viewport&, const Viewport&) = default;

  private:
    double m_pixelsPerTick = 96.0 / static_cast<double>(Length::ticksPerInch);
    QPointF m_origin;
};

}  // namespace matwright::app
