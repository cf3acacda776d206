// SPDX-License-Identifier: MIT
#include "core/arrange/selected.h"

#include <set>
#include <utility>

namespace matwright::arrange {

std::vector<Selected> selectedPieces(const Sketch& sketch, std::span<const PieceId> ids) {
    const std::set<PieceId> wanted(ids.begin(), ids.end());
    std::vector<Selected> result;
    for (const PieceId id : sketch.order) {
        if (wanted.contains(id)) {
            result.push_back({id, &sketch.pieces.at(id)});
        }
    }
    return result;
}

std::optional<Rect> boundsOf(const std::vector<Selected>& pieces) {
    std::optional<Rect> bounds;
    for (const Selected& selected : pieces) {
        const Rect own = trimBounds(*selected.piece);
        bounds = bounds ? bounds->united(own) : own;
    }
    return bounds;
}

Edit changedEach(const std::vector<Selected>& pieces,
                 const std::function<Piece(const Piece&)>& change) {
    Edit edit;
    for (const Selected& selected : pieces) {
        if (selected.piece->locked) {
            continue;
        }
        Piece after = change(*selected.piece);
        if (after != *selected.piece) {
            edit.pieces.emplace(selected.id, std::move(after));
        }
    }
    return edit;
}

}  // namespace matwright::arrange
