// SPDX-License-Identifier: MIT
#pragma once

#include "app/canvas/drags/drag.h"

namespace matwright::app {

// Moves the paper under the window: the middle button, or the left one while Space is held.
class PanDrag final : public Drag {
  public:
    PanDrag(DragHost& host, const Pointer& start)
        : Drag(host), m_start(host.viewport()), m_press(start) {}
    void update(const Pointer& now) override {
        host().scrollTo(m_start.scrolled(now.view - m_press.view));
    }
    void finish() override {}
    void abort() override { host().scrollTo(m_start); }
    Qt::CursorShape cursor() const override { return Qt::ClosedHandCursor; }
    bool scrollsAtEdges() const override { return false; }

  private:
    Viewport m_start;
    Pointer m_press;
};

}  // namespace matwright::app
