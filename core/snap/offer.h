// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>

#include "core/snap/axis.h"

namespace matwright::snapping {

// Between equal distances the lower rank wins: first what belongs to the page, then neighbours, and
// last what is almost always near.
enum Rank {
    pageEdgeRank,
    marginRank,
    pageCentreRank,
    gutterRank,
    matEdgeRank,
    neighbourEdgeRank,
    neighbourCentreRank,
    equalGapRank,
    thirdsRank,
    gridRank,
};

// The lines of a box along one axis that may snap: its edges, as far as they may move.
struct EdgeLines {
    std::array<Length, 2> at;
    std::size_t count = 0;
    const Length* begin() const { return at.data(); }
    const Length* end() const { return at.data() + count; }
};
EdgeLines movingEdges(const Rect& box, const SnapEdges& edges, Axis axis);

// Offers to bring the line at `from` onto `to`, if that is within reach; the guide spans `span`.
void offerLine(std::vector<SnapCandidate>& out, Axis axis, Length from, Length to,
               const SnapSettings& settings, std::string why, int rank, Interval span);

// offerLine for everything of the trim that may snap: the moving edges, and the centre (to the tick
// below) where the whole box moves.
void offerTrimLines(std::vector<SnapCandidate>& out, const SnapBox& box, const SnapEdges& edges,
                    Axis axis, Length to, const SnapSettings& settings, const std::string& why,
                    int rank, Interval span);

}  // namespace matwright::snapping
