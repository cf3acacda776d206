// SPDX-License-Identifier: MIT
#include "core/snap/mat_edge_rule.h"

#include "core/snap/index.h"
#include "core/snap/offer.h"
#include "core/snap/offer_nearest.h"

namespace matwright {

using namespace snapping;

void MatEdgeRule::addCandidates(const SnapContext& context, const SnapBox& box,
                                const SnapEdges& edges, const SnapSettings& settings,
                                std::vector<SnapCandidate>& out) const {
    const SnapContext::Index& index = context.index();
    const bool matted = box.outermost != box.trim;
    for (const Axis axis : bothAxes) {
        const AxisIndex& lines = index.along(axis);
        for (const Length edge : movingEdges(box.outermost, edges, axis)) {
            offerNearest(out, index, matted ? lines.outermostEdges : lines.matEdges, axis, edge,
                         across(box.outermost, axis), settings, "mat in line with", matEdgeRank);
        }
    }
}

}  // namespace matwright
