// SPDX-License-Identifier: MIT
#pragma once

#include "app/canvas/drags/snapping.h"

namespace matwright::app {

// Turns one piece about its centre, or several about the centre of all of them. By whole degrees,
// held by quarter turns; Shift: by 15 degrees; Alt: freely.
class RotateDrag final : public Drag {
  public:
    RotateDrag(DragHost& host, const Pointer& start);
    void update(const Pointer& now) override;
    void finish() override;
    Qt::CursorShape cursor() const override { return Qt::ClosedHandCursor; }
    bool scrollsAtEdges() const override { return false; }

  private:
    Angle angleAt(const Pointer& now) const;

    std::map<PieceId, Piece> m_start;
    Piece m_frame;  // the one piece, or an unturned stand-in for the bounds of several
    Pointer m_press;
    std::map<PieceId, Piece> m_now;
};

// The pieces turned together by this much: one about its own centre, several about the centre of
// their trim bounds.
std::map<PieceId, Piece> turnedTogether(const std::map<PieceId, Piece>& pieces, Angle by);

}  // namespace matwright::app
