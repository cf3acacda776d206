// SPDX-License-Identifier: MIT
#include "tests/checks/true_size/expected_lines.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace matwright::check {

namespace {

constexpr double spacing = 0.5;  // mm
constexpr double fromCorner = 2.5;

double mm(Length length) {
    return length.toMillimetres();
}

// A box around the trim centre before the turn, in mm.
struct Box {
    double left, top, right, bottom;
};

class Edge {
  public:
    explicit Edge(std::vector<Sample>& out) : m_out(out) {}

    // `overrun`: how far a mitre may carry the side on at both ends.
    void straight(double ax, double ay, double bx, double by, double overrun = 0) {
        const double length = std::hypot(bx - ax, by - ay);
        const double ux = (bx - ax) / length;
        const double uy = (by - ay) / length;
        for (double t = -overrun; t <= length + overrun; t += spacing) {
            const bool nearCorner = t < fromCorner || t > length - fromCorner;
            m_out.push_back({ax + ux * t, ay + uy * t, uy, -ux, nearCorner});
        }
    }

    // Of an ellipse, from one angle to another.
    void arc(double cx, double cy, double rx, double ry, double from, double to) {
        const int steps = std::max(1, static_cast<int>(std::max(rx, ry) * (to - from) / spacing));
        for (int i = 0; i <= steps; ++i) {
            const double a = from + (to - from) * i / steps;
            const double nx = std::cos(a) * ry;
            const double ny = std::sin(a) * rx;
            const double n = std::hypot(nx, ny);
            m_out.push_back({cx + rx * std::cos(a), cy + ry * std::sin(a), nx / n, ny / n});
        }
    }

    void roundedBox(const Box& b, double radius) {
        straight(b.left + radius, b.top, b.right - radius, b.top);
        straight(b.right, b.top + radius, b.right, b.bottom - radius);
        straight(b.right - radius, b.bottom, b.left + radius, b.bottom);
        straight(b.left, b.bottom - radius, b.left, b.top + radius);
        if (radius > 0) {
            const double quarter = std::numbers::pi / 2;
            arc(b.right - radius, b.bottom - radius, radius, radius, 0, quarter);
            arc(b.left + radius, b.bottom - radius, radius, radius, quarter, 2 * quarter);
            arc(b.left + radius, b.top + radius, radius, radius, 2 * quarter, 3 * quarter);
            arc(b.right - radius, b.top + radius, radius, radius, 3 * quarter, 4 * quarter);
        }
    }

  private:
    std::vector<Sample>& m_out;
};

// The polygon's sides moved out by `border`; polygons with mats are convex here, so that each side
// grows at both ends.
void addPolygon(Edge& edge, const Piece& piece, double border) {
    const auto& corners = std::get<PolygonShape>(piece.shape).corners;
    std::vector<std::pair<double, double>> at;
    double area = 0;
    for (const Point& corner : corners) {
        at.emplace_back(mm(corner.x) - mm(piece.size.width) / 2,
                        mm(corner.y) - mm(piece.size.height) / 2);
    }
    for (std::size_t i = 0; i < at.size(); ++i) {
        const auto& [ax, ay] = at[i];
        const auto& [bx, by] = at[(i + 1) % at.size()];
        area += ax * by - bx * ay;
    }
    const double out = area > 0 ? border : -border;  // clockwise as seen: outside is to the left
    for (std::size_t i = 0; i < at.size(); ++i) {
        const auto& [ax, ay] = at[i];
        const auto& [bx, by] = at[(i + 1) % at.size()];
        const double length = std::hypot(bx - ax, by - ay);
        const double nx = (by - ay) / length * out;
        const double ny = -(bx - ax) / length * out;
        edge.straight(ax + nx, ay + ny, bx + nx, by + ny, 4 * border);
    }
}

std::vector<Sample> outline(const Piece& piece, const Box& box, double border) {
    std::vector<Sample> samples;
    Edge edge(samples);
    if (std::holds_alternative<OvalShape>(piece.shape)) {
        edge.arc((box.left + box.right) / 2, (box.top + box.bottom) / 2, (box.right - box.left) / 2,
                 (box.bottom - box.top) / 2, 0, 2 * std::numbers::pi);
    } else if (std::holds_alternative<PolygonShape>(piece.shape)) {
        addPolygon(edge, piece, border);
    } else {
        double radius = 0;
        if (const auto* rounded = std::get_if<RoundedRectangleShape>(&piece.shape)) {
            radius = std::min({mm(rounded->radius), mm(piece.size.width) / 2,
                               mm(piece.size.height) / 2}) +
                     border;
        }
        edge.roundedBox(box, radius);
    }
    const double angle = piece.rotation.toDegrees() * std::numbers::pi / 180;
    const double c = std::cos(angle);
    const double s = std::sin(angle);
    const double cx = mm(piece.place.x) + mm(piece.size.width) / 2;
    const double cy = mm(piece.place.y) + mm(piece.size.height) / 2;
    for (Sample& it : samples) {
        it = {cx + it.x * c - it.y * s, cy + it.x * s + it.y * c, it.nx * c - it.ny * s,
              it.nx * s + it.ny * c, it.nearCorner};
    }
    return samples;
}

}  // namespace

std::vector<ExpectedLine> expectedLines(const Sketch& sketch) {
    std::vector<ExpectedLine> lines;
    for (std::size_t i = 0; i < sketch.order.size(); ++i) {
        const Piece& piece = sketch.pieces.at(sketch.order[i]);
        const std::string name = "piece " + std::to_string(i + 1);
        Box box{-mm(piece.size.width) / 2, -mm(piece.size.height) / 2, mm(piece.size.width) / 2,
                mm(piece.size.height) / 2};
        double border = 0;
        lines.push_back({name + " trim", outline(piece, box, 0)});
        for (const Mat& mat : piece.mats) {
            const double add = mm(mat.border);
            border += add;
            box = {box.left - add, box.top - add, box.right + add,
                   box.bottom + mm(mat.bottomBorder.value_or(mat.border))};
            lines.push_back({name + " mat", outline(piece, box, border)});
        }
    }
    return lines;
}

}  // namespace matwright::check
