// SPDX-License-Identifier: MIT
#include "core/outline/region.h"

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/multi_polygon.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#include <optional>
#include <utility>

namespace matwright {

namespace {

namespace bg = boost::geometry;
using BoostPoint = bg::model::d2::point_xy<double>;
using BoostPolygon = bg::model::polygon<BoostPoint>;  // clockwise, first point repeated
using BoostRing = BoostPolygon::ring_type;
using BoostRegion = bg::model::multi_polygon<BoostPolygon>;

BoostRing boostRing(const Ring& ring) {
    BoostRing out;
    out.reserve(ring.corners.size() + 1);
    for (const Vertex& v : ring.corners) {
        out.emplace_back(v.x, v.y);
    }
    if (!out.empty()) {
        out.push_back(out.front());
    }
    return out;
}

BoostRegion boostRegion(const Region& region) {
    BoostRegion out;
    for (const PolygonWithHoles& part : region.parts) {
        BoostPolygon polygon;
        polygon.outer() = boostRing(part.outer);
        for (const Ring& hole : part.holes) {
            polygon.inners().push_back(boostRing(hole));
        }
        out.push_back(std::move(polygon));
    }
    bg::correct(out);
    return out;
}

Ring ringOf(const BoostRing& ring) {
    Ring out;
    out.corners.reserve(ring.size());
    for (const BoostPoint& p : ring) {
        out.corners.push_back({p.x(), p.y()});
    }
    if (out.corners.size() > 1) {
        out.corners.pop_back();
    }
    return out;
}

Region regionOf(const BoostRegion& region) {
    Region out;
    for (const BoostPolygon& polygon : region) {
        PolygonWithHoles part{ringOf(polygon.outer()), {}};
        for (const BoostRing& inner : polygon.inners()) {
            part.holes.push_back(ringOf(inner));
        }
        if (part.outer.corners.size() >= 3) {
            out.parts.push_back(std::move(part));
        }
    }
    return out;
}

// The seam where the library's exceptions end: it refuses outlines that cross themselves, and then
// `otherwise` is the answer.
template <typename Operation>
Region operated(const Region& a, const Region& b, Region otherwise, const Operation& operation) {
    try {
        BoostRegion out;
        operation(boostRegion(a), boostRegion(b), out);
        return regionOf(out);
    } catch (const bg::exception&) {
        return otherwise;
    }
}

Region unitedPair(const Region& a, const Region& b) {
    if (a.isEmpty() || b.isEmpty()) {
        return a.isEmpty() ? b : a;
    }
    Region sideBySide = a;
    sideBySide.parts.insert(sideBySide.parts.end(), b.parts.begin(), b.parts.end());
    return operated(a, b, std::move(sideBySide),
                    [](const auto& p, const auto& q, auto& out) { bg::union_(p, q, out); });
}

}  // namespace

Region regionOf(const Path& closedPath) {
    Region region;
    std::vector<Vertex> corners = flattened(closedPath, chordTolerance);
    if (corners.size() >= 3) {
        region.parts.push_back({Ring{std::move(corners)}, {}});
    }
    return region;
}

Region united(const std::vector<Region>& regions) {
    // Neighbours first: many small unions are quicker than one that grows with every step.
    std::vector<Region> level = regions;
    while (level.size() > 1) {
        std::vector<Region> next;
        next.reserve(level.size() / 2 + 1);
        for (std::size_t i = 0; i + 1 < level.size(); i += 2) {
            next.push_back(unitedPair(level[i], level[i + 1]));
        }
        if (level.size() % 2 == 1) {
            next.push_back(std::move(level.back()));
        }
        level = std::move(next);
    }
    return level.empty() ? Region{} : std::move(level.front());
}

Region intersected(const Region& a, const Region& b) {
    if (a.isEmpty() || b.isEmpty()) {
        return {};
    }
    return operated(a, b, {},
                    [](const auto& p, const auto& q, auto& out) { bg::intersection(p, q, out); });
}

Region subtracted(const Region& a, const Region& b) {
    if (a.isEmpty() || b.isEmpty()) {
        return a;
    }
    return operated(a, b, a,
                    [](const auto& p, const auto& q, auto& out) { bg::difference(p, q, out); });
}

Rect boundsOf(const Region& region) {
    std::optional<Rect> bounds;
    for (const PolygonWithHoles& part : region.parts) {
        const Rect own = boundsOf(polygonPath(part.outer.corners));
        bounds = bounds ? Rect{bounds->x.united(own.x), bounds->y.united(own.y)} : own;
    }
    return bounds.value_or(Rect{});
}

double areaSquareInches(const Region& region) {
    constexpr double perInch = Length::ticksPerInch;
    return bg::area(boostRegion(region)) / (perInch * perInch);
}

}  // namespace matwright
