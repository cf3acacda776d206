// SPDX-License-Identifier: MIT
#include "app/canvas/drags/create_drag.h"

#include <algorithm>
#include <utility>

#include "core/gesture/gesture.h"

namespace matwright::app {

namespace {

constexpr Length smallestSide = Length::inches(0, 1, 8);

Size usualSize(PieceKind kind) {
    switch (kind) {
        case PieceKind::PhotoSlot:
            return {Length::inches(4), Length::inches(6)};
        case PieceKind::Strip:
            return {Length::inches(12), Length::inches(1)};
        case PieceKind::Block:
            return {Length::inches(4), Length::inches(4)};
        case PieceKind::Title:
            return {Length::inches(5), Length::inches(1)};
        case PieceKind::Journaling:
            return {Length::inches(3), Length::inches(4)};
        case PieceKind::Embellishment:
            break;
    }
    return {Length::inches(1), Length::inches(1)};
}

Length withSign(Length length, Length sign) {
    return sign.isNegative() ? -length : length;
}

}  // namespace

Piece prototypeOf(PieceKind kind, const Shape& shape) {
    Piece piece;
    piece.kind = kind;
    piece.size = usualSize(kind);
    if (const auto* polygon = std::get_if<PolygonShape>(&shape)) {
        // The corners come in a box of their own; it is the one they fill.
        Point reach;
        for (const Point corner : polygon->corners) {
            reach = {std::max(reach.x, corner.x), std::max(reach.y, corner.y)};
        }
        const Size usual = piece.size;
        piece.size = {reach.x, reach.y};
        piece.shape = shape;
        piece = withBox(piece, Rect::at({}, usual));
    } else {
        piece.shape = shape;
    }
    if (kind == PieceKind::PhotoSlot) {
        piece.printSize = printSizeFor(piece.size);
    }
    return piece;
}

Piece filling(Piece prototype, const Rect& box) {
    const Shape shape = prototype.shape;
    Piece piece = withBox(std::move(prototype), box);
    if (std::holds_alternative<RoundedRectangleShape>(shape)) {
        piece.shape = shape;  // a corner radius is a measure of its own
    }
    if (piece.kind == PieceKind::PhotoSlot) {
        piece.printSize = printSizeFor(piece.size);
    }
    return piece;
}

CreateDrag::CreateDrag(DragHost& host, Piece prototype, const Pointer& start)
    : Drag(host),
      m_prototype(std::move(prototype)),
      m_snapping(host, host.session().sketch(), {}),
      m_anchor(start.page) {
    const SnapResult snap = m_snapping.atCorner(start.page, start);
    m_anchor = start.page + snap.by();
    if (m_snapping.isOn(start)) {
        m_anchor.x = snap.horizontal ? m_anchor.x : m_anchor.x.roundedTo(m_snapping.step());
        m_anchor.y = snap.vertical ? m_anchor.y : m_anchor.y.roundedTo(m_snapping.step());
    }
}

Rect CreateDrag::boxTo(Point corner, const Pointer& now) const {
    Point by = corner - m_anchor;
    if (now.has(Qt::ShiftModifier)) {
        const Length side = std::max(abs(by.x), abs(by.y));
        by = {withSign(side, by.x), withSign(side, by.y)};
    }
    return Rect::spanning(now.has(Qt::ControlModifier) ? m_anchor - by : m_anchor, m_anchor + by);
}

Point CreateDrag::snappedCorner(const Pointer& now, const SnapResult& snap) const {
    Point corner = now.page + snap.by();
    if (m_snapping.isOn(now)) {
        const Length step = m_snapping.step();
        if (!snap.horizontal) {
            corner.x = m_anchor.x + (corner.x - m_anchor.x).roundedTo(step);
        }
        if (!snap.vertical) {
            corner.y = m_anchor.y + (corner.y - m_anchor.y).roundedTo(step);
        }
    }
    return corner;
}

void CreateDrag::update(const Pointer& now) {
    Preview preview;
    const Rect free = boxTo(now.page, now);
    const SnapEdges edges{now.page.x < m_anchor.x, now.page.x >= m_anchor.x,
                          now.page.y < m_anchor.y, now.page.y >= m_anchor.y};
    preview.snap = m_snapping.at({free, free}, edges, now);
    if (now.has(Qt::ShiftModifier)) {
        // One side leads the other, so one snap is all there can be.
        const Point by = now.page - m_anchor;
        (abs(by.x) >= abs(by.y) ? preview.snap.vertical : preview.snap.horizontal).reset();
    }
    const Rect box = boxTo(snappedCorner(now, preview.snap), now);
    m_piece.reset();
    if (box.size().width >= smallestSide && box.size().height >= smallestSide) {
        m_piece = filling(m_prototype, box);
        preview.added.push_back(*m_piece);
        preview.gaps = m_snapping.gaps(box, preview.snap);
    }
    preview.readout = sizeReadout(box.size(), settings().scale);
    preview.extent = box;
    host().showPreview(std::move(preview));
}

void CreateDrag::finish() {
    if (m_piece) {
        host().perform(addPieces(sketch(), std::span(&*m_piece, 1)),
                       QCoreApplication::translate("Canvas", "Draw %1")
                           .arg(QString::fromUtf8(kindName(m_piece->kind))),
                       true);
    }
}

}  // namespace matwright::app
