// SPDX-License-Identifier: MIT
#include "core/snap/gutter_rule.h"

#include "core/snap/index.h"
#include "core/snap/offer.h"

namespace matwright {

using namespace snapping;

namespace {

struct Side {
    bool boxBehind;  // the box lies to the right of (or below) the neighbour
    Length edge;     // the box's edge that looks at the neighbour
};

void offerGutter(std::vector<SnapCandidate>& out, const Edge* neighbour, Axis axis, Side side,
                 Interval boxAcross, Length gutter, const SnapSettings& settings) {
    if (!neighbour) {
        return;
    }
    const Length to = neighbour->at + (side.boxBehind ? gutter : -gutter);
    const Length low = side.boxBehind ? neighbour->at : to;
    const Length at = middleOfShared(boxAcross, neighbour->across);
    out.push_back({axis,
                   to - side.edge,
                   lengthText(gutter, settings.scale) + " gutter",
                   gutterRank,
                   {{axis, to, boxAcross.united(neighbour->across).low,
                     boxAcross.united(neighbour->across).high}},
                   {{axis, at, low, low + gutter}}});
}

// The nearest neighbours' edges on both sides of where the box's edge would have its gutter now.
void offerSide(std::vector<SnapCandidate>& out, const FacingEdges& facing, Axis axis, Side side,
               Interval boxAcross, Length gutter, const SnapSettings& settings) {
    const Interval band = boxAcross.expanded(settings.reach);
    const Length now = side.edge + (side.boxBehind ? -gutter : gutter);
    offerGutter(out, facing.firstIn(now, now + settings.reach, band), axis, side, boxAcross, gutter,
                settings);
    offerGutter(out, facing.lastIn(now - settings.reach, now - Length::fromTicks(1), band), axis,
                side, boxAcross, gutter, settings);
}

}  // namespace

void GutterRule::addCandidates(const SnapContext& context, const SnapBox& box,
                               const SnapEdges& edges, const SnapSettings& settings,
                               std::vector<SnapCandidate>& out) const {
    const SnapContext::Index& index = context.index();
    const Length gutter = index.page.gutter;
    if (!gutter.isPositive() || settings.reach.isNegative()) {
        return;
    }
    for (const Axis axis : bothAxes) {
        const Interval own = along(box.outermost, axis);
        const Interval boxAcross = across(box.outermost, axis);
        if (lowMoves(edges, axis)) {
            offerSide(out, index.along(axis).outermostHighs, axis, {true, own.low}, boxAcross,
                      gutter, settings);
        }
        if (highMoves(edges, axis)) {
            offerSide(out, index.along(axis).outermostLows, axis, {false, own.high}, boxAcross,
                      gutter, settings);
        }
    }
}

}  // namespace matwright
