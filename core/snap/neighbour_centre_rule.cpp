// SPDX-License-Identifier: MIT
#include "core/snap/neighbour_centre_rule.h"

#include "core/snap/index.h"
#include "core/snap/offer.h"
#include "core/snap/offer_nearest.h"

namespace matwright {

using namespace snapping;

void NeighbourCentreRule::addCandidates(const SnapContext& context, const SnapBox& box,
                                        const SnapEdges& edges, const SnapSettings& settings,
                                        std::vector<SnapCandidate>& out) const {
    const SnapContext::Index& index = context.index();
    for (const Axis axis : bothAxes) {
        if (boxMoves(edges, axis)) {
            offerNearest(out, index, index.along(axis).trimCentres, axis,
                         along(box.trim, axis).centreRoundedDown(), across(box.trim, axis),
                         settings, "centred on", neighbourCentreRank);
        }
    }
}

}  // namespace matwright
