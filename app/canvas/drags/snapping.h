// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <ranges>
#include <span>
#include <vector>

#include "app/canvas/drags/drag.h"
#include "core/snap/snap.h"

namespace matwright::app {

// Trim bounds and outermost bounds of all the pieces of a range together; there is at least one.
template <typename Pieces>
SnapBox boxAround(const Pieces& pieces) {
    auto piece = std::ranges::begin(pieces);
    SnapBox box{trimBounds(*piece), outermostBounds(*piece)};
    while (++piece != std::ranges::end(pieces)) {
        box.trim = box.trim.united(trimBounds(*piece));
        box.outermost = box.outermost.united(outermostBounds(*piece));
    }
    return box;
}
inline SnapBox boxAround(const std::map<PieceId, Piece>& pieces) {
    return boxAround(std::views::values(pieces));
}

// Snapping for one drag: the still surroundings, taken once when it starts, and the settings that
// hold for it.
class Snapping {
  public:
    Snapping(const DragHost& host, const Sketch& sketch, std::span<const PieceId> moving);

    // Nothing while snapping is off or Alt is held. The reach follows the zoom, so that a snap
    // never jumps far on the screen nor needs a steadier hand than a mouse allows.
    SnapResult at(const SnapBox& box, const SnapEdges& edges, const Pointer& now) const;
    // The snap of a lone corner, from which a box may grow to any side.
    SnapResult atCorner(Point corner, const Pointer& now) const;
    bool isOn(const Pointer& now) const;
    // The step that unsnapped places and sides are rounded to while snapping is on: the scale's.
    Length step() const { return stepOf(m_settings.scale); }

    // The gaps the snaps speak of, then the live distances from the outermost box to the neighbours
    // that differ from them.
    std::vector<SnapGap> gaps(const Rect& outermost, const SnapResult& snap) const;

  private:
    const DragHost& m_host;
    SnapContext m_context;
    SnapSettings m_settings;
    bool m_isOn;
};

// "left 1 1/2 · top 2"; on a double page from the edges of the page on which the left edge lies, as
// the template measures it: "right page, left 1 · top 2".
QString placeReadout(const Rect& bounds, const PageSetup& setup, Scale scale);
// "3 × 4 in"
QString sizeReadout(Size size, Scale scale);
// "12.5° to the right"
QString angleReadout(Angle angle);

}  // namespace matwright::app
