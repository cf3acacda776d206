// SPDX-License-Identifier: MIT
#include "core/snap/thirds_rule.h"

#include "core/snap/index.h"
#include "core/snap/offer.h"

namespace matwright {

using namespace snapping;

void ThirdsRule::addCandidates(const SnapContext& context, const SnapBox& box,
                               const SnapEdges& edges, const SnapSettings& settings,
                               std::vector<SnapCandidate>& out) const {
    for (const Axis axis : bothAxes) {
        for (const Rect& page : context.index().pages) {
            const Interval side = along(page, axis);
            const Interval span = across(box.trim, axis).united(across(page, axis));
            for (const std::int64_t third : {1, 2}) {
                offerTrimLines(out, box, edges, axis,
                               side.low + side.length().scaledRounded(third, 3), settings, "third",
                               thirdsRank, span);
            }
        }
    }
}

}  // namespace matwright
