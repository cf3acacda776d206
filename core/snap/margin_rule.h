// SPDX-License-Identifier: MIT
#pragma once

#include "core/snap/snap.h"

namespace matwright {

// The box's outermost edge on the margin of the same side: "left margin".
class MarginRule final : public SnapRule {
  public:
    void addCandidates(const SnapContext& context, const SnapBox& box, const SnapEdges& edges,
                       const SnapSettings& settings,
                       std::vector<SnapCandidate>& out) const override;
};

}  // namespace matwright
