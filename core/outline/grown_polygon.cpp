// SPDX-License-Identifier: MIT
#include "core/outline/grown_polygon.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/outline/region.h"

namespace matwright {

namespace {

// A side's outward direction (length 1) and how far it moves that way.
struct MovedSide {
    double nx;
    double ny;
    double by;
};

double signedArea(const std::vector<Vertex>& corners) {
    double sum = 0;
    Vertex previous = corners.back();
    for (const Vertex& v : corners) {
        sum += previous.x * v.y - v.x * previous.y;
        previous = v;
    }
    return sum / 2;
}

std::vector<MovedSide> movedSides(const std::vector<Vertex>& corners, double border,
                                  double bottom) {
    const double turn = signedArea(corners) < 0 ? -1 : 1;
    std::vector<MovedSide> sides;
    sides.reserve(corners.size());
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Vertex a = corners[i];
        const Vertex b = corners[(i + 1) % corners.size()];
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        const double nx = turn * (b.y - a.y) / length;
        const double ny = turn * (a.x - b.x) / length;
        sides.push_back({nx, ny, border + (bottom - border) * std::max(0.0, ny)});
    }
    return sides;
}

// Adds where the two moved sides meet, or the two ends of a bevel.
void addCorner(std::vector<Vertex>& out, Vertex corner, const MovedSide& in, const MovedSide& next,
               double turn) {
    const double cross = in.nx * next.ny - in.ny * next.nx;
    const double dot = in.nx * next.nx + in.ny * next.ny;
    if (std::abs(cross) < 1e-7 && dot > 0) {
        // Straight on: the sides' lines meet nowhere or everywhere.
        out.push_back({corner.x + (in.nx * in.by + next.nx * next.by) / 2,
                       corner.y + (in.ny * in.by + next.ny * next.by) / 2});
        return;
    }
    const double dx = (in.by * next.ny - next.by * in.ny) / cross;
    const double dy = (next.by * in.nx - in.by * next.nx) / cross;
    const bool sticksOut = cross * turn > 0;
    if (sticksOut && !(std::hypot(dx, dy) <= longestMitre * std::max(in.by, next.by))) {
        out.push_back({corner.x + in.nx * in.by, corner.y + in.ny * in.by});
        out.push_back({corner.x + next.nx * next.by, corner.y + next.ny * next.by});
        return;
    }
    out.push_back({corner.x + dx, corner.y + dy});
}

bool isConvex(const std::vector<MovedSide>& sides, double turn) {
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const MovedSide& a = sides[i];
        const MovedSide& b = sides[(i + 1) % sides.size()];
        if ((a.nx * b.ny - a.ny * b.nx) * turn < 0) {
            return false;
        }
    }
    return true;
}

double cross(Vertex a, Vertex b, Vertex c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool boxesMeet(Vertex a, Vertex b, Vertex c, Vertex d) {
    return std::min(a.x, b.x) <= std::max(c.x, d.x) && std::min(c.x, d.x) <= std::max(a.x, b.x) &&
           std::min(a.y, b.y) <= std::max(c.y, d.y) && std::min(c.y, d.y) <= std::max(a.y, b.y);
}

// Touching counts.
bool sidesMeet(Vertex a, Vertex b, Vertex c, Vertex d) {
    return boxesMeet(a, b, c, d) && cross(a, b, c) * cross(a, b, d) <= 0 &&
           cross(c, d, a) * cross(c, d, b) <= 0;
}

bool meetsItself(const std::vector<Vertex>& corners) {
    const std::size_t n = corners.size();
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = i + 2; j < n; ++j) {
            const bool neighbours = i == 0 && j == n - 1;
            if (!neighbours &&
                sidesMeet(corners[i], corners[i + 1], corners[j], corners[(j + 1) % n])) {
                return true;
            }
        }
    }
    return false;
}

// Without corners that lie within a thousandth of a tick of the line between their neighbours.
std::vector<Vertex> withoutStraightOnes(const std::vector<Vertex>& corners) {
    std::vector<Vertex> out;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Vertex before = out.empty() ? corners.back() : out.back();
        const Vertex after = corners[(i + 1) % corners.size()];
        const double length = std::hypot(after.x - before.x, after.y - before.y);
        if (std::abs(cross(before, corners[i], after)) > 1e-3 * length) {
            out.push_back(corners[i]);
        }
    }
    return out;
}

// Growing closes narrow notches; then the mat is the polygon together with the strip that each side
// sweeps and the wedge at each corner that sticks out.
std::vector<Vertex> sweptOutline(const std::vector<Vertex>& corners,
                                 const std::vector<MovedSide>& sides, double turn) {
    const std::size_t n = corners.size();
    std::vector<Region> parts{{{{{corners}, {}}}}};
    const auto movedBy = [](Vertex v, const MovedSide& side) {
        return Vertex{v.x + side.nx * side.by, v.y + side.ny * side.by};
    };
    const auto add = [&](std::vector<Vertex> part) {
        parts.push_back({{{{std::move(part)}, {}}}});
    };
    for (std::size_t i = 0; i < n; ++i) {
        const MovedSide& side = sides[i];
        const MovedSide& next = sides[(i + 1) % n];
        const Vertex a = corners[i];
        const Vertex b = corners[(i + 1) % n];
        add({a, b, movedBy(b, side), movedBy(a, side)});
        if ((side.nx * next.ny - side.ny * next.nx) * turn > 0) {
            std::vector<Vertex> wedge{b, movedBy(b, side)};
            addCorner(wedge, b, side, next, turn);
            wedge.push_back(movedBy(b, next));
            add(std::move(wedge));
        }
    }
    // One outline; pockets that close up are not cut out of a mat.
    Region swept = united(parts);
    std::vector<Vertex> outline =
        std::move(std::ranges::max_element(swept.parts, {}, [](const PolygonWithHoles& part) {
                      return std::abs(signedArea(part.outer.corners));
                  })->outer.corners);
    if ((signedArea(outline) < 0) != (turn < 0)) {
        std::ranges::reverse(outline);
    }
    return withoutStraightOnes(outline);
}

}  // namespace

std::vector<Vertex> grownPolygon(const std::vector<Vertex>& corners, double border, double bottom) {
    const double turn = signedArea(corners) < 0 ? -1 : 1;
    const std::size_t n = corners.size();
    const std::vector<MovedSide> sides = movedSides(corners, border, bottom);
    std::vector<Vertex> out;
    std::vector<std::size_t> firsts;  // where each corner's points start in `out`
    for (std::size_t i = 0; i < n; ++i) {
        firsts.push_back(out.size());
        addCorner(out, corners[i], sides[(i + n - 1) % n], sides[i], turn);
    }
    if (isConvex(sides, turn)) {
        return out;
    }
    firsts.push_back(out.size());
    bool turnedRound = false;
    for (std::size_t i = 0; i < n; ++i) {
        const Vertex from = out[firsts[i + 1] - 1];
        const Vertex to = out[firsts[i + 1] % out.size()];
        // Along the side its direction is its outward one turned back by a quarter.
        const double along = (from.x - to.x) * sides[i].ny + (to.y - from.y) * sides[i].nx;
        turnedRound = turnedRound || along * turn < 0;
    }
    return turnedRound || meetsItself(out) ? sweptOutline(corners, sides, turn) : out;
}

}  // namespace matwright
