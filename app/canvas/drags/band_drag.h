// SPDX-License-Identifier: MIT
#pragma once

#include "app/canvas/drags/drag.h"

namespace matwright::app {

// The rubber band: selects what lies wholly inside it; Shift or Ctrl adds to what was selected.
class BandDrag final : public Drag {
  public:
    BandDrag(DragHost& host, const Pointer& start);
    void update(const Pointer& now) override;
    void finish() override {}
    void abort() override;
    Qt::CursorShape cursor() const override { return Qt::CrossCursor; }

  private:
    Pointer m_press;
    Session::Selection m_before;
};

}  // namespace matwright::app
