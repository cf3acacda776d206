// SPDX-License-Identifier: MIT
#include "core/carry/turned_sketch.h"

#include <gtest/gtest.h>

#include "core/sketch/soundness.h"
#include "tests/support/example_sketches.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

using namespace test;

constexpr Length in(std::int64_t whole, std::int64_t sixteenths = 0) {
    return Length::inches(whole, sixteenths, 16);
}

// 8 x 10 in, one lying 6x4 print 1 in from the left and 2 in from the top.
Sketch onePhoto() {
    Sketch sketch;
    sketch.page.size = {in(8), in(10)};
    sketch.page.margins = {in(0, 4), in(0, 8), in(0, 12), in(1)};
    Piece photo;
    photo.kind = PieceKind::PhotoSlot;
    photo.place = {in(1), in(2)};
    photo.size = {in(6), in(4)};
    photo.printSize = photo.size;
    sketch.pieces.emplace(PieceId{7}, photo);
    sketch.order = {PieceId{7}};
    return sketch;
}

Sketch after(const Sketch& sketch, std::initializer_list<WholeTurn> turns) {
    Sketch result = sketch;
    for (const WholeTurn turn : turns) {
        auto next = turned(result, turn);
        EXPECT_TRUE(next) << next.error().text();
        result = *next;
    }
    return result;
}

const Piece& photoOf(const Sketch& sketch) {
    return sketch.pieces.at(PieceId{7});
}

// Equal but for places, which may be off by so many ticks.
void expectEqualWithin(const Sketch& a, const Sketch& b, std::int64_t ticks, const char* what) {
    Sketch same = a;
    ASSERT_EQ(a.pieces.size(), b.pieces.size()) << what;
    for (auto& [id, piece] : same.pieces) {
        const Point other = b.pieces.at(id).place;
        EXPECT_LE(abs(piece.place.x - other.x).ticks(), ticks) << what;
        EXPECT_LE(abs(piece.place.y - other.y).ticks(), ticks) << what;
        piece.place = other;
    }
    EXPECT_EQ(same, b) << what;
}

TEST(TurnedSketch, mirrorsPlacesAndMarginsLeftAndRight) {
    const Sketch done = after(onePhoto(), {WholeTurn::MirroredLeftRight});
    EXPECT_EQ(done.page.size, (Size{in(8), in(10)}));
    EXPECT_EQ(done.page.margins, (Margins{in(0, 12), in(0, 8), in(0, 4), in(1)}));
    EXPECT_EQ(trimBox(photoOf(done)), (Rect{{in(1), in(7)}, {in(2), in(6)}}));
}

TEST(TurnedSketch, mirrorsPlacesAndMarginsTopAndBottom) {
    const Sketch done = after(onePhoto(), {WholeTurn::MirroredTopBottom});
    EXPECT_EQ(done.page.margins, (Margins{in(0, 4), in(1), in(0, 12), in(0, 8)}));
    EXPECT_EQ(trimBox(photoOf(done)), (Rect{{in(1), in(7)}, {in(4), in(8)}}));
}

TEST(TurnedSketch, turnsUpsideDownWithTheMarginsBothWays) {
    const Sketch done = after(onePhoto(), {WholeTurn::UpsideDown});
    EXPECT_EQ(done.page.margins, (Margins{in(0, 12), in(1), in(0, 4), in(0, 8)}));
    EXPECT_EQ(trimBox(photoOf(done)), (Rect{{in(1), in(7)}, {in(4), in(8)}}));
}

TEST(TurnedSketch, aQuarterTurnSwapsTheSidesOfPageBoxAndPrintButNotTheAngle) {
    const Sketch done = after(onePhoto(), {WholeTurn::QuarterClockwise});
    EXPECT_EQ(done.page.size, (Size{in(10), in(8)}));
    EXPECT_EQ(done.page.margins, (Margins{in(1), in(0, 4), in(0, 8), in(0, 12)}));
    EXPECT_EQ(trimBox(photoOf(done)), (Rect{{in(4), in(8)}, {in(1), in(7)}}));
    EXPECT_EQ(photoOf(done).printSize, (Size{in(4), in(6)}));
    EXPECT_TRUE(photoOf(done).rotation.isZero());
}

TEST(TurnedSketch, aQuarterTurnTheOtherWayPutsTheTopToTheLeft) {
    const Sketch done = after(onePhoto(), {WholeTurn::QuarterCounterClockwise});
    EXPECT_EQ(done.page.margins, (Margins{in(0, 8), in(0, 12), in(1), in(0, 4)}));
    EXPECT_EQ(trimBox(photoOf(done)), (Rect{{in(2), in(6)}, {in(1), in(7)}}));
}

TEST(TurnedSketch, mirrorsAnglesAndKeepsThemInTurns) {
    Sketch start = onePhoto();
    start.pieces.at(PieceId{7}).rotation = Angle::degrees(10);
    EXPECT_EQ(photoOf(after(start, {WholeTurn::MirroredLeftRight})).rotation, Angle::degrees(-10));
    EXPECT_EQ(photoOf(after(start, {WholeTurn::MirroredTopBottom})).rotation, Angle::degrees(-10));
    EXPECT_EQ(photoOf(after(start, {WholeTurn::UpsideDown})).rotation, Angle::degrees(10));
    EXPECT_EQ(photoOf(after(start, {WholeTurn::QuarterClockwise})).rotation, Angle::degrees(10));
}

TEST(TurnedSketch, takesPolygonCornersAlong) {
    Sketch start = onePhoto();
    start.pieces.at(PieceId{7}).shape = PolygonShape{{{{}, {}}, {in(6), in(1)}, {in(2), in(4)}}};
    const auto corners = [&](WholeTurn turn) {
        return std::get<PolygonShape>(photoOf(after(start, {turn})).shape).corners;
    };
    EXPECT_EQ(corners(WholeTurn::MirroredLeftRight),
              (std::vector<Point>{{in(6), {}}, {{}, in(1)}, {in(4), in(4)}}));
    EXPECT_EQ(corners(WholeTurn::MirroredTopBottom),
              (std::vector<Point>{{{}, in(4)}, {in(6), in(3)}, {in(2), {}}}));
    EXPECT_EQ(corners(WholeTurn::QuarterClockwise),
              (std::vector<Point>{{in(4), {}}, {in(3), in(6)}, {{}, in(2)}}));
    EXPECT_EQ(corners(WholeTurn::QuarterCounterClockwise),
              (std::vector<Point>{{{}, in(6)}, {in(1), {}}, {in(4), in(4)}}));
}

TEST(TurnedSketch, keepsADeeperBottomBorderAtTheBottomAndItsGapToTheMargin) {
    Sketch start = onePhoto();
    start.pieces.at(PieceId{7}).mats = {{in(0, 2), in(0, 8), "white"}};
    const Rect before = outermostBox(photoOf(start));
    const Sketch done = after(start, {WholeTurn::MirroredTopBottom});
    EXPECT_EQ(photoOf(done).mats, photoOf(start).mats);
    EXPECT_EQ(outermostBox(photoOf(done)).top(), in(10) - before.bottom());
    EXPECT_EQ(outermostBox(photoOf(done)).bottom(), in(10) - before.top());
    const Sketch quarter = after(start, {WholeTurn::QuarterClockwise});
    EXPECT_EQ(photoOf(quarter).mats, photoOf(start).mats);
}

TEST(TurnedSketch, mirrorsADoublePageAboutItsFold) {
    Sketch start = onePhoto();
    start.page.doublePage = true;
    start.page.foldGap = in(0, 8);
    const Sketch done = after(start, {WholeTurn::MirroredLeftRight});
    EXPECT_EQ(trimBox(photoOf(done)).x, (Interval{in(9, 8), in(15, 8)}));
    EXPECT_EQ(done.page.foldGap, in(0, 8));
}

TEST(TurnedSketch, refusesAQuarterTurnOfADoublePageInWords) {
    Sketch start = onePhoto();
    start.page.doublePage = true;
    for (const WholeTurn turn : allWholeTurns) {
        const auto done = turned(start, turn);
        EXPECT_EQ(done.has_value(), !isQuarter(turn));
        if (!done) {
            EXPECT_EQ(done.error().code, ErrorCode::Unsupported);
        }
    }
}

TEST(TurnedSketch, refusesWhatWouldLeaveTheCoordinates) {
    Sketch start = onePhoto();
    start.pieces.at(PieceId{7}).place.x = in(-999);
    ASSERT_FALSE(findFault(start));
    const auto done = turned(start, WholeTurn::MirroredLeftRight);
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, ErrorCode::OutOfRange);
}

TEST(TurnedSketch, turnedBackIsTheSameForAllExamples) {
    for (const ExampleSketch& example : exampleSketches()) {
        for (const WholeTurn turn :
             {WholeTurn::MirroredLeftRight, WholeTurn::MirroredTopBottom, WholeTurn::UpsideDown}) {
            expectEqualWithin(after(example.sketch, {turn, turn}), example.sketch, 1,
                              example.file.c_str());
        }
    }
}

TEST(TurnedSketch, lawsHoldForRandomSketches) {
    Random random(71);
    using enum WholeTurn;
    for (int i = 0; i < 1'000; ++i) {
        Sketch start = randomSketch(random, 8);
        bool exact = true;
        for (auto& [id, piece] : start.pieces) {
            bool deeper = false;
            for (const Mat& mat : piece.mats) {
                deeper |= mat.bottomBorder.has_value();
            }
            exact &= !deeper || piece.rotation.isQuarterTurn();
        }
        const std::string what = "seed 71, sketch " + std::to_string(i);
        for (const WholeTurn turn : {MirroredLeftRight, MirroredTopBottom}) {
            const Sketch once = after(start, {turn});
            EXPECT_EQ(findFault(once), std::nullopt) << what;
            EXPECT_EQ(once.order, start.order) << what;
            expectEqualWithin(after(once, {turn}), start, exact ? 0 : 2, what.c_str());
        }
        EXPECT_EQ(after(start, {UpsideDown, UpsideDown}), start) << what;
        expectEqualWithin(after(start, {MirroredLeftRight, MirroredTopBottom}),
                          after(start, {UpsideDown}), exact ? 0 : 2, what.c_str());
        if (start.page.doublePage) {
            continue;
        }
        const Sketch quarter = after(start, {QuarterClockwise});
        EXPECT_EQ(findFault(quarter), std::nullopt) << what;
        EXPECT_EQ(after(quarter, {QuarterClockwise, QuarterClockwise, QuarterClockwise}), start)
            << what;
        EXPECT_EQ(after(quarter, {QuarterCounterClockwise}), start) << what;
        EXPECT_EQ(after(start, {QuarterCounterClockwise, QuarterClockwise}), start) << what;
        expectEqualWithin(after(quarter, {QuarterClockwise}), after(start, {UpsideDown}), 1,
                          what.c_str());
    }
}

TEST(TurnedSketch, outermostBoxesMirrorExactlyWhereNothingIsTurned) {
    Random random(72);
    for (int i = 0; i < 300; ++i) {
        Sketch start = randomSketch(random, 6);
        for (auto& [id, piece] : start.pieces) {
            piece.rotation = Angle();
        }
        const Size page = surface(start.page).size();
        const Sketch done = after(start, {WholeTurn::UpsideDown});
        for (const auto& [id, piece] : start.pieces) {
            const Rect box = outermostBox(piece);
            EXPECT_EQ(outermostBox(done.pieces.at(id)),
                      (Rect{{page.width - box.right(), page.width - box.left()},
                            {page.height - box.bottom(), page.height - box.top()}}))
                << "seed 72, sketch " << i;
        }
    }
}

}  // namespace
}  // namespace matwright
