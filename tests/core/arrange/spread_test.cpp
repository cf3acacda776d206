// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/arrange/arrange.h"
#include "tests/core/arrange/rows.h"

namespace matwright {
namespace {

using namespace test;

constexpr std::int64_t w = 20'000;  // a piece's width in ticks

// Pieces of one width whose left edges are at these ticks.
Sketch rowAt(const std::vector<std::int64_t>& lefts) {
    std::vector<Rect> boxes;
    for (const std::int64_t left : lefts) {
        boxes.push_back(tickBox(left, left + w));
    }
    return sketchOf(boxes);
}

std::vector<std::int64_t> leftsOf(const Sketch& sketch) {
    std::vector<std::int64_t> lefts;
    for (const auto& [id, piece] : sketch.pieces) {
        lefts.push_back(piece.place.x.ticks());
    }
    return lefts;
}

Sketch spread(const Sketch& sketch) {
    return after(sketch, spreadEvenly(sketch, allIds(sketch), Direction::Across));
}

TEST(SpreadEvenly, makesEqualGapsBetweenTheOuterTwo) {
    EXPECT_EQ(leftsOf(spread(rowAt({0, w + 1, 4 * w}))),
              (std::vector<std::int64_t>{0, 2 * w, 4 * w}));
}

TEST(SpreadEvenly, goesByPlaceNotByOrder) {
    EXPECT_EQ(leftsOf(spread(rowAt({4 * w, 0, w + 1}))),
              (std::vector<std::int64_t>{4 * w, 0, 2 * w}));
}

TEST(SpreadEvenly, givesTheTicksLeftOverToTheLastGaps) {
    // Four pieces and room for gaps of 100, 101, 101.
    const std::int64_t far = 3 * w + 302;
    EXPECT_EQ(leftsOf(spread(rowAt({0, w, 2 * w, far}))),
              (std::vector<std::int64_t>{0, w + 100, 2 * w + 201, far}));
    // 301 ticks: 100, 100, 101.
    EXPECT_EQ(leftsOf(spread(rowAt({0, w, 2 * w, far - 1}))),
              (std::vector<std::int64_t>{0, w + 100, 2 * w + 200, far - 1}));
}

TEST(SpreadEvenly, overlapsEvenlyWhereTheRoomIsTooSmall) {
    // Two gaps from -101 ticks in all: -51 and -50.
    EXPECT_EQ(leftsOf(spread(rowAt({0, 7, 2 * w - 101}))),
              (std::vector<std::int64_t>{0, w - 51, 2 * w - 101}));
}

TEST(SpreadEvenly, spreadsBetweenLockedPieces) {
    Sketch start = rowAt({0, w, 4 * w, 5 * w, 8 * w});
    pieceOf(start, 3).locked = true;
    EXPECT_EQ(leftsOf(spread(start)), (std::vector<std::int64_t>{0, 2 * w, 4 * w, 6 * w, 8 * w}));
}

TEST(SpreadEvenly, needsThreePieces) {
    const Sketch two = rowAt({0, 100'000});
    EXPECT_TRUE(spreadEvenly(two, allIds(two), Direction::Across).isEmpty());
    EXPECT_TRUE(spreadEvenly(two, {}, Direction::Across).isEmpty());
    const Sketch four = rowAt({0, 1, 2, 100'000});
    const PieceId twice[] = {PieceId{1}, PieceId{2}, PieceId{2}, PieceId{99}};
    EXPECT_TRUE(spreadEvenly(four, twice, Direction::Across).isEmpty());
}

TEST(SpreadEvenly, downLeavesEveryLeftEdge) {
    const Sketch start = sketchOf({{{in(1), in(2)}, {in(1), in(2)}},
                                   {{in(5), in(6)}, {in(2), in(3)}},
                                   {{in(3), in(4)}, {in(7), in(8)}}});
    const Sketch done = after(start, spreadEvenly(start, allIds(start), Direction::Down));
    EXPECT_EQ(boxOf(done, 2), (Rect{{in(5), in(6)}, {in(4), in(5)}}));
    EXPECT_EQ(boxOf(done, 1), boxOf(start, 1));
    EXPECT_EQ(boxOf(done, 3), boxOf(start, 3));
}

TEST(SpreadByGutter, putsTheGutterBetweenNeighboursAndLeavesTheFirst) {
    Sketch start = rowAt({w, 9 * w, 3 * w});
    start.page.gutter = ticks(500);
    const Sketch done = after(start, spreadByGutter(start, allIds(start), Direction::Across));
    EXPECT_EQ(leftsOf(done), (std::vector<std::int64_t>{w, 3 * w + 1000, 2 * w + 500}));
}

TEST(SpreadByGutter, goesOnBehindALockedPiece) {
    Sketch start = rowAt({0, 3 * w, 9 * w});
    start.page.gutter = ticks(500);
    pieceOf(start, 2).locked = true;
    const Sketch done = after(start, spreadByGutter(start, allIds(start), Direction::Across));
    EXPECT_EQ(leftsOf(done), (std::vector<std::int64_t>{0, 3 * w, 4 * w + 500}));
}

TEST(SpreadByGutter, countsFromMatEdgeToMatEdge) {
    Sketch start = rowAt({0, 9 * w});
    Piece& photo = pieceOf(start, 1);
    photo.kind = PieceKind::PhotoSlot;
    photo.printSize = photo.size;
    photo.mats = {Mat{Length::inches(0, 1, 8), {}, ""}};
    const Sketch done = after(start, spreadByGutter(start, allIds(start), Direction::Across));
    EXPECT_EQ(boxOf(done, 2).left(),
              boxOf(done, 1).right() + Length::inches(0, 1, 8) + start.page.gutter);
}

TEST(SpreadByGutter, doesNothingToOnePiece) {
    const Sketch one = rowAt({77});
    EXPECT_TRUE(spreadByGutter(one, allIds(one), Direction::Across).isEmpty());
}

}  // namespace
}  // namespace matwright
