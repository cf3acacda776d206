// SPDX-License-Identifier: MIT
#include "core/snap/page_edge_rule.h"

#include "core/snap/index.h"
#include "core/snap/offer.h"

namespace matwright {

using namespace snapping;

namespace {

// The edges at the fold are the right one of the left page and the left one of the right page.
std::string wordFor(const SnapContext::Index& index, Axis axis, std::size_t page, bool low) {
    const bool atFold = axis == Axis::Horizontal && index.pages.size() == 2 && low == (page == 1);
    return atFold ? "fold edge" : "page edge";
}

}  // namespace

void PageEdgeRule::addCandidates(const SnapContext& context, const SnapBox& box,
                                 const SnapEdges& edges, const SnapSettings& settings,
                                 std::vector<SnapCandidate>& out) const {
    const SnapContext::Index& index = context.index();
    for (const Axis axis : bothAxes) {
        const Interval own = along(box.outermost, axis);
        for (std::size_t i = 0; i < index.pages.size(); ++i) {
            const Interval page = along(index.pages[i], axis);
            const Interval span = across(box.outermost, axis).united(across(index.pages[i], axis));
            if (lowMoves(edges, axis)) {
                offerLine(out, axis, own.low, page.low, settings, wordFor(index, axis, i, true),
                          pageEdgeRank, span);
            }
            if (highMoves(edges, axis)) {
                offerLine(out, axis, own.high, page.high, settings, wordFor(index, axis, i, false),
                          pageEdgeRank, span);
            }
        }
    }
}

}  // namespace matwright
