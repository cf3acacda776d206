// SPDX-License-Identifier: MIT
#include "app/panels/neighbour_gap.h"

#include <gtest/gtest.h>

#include "core/sketch/edit.h"

namespace matwright::app {
namespace {

constexpr Length in(std::int64_t whole) {
    return Length::inches(whole);
}

Piece slotAt(std::int64_t x, std::int64_t y) {
    Piece slot;
    slot.kind = PieceKind::PhotoSlot;
    slot.place = {in(x), in(y)};
    slot.size = {in(2), in(2)};
    slot.printSize = slot.size;
    return slot;
}

std::optional<Length> gapOfFirst(const std::vector<Piece>& pieces) {
    Sketch sketch = blankSketch();
    EXPECT_TRUE(apply(sketch, addPieces(sketch, pieces)));
    const PieceId first{1};
    return tightestGap(sketch, std::span(&first, 1));
}

TEST(TightestGap, IsTheNearestOfAllSides) {
    EXPECT_EQ(gapOfFirst({slotAt(5, 5), slotAt(1, 5), slotAt(8, 5), slotAt(5, 10)}), in(1));
    EXPECT_EQ(gapOfFirst({slotAt(5, 5), slotAt(5, 1)}), in(2));
}

TEST(TightestGap, CountsFromMatToMat) {
    Piece matted = slotAt(1, 1);
    matted.mats.push_back({Length::inches(0, 1, 8), {}, ""});
    Piece other = slotAt(4, 1);
    EXPECT_EQ(gapOfFirst({matted, other}), Length::inches(0, 7, 8));
    other.mats = matted.mats;
    EXPECT_EQ(gapOfFirst({matted, other}), Length::inches(0, 3, 4));
}

TEST(TightestGap, IsZeroWhereTheyTouchAndNegativeWhereTheyOverlap) {
    EXPECT_EQ(gapOfFirst({slotAt(1, 1), slotAt(3, 1)}), Length());
    EXPECT_EQ(gapOfFirst({slotAt(1, 1), slotAt(2, 1)}), -in(1));
}

TEST(TightestGap, LeavesOutPapersAndWhatIsOnlyCornerToCorner) {
    Piece paper = slotAt(1, 4);
    paper.kind = PieceKind::Block;
    paper.printSize.reset();
    EXPECT_EQ(gapOfFirst({slotAt(1, 1), paper, slotAt(3, 3), slotAt(4, 6)}), std::nullopt);
    EXPECT_EQ(gapOfFirst({slotAt(1, 1)}), std::nullopt);
}

}  // namespace
}  // namespace matwright::app
