// SPDX-License-Identifier: MIT
#include "core/template/occupancy.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace matwright {

namespace {

double asDouble(Length length) {
    return static_cast<double>(length.ticks());
}

Rect boxAround(Vertex a, Vertex b) {
    const auto down = [](double v) { return Length::fromTicks(std::llround(std::floor(v))); };
    const auto up = [](double v) { return Length::fromTicks(std::llround(std::ceil(v))); };
    return {{down(std::min(a.x, b.x)), up(std::max(a.x, b.x))},
            {down(std::min(a.y, b.y)), up(std::max(a.y, b.y))}};
}

// Cuts [low, high], the part of a line still inside, at one side of a box; `in` and `out` are where
// the line passes the side's two limits.
bool clip(double start, double step, double lowLimit, double highLimit, double& low, double& high) {
    if (step == 0) {
        return lowLimit <= start && start <= highLimit;
    }
    const double a = (lowLimit - start) / step;
    const double b = (highLimit - start) / step;
    low = std::max(low, std::min(a, b));
    high = std::min(high, std::max(a, b));
    return low <= high;
}

double side(Vertex from, Vertex to, Vertex at) {
    return (to.x - from.x) * (at.y - from.y) - (to.y - from.y) * (at.x - from.x);
}

}  // namespace

bool lineMeetsBox(Vertex from, Vertex to, const Rect& box) {
    double low = 0;
    double high = 1;
    return clip(from.x, to.x - from.x, asDouble(box.left()), asDouble(box.right()), low, high) &&
           clip(from.y, to.y - from.y, asDouble(box.top()), asDouble(box.bottom()), low, high);
}

bool linesMeet(Vertex a1, Vertex a2, Vertex b1, Vertex b2) {
    if (!boxAround(a1, a2).intersects(boxAround(b1, b2))) {
        return false;
    }
    return side(a1, a2, b1) * side(a1, a2, b2) <= 0 && side(b1, b2, a1) * side(b1, b2, a2) <= 0;
}

Occupancy::Occupancy(Size sheet, std::vector<Rect> parts)
    : m_sheet(Rect::at({}, sheet)), m_parts(std::move(parts)), m_index(sheet) {}

void Occupancy::addBox(const Rect& box, Kind kind) {
    m_index.insert(box, static_cast<std::uint32_t>(m_things.size()));
    m_things.push_back({kind, false, box, {}, {}});
}

void Occupancy::addLine(Vertex from, Vertex to, Kind kind) {
    const Rect box = boxAround(from, to);
    m_index.insert(box, static_cast<std::uint32_t>(m_things.size()));
    m_things.push_back({kind, true, box, from, to});
}

void Occupancy::addRing(const std::vector<Vertex>& ring, Kind kind) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
        addLine(ring[i], ring[(i + 1) % ring.size()], kind);
    }
}

bool Occupancy::meets(const Thing& thing, const Rect& box) const {
    return thing.isLine ? thing.box.intersects(box) && lineMeetsBox(thing.from, thing.to, box)
                        : thing.box.interiorIntersects(box);
}

bool Occupancy::isFree(const Rect& box, unsigned kinds) const {
    return m_sheet.contains(box) && !m_index.any(box, [&](std::uint32_t number) {
        const Thing& thing = m_things[number];
        return (thing.kind & kinds) != 0 && meets(thing, box);
    });
}

bool Occupancy::isFreeOnOnePart(const Rect& box, unsigned kinds) const {
    const bool onOne = m_parts.empty() || std::ranges::any_of(m_parts, [&](const Rect& part) {
                           return part.contains(box);
                       });
    return onOne && isFree(box, kinds);
}

bool Occupancy::isFree(Vertex from, Vertex to, unsigned kinds) const {
    return !m_index.any(boxAround(from, to), [&](std::uint32_t number) {
        const Thing& thing = m_things[number];
        return (thing.kind & kinds) != 0 &&
               (thing.isLine ? linesMeet(from, to, thing.from, thing.to)
                             : lineMeetsBox(from, to, thing.box));
    });
}

bool Occupancy::hasLineAlong(const Rect& box, bool level, Length longest) const {
    return m_index.any(box, [&](std::uint32_t number) {
        const Thing& thing = m_things[number];
        const Interval along = level ? thing.box.x : thing.box.y;
        const Interval breadth = level ? thing.box.y : thing.box.x;
        const Interval within = level ? box.x : box.y;
        return thing.isLine && thing.kind != Mark && meets(thing, box) &&
               breadth.length() <= (level ? box.y : box.x).length() &&
               std::min(along.high, within.high) - std::max(along.low, within.low) > longest;
    });
}

int Occupancy::crowd(const Rect& box, unsigned kinds) const {
    int found = 0;
    m_index.any(box, [&](std::uint32_t number) {
        const Thing& thing = m_things[number];
        found += (thing.kind & kinds) != 0 && meets(thing, box) ? 1 : 0;
        return false;
    });
    return found;
}

}  // namespace matwright
