// SPDX-License-Identifier: MIT
#pragma once

#include "core/snap/snap.h"

namespace matwright {

// Only when the whole box moves along the axis, between outermost edges, and where gaps are
// positive: the box in the middle between the two neighbours that face it (to the tick below), or
// as far from its neighbour as that one is from the next beyond: "equal gaps of 1/2 in".
class EqualGapRule final : public SnapRule {
  public:
    void addCandidates(const SnapContext& context, const SnapBox& box, const SnapEdges& edges,
                       const SnapSettings& settings,
                       std::vector<SnapCandidate>& out) const override;
};

}  // namespace matwright
