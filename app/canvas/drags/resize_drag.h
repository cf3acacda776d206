// SPDX-License-Identifier: MIT
#pragma once

#include "app/canvas/drags/snapping.h"
#include "core/gesture/gesture.h"

namespace matwright::app {

// Pulls one handle of one piece. Alt: no snapping; Shift: keep the ratio; Ctrl: from the centre.
// Pieces turned by other than quarter turns do not snap, but their sides still land on the scale.
class ResizeDrag final : public Drag {
  public:
    ResizeDrag(DragHost& host, PieceId id, Handle handle, const Pointer& start);
    void update(const Pointer& now) override;
    void finish() override;
    Qt::CursorShape cursor() const override;

  private:
    // The pulled edges as they lie on the page; only they are held by a snap, also from the centre.
    SnapEdges movingEdges() const;
    // Whether, with the ratio kept, the side that leads lies across the page.
    bool leadsAcross() const;

    PieceId m_id;
    Piece m_start;
    Handle m_handle;
    Pointer m_press;
    Snapping m_snapping;
    Piece m_now;
};

// How far the box's sides grow when its handle is pulled by `along`, which is measured along the
// piece's own axes; with `step`, so that the new sides are multiples of it. With the ratio kept the
// width leads (the height for an upper or lower handle) and the other side follows.
struct Pull {
    Piece start;
    Handle handle;
    ResizeOptions options;
    std::optional<Length> step;
};
Piece pulledAlong(const Pull& pull, Point along);

// A page distance along the axes of a piece turned by `rotation`, and back; exact at quarter turns.
Point alongAxes(Point by, Angle rotation);

}  // namespace matwright::app
