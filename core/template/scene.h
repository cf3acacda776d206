// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/outline/path.h"
#include "core/sketch/sketch.h"

namespace matwright {

// A piece with its edges as they lie on the page, worked out once for everything a template draws.
struct ScenePiece {
    PieceId id;
    const Piece* piece = nullptr;
    std::size_t number = 0;  // the order of laying down, 1 first
    Path trim;
    std::vector<Path> mats;         // the one right under the photo first
    std::vector<Vertex> trimRing;   // flattened, for placing texts only
    std::vector<Vertex> outerRing;  // of the outermost edge
    Rect trimBounds;                // of the trim line as it lies, not of its box
    Rect outerBounds;
    Rect page;  // the page its trim's left edge lies on: where its distances are measured from

    // To the outermost edge, which is what is laid on the page: the mat's where there is one.
    Length left() const { return outerBounds.left() - page.left(); }
    Length top() const { return outerBounds.top() - page.top(); }
};

// The sketch to draw. Refers to the sketch, which must outlive it.
class Scene {
  public:
    explicit Scene(const Sketch& sketch);

    Size sheet() const { return m_sheet; }
    const std::vector<Rect>& pages() const { return m_pages; }
    const std::vector<ScenePiece>& pieces() const { return m_pieces; }  // bottom to top

    // The piece that shows at this place, mats included; nullptr on bare paper.
    const ScenePiece* topmostAt(Vertex at) const;

  private:
    Size m_sheet;
    std::vector<Rect> m_pages;
    std::vector<ScenePiece> m_pieces;
};

// Whether the place lies inside the ring; either answer on its edge.
bool ringContains(const std::vector<Vertex>& ring, Vertex at);

}  // namespace matwright
