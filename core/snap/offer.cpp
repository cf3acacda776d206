// SPDX-License-Identifier: MIT
#include "core/snap/offer.h"

#include <utility>

namespace matwright::snapping {

EdgeLines movingEdges(const Rect& box, const SnapEdges& edges, Axis axis) {
    EdgeLines lines;
    if (lowMoves(edges, axis)) {
        lines.at[lines.count++] = along(box, axis).low;
    }
    if (highMoves(edges, axis)) {
        lines.at[lines.count++] = along(box, axis).high;
    }
    return lines;
}

void offerLine(std::vector<SnapCandidate>& out, Axis axis, Length from, Length to,
               const SnapSettings& settings, std::string why, int rank, Interval span) {
    const Length by = to - from;
    if (abs(by) <= settings.reach) {
        out.push_back({axis, by, std::move(why), rank, {{axis, to, span.low, span.high}}, {}});
    }
}

void offerTrimLines(std::vector<SnapCandidate>& out, const SnapBox& box, const SnapEdges& edges,
                    Axis axis, Length to, const SnapSettings& settings, const std::string& why,
                    int rank, Interval span) {
    for (const Length edge : movingEdges(box.trim, edges, axis)) {
        offerLine(out, axis, edge, to, settings, why, rank, span);
    }
    if (boxMoves(edges, axis)) {
        offerLine(out, axis, along(box.trim, axis).centreRoundedDown(), to, settings, why, rank,
                  span);
    }
}

}  // namespace matwright::snapping
