// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "core/outline/region.h"

namespace matwright {

namespace {

constexpr double halfATick = 0.5;

struct Edge {
    Vertex a;
    Vertex b;
};

void addEdges(std::vector<Edge>& edges, const Ring& ring) {
    for (std::size_t i = 0; i < ring.corners.size(); ++i) {
        edges.push_back({ring.corners[i], ring.corners[(i + 1) % ring.corners.size()]});
    }
}

std::vector<Edge> edgesOf(const Region& region) {
    std::vector<Edge> edges;
    for (const PolygonWithHoles& part : region.parts) {
        addEdges(edges, part.outer);
        for (const Ring& hole : part.holes) {
            addEdges(edges, hole);
        }
    }
    return edges;
}

double distanceTo(const Edge& e, Vertex p) {
    const double dx = e.b.x - e.a.x;
    const double dy = e.b.y - e.a.y;
    const double squared = dx * dx + dy * dy;
    const double along = squared > 0 ? ((p.x - e.a.x) * dx + (p.y - e.a.y) * dy) / squared : 0;
    const double t = std::clamp(along, 0.0, 1.0);
    return std::hypot(e.a.x + t * dx - p.x, e.a.y + t * dy - p.y);
}

// Whether the boxes around a and b come within half a tick of each other: the cheap question first.
bool areNear(const Edge& a, const Edge& b) {
    const auto apart = [](double a1, double a2, double b1, double b2) {
        return std::max(a1, a2) + halfATick < std::min(b1, b2) ||
               std::max(b1, b2) + halfATick < std::min(a1, a2);
    };
    return !apart(a.a.x, a.b.x, b.a.x, b.b.x) && !apart(a.a.y, a.b.y, b.a.y, b.b.y);
}

// Even-odd; the boundary and half a tick beside it are outside.
bool isUnder(const std::vector<Edge>& edges, Vertex p) {
    bool inside = false;
    for (const Edge& e : edges) {
        if (areNear(e, {p, p}) && distanceTo(e, p) <= halfATick) {
            return false;
        }
        if ((e.a.y > p.y) != (e.b.y > p.y) &&
            p.x < e.a.x + (p.y - e.a.y) / (e.b.y - e.a.y) * (e.b.x - e.a.x)) {
            inside = !inside;
        }
    }
    return inside;
}

Vertex between(const Edge& line, double t) {
    return {line.a.x + t * (line.b.x - line.a.x), line.a.y + t * (line.b.y - line.a.y)};
}

// Sorted, from 0 to 1, and no two within half a tick of each other.
std::vector<double> tidied(std::vector<double> cuts, double reach) {
    std::ranges::sort(cuts);
    std::vector<double> out{0};
    for (const double t : cuts) {
        if (t > out.back() + reach && t < 1 - reach) {
            out.push_back(t);
        }
    }
    out.push_back(1);
    return out;
}

// Where along `line` (0..1) something may change: its crossings with the edges and the ends of
// edges that run along it.
std::vector<double> cutsOf(const Edge& line, const std::vector<Edge>& edges) {
    std::vector<double> cuts;
    const double dx = line.b.x - line.a.x;
    const double dy = line.b.y - line.a.y;
    const double squared = dx * dx + dy * dy;
    const double reach = halfATick / std::sqrt(squared);
    for (const Edge& e : edges) {
        if (!areNear(line, e)) {
            continue;
        }
        for (const Vertex& end : {e.a, e.b}) {
            if (distanceTo(line, end) <= halfATick) {
                cuts.push_back(((end.x - line.a.x) * dx + (end.y - line.a.y) * dy) / squared);
            }
        }
        const double ex = e.b.x - e.a.x;
        const double ey = e.b.y - e.a.y;
        const double cross = dx * ey - dy * ex;
        if (cross == 0) {
            continue;
        }
        const double ax = e.a.x - line.a.x;
        const double ay = e.a.y - line.a.y;
        const double alongEdge = (ax * dy - ay * dx) / cross;
        if (alongEdge >= 0 && alongEdge <= 1) {
            cuts.push_back((ax * ey - ay * ex) / cross);
        }
    }
    return tidied(std::move(cuts), reach);
}

// Gathers stretches of equal state into paths.
class SplitBuilder {
  public:
    void add(Vertex from, Vertex to, bool hidden) {
        if (m_open.segments.empty() || hidden != m_hidden) {
            flush();
            m_open = {from, {}, false};
            m_hidden = hidden;
        }
        m_open.lineTo(to);
    }

    // `closed`: the last stretch goes on into the first one where both are in the same state.
    SplitLine finished(bool closed) {
        const bool lastHidden = m_hidden;
        flush();
        if (closed && m_paths.size() > 1 && lastHidden == m_firstHidden) {
            Path last = std::move(m_paths.back().path);
            m_paths.pop_back();
            Path& first = m_paths.front().path;
            last.segments.insert(last.segments.end(), first.segments.begin(), first.segments.end());
            first = std::move(last);
        }
        SplitLine out;
        for (Stretch& stretch : m_paths) {
            (stretch.hidden ? out.hidden : out.visible).push_back(std::move(stretch.path));
        }
        return out;
    }

    bool isUncut() const { return m_paths.empty(); }
    bool isHidden() const { return m_hidden; }

  private:
    struct Stretch {
        Path path;
        bool hidden;
    };

    void flush() {
        if (m_open.segments.empty()) {
            return;
        }
        if (m_paths.empty()) {
            m_firstHidden = m_hidden;
        }
        m_paths.push_back({std::move(m_open), m_hidden});
        m_open = {};
    }

    std::vector<Stretch> m_paths;
    Path m_open;
    bool m_hidden = false;
    bool m_firstHidden = false;
};

void addStretches(SplitBuilder& builder, const Edge& line, const std::vector<Edge>& edges) {
    const std::vector<double> cuts = cutsOf(line, edges);
    Vertex from = line.a;
    bool hidden = false;
    for (std::size_t i = 1; i < cuts.size(); ++i) {
        const bool hiddenHere = isUnder(edges, between(line, (cuts[i - 1] + cuts[i]) / 2));
        if (i > 1 && hiddenHere != hidden) {
            const Vertex cut = between(line, cuts[i - 1]);
            builder.add(from, cut, hidden);
            from = cut;
        }
        hidden = hiddenHere;
    }
    builder.add(from, line.b, hidden);
}

}  // namespace

SplitLine splitUnder(const Path& line, const Region& cover) {
    const std::vector<Edge> edges = edgesOf(cover);
    std::vector<Vertex> corners = flattened(line, chordTolerance);
    if (line.closed && corners.size() > 1) {
        corners.push_back(corners.front());
    }
    SplitBuilder builder;
    for (std::size_t i = 0; i + 1 < corners.size(); ++i) {
        addStretches(builder, {corners[i], corners[i + 1]}, edges);
    }
    if (builder.isUncut()) {
        return builder.isHidden() ? SplitLine{{}, {line}} : SplitLine{{line}, {}};
    }
    return builder.finished(line.closed);
}

}  // namespace matwright
