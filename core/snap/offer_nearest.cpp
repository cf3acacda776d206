// SPDX-License-Identifier: MIT
#include "core/snap/offer_nearest.h"

#include "core/snap/offer.h"

namespace matwright::snapping {

void offerNearest(std::vector<SnapCandidate>& out, const SnapContext::Index& index,
                  const EdgeList& lines, Axis axis, Length from, Interval boxAcross,
                  const SnapSettings& settings, std::string_view words, int rank) {
    for (const auto& place : {lines.placeBefore(from), lines.placeFrom(from)}) {
        if (!place || abs(*place - from) > settings.reach) {
            continue;
        }
        const Edge& edge = lines.edgeAt(*place, boxAcross);
        offerLine(out, axis, from, *place, settings,
                  std::string(words) + " " + labelOf(index.neighbourOf(edge)), rank,
                  boxAcross.united(edge.across));
    }
}

}  // namespace matwright::snapping
