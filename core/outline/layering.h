// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <vector>

#include "core/outline/region.h"

namespace matwright {

// What lies on what in one sketch: outlines worked out once, boxes in an R-tree, for many questions
// about the same sketch. A value of its own: the sketch may change or go. Ids that do not exist are
// answered with nothing.
class Layering {
  public:
    explicit Layering(const Sketch& sketch);
    ~Layering();
    Layering(Layering&&) noexcept;
    Layering& operator=(Layering&&) noexcept;

    // The pieces above this one, bottom to top, whose outermost box meets the box around this
    // piece's outermost and print outlines (touching counts).
    std::vector<PieceId> nearAbove(PieceId id) const;
    // The box around the piece's outermost outline, mitres of polygon mats included.
    Rect bounds(PieceId id) const;
    // As flat areas; empty where there is no such piece.
    const Region& trimRegion(PieceId id) const;
    const Region& outermostRegion(PieceId id) const;

    // See region.h.
    Region coverAbove(PieceId id) const;
    double hiddenShare(PieceId id) const;
    std::vector<Overlap> overlaps() const;

    struct Index;

  private:
    std::unique_ptr<Index> m_index;
};

}  // namespace matwright
