// SPDX-License-Identifier: MIT
#pragma once

#include "app/canvas/drags/snapping.h"

namespace matwright::app {

// Moves the selected pieces that are not locked. Alt: no snapping; Shift: straight across or down.
class MoveDrag final : public Drag {
  public:
    MoveDrag(DragHost& host, const Pointer& start);
    void update(const Pointer& now) override;
    void finish() override;
    Qt::CursorShape cursor() const override { return Qt::SizeAllCursor; }

  private:
    Point snappedBy(Point by, const Pointer& now, SnapResult& snap) const;

    std::map<PieceId, Piece> m_start;
    SnapBox m_box;   // of all of them together
    Point m_corner;  // the place that is kept on the scale
    Pointer m_press;
    Snapping m_snapping;
    Point m_by;
};

// The selected pieces that may be moved, as they are.
std::map<PieceId, Piece> movableSelection(const Session& session);
std::vector<PieceId> idsOf(const std::map<PieceId, Piece>& pieces);

}  // namespace matwright::app
