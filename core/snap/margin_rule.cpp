// SPDX-License-Identifier: MIT
#include "core/snap/margin_rule.h"

#include "core/snap/index.h"
#include "core/snap/offer.h"

namespace matwright {

using namespace snapping;

void MarginRule::addCandidates(const SnapContext& context, const SnapBox& box,
                               const SnapEdges& edges, const SnapSettings& settings,
                               std::vector<SnapCandidate>& out) const {
    for (const Axis axis : bothAxes) {
        const bool horizontal = axis == Axis::Horizontal;
        const Interval own = along(box.outermost, axis);
        for (const Rect& area : context.index().insideMargins) {
            const Interval span = across(box.outermost, axis).united(across(area, axis));
            if (lowMoves(edges, axis)) {
                offerLine(out, axis, own.low, along(area, axis).low, settings,
                          horizontal ? "left margin" : "top margin", marginRank, span);
            }
            if (highMoves(edges, axis)) {
                offerLine(out, axis, own.high, along(area, axis).high, settings,
                          horizontal ? "right margin" : "bottom margin", marginRank, span);
            }
        }
    }
}

}  // namespace matwright
