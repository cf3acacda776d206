// SPDX-License-Identifier: MIT
#include "app/canvas/drags/snapping.h"

#include <algorithm>

namespace matwright::app {

namespace {

constexpr double shortestReach = 5;  // view pixels
constexpr double longestReach = 10;
constexpr Length cornerBox = Length::inches(1);

bool sameGap(const SnapGap& a, const SnapGap& b) {
    return a.axis == b.axis && a.from == b.from && a.to == b.to;
}

}  // namespace

Snapping::Snapping(const DragHost& host, const Sketch& sketch, std::span<const PieceId> moving)
    : m_host(host),
      m_context(sketch, moving),
      m_settings(host.settings().snap),
      m_isOn(host.settings().snapOn) {
    m_settings.scale = host.settings().scale;
}

bool Snapping::isOn(const Pointer& now) const {
    return m_isOn && !now.has(Qt::AltModifier);
}

SnapResult Snapping::at(const SnapBox& box, const SnapEdges& edges, const Pointer& now) const {
    if (!isOn(now)) {
        return {};
    }
    SnapSettings settings = m_settings;
    const Viewport& viewport = m_host.viewport();
    settings.reach = std::clamp(settings.reach, viewport.toLength(shortestReach),
                                viewport.toLength(longestReach));
    return snap(m_context, box, edges, settings);
}

SnapResult Snapping::atCorner(Point corner, const Pointer& now) const {
    // Two stand-ins that lie to either side of the corner, so that left and right edges both count.
    const Point reach{cornerBox, cornerBox};
    const Rect after = Rect::spanning(corner, corner + reach);
    const Rect before = Rect::spanning(corner - reach, corner);
    SnapResult snap = at({after, after}, {true, false, true, false}, now);
    const SnapResult other = at({before, before}, {false, true, false, true}, now);
    const auto takeNearer = [](std::optional<SnapCandidate>& mine,
                               const std::optional<SnapCandidate>& theirs) {
        if (theirs && (!mine || abs(theirs->by) < abs(mine->by))) {
            mine = theirs;
        }
    };
    takeNearer(snap.horizontal, other.horizontal);
    takeNearer(snap.vertical, other.vertical);
    return snap;
}

std::vector<SnapGap> Snapping::gaps(const Rect& outermost, const SnapResult& snap) const {
    std::vector<SnapGap> gaps;
    const auto add = [&gaps](const std::vector<SnapGap>& more) {
        for (const SnapGap& gap : more) {
            const auto same = [&gap](const SnapGap& other) { return sameGap(gap, other); };
            if (gap.from < gap.to && std::ranges::none_of(gaps, same)) {
                gaps.push_back(gap);
            }
        }
    };
    for (const auto& candidate : {snap.horizontal, snap.vertical}) {
        if (candidate) {
            add(candidate->gaps);
        }
    }
    add(gapsAround(m_context, outermost));
    return gaps;
}

QString placeReadout(const Rect& bounds, const PageSetup& setup, Scale scale) {
    const std::vector<Rect> all = pages(setup);
    const std::size_t page = pageOf(all, bounds.left());
    const Point from = all[page].topLeft();
    const auto figure = [scale](Length length) {
        return QString::fromStdString(figureText(length, scale));
    };
    QString place = QCoreApplication::translate("Canvas", "left %1 · top %2")
                        .arg(figure(bounds.left() - from.x), figure(bounds.top() - from.y));
    if (all.size() == 1) {
        return place;
    }
    return (page > 0 ? QCoreApplication::translate("Canvas", "right page, %1")
                     : QCoreApplication::translate("Canvas", "left page, %1"))
        .arg(place);
}

QString sizeReadout(Size size, Scale scale) {
    return QString::fromStdString(sizeText(size, scale));
}

QString angleReadout(Angle angle) {
    return QString::fromStdString(turnText(angle));
}

}  // namespace matwright::app
