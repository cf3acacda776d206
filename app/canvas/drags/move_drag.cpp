// SPDX-License-Identifier: MIT
#include "app/canvas/drags/move_drag.h"

#include <ranges>

#include "app/editing/command_words.h"
#include "core/gesture/gesture.h"

namespace matwright::app {

std::map<PieceId, Piece> movableSelection(const Session& session) {
    std::map<PieceId, Piece> pieces;
    for (const PieceId id : session.selection()) {
        const Piece* piece = find(session.sketch(), id);
        if (piece && !piece->locked) {
            pieces.emplace(id, *piece);
        }
    }
    return pieces;
}

std::vector<PieceId> idsOf(const std::map<PieceId, Piece>& pieces) {
    const auto keys = std::views::keys(pieces);
    return {keys.begin(), keys.end()};
}

MoveDrag::MoveDrag(DragHost& host, const Pointer& start)
    : Drag(host),
      m_start(movableSelection(host.session())),
      m_box(boxAround(m_start)),
      m_corner(m_start.size() == 1 ? m_start.begin()->second.place : m_box.trim.topLeft()),
      m_press(start),
      m_snapping(host, host.session().sketch(), idsOf(m_start)) {}

Point MoveDrag::snappedBy(Point by, const Pointer& now, SnapResult& snap) const {
    const bool straight = now.has(Qt::ShiftModifier);
    const bool across = abs(by.x) >= abs(by.y);
    if (straight) {
        (across ? by.y : by.x) = Length();
    }
    snap = m_snapping.at({m_box.trim.moved(by), m_box.outermost.moved(by)}, {}, now);
    if (straight) {
        (across ? snap.vertical : snap.horizontal).reset();
    }
    if (m_snapping.isOn(now)) {
        // Where nothing else holds it, the piece still stands on the scale people measure with.
        const Point place = m_corner + by;
        const Length step = m_snapping.step();
        if (!snap.horizontal && !by.x.isZero()) {
            by.x += place.x.roundedTo(step) - place.x;
        }
        if (!snap.vertical && !by.y.isZero()) {
            by.y += place.y.roundedTo(step) - place.y;
        }
    }
    return by + snap.by();
}

void MoveDrag::update(const Pointer& now) {
    Preview preview;
    m_by = snappedBy(now.page - m_press.page, now, preview.snap);
    for (const auto& [id, piece] : m_start) {
        preview.changed.emplace(id, movedBy(piece, m_by));
    }
    const Rect bounds = m_box.trim.moved(m_by);
    preview.gaps = m_snapping.gaps(m_box.outermost.moved(m_by), preview.snap);
    preview.readout = placeReadout(bounds, sketch().page, settings().scale);
    preview.extent = bounds;
    host().showPreview(std::move(preview));
}

void MoveDrag::finish() {
    Edit edit;
    if (m_by != Point()) {
        for (const auto& [id, piece] : m_start) {
            edit.pieces.emplace(id, movedBy(piece, m_by));
        }
    }
    host().perform(edit,
                   commandLabel(QCoreApplication::translate("Canvas", "Move %1"),
                                QCoreApplication::translate("Canvas", "Move %1 pieces"),
                                m_start.begin()->second.kind, m_start.size()),
                   false);
}

}  // namespace matwright::app
