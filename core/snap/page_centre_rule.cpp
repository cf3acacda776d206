// SPDX-License-Identifier: MIT
#include "core/snap/page_centre_rule.h"

#include "core/snap/index.h"
#include "core/snap/offer.h"

namespace matwright {

using namespace snapping;

void PageCentreRule::addCandidates(const SnapContext& context, const SnapBox& box,
                                   const SnapEdges& edges, const SnapSettings& settings,
                                   std::vector<SnapCandidate>& out) const {
    for (const Axis axis : bothAxes) {
        for (const Rect& page : context.index().pages) {
            const Length target = along(page, axis).centreRoundedDown();
            const Interval span = across(box.trim, axis).united(across(page, axis));
            offerTrimLines(out, box, edges, axis, target, settings, "page centre", pageCentreRank,
                           span);
        }
    }
}

}  // namespace matwright
