// SPDX-License-Identifier: MIT
#include "app/window/pasting.h"

#include <gtest/gtest.h>

#include "core/sketch/edit.h"

namespace matwright::app {
namespace {

Piece blockAt(Length x, Length y) {
    Piece piece;
    piece.place = {x, y};
    piece.size = {Length::inches(2), Length::inches(1)};
    return piece;
}

Sketch sketchWith(const std::vector<Piece>& pieces) {
    Sketch sketch = blankSketch();
    EXPECT_TRUE(apply(sketch, addPieces(sketch, pieces)));
    return sketch;
}

// Bottom to top.
std::vector<Piece> placedForPaste(const Sketch& sketch, const std::vector<Piece>& pieces) {
    const Sketch placed = app::placedForPaste(sketch, sketchWith(pieces));
    std::vector<Piece> all;
    for (const PieceId id : placed.order) {
        all.push_back(placed.pieces.at(id));
    }
    return all;
}

const Piece one = blockAt(Length::inches(3), Length::inches(4));

TEST(PlacedForPaste, GivesNothingForNothing) {
    EXPECT_TRUE(placedForPaste(blankSketch(), {}).empty());
}

TEST(PlacedForPaste, KeepsThePlaceWhereItIsFree) {
    EXPECT_EQ(placedForPaste(blankSketch(), {one}), std::vector{one});
}

TEST(PlacedForPaste, StepsAsideFromEqualPiecesOnly) {
    Piece wider = one;
    wider.size.width += Length::fromTicks(1);
    EXPECT_EQ(placedForPaste(sketchWith({wider}), {one}), std::vector{one});
    const auto moved = placedForPaste(sketchWith({one}), {one});
    EXPECT_EQ(moved.at(0).place, one.place + copyOffset);
}

TEST(PlacedForPaste, StepsOnUntilNothingIsHidden) {
    Piece second = one;
    second.place = one.place + copyOffset;
    const auto moved = placedForPaste(sketchWith({one, second}), {one});
    EXPECT_EQ(moved.at(0).place, second.place + copyOffset);
}

TEST(PlacedForPaste, KeepsSeveralPiecesTogether) {
    const Piece other = blockAt(Length::inches(6), Length::inches(6));
    const auto moved = placedForPaste(sketchWith({one}), {one, other});
    EXPECT_EQ(moved.at(0).place - moved.at(1).place, one.place - other.place);
}

TEST(PlacedForPaste, BringsPiecesBesideThePageBackOntoIt) {
    const Piece beyond = blockAt(Length::inches(20), Length::inches(-5));
    const auto moved = placedForPaste(blankSketch(), {beyond});
    EXPECT_EQ(moved.at(0).place, (Point{Length::inches(10), Length()}));
    const Piece reachingOver = blockAt(Length::inches(11), Length::inches(4));
    EXPECT_EQ(placedForPaste(blankSketch(), {reachingOver}), std::vector{reachingOver});
}

TEST(PlacedForPaste, StaysOnThePageHoweverOftenAndHidesNothing) {
    Sketch sketch = sketchWith({one});
    const Rect page = surface(sketch.page);
    for (int i = 0; i < 100; ++i) {
        const auto placed = placedForPaste(sketch, {one});
        EXPECT_TRUE(page.contains(trimBox(placed.front()))) << "paste " << i;
        for (const auto& [id, piece] : sketch.pieces) {
            EXPECT_NE(piece.place, placed.front().place) << "paste " << i;
        }
        ASSERT_TRUE(apply(sketch, addPieces(sketch, placed)));
    }
}

TEST(PlacedForPaste, OfThePieceJustPastedStaysOnThePageToo) {
    Sketch sketch = sketchWith({one});
    Piece last = one;
    for (int i = 0; i < 100; ++i) {
        last = placedForPaste(sketch, {last}).front();
        EXPECT_TRUE(surface(sketch.page).contains(trimBox(last))) << "paste " << i;
        ASSERT_TRUE(apply(sketch, addPieces(sketch, std::vector{last})));
    }
}

TEST(PlacedForPaste, OfPaperAsLargeAsThePageIsSeenBesideTheFirst) {
    Piece paper;
    paper.size = blankSketch().page.size;
    const auto placed = placedForPaste(sketchWith({paper}), {paper});
    EXPECT_EQ(placed.front().place, copyOffset);
}

}  // namespace
}  // namespace matwright::app
