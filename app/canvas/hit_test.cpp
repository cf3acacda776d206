// SPDX-License-Identifier: MIT
#include "app/canvas/hit_test.h"

#include <algorithm>
#include <ranges>

#include "core/outline/outline.h"

namespace matwright::app {

std::vector<PieceId> piecesAt(const Sketch& sketch, Point at, Length tolerance) {
    std::vector<PieceId> hit;
    std::vector<PieceId> near;
    for (const PieceId id : std::views::reverse(sketch.order)) {
        const Piece& piece = sketch.pieces.at(id);
        if (reachOf(piece).contains(at) && covers(piece, at)) {
            hit.push_back(id);
        } else if (outermostBounds(piece).expanded(tolerance).contains(at)) {
            near.push_back(id);
        }
    }
    return hit.empty() ? near : hit;
}

PieceId topPieceAt(const Sketch& sketch, Point at, Length tolerance) {
    const auto hit = piecesAt(sketch, at, tolerance);
    return hit.empty() ? PieceId{} : hit.front();
}

PieceId pieceBelow(const Sketch& sketch, Point at, Length tolerance, PieceId current) {
    const auto hit = piecesAt(sketch, at, tolerance);
    if (hit.empty()) {
        return {};
    }
    const auto found = std::ranges::find(hit, current);
    if (found == hit.end() || std::next(found) == hit.end()) {
        return hit.front();
    }
    return *std::next(found);
}

std::vector<PieceId> piecesInside(const Sketch& sketch, const Rect& area) {
    std::vector<PieceId> inside;
    for (const PieceId id : sketch.order) {
        if (area.contains(trimBounds(sketch.pieces.at(id)))) {
            inside.push_back(id);
        }
    }
    return inside;
}

}  // namespace matwright::app
