// SPDX-License-Identifier: MIT
#include "core/snap/equal_gap_rule.h"

#include "core/snap/index.h"
#include "core/snap/offer.h"

namespace matwright {

using namespace snapping;

namespace {

// What the box sees along one axis.
struct View {
    const SnapContext::Index& index;
    Axis axis;
    Interval own;
    Interval boxAcross;
    const SnapSettings& settings;

    Interval band() const { return boxAcross.expanded(settings.reach); }
    const Edge* highBefore(Length at) const {
        return index.along(axis).outermostHighs.lastIn(-Length::coordinateLimit(), at, band());
    }
    const Edge* lowAfter(Length at) const {
        return index.along(axis).outermostLows.firstIn(at, Length::coordinateLimit(), band());
    }
    Interval extentOf(const Edge& edge) const {
        return along(index.neighbourOf(edge).outermost, axis);
    }
    SnapGap gap(const Edge& edge, Interval other, Length from, Length to) const {
        return {axis, middleOfShared(edge.across, other), from, to};
    }
};

void offer(std::vector<SnapCandidate>& out, const View& view, Length by, Length size,
           std::vector<SnapGap> gaps) {
    if (abs(by) <= view.settings.reach && size.isPositive()) {
        out.push_back({view.axis,
                       by,
                       "equal gaps of " + lengthText(size, view.settings.scale),
                       equalGapRank,
                       {},
                       std::move(gaps)});
    }
}

void offerBetween(std::vector<SnapCandidate>& out, const View& view, const Edge& before,
                  const Edge& after) {
    const Length size = ((after.at - before.at) - view.own.length()).halfRoundedDown();
    const Length low = before.at + size;
    offer(out, view, low - view.own.low, size,
          {view.gap(before, view.boxAcross, before.at, low),
           view.gap(after, view.boxAcross, low + view.own.length(), after.at)});
}

// The row goes on behind `nearest`, whose far neighbour is the next one before it.
void offerAfterRow(std::vector<SnapCandidate>& out, const View& view, const Edge& nearest) {
    const Length nearestLow = view.extentOf(nearest).low;
    if (const Edge* next = view.highBefore(nearestLow)) {
        const Length size = nearestLow - next->at;
        offer(out, view, nearest.at + size - view.own.low, size,
              {view.gap(*next, nearest.across, next->at, nearestLow),
               view.gap(nearest, view.boxAcross, nearest.at, nearest.at + size)});
    }
}

void offerBeforeRow(std::vector<SnapCandidate>& out, const View& view, const Edge& nearest) {
    const Length nearestHigh = view.extentOf(nearest).high;
    if (const Edge* next = view.lowAfter(nearestHigh)) {
        const Length size = next->at - nearestHigh;
        offer(out, view, nearest.at - size - view.own.high, size,
              {view.gap(*next, nearest.across, nearestHigh, next->at),
               view.gap(nearest, view.boxAcross, nearest.at - size, nearest.at)});
    }
}

void offerAlong(std::vector<SnapCandidate>& out, const View& view) {
    // A neighbour that the box overlaps by less than it may move still counts as beside it.
    const Edge* before = view.highBefore(view.own.low + view.settings.reach);
    const Edge* after = view.lowAfter(view.own.high - view.settings.reach);
    if (before && after) {
        offerBetween(out, view, *before, *after);
    }
    if (before) {
        offerAfterRow(out, view, *before);
    }
    if (after) {
        offerBeforeRow(out, view, *after);
    }
}

}  // namespace

void EqualGapRule::addCandidates(const SnapContext& context, const SnapBox& box,
                                 const SnapEdges& edges, const SnapSettings& settings,
                                 std::vector<SnapCandidate>& out) const {
    if (settings.reach.isNegative()) {
        return;
    }
    for (const Axis axis : bothAxes) {
        if (boxMoves(edges, axis)) {
            offerAlong(out, {context.index(), axis, along(box.outermost, axis),
                             across(box.outermost, axis), settings});
        }
    }
}

}  // namespace matwright
