// SPDX-License-Identifier: MIT
#include "core/template/scene.h"
#include <ranges>

#include "core/outline/outline.h"

namespace matwright {

namespace {

// Texts keep further away from an edge than this.
constexpr Length placingTolerance = Length::hundredthMillimetres(10);

ScenePiece scenePiece(PieceId id, const Piece& piece, std::size_t number,
                      const std::vector<Rect>& pages) {
    ScenePiece out;
    out.id = id;
    out.piece = &piece;
    out.number = number;
    out.trim = trimOutline(piece);
    for (std::size_t i = 0; i < piece.mats.size(); ++i) {
        out.mats.push_back(matOutline(piece, i));
    }
    const Path& outer = out.mats.empty() ? out.trim : out.mats.back();
    out.trimRing = flattened(out.trim, placingTolerance);
    out.outerRing = flattened(outer, placingTolerance);
    out.trimBounds = boundsOf(out.trim);
    out.outerBounds = boundsOf(outer);
    out.page = pages[pageOf(pages, out.trimBounds.left())];
    return out;
}

}  // namespace

bool ringContains(const std::vector<Vertex>& ring, Vertex at) {
    bool inside = false;
    Vertex before = ring.back();
    for (const Vertex& corner : ring) {
        if ((corner.y > at.y) != (before.y > at.y) &&
            at.x < (before.x - corner.x) * (at.y - corner.y) / (before.y - corner.y) + corner.x) {
            inside = !inside;
        }
        before = corner;
    }
    return inside;
}

Scene::Scene(const Sketch& sketch)
    : m_sheet(surface(sketch.page).size()), m_pages(matwright::pages(sketch.page)) {
    m_pieces.reserve(sketch.order.size());
    for (const PieceId id : sketch.order) {
        m_pieces.push_back(scenePiece(id, sketch.pieces.at(id), m_pieces.size() + 1, m_pages));
    }
}

const ScenePiece* Scene::topmostAt(Vertex at) const {
    const Point near{Length::roundedFromTicks(at.x), Length::roundedFromTicks(at.y)};
    for (const ScenePiece& piece : std::views::reverse(m_pieces)) {
        if (piece.outerBounds.contains(near) && ringContains(piece.outerRing, at)) {
            return &piece;
        }
    }
    return nullptr;
}

}  // namespace matwright
