// SPDX-License-Identifier: MIT
#include "core/carry/footprint.h"

#include "core/outline/outline.h"

namespace matwright::carry {

Footprint footprint(PieceId id, const Piece& piece) {
    Footprint result{id, &piece, trimBounds(piece), outermostBounds(piece),
                     !piece.rotation.isQuarterTurn()};
    if (result.oblique) {
        result.outer = boundsOf(outermostOutline(piece));
        result.trim = result.outer;
    } else if (std::holds_alternative<PolygonShape>(piece.shape) && !piece.mats.empty()) {
        result.outer = boundsOf(outermostOutline(piece));
    }
    return result;
}

std::vector<Footprint> footprints(const Sketch& sketch) {
    std::vector<Footprint> result;
    result.reserve(sketch.order.size());
    for (const PieceId id : sketch.order) {
        result.push_back(footprint(id, sketch.pieces.at(id)));
    }
    return result;
}

}  // namespace matwright::carry
