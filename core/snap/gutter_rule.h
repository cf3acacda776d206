// SPDX-License-Identifier: MIT
#pragma once

#include "core/snap/snap.h"

namespace matwright {

// An outermost edge a gutter away from the outermost edge of a neighbour that faces it: "1/4 in
// gutter". Nothing where the page has no gutter.
class GutterRule final : public SnapRule {
  public:
    void addCandidates(const SnapContext& context, const SnapBox& box, const SnapEdges& edges,
                       const SnapSettings& settings,
                       std::vector<SnapCandidate>& out) const override;
};

}  // namespace matwright
