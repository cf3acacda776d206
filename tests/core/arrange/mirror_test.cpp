// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>

#include "core/arrange/arrange.h"
#include "tests/core/arrange/rows.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

using namespace test;

Sketch mirror(const Sketch& sketch, Direction direction) {
    return after(sketch, mirrored(sketch, allIds(sketch), direction));
}

TEST(Mirrored, acrossSwapsLeftAndRightWithinTheSelection) {
    const Sketch start =
        sketchOf({{{in(1), in(3)}, {in(1), in(2)}}, {{in(4), in(5)}, {in(3), in(6)}}});
    const Sketch done = mirror(start, Direction::Across);
    EXPECT_EQ(boxOf(done, 1), (Rect{{in(3), in(5)}, {in(1), in(2)}}));
    EXPECT_EQ(boxOf(done, 2), (Rect{{in(1), in(2)}, {in(3), in(6)}}));
}

TEST(Mirrored, downSwapsTopAndBottomWithinTheSelection) {
    const Sketch start =
        sketchOf({{{in(1), in(3)}, {in(1), in(2)}}, {{in(4), in(5)}, {in(3), in(6)}}});
    const Sketch done = mirror(start, Direction::Down);
    EXPECT_EQ(boxOf(done, 1), (Rect{{in(1), in(3)}, {in(5), in(6)}}));
    EXPECT_EQ(boxOf(done, 2), (Rect{{in(4), in(5)}, {in(1), in(4)}}));
}

TEST(Mirrored, turnsRotationsAndPolygonCornersTheOtherWay) {
    Sketch start = sketchOf({{{in(1), in(4)}, {in(1), in(3)}}});
    pieceOf(start, 1).rotation = Angle::degrees(30);
    pieceOf(start, 1).shape = PolygonShape{{{{}, {}}, {in(1), {}}, {in(3), in(2)}}};
    const Sketch across = mirror(start, Direction::Across);
    EXPECT_EQ(across.pieces.at(PieceId{1}).rotation, Angle::degrees(330));
    EXPECT_EQ(std::get<PolygonShape>(across.pieces.at(PieceId{1}).shape).corners,
              (std::vector<Point>{{in(3), {}}, {in(2), {}}, {{}, in(2)}}));
    const Sketch down = mirror(start, Direction::Down);
    EXPECT_EQ(down.pieces.at(PieceId{1}).rotation, Angle::degrees(330));
    EXPECT_EQ(std::get<PolygonShape>(down.pieces.at(PieceId{1}).shape).corners,
              (std::vector<Point>{{{}, in(2)}, {in(1), in(2)}, {in(3), {}}}));
}

TEST(Mirrored, leavesLockedPiecesOutOfTheBoundsToo) {
    Sketch start = sketchOf({{{in(0), in(1)}, {in(0), in(1)}},
                             {{in(2), in(3)}, {in(0), in(1)}},
                             {{in(4), in(8)}, {in(0), in(1)}}});
    pieceOf(start, 1).locked = true;
    const Sketch done = mirror(start, Direction::Across);
    EXPECT_EQ(boxOf(done, 1), boxOf(start, 1));
    EXPECT_EQ(boxOf(done, 2).x, (Interval{in(7), in(8)}));
    EXPECT_EQ(boxOf(done, 3).x, (Interval{in(2), in(6)}));
}

TEST(Mirrored, onePieceInItselfOnlyTurnsItsShape) {
    const Sketch start = sketchOf({{{in(1), in(4)}, {in(1), in(3)}}});
    EXPECT_TRUE(mirrored(start, allIds(start), Direction::Across).isEmpty());
    EXPECT_TRUE(mirrored(start, {}, Direction::Across).isEmpty());
}

TEST(Mirrored, twiceIsExactWithoutTurnsAndWithinTwoTicksWithThem) {
    Random random(31);
    for (int i = 0; i < 500; ++i) {
        const bool turned = i % 2 == 0;
        Sketch start = randomSketch(random, 6);
        for (auto& [id, piece] : start.pieces) {
            piece.rotation = turned ? piece.rotation : Angle();
        }
        const Direction direction = i % 4 < 2 ? Direction::Across : Direction::Down;
        const Sketch back = mirror(mirror(start, direction), direction);
        for (const auto& [id, piece] : back.pieces) {
            Piece expected = start.pieces.at(id);
            const Point off = piece.place - expected.place;
            EXPECT_LE(std::max(abs(off.x), abs(off.y)), ticks(turned ? 2 : 0))
                << "seed 31, sketch " << i;
            expected.place = piece.place;
            EXPECT_EQ(piece, expected) << "seed 31, sketch " << i;
        }
    }
}

}  // namespace
}  // namespace matwright
