// SPDX-License-Identifier: MIT
#include "app/canvas/handles.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace matwright::app {

namespace {

constexpr double hitReach = 12;
constexpr double stalkLength = 28;
// Sides shorter than this have no handle of their own between the corners.
constexpr double shortestSideWithHandle = 48;

QPointF middle(QPointF a, QPointF b) {
    return (a + b) / 2;
}

void addCornerSpots(HandleLayout& layout) {
    static constexpr Handle corners[] = {Handle::TopLeft, Handle::TopRight, Handle::BottomRight,
                                         Handle::BottomLeft};
    static constexpr Handle sides[] = {Handle::Top, Handle::Right, Handle::Bottom, Handle::Left};
    for (int i = 0; i < 4; ++i) {
        const QPointF from = layout.frame[i];
        const QPointF to = layout.frame[(i + 1) % 4];
        layout.spots.push_back({corners[i], from});
        if (QLineF(from, to).length() >= shortestSideWithHandle) {
            layout.spots.push_back({sides[i], middle(from, to)});
        }
    }
}

void addTurnSpot(HandleLayout& layout, const QRectF& view) {
    const QPointF top = middle(layout.frame[0], layout.frame[1]);
    const QPointF bottom = middle(layout.frame[2], layout.frame[3]);
    const QLineF up(bottom, top);
    const QPointF away = up.length() > 0 ? QPointF(up.dx(), up.dy()) / up.length() : QPointF(0, -1);
    const QRectF room = view.adjusted(hitReach, hitReach, -hitReach, -hitReach);
    QLineF stalk(top, top + away * stalkLength);
    if (!room.contains(stalk.p2()) && room.contains(bottom - away * stalkLength)) {
        stalk = {bottom, bottom - away * stalkLength};
    }
    layout.stalk = stalk;
    layout.spots.push_back({std::nullopt, stalk.p2()});
}

double shorterSide(const QPolygonF& frame) {
    return std::min(QLineF(frame[0], frame[1]).length(), QLineF(frame[1], frame[2]).length());
}

}  // namespace

const HandleSpot* HandleLayout::spotAt(QPointF view) const {
    const bool isInside = frame.containsPoint(view, Qt::OddEvenFill);
    const double reach = isInside ? std::min(hitReach, shorterSide(frame) / 4) : hitReach;
    const HandleSpot* nearest = nullptr;
    double shortest = 0;
    for (const HandleSpot& spot : spots) {
        const QPointF off = view - spot.at;
        const double distance = std::max(std::abs(off.x()), std::abs(off.y()));
        if (distance <= reach && (!nearest || distance < shortest)) {
            nearest = &spot;
            shortest = distance;
        }
    }
    return nearest;
}

QPolygonF turnedCorners(const Piece& piece, const Rect& box, const Viewport& viewport) {
    const Rect trim = trimBox(piece);
    const double cx = static_cast<double>((trim.left() + trim.right()).ticks()) / 2;
    const double cy = static_cast<double>((trim.top() + trim.bottom()).ticks()) / 2;
    const double c = piece.rotation.cosine();
    const double s = piece.rotation.sine();
    QPolygonF corners;
    for (const Point corner : {box.topLeft(), Point{box.right(), box.top()}, box.bottomRight(),
                               Point{box.left(), box.bottom()}}) {
        const double x = static_cast<double>(corner.x.ticks()) - cx;
        const double y = static_cast<double>(corner.y.ticks()) - cy;
        corners.append(viewport.toView(Vertex{cx + x * c - y * s, cy + x * s + y * c}));
    }
    return corners;
}

HandleLayout handlesOf(const Piece& piece, const Viewport& viewport, const QRectF& view) {
    HandleLayout layout;
    layout.frame = turnedCorners(piece, trimBox(piece), viewport);
    layout.degrees = piece.rotation.toDegrees();
    addCornerSpots(layout);
    addTurnSpot(layout, view);
    return layout;
}

HandleLayout handlesOf(const Rect& bounds, const Viewport& viewport, const QRectF& view) {
    HandleLayout layout;
    const QRectF box = viewport.toView(bounds);
    layout.frame = {box.topLeft(), box.topRight(), box.bottomRight(), box.bottomLeft()};
    addTurnSpot(layout, view);
    return layout;
}

QPointF pullOf(Handle handle) {
    const HandleSide side = sideOf(handle);
    return {static_cast<qreal>(side.x), static_cast<qreal>(side.y)};
}

Qt::CursorShape cursorOf(Handle handle, double degrees) {
    const QPointF pull = pullOf(handle);
    const double direction = std::atan2(pull.y(), pull.x()) * 180 / std::numbers::pi + degrees;
    switch (std::lround(direction / 45) & 3) {
        case 0:
            return Qt::SizeHorCursor;
        case 1:
            return Qt::SizeFDiagCursor;
        case 2:
            return Qt::SizeVerCursor;
        default:
            return Qt::SizeBDiagCursor;
    }
}

}  // namespace matwright::app
