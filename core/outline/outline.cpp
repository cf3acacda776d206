// SPDX-License-Identifier: MIT
#include "core/outline/outline.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>
#include <variant>

#include "core/measure/ticks.h"
#include "core/outline/grown_polygon.h"

namespace matwright {

namespace {

template <typename... Cases>
struct Match : Cases... {
    using Cases::operator()...;
};

Vertex trimCentre(const Piece& piece) {
    const Rect box = trimBox(piece);
    return {ticksOf(box.left() + box.right()) / 2, ticksOf(box.top() + box.bottom()) / 2};
}

Path asItLies(const Piece& piece, Path unturned) {
    return turned(std::move(unturned), piece.rotation, trimCentre(piece));
}

std::vector<Vertex> polygonCorners(const Piece& piece, const PolygonShape& shape) {
    std::vector<Vertex> corners;
    corners.reserve(shape.corners.size());
    for (const Point& corner : shape.corners) {
        corners.push_back(vertexAt(piece.place + corner));
    }
    return corners;
}

Path polygonMat(const Piece& piece, const PolygonShape& shape, std::size_t index) {
    std::vector<Vertex> corners = polygonCorners(piece, shape);
    for (std::size_t i = 0; i <= index; ++i) {
        const Mat& mat = piece.mats[i];
        corners = grownPolygon(corners, ticksOf(mat.border),
                               ticksOf(mat.bottomBorder.value_or(mat.border)));
    }
    return polygonPath(corners);
}

bool isInsideOrWithin(const std::vector<Vertex>& corners, Vertex at, double reach) {
    bool inside = false;
    Vertex a = corners.back();
    for (const Vertex& b : corners) {
        const double dx = b.x - a.x;
        const double dy = b.y - a.y;
        const double squared = dx * dx + dy * dy;
        const double along = squared > 0 ? ((at.x - a.x) * dx + (at.y - a.y) * dy) / squared : 0;
        const double t = std::clamp(along, 0.0, 1.0);
        if (std::hypot(a.x + t * dx - at.x, a.y + t * dy - at.y) <= reach) {
            return true;
        }
        if ((a.y > at.y) != (b.y > at.y) && at.x < a.x + (at.y - a.y) / dy * dx) {
            inside = !inside;
        }
        a = b;
    }
    return inside;
}

}  // namespace

Length cornerRadius(const Piece& piece, const RoundedRectangleShape& shape,
                    std::optional<std::size_t> mat) {
    Length radius = std::min(
        {shape.radius, piece.size.width.halfRoundedDown(), piece.size.height.halfRoundedDown()});
    for (std::size_t i = 0; mat && i <= *mat; ++i) {
        radius += piece.mats[i].border;
    }
    return radius;
}

Path trimOutline(const Piece& piece) {
    const Rect box = trimBox(piece);
    return asItLies(piece, std::visit(Match{
                                          [&](const RectangleShape&) { return rectPath(box); },
                                          [&](const RoundedRectangleShape& shape) {
                                              return roundedRectPath(box, shape.radius);
                                          },
                                          [&](const OvalShape&) { return ovalPath(box); },
                                          [&](const PolygonShape& shape) {
                                              return polygonPath(polygonCorners(piece, shape));
                                          },
                                      },
                                      piece.shape));
}

Path matOutline(const Piece& piece, std::size_t index) {
    assert(index < piece.mats.size());
    const Rect box = matBox(piece, index);
    return asItLies(
        piece,
        std::visit(Match{
                       [&](const RectangleShape&) { return rectPath(box); },
                       [&](const RoundedRectangleShape& shape) {
                           return roundedRectPath(box, cornerRadius(piece, shape, index));
                       },
                       [&](const OvalShape&) { return ovalPath(box); },
                       [&](const PolygonShape& shape) { return polygonMat(piece, shape, index); },
                   },
                   piece.shape));
}

Path printOutline(const Piece& piece) {
    return asItLies(piece, rectPath(printBox(piece)));
}

Path outermostOutline(const Piece& piece) {
    return piece.mats.empty() ? trimOutline(piece) : matOutline(piece, piece.mats.size() - 1);
}

Rect reachOf(const Piece& piece) {
    Rect reach = outermostBounds(piece);
    if (std::holds_alternative<PolygonShape>(piece.shape)) {
        Length mitres;
        for (const Mat& mat : piece.mats) {
            mitres += std::max(mat.border, mat.bottomBorder.value_or(mat.border)) * longestMitre;
        }
        reach = reach.united(trimBounds(piece).expanded(mitres));
    }
    return reach;
}

bool covers(const Piece& piece, Point at) {
    const Path outline = outermostOutline(piece);
    const Rect bounds = boundsOf(outline);
    const Length reach = Length::fromTicks(1);
    if (!bounds.x.expanded(reach).contains(at.x) || !bounds.y.expanded(reach).contains(at.y)) {
        return false;
    }
    return isInsideOrWithin(flattened(outline, reach), vertexAt(at), ticksOf(reach));
}

}  // namespace matwright
