// SPDX-License-Identifier: MIT
#include "core/outline/path.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <initializer_list>
#include <utility>

#include "core/measure/ticks.h"

namespace matwright {

namespace {

// Where the control points of a quarter circle of radius 1 lie; the curve then strays from the
// circle by at most 0.00027.
constexpr double quarterCircle = 0.5522847498307936;

Vertex turnedVertex(Vertex v, double cosine, double sine, Vertex centre) {
    const double dx = v.x - centre.x;
    const double dy = v.y - centre.y;
    return {centre.x + dx * cosine - dy * sine, centre.y + dx * sine + dy * cosine};
}

template <typename Change>
Path changed(Path path, const Change& change) {
    path.start = change(path.start);
    for (PathSegment& segment : path.segments) {
        if (segment.curved) {
            segment.control1 = change(segment.control1);
            segment.control2 = change(segment.control2);
        }
        segment.end = change(segment.end);
    }
    return path;
}

Vertex cubicAt(Vertex from, const PathSegment& s, double t) {
    const double u = 1 - t;
    const double a = u * u * u;
    const double b = 3 * u * u * t;
    const double c = 3 * u * t * t;
    const double d = t * t * t;
    return {a * from.x + b * s.control1.x + c * s.control2.x + d * s.end.x,
            a * from.y + b * s.control1.y + c * s.control2.y + d * s.end.y};
}

// A cubic's second derivative is at most 6 times its largest second difference of control points,
// and a chord over 1/n of it strays at most 1/(8 n^2) of that.
int chordCount(Vertex from, const PathSegment& s, double tolerance) {
    const auto bend = [](Vertex a, Vertex b, Vertex c) {
        return std::hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y);
    };
    const double most =
        std::max(bend(from, s.control1, s.control2), bend(s.control1, s.control2, s.end));
    return std::max(1, static_cast<int>(std::ceil(std::sqrt(0.75 * most / tolerance))));
}

struct Stretch {
    double low;
    double high;
    void include(double v) {
        low = std::min(low, v);
        high = std::max(high, v);
    }
};

// Widens the stretch by the inner extremes of one coordinate of a cubic p0..p3; a millionth of a
// tick past an end is arithmetic, not shape.
void includeExtremes(Stretch& stretch, double p0, double p1, double p2, double p3) {
    // The derivative is 3 (a t^2 + b t + c).
    const double a = p3 - 3 * p2 + 3 * p1 - p0;
    const double b = 2 * (p0 - 2 * p1 + p2);
    const double c = p1 - p0;
    const auto include = [&](double t) {
        if (t > 0 && t < 1) {
            const double u = 1 - t;
            const double v =
                u * u * u * p0 + 3 * u * u * t * p1 + 3 * u * t * t * p2 + t * t * t * p3;
            if (v < stretch.low - 1e-6 || v > stretch.high + 1e-6) {
                stretch.include(v);
            }
        }
    };
    const double root = b * b - 4 * a * c;
    if (root < 0) {
        return;
    }
    // The form that does not lose digits when a is small against b.
    const double q = -(b + std::copysign(std::sqrt(root), b)) / 2;
    if (a != 0) {
        include(q / a);
    }
    if (q != 0) {
        include(c / q);
    }
}

}  // namespace

Path linePath(Vertex from, Vertex to) {
    Path path{from, {}, false};
    path.lineTo(to);
    return path;
}

Path rectPath(const Rect& rect) {
    const double l = ticksOf(rect.left()), r = ticksOf(rect.right());
    const double t = ticksOf(rect.top()), b = ticksOf(rect.bottom());
    return polygonPath({{l, t}, {r, t}, {r, b}, {l, b}});
}

Path ovalPath(const Rect& box) {
    const double l = ticksOf(box.left()), r = ticksOf(box.right());
    const double t = ticksOf(box.top()), b = ticksOf(box.bottom());
    const double cx = (l + r) / 2, cy = (t + b) / 2;
    const double kx = quarterCircle * (r - l) / 2, ky = quarterCircle * (b - t) / 2;
    Path path{{cx, t}, {}, true};
    path.curveTo({cx + kx, t}, {r, cy - ky}, {r, cy});
    path.curveTo({r, cy + ky}, {cx + kx, b}, {cx, b});
    path.curveTo({cx - kx, b}, {l, cy + ky}, {l, cy});
    path.curveTo({l, cy - ky}, {cx - kx, t}, {cx, t});
    return path;
}

Path roundedRectPath(const Rect& box, Length radius) {
    const double l = ticksOf(box.left()), r = ticksOf(box.right());
    const double t = ticksOf(box.top()), b = ticksOf(box.bottom());
    const double rad = std::min({ticksOf(radius), (r - l) / 2, (b - t) / 2});
    if (rad <= 0) {
        return rectPath(box);
    }
    const double k = rad * (1 - quarterCircle);
    Path path{{l + rad, t}, {}, true};
    Vertex at = path.start;
    // A side that the corners use up leaves no line between them.
    const auto line = [&](Vertex to) {
        if (to != at) {
            path.lineTo(to);
        }
    };
    const auto corner = [&](Vertex c1, Vertex c2, Vertex to) {
        path.curveTo(c1, c2, to);
        at = to;
    };
    line({r - rad, t});
    corner({r - k, t}, {r, t + k}, {r, t + rad});
    line({r, b - rad});
    corner({r, b - k}, {r - k, b}, {r - rad, b});
    line({l + rad, b});
    corner({l + k, b}, {l, b - k}, {l, b - rad});
    line({l, t + rad});
    corner({l, t + k}, {l + k, t}, path.start);
    return path;
}

Path polygonPath(const std::vector<Vertex>& corners) {
    Path path;
    path.closed = true;
    if (corners.empty()) {
        return path;
    }
    path.start = corners.front();
    path.segments.reserve(corners.size() - 1);
    for (std::size_t i = 1; i < corners.size(); ++i) {
        path.lineTo(corners[i]);
    }
    return path;
}

Path turned(Path path, Angle angle, Vertex centre) {
    if (angle.isZero()) {
        return path;
    }
    const double c = angle.cosine();
    const double s = angle.sine();
    return changed(std::move(path), [&](Vertex v) { return turnedVertex(v, c, s, centre); });
}

Path moved(Path path, Vertex by) {
    return changed(std::move(path), [&](Vertex v) { return Vertex{v.x + by.x, v.y + by.y}; });
}

std::vector<Vertex> flattened(const Path& path, Length tolerance) {
    assert(tolerance.isPositive());
    std::vector<Vertex> corners{path.start};
    corners.reserve(path.segments.size() + 1);
    const auto add = [&](Vertex v) {
        if (v != corners.back()) {
            corners.push_back(v);
        }
    };
    for (const PathSegment& segment : path.segments) {
        if (segment.curved) {
            const Vertex from = corners.back();
            const int n = chordCount(from, segment, ticksOf(tolerance));
            for (int i = 1; i < n; ++i) {
                add(cubicAt(from, segment, static_cast<double>(i) / n));
            }
        }
        add(segment.end);
    }
    while (path.closed && corners.size() > 1 && corners.back() == corners.front()) {
        corners.pop_back();
    }
    return corners;
}

Rect boundsOf(const Path& path) {
    Stretch x{path.start.x, path.start.x};
    Stretch y{path.start.y, path.start.y};
    Vertex from = path.start;
    for (const PathSegment& s : path.segments) {
        x.include(s.end.x);
        y.include(s.end.y);
        if (s.curved) {
            includeExtremes(x, from.x, s.control1.x, s.control2.x, s.end.x);
            includeExtremes(y, from.y, s.control1.y, s.control2.y, s.end.y);
        }
        from = s.end;
    }
    const auto down = [](double v) { return Length::roundedFromTicks(std::floor(v)); };
    const auto up = [](double v) { return Length::roundedFromTicks(std::ceil(v)); };
    return {{down(x.low), up(x.high)}, {down(y.low), up(y.high)}};
}

}  // namespace matwright
