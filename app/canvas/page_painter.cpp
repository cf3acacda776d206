// SPDX-License-Identifier: MIT
#include "app/canvas/page_painter.h"

#include <QPainter>

#include "app/canvas/padlock.h"
#include "app/rendering/paint.h"
#include "core/outline/outline.h"
#include "core/picture/picture.h"

namespace matwright::app {

namespace {

// Lines on the paper keep their colours in both themes: the paper is white in both.
constexpr QColor paperColour(255, 255, 255);
constexpr QColor marginColour(205, 212, 219);
constexpr QColor foldColour(226, 230, 234);

void paintShadow(QPainter& painter, const QRectF& page) {
    painter.setPen(Qt::NoPen);
    for (int step = 3; step > 0; --step) {
        painter.setBrush(QColor(0, 0, 0, 14));
        painter.drawRoundedRect(page.adjusted(-step, -step + 1, step, step + 1), step, step);
    }
}

}  // namespace

QColor surroundingsColour(const QPalette& palette) {
    const QColor window = palette.color(QPalette::Window);
    return window.lightness() < 128 ? window.darker(125) : window.darker(108);
}

void paintPaper(QPainter& painter, const PageSetup& setup, const Viewport& viewport,
                const QPalette& palette, const QRectF& area) {
    painter.fillRect(area, surroundingsColour(palette));
    const QRectF whole = viewport.toView(surface(setup));
    painter.setRenderHint(QPainter::Antialiasing);
    paintShadow(painter, whole);
    painter.fillRect(whole, foldColour);
    for (const Rect& page : pages(setup)) {
        painter.fillRect(viewport.toView(page), paperColour);
    }
    // Not dashed: where dashes start depends on what part of the line is in view, so mended parts
    // would not meet.
    QPen pen(marginColour, 1);
    pen.setCosmetic(true);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    for (const Rect& inside : insideMargins(setup)) {
        painter.drawRect(viewport.toView(inside));
    }
}

void paintPieces(QPainter& painter, const Sketch& sketch, const Viewport& viewport,
                 const LabelStyle& labels, const QRegion& area, const PieceFilter& wanted,
                 const PageDress& dress) {
    std::size_t number = 0;
    for (const PieceId id : sketch.order) {
        ++number;
        const Piece& piece = sketch.pieces.at(id);
        if (!wanted(id) || !area.intersects(paintedRect(piece, viewport))) {
            continue;
        }
        if (dress.dresses(id, piece)) {
            paintDressed(painter, id, piece, dress.placementOf(id), viewport, dress);
        } else {
            paintPiece(painter, piece, number, viewport, labels);
        }
    }
}

void paintDressed(QPainter& painter, PieceId id, const Piece& piece, const Placement* placement,
                  const Viewport& viewport, const PageDress& dress) {
    const double perTick = viewport.pixelsPerTick() * painter.device()->devicePixelRatioF();
    painter.save();
    painter.setTransform(viewport.transform(), true);
    for (const PagePiece& part : piecePicture(*dress.work, *dress.page, id, piece, placement)) {
        paintPart(painter, part, *dress.pictures, perTick);
    }
    painter.restore();
    if (piece.locked && hasRoomForPadlock(piece, viewport)) {
        paintPadlock(painter, padlockPlace(piece, viewport), padlockColour);
    }
}

void paintPiece(QPainter& painter, const Piece& piece, std::size_t number, const Viewport& viewport,
                const LabelStyle& labels) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setTransform(viewport.transform(), true);
    for (const DrawingItem& item : pieceItems(piece, false)) {
        paintItem(painter, item);
    }
    painter.restore();
    if (const auto label = PieceLabel::of(piece, number, viewport, labels)) {
        label->paint(painter);
    }
    if (piece.locked && hasRoomForPadlock(piece, viewport)) {
        paintPadlock(painter, padlockPlace(piece, viewport), padlockColour);
    }
}

QRect paintedRect(const Piece& piece, const Viewport& viewport) {
    return paintedRect(reachOf(piece), viewport);
}

QRect paintedRect(const Rect& reach, const Viewport& viewport) {
    return viewport.toView(reach).toAlignedRect().adjusted(-3, -3, 3, 3);
}

}  // namespace matwright::app
