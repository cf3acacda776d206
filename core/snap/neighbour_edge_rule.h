// SPDX-License-Identifier: MIT
#pragma once

#include "core/snap/snap.h"

namespace matwright {

// A trim edge on a neighbour's trim edge: "in line with 2 · photo slot".
class NeighbourEdgeRule final : public SnapRule {
  public:
    void addCandidates(const SnapContext& context, const SnapBox& box, const SnapEdges& edges,
                       const SnapSettings& settings,
                       std::vector<SnapCandidate>& out) const override;
};

}  // namespace matwright
