// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cmath>

#include "core/gesture/gesture.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

constexpr Length in(std::int64_t whole) {
    return Length::inches(whole);
}

// Centre at (4, 6) in.
Piece block() {
    Piece piece;
    piece.place = {in(2), in(3)};
    piece.size = {in(4), in(6)};
    return piece;
}

TEST(TurnedTo, countsClockwiseAsSeenOnThePage) {
    const Point above{in(4), in(2)};
    struct Row {
        Point now;
        int degrees;
    };
    const Row rows[] = {
        {above, 0},           {{in(9), in(6)}, 90}, {{in(4), in(11)}, 180}, {{in(1), in(6)}, 270},
        {{in(5), in(5)}, 45}, {{in(3), in(5)}, 315}};
    for (const Row& row : rows) {
        EXPECT_EQ(turnedTo(block(), above, row.now, {}), Angle::degrees(row.degrees));
    }
}

TEST(TurnedTo, addsToTheTurnThePieceHadAtTheStart) {
    Piece piece = block();
    piece.rotation = Angle::degrees(350);
    EXPECT_EQ(turnedTo(piece, {in(4), in(2)}, {in(9), in(6)}, {}), Angle::degrees(80));
}

TEST(TurnedTo, goesToTheNearestStepOfTheWholeAngle) {
    Piece piece = block();
    piece.rotation = Angle::degrees(7);
    const Point grab{in(4), in(2)};
    EXPECT_EQ(turnedTo(piece, grab, grab, Angle::degrees(15)), Angle());
    EXPECT_EQ(turnedTo(piece, grab, {in(5), in(5)}, Angle::degrees(15)), Angle::degrees(45));
    piece.rotation = Angle::degrees(353);
    EXPECT_EQ(turnedTo(piece, grab, grab, Angle::degrees(15)), Angle());
}

TEST(TurnedTo, keepsTheAngleAtTheVeryCentre) {
    Piece piece = block();
    piece.rotation = Angle::degrees(33);
    EXPECT_EQ(turnedTo(piece, {in(4), in(2)}, {in(4), in(6)}, {}), piece.rotation);
    EXPECT_EQ(turnedTo(piece, {in(4), in(6)}, {in(9), in(9)}, {}), piece.rotation);
}

TEST(TurnedAbout, carriesThePieceRoundTheCentreAndTurnsIt) {
    const Piece after = turnedAbout(block(), {}, Angle::degrees(90));
    EXPECT_EQ(after.rotation, Angle::degrees(90));
    EXPECT_EQ(trimBounds(after), (Rect{{-in(9), -in(3)}, {in(2), in(6)}}));
}

TEST(TurnedAbout, aboutItsOwnCentreOnlyTurns) {
    Piece turned = block();
    turned.rotation = Angle::degrees(33);
    EXPECT_EQ(turnedAbout(block(), {in(4), in(6)}, Angle::degrees(33)), turned);
}

TEST(TurnedAbout, backAgainIsTheSameWithinTwoTicks) {
    test::Random random(21);
    for (int i = 0; i < 2000; ++i) {
        const Piece start = test::randomPiece(random);
        const Angle by =
            Angle::millidegrees(static_cast<std::int64_t>(test::below(random, 360'000)));
        const Point centre{Length::fromTicks(static_cast<std::int64_t>(random() % 9'000'000)),
                           Length::fromTicks(static_cast<std::int64_t>(random() % 9'000'000))};
        const Piece back = turnedAbout(turnedAbout(start, centre, by), centre, -by);
        EXPECT_EQ(back.rotation, start.rotation);
        EXPECT_LE(abs(back.place.x - start.place.x).ticks(), 2) << "seed 21, turn " << i;
        EXPECT_LE(abs(back.place.y - start.place.y).ticks(), 2) << "seed 21, turn " << i;
    }
}

TEST(TurnedAbout, keepsDistancesBetweenCentresWithinTwoTicks) {
    const Point centre{in(6), in(6)};
    Piece other = block();
    other.place = {in(7), in(1)};
    for (int degrees = 1; degrees < 360; degrees += 7) {
        const Angle by = Angle::degrees(degrees);
        const Point a = trimBox(turnedAbout(block(), centre, by)).centreRoundedDown();
        const Point b = trimBox(turnedAbout(other, centre, by)).centreRoundedDown();
        const Point d = b - a;
        const Point d0 = trimBox(other).centreRoundedDown() - trimBox(block()).centreRoundedDown();
        EXPECT_NEAR(std::hypot(d.x.toInches(), d.y.toInches()),
                    std::hypot(d0.x.toInches(), d0.y.toInches()), 2.0 / Length::ticksPerInch);
    }
}

}  // namespace
}  // namespace matwright
