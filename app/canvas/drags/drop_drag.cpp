// SPDX-License-Identifier: MIT
#include "app/canvas/drags/drop_drag.h"

#include "core/gesture/gesture.h"

namespace matwright::app {

namespace {

SnapBox boxAround(const std::vector<Piece>& pieces) {
    SnapBox box{trimBounds(pieces.front()), outermostBounds(pieces.front())};
    for (const Piece& piece : pieces) {
        box.trim = box.trim.united(trimBounds(piece));
        box.outermost = box.outermost.united(outermostBounds(piece));
    }
    return box;
}

}  // namespace

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
                       QCoreApplication::translate("Canvas", "Lay down %n piece(s)", nullptr,
                                                   static_cast<int>(m_now.size())),
                       true);
    }
}

}  // namespace matwright::app
