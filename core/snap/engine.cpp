// SPDX-License-Identifier: MIT
#include <algorithm>
#include <string_view>
#include <tuple>
#include <utility>

#include "core/snap/axis.h"
#include "core/snap/equal_gap_rule.h"
#include "core/snap/grid_rule.h"
#include "core/snap/gutter_rule.h"
#include "core/snap/margin_rule.h"
#include "core/snap/mat_edge_rule.h"
#include "core/snap/neighbour_centre_rule.h"
#include "core/snap/neighbour_edge_rule.h"
#include "core/snap/page_centre_rule.h"
#include "core/snap/page_edge_rule.h"
#include "core/snap/thirds_rule.h"

namespace matwright {

using namespace snapping;

namespace {

using Rules = std::vector<std::unique_ptr<SnapRule>>;
using Candidates = std::vector<SnapCandidate>;

template <typename Rule>
void addIf(Rules& rules, bool on) {
    if (on) {
        rules.push_back(std::make_unique<Rule>());
    }
}

Candidates candidatesOf(const Rules& rules, const SnapContext& context, const SnapBox& box,
                        const SnapEdges& edges, const SnapSettings& settings) {
    Candidates candidates;
    for (const auto& rule : rules) {
        rule->addCandidates(context, box, edges, settings, candidates);
    }
    return candidates;
}

Interval moved(Interval interval, const SnapEdges& edges, Axis axis, Length by) {
    return {interval.low + (lowMoves(edges, axis) ? by : Length()),
            interval.high + (highMoves(edges, axis) ? by : Length())};
}

Rect moved(const Rect& rect, const SnapEdges& edges, Point by) {
    return {moved(rect.x, edges, Axis::Horizontal, by.x),
            moved(rect.y, edges, Axis::Vertical, by.y)};
}

bool leavesASize(const SnapBox& box, const SnapEdges& edges, const SnapCandidate& candidate) {
    return boxMoves(edges, candidate.axis) ||
           moved(along(box.trim, candidate.axis), edges, candidate.axis, candidate.by)
               .length()
               .isPositive();
}

auto preference(const SnapCandidate& candidate) {
    return std::tuple(abs(candidate.by), candidate.rank, candidate.by,
                      std::string_view(candidate.why));
}

std::optional<SnapCandidate> picked(const Candidates& candidates, Axis axis, const SnapBox& box,
                                    const SnapEdges& edges) {
    const SnapCandidate* best = nullptr;
    for (const SnapCandidate& candidate : candidates) {
        if (candidate.axis == axis && leavesASize(box, edges, candidate) &&
            (!best || preference(candidate) < preference(*best))) {
            best = &candidate;
        }
    }
    return best ? std::optional(*best) : std::nullopt;
}

// One guide a line: those on the same line grow together.
void addGuide(std::vector<SnapGuide>& guides, const SnapGuide& guide) {
    const auto onSameLine = std::ranges::find(guides, guide.at, &SnapGuide::at);
    if (onSameLine == guides.end()) {
        guides.push_back(guide);
        return;
    }
    onSameLine->from = std::min(onSameLine->from, guide.from);
    onSameLine->to = std::max(onSameLine->to, guide.to);
}

void addMarks(SnapCandidate& result, const SnapCandidate& from) {
    for (const SnapGuide& guide : from.guides) {
        addGuide(result.guides, guide);
    }
    for (const SnapGap& gap : from.gaps) {
        if (std::ranges::find(result.gaps, gap) == result.gaps.end()) {
            result.gaps.push_back(gap);
        }
    }
}

// Takes the marks of everything that holds where the box has landed; the picked one's own come from
// there too, because the other axis may have moved the box along the guide.
void markWhatHolds(std::optional<SnapCandidate>& result, const Candidates& landed, Axis axis) {
    if (!result) {
        return;
    }
    const auto holds = [&](const SnapCandidate& c) { return c.axis == axis && c.by.isZero(); };
    if (std::ranges::any_of(landed, [&](const SnapCandidate& c) {
            return holds(c) && c.rank == result->rank && c.why == result->why;
        })) {
        result->guides.clear();
        result->gaps.clear();
    }
    for (const SnapCandidate& candidate : landed) {
        if (holds(candidate)) {
            addMarks(*result, candidate);
        }
    }
}

}  // namespace

std::vector<std::unique_ptr<SnapRule>> snapRules(const SnapSettings& settings) {
    Rules rules;
    addIf<PageEdgeRule>(rules, settings.pageEdges);
    addIf<MarginRule>(rules, settings.margins);
    addIf<PageCentreRule>(rules, settings.pageCentres);
    addIf<GutterRule>(rules, settings.gutter);
    addIf<MatEdgeRule>(rules, settings.matEdges);
    addIf<NeighbourEdgeRule>(rules, settings.neighbourEdges);
    addIf<NeighbourCentreRule>(rules, settings.neighbourCentres);
    addIf<EqualGapRule>(rules, settings.equalGaps);
    addIf<ThirdsRule>(rules, settings.thirds);
    addIf<GridRule>(rules, settings.grid);
    return rules;
}

SnapResult snap(const SnapContext& context, const SnapBox& box, const SnapEdges& edges,
                const SnapSettings& settings) {
    const Rules rules = snapRules(settings);
    const Candidates candidates = candidatesOf(rules, context, box, edges, settings);
    SnapResult result{picked(candidates, Axis::Horizontal, box, edges),
                      picked(candidates, Axis::Vertical, box, edges)};
    if (!result.horizontal && !result.vertical) {
        return result;
    }
    const SnapBox there{moved(box.trim, edges, result.by()),
                        moved(box.outermost, edges, result.by())};
    const Candidates landed = candidatesOf(rules, context, there, edges, settings);
    markWhatHolds(result.horizontal, landed, Axis::Horizontal);
    markWhatHolds(result.vertical, landed, Axis::Vertical);
    return result;
}

}  // namespace matwright
