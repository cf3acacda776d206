// SPDX-License-Identifier: MIT
#pragma once

#include "app/canvas/drags/drag.h"

namespace matwright::app {

// The photo moves under its slot, which stays where it is.
class PhotoShiftDrag final : public Drag {
  public:
    // The slot has a photo.
    PhotoShiftDrag(DragHost& host, PieceId slot, const Pointer& start);
    void update(const Pointer& now) override;
    void finish() override;
    Qt::CursorShape cursor() const override { return Qt::ClosedHandCursor; }
    bool scrollsAtEdges() const override { return false; }

  private:
    PieceId m_slot;
    Placement m_start;
    Placement m_now;
    Pointer m_press;
};

// A way on the page as the slot's window has it, which is turned with the slot.
Point inSlot(const Piece& slot, Point onPage);

}  // namespace matwright::app
