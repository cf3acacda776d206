// SPDX-License-Identifier: MIT
#pragma once

#include "app/canvas/drags/snapping.h"

namespace matwright::app {

// Draws a new piece from corner to corner. Alt: no snapping; Shift: as wide as high; Ctrl: from the
// centre.
class CreateDrag final : public Drag {
  public:
    // `prototype` gives everything but place and size.
    CreateDrag(DragHost& host, Piece prototype, const Pointer& start);
    void update(const Pointer& now) override;
    void finish() override;
    Qt::CursorShape cursor() const override { return Qt::CrossCursor; }

  private:
    // Where the pointer's corner is held: by the snap, else by the scale counted from the anchor.
    Point snappedCorner(const Pointer& now, const SnapResult& snap) const;
    Rect boxTo(Point corner, const Pointer& now) const;

    Piece m_prototype;
    Snapping m_snapping;
    Point m_anchor;  // the first corner, or the centre
    std::optional<Piece> m_piece;
};

// A new piece of this kind and shape filling the box: a shape that fits in it, and for a photo slot
// the catalogue print that holds it. Polygons in `prototype` are scaled to the box.
Piece filling(Piece prototype, const Rect& box);
// What a tool draws before it has a size: 4 x 6 for a photo slot, and so on.
Piece prototypeOf(PieceKind kind, const Shape& shape);

}  // namespace matwright::app
