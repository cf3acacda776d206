// SPDX-License-Identifier: MIT
#include "core/outline/grown_polygon.h"

#include <algorithm>
#include <cmath>

namespace matwright {

namespace {

constexpr double mitreLimit = 4;

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
    if (sticksOut && !(std::hypot(dx, dy) <= mitreLimit * std::max(in.by, next.by))) {
        out.push_back({corner.x + in.nx * in.by, corner.y + in.ny * in.by});
        out.push_back({corner.x + next.nx * next.by, corner.y + next.ny * next.by});
        return;
    }
    out.push_back({corner.x + dx, corner.y + dy});
}

}  // namespace

std::vector<Vertex> grownPolygon(const std::vector<Vertex>& corners, double border, double bottom) {
    const double turn = signedArea(corners) < 0 ? -1 : 1;
    const std::vector<MovedSide> sides = movedSides(corners, border, bottom);
    std::vector<Vertex> out;
    out.reserve(corners.size());
    for (std::size_t i = 0; i < corners.size(); ++i) {
        addCorner(out, corners[i], sides[(i + sides.size() - 1) % sides.size()], sides[i], turn);
    }
    return out;
}

}  // namespace matwright
