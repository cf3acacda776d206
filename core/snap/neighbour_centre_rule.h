// SPDX-License-Identifier: MIT
#pragma once

#include "core/snap/snap.h"

namespace matwright {

// The trim centre on a neighbour's, both to the tick below; only when the whole box moves along the
// axis: "centred on 2 · photo slot".
class NeighbourCentreRule final : public SnapRule {
  public:
    void addCandidates(const SnapContext& context, const SnapBox& box, const SnapEdges& edges,
                       const SnapSettings& settings,
                       std::vector<SnapCandidate>& out) const override;
};

}  // namespace matwright
