// SPDX-License-Identifier: MIT
#pragma once

#include "app/canvas/drags/snapping.h"

namespace matwright::app {

// Pieces that come from elsewhere, held by the middle of their bounds while they hover over the
// page. Alt: no snapping.
class DropDrag final : public Drag {
  public:
    // `pieces` is not empty; their places count relative to each other.
    DropDrag(DragHost& host, std::vector<Piece> pieces);
    void update(const Pointer& now) override;
    void finish() override;
    Qt::CursorShape cursor() const override { return Qt::DragCopyCursor; }

  private:
    std::vector<Piece> m_start;
    SnapBox m_box;
    Snapping m_snapping;
    std::vector<Piece> m_now;
};

}  // namespace matwright::app
