// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/measure/angle.h"
#include "core/measure/rect.h"

namespace matwright {

// A derived place on the page, in ticks as doubles. Error below 1 tick unless a header says more.
struct Vertex {
    double x = 0;
    double y = 0;
    friend bool operator==(const Vertex&, const Vertex&) = default;
};

inline Vertex vertexAt(Point p) {
    return {static_cast<double>(p.x.ticks()), static_cast<double>(p.y.ticks())};
}

// One step of a path: a straight line to `end`, or a cubic Bézier curve to it.
struct PathSegment {
    bool curved = false;
    Vertex control1;  // meaningful only when curved
    Vertex control2;
    Vertex end;
    friend bool operator==(const PathSegment&, const PathSegment&) = default;
};

// A single run of lines and cubic curves; closed paths return to `start` by themselves.
struct Path {
    Vertex start;
    std::vector<PathSegment> segments;
    bool closed = false;
    friend bool operator==(const Path&, const Path&) = default;

    void lineTo(Vertex to) { segments.push_back({false, {}, {}, to}); }
    void curveTo(Vertex c1, Vertex c2, Vertex to) { segments.push_back({true, c1, c2, to}); }
};

Path linePath(Vertex from, Vertex to);
Path rectPath(const Rect& rect);
// The box's four sides touched by an ellipse of four cubic curves; radial error below 0.03 % of the
// longer half axis (0.0003 x r, the usual quarter-circle constant).
Path ovalPath(const Rect& box);
// The radius is cut down to half the shorter side.
Path roundedRectPath(const Rect& box, Length radius);
Path polygonPath(const std::vector<Vertex>& corners);

// The path turned clockwise about a centre.
Path turned(Path path, Angle angle, Vertex centre);
Path moved(Path path, Vertex by);

// The path as corner points, curves replaced by chords that stray at most `tolerance` (> 0) from
// them. A closed path does not repeat its first point.
std::vector<Vertex> flattened(const Path& path, Length tolerance);

// The smallest upright box around the path (its curves, not their control points), rounded outwards
// to ticks.
Rect boundsOf(const Path& path);

}  // namespace matwright
