// SPDX-License-Identifier: MIT
#include "tests/core/template/drawing_probe.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/outline/outline.h"

namespace matwright::test {

namespace {

double ticksOf(Length length) {
    return static_cast<double>(length.ticks());
}

// Cohen-Sutherland-free: a line meets a box when some part of it is inside after cutting by halves.
bool meets(Vertex a, Vertex b, const InkBox& box, int depth) {
    const double left = std::min(a.x, b.x);
    const double right = std::max(a.x, b.x);
    const double top = std::min(a.y, b.y);
    const double bottom = std::max(a.y, b.y);
    if (right <= box.left || left >= box.right || bottom <= box.top || top >= box.bottom) {
        return false;
    }
    if (depth == 0 || left == right || top == bottom) {
        return true;
    }
    const Vertex middle{(a.x + b.x) / 2, (a.y + b.y) / 2};
    return meets(a, middle, box, depth - 1) || meets(middle, b, box, depth - 1);
}

double turnOf(Vertex a, Vertex b, Vertex c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

}  // namespace

const Layer* findLayer(const Drawing& drawing, std::string_view id) {
    const auto it = std::ranges::find(drawing.layers, id, &Layer::id);
    return it == drawing.layers.end() ? nullptr : &*it;
}

std::vector<InkBox> textBoxes(const Layer& layer) {
    std::vector<InkBox> boxes;
    for (const DrawingItem& item : layer.items) {
        const auto* text = std::get_if<TextItem>(&item);
        if (text == nullptr) {
            continue;
        }
        const double em = ticksOf(text->height);
        const double width = ticksOf(textWidthBound(text->text, text->height, text->bold));
        const double start = text->anchor == TextAnchor::Start    ? 0
                             : text->anchor == TextAnchor::Middle ? -width / 2
                                                                  : -width;
        const double up = 0.78 * em;
        const double down = 0.24 * em;
        if (text->rotation.isZero()) {
            boxes.push_back({text->at.x + start, text->at.y - up, text->at.x + start + width,
                             text->at.y + down, text->text});
        } else {  // a quarter turn to the left: along is up, up is left
            boxes.push_back({text->at.x - up, text->at.y - start - width, text->at.x + down,
                             text->at.y - start, text->text});
        }
    }
    return boxes;
}

std::vector<InkLine> strokedLines(const Layer& layer) {
    std::vector<InkLine> lines;
    for (std::size_t i = 0; i < layer.items.size(); ++i) {
        const auto* item = std::get_if<PathItem>(&layer.items[i]);
        if (item == nullptr || !item->stroke) {
            continue;
        }
        for (const Path& path : item->paths) {
            Vertex at = path.start;
            for (const PathSegment& segment : path.segments) {
                lines.push_back({at, segment.end, i});
                at = segment.end;
            }
            if (path.closed) {
                lines.push_back({at, path.start, i});
            }
        }
    }
    return lines;
}

std::string labelOf(const Layer& labels, std::size_t number) {
    const std::string start = std::to_string(number) + " \u00B7 ";
    std::string all;
    for (const DrawingItem& item : labels.items) {
        const auto* text = std::get_if<TextItem>(&item);
        const bool startsLabel = text != nullptr && (text->bold || text->text.find(" \u00B7 ") < 6);
        if (!all.empty() && (text == nullptr || startsLabel)) {
            break;
        }
        if (text != nullptr && (!all.empty() || text->text.starts_with(start))) {
            all += text->text + "\n";
        }
    }
    return all;
}

bool overlap(const InkBox& a, const InkBox& b) {
    return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

bool crosses(const InkLine& line, const InkBox& box) {
    return meets(line.from, line.to, box, 24);
}

bool crosses(const InkLine& a, const InkLine& b) {
    const double d1 = turnOf(a.from, a.to, b.from);
    const double d2 = turnOf(a.from, a.to, b.to);
    const double d3 = turnOf(b.from, b.to, a.from);
    const double d4 = turnOf(b.from, b.to, a.to);
    if (d1 == 0 && d2 == 0) {  // on one line: do the stretches share more than a point?
        const auto shared = [](double a1, double a2, double b1, double b2) {
            return std::min(std::max(a1, a2), std::max(b1, b2)) -
                   std::max(std::min(a1, a2), std::min(b1, b2));
        };
        return std::max(shared(a.from.x, a.to.x, b.from.x, b.to.x),
                        shared(a.from.y, a.to.y, b.from.y, b.to.y)) > 0 &&
               shared(a.from.x, a.to.x, b.from.x, b.to.x) >= 0 &&
               shared(a.from.y, a.to.y, b.from.y, b.to.y) >= 0;
    }
    return d1 * d2 <= 0 && d3 * d4 <= 0;
}

namespace {

struct Box {
    double left, top, right, bottom;
};

// Of these corners, and everything within `round` of them, turned about the trim's centre.
Extremes extremesOf(const Piece& piece, const std::vector<Vertex>& corners, double round) {
    const double cx = ticksOf(piece.place.x) + ticksOf(piece.size.width) / 2;
    const double cy = ticksOf(piece.place.y) + ticksOf(piece.size.height) / 2;
    const double angle = piece.rotation.toDegrees() * std::numbers::pi / 180;
    const double c = std::cos(angle);
    const double s = std::sin(angle);
    Extremes out{INFINITY, INFINITY};
    for (const Vertex& corner : corners) {
        out.left = std::min(out.left, cx + corner.x * c - corner.y * s - round);
        out.top = std::min(out.top, cy + corner.x * s + corner.y * c - round);
    }
    return out;
}

// The piece's shape in this box around (0, 0), the trim's centre, with corners of this radius.
Extremes extremesIn(const Piece& piece, const Box& box, double radius) {
    const double a = (box.right - box.left) / 2;
    const double b = (box.bottom - box.top) / 2;
    const Vertex middle{(box.left + box.right) / 2, (box.top + box.bottom) / 2};
    if (std::holds_alternative<OvalShape>(piece.shape)) {
        const double angle = piece.rotation.toDegrees() * std::numbers::pi / 180;
        const double c = std::cos(angle);
        const double s = std::sin(angle);
        const Extremes centre = extremesOf(piece, {middle}, 0);
        return {centre.left - std::hypot(a * c, b * s), centre.top - std::hypot(a * s, b * c)};
    }
    const double round = std::min({radius, a, b});
    return extremesOf(piece,
                      {{box.left + round, box.top + round},
                       {box.right - round, box.top + round},
                       {box.right - round, box.bottom - round},
                       {box.left + round, box.bottom - round}},
                      round);
}

double radiusOf(const Piece& piece) {
    const auto* rounded = std::get_if<RoundedRectangleShape>(&piece.shape);
    return rounded == nullptr ? 0
                              : std::min({ticksOf(rounded->radius), ticksOf(piece.size.width) / 2,
                                          ticksOf(piece.size.height) / 2});
}

Box trimOf(const Piece& piece) {
    const double a = ticksOf(piece.size.width) / 2;
    const double b = ticksOf(piece.size.height) / 2;
    return {-a, -b, a, b};
}

}  // namespace

Extremes trimExtremes(const Piece& piece) {
    const Box box = trimOf(piece);
    if (const auto* polygon = std::get_if<PolygonShape>(&piece.shape)) {
        std::vector<Vertex> corners;
        for (const Point& corner : polygon->corners) {
            corners.push_back({ticksOf(corner.x) + box.left, ticksOf(corner.y) + box.top});
        }
        return extremesOf(piece, corners, 0);
    }
    return extremesIn(piece, box, radiusOf(piece));
}

Extremes outerExtremes(const Piece& piece) {
    if (piece.mats.empty()) {
        return trimExtremes(piece);
    }
    if (std::holds_alternative<PolygonShape>(piece.shape)) {
        const Rect bounds = boundsOf(outermostOutline(piece));
        return {ticksOf(bounds.left()), ticksOf(bounds.top())};
    }
    Box box = trimOf(piece);
    double radius = radiusOf(piece);
    for (const Mat& mat : piece.mats) {
        const double border = ticksOf(mat.border);
        box = {box.left - border, box.top - border, box.right + border,
               box.bottom + ticksOf(mat.bottomBorder.value_or(mat.border))};
        radius += radius > 0 ? border : 0;
    }
    return extremesIn(piece, box, radius);
}

}  // namespace matwright::test
