// SPDX-License-Identifier: MIT
#include "core/snap/neighbour_edge_rule.h"

#include "core/snap/index.h"
#include "core/snap/offer.h"
#include "core/snap/offer_nearest.h"

namespace matwright {

using namespace snapping;

void NeighbourEdgeRule::addCandidates(const SnapContext& context, const SnapBox& box,
                                      const SnapEdges& edges, const SnapSettings& settings,
                                      std::vector<SnapCandidate>& out) const {
    const SnapContext::Index& index = context.index();
    for (const Axis axis : bothAxes) {
        for (const Length edge : movingEdges(box.trim, edges, axis)) {
            offerNearest(out, index, index.along(axis).trimEdges, axis, edge,
                         across(box.trim, axis), settings, "in line with", neighbourEdgeRank);
        }
    }
}

}  // namespace matwright
