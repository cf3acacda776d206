// SPDX-License-Identifier: MIT
#include "app/canvas/padlock.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "app/canvas/handles.h"

namespace matwright::app {

namespace {

constexpr double smallestSideWithPadlock = 36;  // view pixels
constexpr QColor paleHalo(255, 255, 255, 210);

bool isRectangle(const Piece& piece) {
    return std::holds_alternative<RectangleShape>(piece.shape);
}

}  // namespace

QPointF padlockPlace(const Piece& piece, const Viewport& viewport) {
    const QPolygonF corners = turnedCorners(piece, trimBox(piece), viewport);
    if (!isRectangle(piece)) {
        return (corners[0] + corners[2]) / 2;
    }
    const double c = piece.rotation.cosine();
    const double s = piece.rotation.sine();
    const QPointF inwards(-13, 15);
    return corners[1] +
           QPointF(inwards.x() * c - inwards.y() * s, inwards.x() * s + inwards.y() * c);
}

bool hasRoomForPadlock(const Piece& piece, const Viewport& viewport) {
    const Length shorter = std::min(piece.size.width, piece.size.height);
    return static_cast<double>(shorter.ticks()) * viewport.pixelsPerTick() >=
           smallestSideWithPadlock;
}

void paintPadlock(QPainter& painter, QPointF at, const QColor& colour) {
    const QRectF body(at.x() - 5, at.y() - 2, 10, 8);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(paleHalo, 5));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(body);
    painter.setPen(QPen(colour, 1.8));
    QPainterPath shackle(QPointF(at.x() - 3, at.y() - 2));
    shackle.lineTo(at.x() - 3, at.y() - 5);
    shackle.arcTo(QRectF(at.x() - 3, at.y() - 8, 6, 6), 180, -180);
    shackle.lineTo(at.x() + 3, at.y() - 2);
    painter.drawPath(shackle);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawRoundedRect(body, 1.5, 1.5);
    painter.restore();
}

}  // namespace matwright::app
