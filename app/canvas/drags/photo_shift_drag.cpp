// SPDX-License-Identifier: MIT
#include "app/canvas/drags/photo_shift_drag.h"

#include <utility>

#include "core/making/fold.h"

namespace matwright::app {

Point inSlot(const Piece& slot, Point onPage) {
    const double cosine = slot.rotation.cosine();
    const double sine = slot.rotation.sine();
    const auto x = static_cast<double>(onPage.x.ticks());
    const auto y = static_cast<double>(onPage.y.ticks());
    return {Length::roundedFromTicks(x * cosine + y * sine),
            Length::roundedFromTicks(y * cosine - x * sine)};
}

PhotoShiftDrag::PhotoShiftDrag(DragHost& host, PieceId slot, const Pointer& start)
    : Drag(host),
      m_slot(slot),
      m_start(host.session().work().placements.at(slot)),
      m_now(m_start),
      m_press(start) {}

void PhotoShiftDrag::update(const Pointer& now) {
    const PhotoWork& work = host().session().work();
    const Piece& slot = sketch().pieces.at(m_slot);
    const Size window = shownWindow(slot, m_start.border, sketch().page);
    m_now.crop = dragged(m_start.crop, work.photos.at(m_start.photo).upright, window,
                         inSlot(slot, now.page - m_press.page));
    Preview preview;
    preview.placed.emplace(m_slot, m_now);
    host().showPreview(std::move(preview));
}

void PhotoShiftDrag::finish() {
    if (m_now == m_start) {
        return;
    }
    PhotoEdit edit;
    edit.placements[m_slot] = m_now;
    (void)host().session().perform(edit, QCoreApplication::translate("Canvas", "Move photo"));
}

}  // namespace matwright::app
