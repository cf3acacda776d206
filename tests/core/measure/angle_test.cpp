// SPDX-License-Identifier: MIT
#include "core/measure/angle.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace matwright {
namespace {

TEST(Angle, IsAlwaysHeldBelowAFullTurn) {
    EXPECT_EQ(Angle::degrees(360), Angle());
    EXPECT_EQ(Angle::degrees(-90), Angle::degrees(270));
    EXPECT_EQ(Angle::degrees(725), Angle::degrees(5));
    EXPECT_EQ(Angle::millidegrees(-1).toMillidegrees(), 359'999);
    EXPECT_EQ(Angle::millidegrees(360'000).toMillidegrees(), 0);
    EXPECT_EQ(Angle::degrees(1'000'000'000'000'000'000).toMillidegrees(), 280'000);
}

TEST(Angle, SumsAndOppositesAreExact) {
    for (std::int64_t n = 0; n < 360'000; n += 777) {
        const Angle angle = Angle::millidegrees(n);
        EXPECT_EQ(angle + -angle, Angle());
        EXPECT_EQ(angle - angle, Angle());
        EXPECT_EQ(angle + Angle::degrees(359) + Angle::degrees(1), angle);
        EXPECT_EQ(angle - Angle::degrees(90) + Angle::degrees(90), angle);
    }
}

TEST(Angle, FoursQuarterTurnsAndNoOtherAreQuarterTurns) {
    for (const int degrees : {0, 90, 180, 270}) {
        EXPECT_TRUE(Angle::degrees(degrees).isQuarterTurn());
    }
    EXPECT_FALSE(Angle::millidegrees(90'001).isQuarterTurn());
    EXPECT_FALSE(Angle::degrees(45).isQuarterTurn());
    EXPECT_TRUE(Angle().isZero());
    EXPECT_FALSE(Angle::millidegrees(1).isZero());
}

TEST(Angle, QuarterTurnsHaveExactCosinesAndSines) {
    const double cosines[] = {1, 0, -1, 0};
    const double sines[] = {0, 1, 0, -1};
    for (int quarter = 0; quarter < 4; ++quarter) {
        EXPECT_EQ(Angle::degrees(90 * quarter).cosine(), cosines[quarter]);
        EXPECT_EQ(Angle::degrees(90 * quarter).sine(), sines[quarter]);
    }
}

TEST(Angle, CosineAndSineLieOnTheUnitCircle) {
    for (std::int64_t n = 1; n < 360'000; n += 331) {
        const Angle angle = Angle::millidegrees(n);
        EXPECT_NEAR(angle.cosine() * angle.cosine() + angle.sine() * angle.sine(), 1, 4e-16);
        EXPECT_NEAR(angle.sine(), (angle - Angle::degrees(90)).cosine(), 2e-15);
    }
    // The smallest turn there is keeps all its digits.
    const double radians = std::numbers::pi / 180'000;
    EXPECT_NEAR(Angle::millidegrees(1).sine() / radians, 1, 1e-10);
}

TEST(Angle, DoublesRoundToThousandthsOfADegree) {
    EXPECT_EQ(Angle::roundedFromDegrees(12.3456), Angle::millidegrees(12'346));
    EXPECT_EQ(Angle::roundedFromDegrees(-0.0004), Angle());
    EXPECT_EQ(Angle::roundedFromDegrees(-0.0006), Angle::millidegrees(359'999));
    EXPECT_EQ(Angle::roundedFromDegrees(359.9996), Angle());
    EXPECT_DOUBLE_EQ(Angle::millidegrees(12'346).toDegrees(), 12.346);
    EXPECT_DOUBLE_EQ(Angle::degrees(180).toRadians(), std::numbers::pi);
}

TEST(Angle, RoundsToAStepOverTheFullTurn) {
    const Angle step = Angle::degrees(15);
    EXPECT_EQ(Angle::millidegrees(7'499).roundedTo(step), Angle());
    EXPECT_EQ(Angle::millidegrees(7'500).roundedTo(step), step);
    EXPECT_EQ(Angle::degrees(352).roundedTo(step), Angle::degrees(345));
    EXPECT_EQ(Angle::degrees(353).roundedTo(step), Angle());
}

TEST(TurnText, SaysTheShortWayRound) {
    EXPECT_EQ(turnText(Angle()), "0\u00B0");
    EXPECT_EQ(turnText(Angle::degrees(6)), "6\u00B0 to the right");
    EXPECT_EQ(turnText(Angle::degrees(354)), "6\u00B0 to the left");
    EXPECT_EQ(turnText(Angle::millidegrees(12'345)), "12.345\u00B0 to the right");
    EXPECT_EQ(turnText(Angle::millidegrees(179'999)), "179.999\u00B0 to the right");
    EXPECT_EQ(turnText(Angle::degrees(180)), "180\u00B0");
    EXPECT_EQ(turnText(Angle::millidegrees(180'001)), "179.999\u00B0 to the left");
}

}  // namespace
}  // namespace matwright
