// SPDX-License-Identifier: MIT
#include "core/snap/grid_rule.h"

#include "core/snap/index.h"
#include "core/snap/offer.h"

namespace matwright {

using namespace snapping;

void GridRule::addCandidates(const SnapContext& context, const SnapBox& box, const SnapEdges& edges,
                             const SnapSettings& settings, std::vector<SnapCandidate>& out) const {
    if (!settings.gridStep.isPositive()) {
        return;
    }
    for (const Axis axis : bothAxes) {
        for (const Rect& page : context.index().pages) {
            const Interval side = along(page, axis);
            const Interval span = across(box.trim, axis).united(across(page, axis));
            for (const Length edge : movingEdges(box.trim, edges, axis)) {
                const Length line = side.low + (edge - side.low).roundedTo(settings.gridStep);
                if (side.contains(line)) {
                    offerLine(out, axis, edge, line, settings, "grid", gridRank, span);
                }
            }
        }
    }
}

}  // namespace matwright
