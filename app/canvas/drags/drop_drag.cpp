// SPDX-License-Identifier: MIT
#include "app/canvas/drags/drop_drag.h"

#include "app/editing/command_words.h"
#include "core/gesture/gesture.h"

namespace matwright::app {

DropDrag::DropDrag(DragHost& host, std::vector<Piece> pieces)
    : Drag(host),
      m_start(std::move(pieces)),
      m_box(boxAround(m_start)),
      m_snapping(host, host.session().sketch(), {}) {}

void DropDrag::update(const Pointer& now) {
    Preview preview;
    Point by = now.page - m_box.trim.centreRoundedDown();
    preview.snap = m_snapping.at({m_box.trim.moved(by), m_box.outermost.moved(by)}, {}, now);
    if (m_snapping.isOn(now)) {
        const Point corner = m_box.trim.topLeft() + by;
        const Length step = m_snapping.step();
        by.x += preview.snap.horizontal ? Length() : corner.x.roundedTo(step) - corner.x;
        by.y += preview.snap.vertical ? Length() : corner.y.roundedTo(step) - corner.y;
    }
    by = by + preview.snap.by();
    m_now.clear();
    for (const Piece& piece : m_start) {
        m_now.push_back(movedBy(piece, by));
    }
    const Rect bounds = m_box.trim.moved(by);
    preview.added = m_now;
    preview.gaps = m_snapping.gaps(m_box.outermost.moved(by), preview.snap);
    preview.readout = placeReadout(bounds, sketch().page, settings().scale);
    preview.extent = bounds;
    host().showPreview(std::move(preview));
}

void DropDrag::finish() {
    if (!m_now.empty()) {
        host().perform(addPieces(sketch(), m_now),
                       commandLabel(QCoreApplication::translate("Canvas", "Lay down %1"),
                                    QCoreApplication::translate("Canvas", "Lay down %1 pieces"),
                                    m_now.front().kind, m_now.size()),
                       true);
    }
}

}  // namespace matwright::app
