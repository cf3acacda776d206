// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/sketch/edit.h"

namespace matwright::test {

// A blank 12x12 page with blocks of these boxes, ids 1, 2, 3, … from bottom to top.
Sketch sketchOf(const std::vector<Rect>& boxes);
std::vector<PieceId> allIds(const Sketch& sketch);
// The sketch after the edit; fails the test where apply() refuses it.
Sketch after(Sketch sketch, const Edit& edit);
Rect boxOf(const Sketch& sketch, std::uint32_t id);
Piece& pieceOf(Sketch& sketch, std::uint32_t id);

// Inches, or ticks.
constexpr Length in(std::int64_t whole) {
    return Length::inches(whole);
}
constexpr Length ticks(std::int64_t n) {
    return Length::fromTicks(n);
}
// A box by its left and right edges in ticks, 20,000 ticks high.
constexpr Rect tickBox(std::int64_t left, std::int64_t right) {
    return {{ticks(left), ticks(right)}, {ticks(0), ticks(20'000)}};
}

}  // namespace matwright::test
