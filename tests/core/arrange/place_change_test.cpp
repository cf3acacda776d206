// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/arrange/arrange.h"
#include "core/sketch/soundness.h"
#include "tests/core/arrange/rows.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

using namespace test;

TEST(LockedSet, touchesOnlyPiecesThatChange) {
    Sketch start = sketchOf({tickBox(0, 20'000), tickBox(0, 20'000)});
    pieceOf(start, 1).locked = true;
    const Edit lock = lockedSet(start, allIds(start), true);
    EXPECT_EQ(lock.pieces.size(), 1U);
    EXPECT_TRUE(after(start, lock).pieces.at(PieceId{2}).locked);
    const Edit unlock = lockedSet(start, allIds(start), false);
    EXPECT_EQ(unlock.pieces.size(), 1U);
    EXPECT_FALSE(after(start, unlock).pieces.at(PieceId{1}).locked);
}

TEST(MovedAll, movesAllButTheLocked) {
    Sketch start = sketchOf({tickBox(0, 20'000), tickBox(0, 20'000)});
    pieceOf(start, 1).locked = true;
    const Sketch done = after(start, movedAll(start, allIds(start), {ticks(3), ticks(-5)}));
    EXPECT_EQ(boxOf(done, 1), boxOf(start, 1));
    EXPECT_EQ(boxOf(done, 2), boxOf(start, 2).moved({ticks(3), ticks(-5)}));
    EXPECT_TRUE(movedAll(start, allIds(start), {}).isEmpty());
}

TEST(QuarterTurned, makesAnUprightSlotALyingOneAboutItsCentre) {
    Sketch start = sketchOf({{{in(2), in(6)}, {in(1), in(7)}}});
    Piece& slot = pieceOf(start, 1);
    slot.kind = PieceKind::PhotoSlot;
    slot.printSize = slot.size;
    const Piece done = after(start, quarterTurned(start, allIds(start))).pieces.at(PieceId{1});
    EXPECT_EQ(trimBox(done), (Rect{{in(1), in(7)}, {in(2), in(6)}}));
    EXPECT_EQ(done.printSize, (Size{in(6), in(4)}));
    EXPECT_EQ(done.rotation, Angle());
}

TEST(QuarterTurned, turnsPolygonCornersClockwise) {
    Sketch start = sketchOf({{{in(0), in(4)}, {in(0), in(2)}}});
    pieceOf(start, 1).shape = PolygonShape{{{{}, {}}, {in(4), {}}, {in(4), in(2)}}};
    const Piece done = after(start, quarterTurned(start, allIds(start))).pieces.at(PieceId{1});
    EXPECT_EQ(std::get<PolygonShape>(done.shape).corners,
              (std::vector<Point>{{in(2), {}}, {in(2), in(4)}, {{}, in(4)}}));
}

TEST(QuarterTurned, ofSeveralTurnsThemAboutTheirCommonCentreSoThatTheyKeepApart) {
    // Two upright slots side by side become two lying ones, the left one on top.
    const Sketch start =
        sketchOf({{{in(1), in(5)}, {in(2), in(8)}}, {{in(6), in(10)}, {in(2), in(8)}}});
    const Sketch done = after(start, quarterTurned(start, allIds(start)));
    EXPECT_EQ(boxOf(done, 1), (Rect{{Length::inches(2, 1, 2), Length::inches(8, 1, 2)},
                                    {Length::inches(0, 1, 2), Length::inches(4, 1, 2)}}));
    EXPECT_EQ(boxOf(done, 2), (Rect{{Length::inches(2, 1, 2), Length::inches(8, 1, 2)},
                                    {Length::inches(5, 1, 2), Length::inches(9, 1, 2)}}));
}

TEST(QuarterTurned, leavesLockedPiecesAndTheirBoundsOut) {
    Sketch start = sketchOf({{{in(1), in(5)}, {in(2), in(8)}}, {{in(6), in(10)}, {in(2), in(8)}}});
    pieceOf(start, 2).locked = true;
    const Sketch done = after(start, quarterTurned(start, allIds(start)));
    EXPECT_EQ(boxOf(done, 1), (Rect{{in(0), in(6)}, {in(3), in(7)}}));
    EXPECT_EQ(boxOf(done, 2), boxOf(start, 2));
    pieceOf(start, 1).locked = true;
    EXPECT_TRUE(quarterTurned(start, allIds(start)).isEmpty());
}

TEST(QuarterTurned, ofSeveralWithoutTurnsFourTimesGivesBackEveryPieceAndOverlapsNothingNew) {
    Random random(43);
    for (int i = 0; i < 300; ++i) {
        Sketch start = randomSketch(random, 5);
        for (auto& [id, piece] : start.pieces) {
            piece.rotation = Angle();
            piece.locked = false;
        }
        Sketch done = start;
        for (int turn = 1; turn <= 4; ++turn) {
            done = after(done, quarterTurned(done, allIds(done)));
            for (const auto& [id, piece] : done.pieces) {
                for (const auto& [other, its] : done.pieces) {
                    EXPECT_EQ(trimBox(piece).interiorIntersects(trimBox(its)),
                              trimBox(start.pieces.at(id))
                                  .interiorIntersects(trimBox(start.pieces.at(other))))
                        << "seed 43, sketch " << i;
                }
            }
        }
        EXPECT_EQ(done, start) << "seed 43, sketch " << i;
    }
}

TEST(QuarterTurned, ofOneTwiceGivesTheBoxAndFourTimesThePiece) {
    Random random(41);
    for (int i = 0; i < 300; ++i) {
        const Sketch start = randomSketch(random, 5);
        Sketch done = start;
        for (int turn = 1; turn <= 4; ++turn) {
            for (const PieceId id : start.order) {
                done = after(done, quarterTurned(done, std::span(&id, 1)));
            }
            for (const auto& [id, piece] : done.pieces) {
                const Rect now = trimBox(piece);
                const Rect before = trimBox(start.pieces.at(id));
                EXPECT_TRUE(turn % 2 != 0 || now == before) << "seed 41, sketch " << i;
                EXPECT_LE(abs(now.left() + now.right() - before.left() - before.right()), ticks(1));
            }
        }
        EXPECT_EQ(done, start) << "seed 41, sketch " << i;
    }
}

}  // namespace
}  // namespace matwright
