// SPDX-License-Identifier: MIT
#include <algorithm>

#include "core/snap/index.h"

namespace matwright {

using namespace snapping;

namespace {

constexpr Length limit = Length::coordinateLimit();
constexpr Length tick = Length::fromTicks(1);

// Neighbours that only touch the band's ends do not stand beside the box.
Interval interiorOf(Interval band) {
    return band.length() > 2 * tick ? band.expanded(-tick) : band;
}

struct Stop {
    Length at;
    Length shownAt;
};

// Keeps the stop that is nearer to the box; `sign` is 1 where larger places are nearer.
void keepNearer(std::optional<Stop>& best, Stop stop, int sign) {
    if (!best || (stop.at - best->at) * sign > Length()) {
        best = stop;
    }
}

std::optional<Stop> neighbourStop(const Edge* edge, Interval boxAcross) {
    return edge ? std::optional(Stop{edge->at, middleOfShared(edge->across, boxAcross)})
                : std::nullopt;
}

std::optional<Stop> stopBefore(const SnapContext::Index& index, Axis axis, const Rect& box) {
    const Interval boxAcross = across(box, axis);
    const Length edge = along(box, axis).low;
    auto best = neighbourStop(
        index.along(axis).outermostHighs.lastIn(-limit, edge, interiorOf(boxAcross)), boxAcross);
    for (const Rect& page : index.pages) {
        if (along(page, axis).low <= edge) {
            keepNearer(best, {along(page, axis).low, boxAcross.centreRoundedDown()}, 1);
        }
    }
    return best;
}

std::optional<Stop> stopAfter(const SnapContext::Index& index, Axis axis, const Rect& box) {
    const Interval boxAcross = across(box, axis);
    const Length edge = along(box, axis).high;
    auto best = neighbourStop(
        index.along(axis).outermostLows.firstIn(edge, limit, interiorOf(boxAcross)), boxAcross);
    for (const Rect& page : index.pages) {
        if (along(page, axis).high >= edge) {
            keepNearer(best, {along(page, axis).high, boxAcross.centreRoundedDown()}, -1);
        }
    }
    return best;
}

}  // namespace

std::vector<SnapGap> gapsAround(const SnapContext& context, const Rect& box) {
    std::vector<SnapGap> gaps;
    for (const Axis axis : bothAxes) {
        const Interval own = along(box, axis);
        if (const auto stop = stopBefore(context.index(), axis, box)) {
            gaps.push_back({axis, stop->shownAt, stop->at, own.low});
        }
        if (const auto stop = stopAfter(context.index(), axis, box)) {
            gaps.push_back({axis, stop->shownAt, own.high, stop->at});
        }
    }
    return gaps;
}

}  // namespace matwright
