// SPDX-License-Identifier: MIT
#include "app/canvas/hit_test.h"

#include <gtest/gtest.h>

#include "core/sketch/edit.h"

namespace matwright::app {
namespace {

Length in(std::int64_t n) {
    return Length::inches(n);
}

Piece block(std::int64_t x, std::int64_t y, std::int64_t w, std::int64_t h) {
    Piece piece;
    piece.place = {in(x), in(y)};
    piece.size = {in(w), in(h)};
    return piece;
}

Sketch sketchOf(const std::vector<Piece>& pieces) {
    Sketch sketch = blankSketch();
    EXPECT_TRUE(apply(sketch, addPieces(sketch, pieces)));
    return sketch;
}

constexpr Length hair = Length::inches(0, 1, 16);

TEST(HitTest, TheTopmostPieceComesFirst) {
    const Sketch sketch = sketchOf({block(0, 0, 4, 4), block(2, 2, 4, 4)});
    EXPECT_EQ(piecesAt(sketch, {in(3), in(3)}, hair), (std::vector{PieceId{2}, PieceId{1}}));
    EXPECT_EQ(topPieceAt(sketch, {in(1), in(1)}, hair), PieceId{1});
    EXPECT_EQ(topPieceAt(sketch, {in(8), in(8)}, hair), PieceId{});
}

TEST(HitTest, TheCornerOfAnOvalsBoxIsNotTheOval) {
    Piece oval = block(0, 0, 4, 4);
    oval.shape = OvalShape{};
    const Sketch sketch = sketchOf({block(0, 0, 1, 1), oval});
    EXPECT_EQ(piecesAt(sketch, {hair, hair}, Length()), std::vector{PieceId{1}});
    EXPECT_EQ(topPieceAt(sketch, {in(2), in(2)}, Length()), PieceId{2});
}

TEST(HitTest, AMatBelongsToItsPhoto) {
    Piece slot = block(2, 2, 4, 6);
    slot.kind = PieceKind::PhotoSlot;
    slot.printSize = slot.size;
    slot.mats.push_back({Length::inches(0, 1, 2), {}, ""});
    const Sketch sketch = sketchOf({slot});
    EXPECT_EQ(topPieceAt(sketch, {in(2) - Length::inches(0, 1, 4), in(3)}, Length()), PieceId{1});
}

TEST(HitTest, ANearMissCountsOnlyWhereNothingIsHit) {
    const Sketch sketch = sketchOf({block(0, 0, 4, 4), block(5, 0, 4, 4)});
    const Length near = in(5) - Length::inches(0, 1, 32);
    EXPECT_EQ(topPieceAt(sketch, {near, in(1)}, hair), PieceId{2});
    EXPECT_EQ(topPieceAt(sketch, {near, in(1)}, Length()), PieceId{});
    const Sketch crowded = sketchOf({block(0, 0, 5, 4), block(5, 0, 4, 4)});
    EXPECT_EQ(topPieceAt(crowded, {near, in(1)}, hair), PieceId{1});
}

TEST(HitTest, GoingBelowComesRoundToTheTop) {
    const Sketch sketch = sketchOf({block(0, 0, 4, 4), block(0, 0, 4, 4), block(0, 0, 4, 4)});
    const Point at{in(1), in(1)};
    EXPECT_EQ(pieceBelow(sketch, at, hair, PieceId{3}), PieceId{2});
    EXPECT_EQ(pieceBelow(sketch, at, hair, PieceId{2}), PieceId{1});
    EXPECT_EQ(pieceBelow(sketch, at, hair, PieceId{1}), PieceId{3});
    EXPECT_EQ(pieceBelow(sketch, at, hair, PieceId{}), PieceId{3});
    EXPECT_EQ(pieceBelow(sketch, {in(9), in(9)}, hair, PieceId{3}), PieceId{});
}

TEST(HitTest, ABandTakesWhatLiesWhollyInsideItEdgesIncluded) {
    const Sketch sketch = sketchOf({block(1, 1, 2, 2), block(2, 2, 4, 4)});
    const Rect band = Rect::at({in(1), in(1)}, {in(2), in(2)});
    EXPECT_EQ(piecesInside(sketch, band), std::vector{PieceId{1}});
    EXPECT_TRUE(piecesInside(sketch, {band.x, {in(1) + Length::fromTicks(1), in(3)}}).empty());
}

// A matted photo slot with a corner so sharp that the mat's mitre sticks out of the mat's box.
Piece pointedSlot() {
    Piece slot = block(4, 4, 3, 2);
    slot.kind = PieceKind::PhotoSlot;
    slot.printSize = slot.size;
    slot.shape = PolygonShape{{{Length(), Length()}, {in(3), in(1)}, {Length(), in(2)}}};
    slot.mats.push_back({Length::inches(0, 1, 2), {}, ""});
    return slot;
}

TEST(HitTest, TheMitreOfAPolygonsMatIsHitThoughItSticksOutOfTheMatsBox) {
    const Piece slot = pointedSlot();
    const Point tip{Length::inches(8, 1, 4), in(5)};
    ASSERT_FALSE(outermostBounds(slot).contains(tip));
    EXPECT_EQ(topPieceAt(sketchOf({slot}), tip, Length()), PieceId{1});
    EXPECT_EQ(topPieceAt(sketchOf({slot}), {tip.x, in(4)}, Length()), PieceId{}) << "beside it";
}

}  // namespace
}  // namespace matwright::app
