// SPDX-License-Identifier: MIT
#include "app/canvas/drags/band_drag.h"

#include "app/canvas/hit_test.h"

namespace matwright::app {

BandDrag::BandDrag(DragHost& host, const Pointer& start)
    : Drag(host), m_press(start), m_before(host.session().selection()) {}

void BandDrag::update(const Pointer& now) {
    const Rect band = Rect::spanning(m_press.page, now.page);
    const auto inside = piecesInside(sketch(), band);
    Session::Selection selected(inside.begin(), inside.end());
    if (now.has(Qt::ShiftModifier) || now.has(Qt::ControlModifier)) {
        selected.insert(m_before.begin(), m_before.end());
    }
    host().session().select(std::move(selected));
    Preview preview;
    preview.band = band;
    host().showPreview(std::move(preview));
}

void BandDrag::abort() {
    host().session().select(m_before);
}

}  // namespace matwright::app
