// SPDX-License-Identifier: MIT
#include "tests/core/arrange/rows.h"

#include <gtest/gtest.h>

namespace matwright::test {

Sketch sketchOf(const std::vector<Rect>& boxes) {
    Sketch sketch = blankSketch();
    for (const Rect& box : boxes) {
        Piece piece;
        piece.place = box.topLeft();
        piece.size = box.size();
        const PieceId id = nextId(sketch);
        sketch.pieces.emplace(id, piece);
        sketch.order.push_back(id);
    }
    return sketch;
}

std::vector<PieceId> allIds(const Sketch& sketch) {
    return sketch.order;
}

Sketch after(Sketch sketch, const Edit& edit) {
    const auto inverse = apply(sketch, edit);
    EXPECT_TRUE(inverse) << inverse.error().text();
    return sketch;
}

Rect boxOf(const Sketch& sketch, std::uint32_t id) {
    return trimBox(sketch.pieces.at(PieceId{id}));
}

Piece& pieceOf(Sketch& sketch, std::uint32_t id) {
    return sketch.pieces.at(PieceId{id});
}

}  // namespace matwright::test
