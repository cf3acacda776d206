// SPDX-License-Identifier: MIT
#include "core/measure/length.h"

#include <gtest/gtest.h>

#include <cstdint>
#include <random>
#include <type_traits>
#include <vector>

namespace matwright {
namespace {

constexpr Length ticks(std::int64_t n) {
    return Length::fromTicks(n);
}

TEST(Length, AnInchIs254TenthsOfAMillimetre) {
    // NBS Circular 572, addendum of 22 January 1960: 1 inch equals 25.4 millimetres.
    EXPECT_EQ(10 * Length::inches(1), Length::millimetres(254));
    EXPECT_EQ(Length::inches(12), Length::hundredthMillimetres(30'480));
}

TEST(Length, TicksAreTheUnitOfEcma376) {
    // ECMA-376, English Metric Unit: 914,400 per inch, 360,000 per cm, 12,700 per point.
    EXPECT_EQ(Length::inches(1).ticks(), 914'400);
    EXPECT_EQ(Length::millimetres(10).ticks(), 360'000);
    EXPECT_EQ(Length::points(1).ticks(), 12'700);
}

TEST(Length, ThirtySecondsHundredthMillimetresAndPointsAreOnTheGrid) {
    EXPECT_EQ(32 * Length::inches(0, 1, 32), Length::inches(1));
    EXPECT_EQ(100 * Length::hundredthMillimetres(1), Length::millimetres(1));
    EXPECT_EQ(72 * Length::points(1), Length::inches(1));
    EXPECT_EQ(72 * Length::inches(0, 1, 72), Length::inches(1));
}

TEST(Length, EverySixteenthHasItsExactMillimetres) {
    // 1/16 in = 1.5875 mm, so 4 of them are 6.35 mm.
    for (int n = 0; n < 100; ++n) {
        EXPECT_EQ(Length::inches(0, 4 * n, 16), Length::hundredthMillimetres(635 * n));
    }
}

TEST(Length, ASixtyFourthIsRoundedToTheNearestTickNotCut) {
    EXPECT_EQ(Length::inches(0, 1, 64), ticks(14'288)) << "14,287.5";
    EXPECT_EQ(Length::inches(0, -1, 64), ticks(-14'288));
    EXPECT_EQ(Length::inches(0, 2, 64), Length::inches(0, 1, 32));
    EXPECT_EQ(Length::inches(0, 63, 64), ticks(900'113)) << "900,112.5";
    EXPECT_EQ(Length::inches(0, 1, 7), ticks(130'629)) << "130,628.57";
}

TEST(Length, WholeAndFractionHaveTheSameSign) {
    EXPECT_EQ(Length::inches(3, 1, 2), ticks(3'200'400));
    EXPECT_EQ(Length::inches(-3, -1, 2), -Length::inches(3, 1, 2));
}

TEST(Length, OnlyAFactoryMakesALengthFromANumber) {
    static_assert(!std::is_convertible_v<int, Length>);
    static_assert(!std::is_constructible_v<Length, int>);
    static_assert(!std::is_constructible_v<Length, double>);
    EXPECT_TRUE(Length().isZero());
}

TEST(Length, DoublesRoundHalfAwayFromZero) {
    EXPECT_EQ(Length::roundedFromTicks(0.4999), ticks(0));
    EXPECT_EQ(Length::roundedFromTicks(0.5), ticks(1));
    EXPECT_EQ(Length::roundedFromTicks(-0.5), ticks(-1));
    EXPECT_EQ(Length::roundedFromTicks(2.5), ticks(3));
    EXPECT_EQ(Length::roundedFromTicks(-2.5), ticks(-3));
    EXPECT_EQ(Length::roundedFromInches(3.5), Length::inches(3, 1, 2));
    EXPECT_EQ(Length::roundedFromMillimetres(8.9), Length::hundredthMillimetres(890));
}

TEST(Length, RoundingToAStepTakesTheNearestMultipleAndHalvesAwayFromZero) {
    struct Row {
        std::int64_t length, step, expected;
    };
    for (const Row& row : std::vector<Row>{{0, 10, 0},
                                           {4, 10, 0},
                                           {5, 10, 10},
                                           {-4, 10, 0},
                                           {-5, 10, -10},
                                           {14, 10, 10},
                                           {15, 10, 20},
                                           {-15, 10, -20},
                                           {7, 1, 7},
                                           {3, 7, 0},
                                           {4, 7, 7},
                                           {-4, 7, -7},
                                           {-3, 7, 0},
                                           {10, 7, 7},
                                           {11, 7, 14}}) {
        EXPECT_EQ(ticks(row.length).roundedTo(ticks(row.step)), ticks(row.expected))
            << row.length << " to " << row.step;
    }
}

TEST(Length, RoundedToIsAMultipleAtMostHalfAStepAwayAndStaysThere) {
    std::mt19937_64 random(1);
    for (int i = 0; i < 10'000; ++i) {
        const Length length =
            ticks(static_cast<std::int64_t>(random() % 2'000'000'000) - 1'000'000'000);
        const Length step = ticks(static_cast<std::int64_t>(random() % 1'000'000) + 1);
        const Length rounded = length.roundedTo(step);
        EXPECT_TRUE(rounded.isMultipleOf(step));
        EXPECT_LE(2 * abs(rounded - length), step);
        EXPECT_EQ(rounded.roundedTo(step), rounded);
        EXPECT_EQ((-length).roundedTo(step), -rounded);
    }
}

TEST(Length, ScalingByARatioRoundsHalfAwayFromZero) {
    struct Row {
        std::int64_t length, numerator, denominator, expected;
    };
    for (const Row& row : std::vector<Row>{{10, 1, 4, 3},    // 2.5
                                           {-10, 1, 4, -3},  // -2.5
                                           {10, -1, 4, -3},
                                           {10, 1, -4, -3},
                                           {-10, 1, -4, 3},
                                           {9, 1, 4, 2},   // 2.25
                                           {11, 1, 4, 3},  // 2.75
                                           {0, 5, 7, 0},
                                           {7, 0, 3, 0},
                                           {5, 3, 3, 5}}) {
        EXPECT_EQ(ticks(row.length).scaledRounded(row.numerator, row.denominator),
                  ticks(row.expected))
            << row.length << " * " << row.numerator << " / " << row.denominator;
    }
}

TEST(Length, ScalingIsExactInTheMiddleUpToTheCoordinateLimit) {
    const Length limit = Length::coordinateLimit();
    // The product has 60 bits and, one tick up, no exact double.
    EXPECT_EQ(limit.scaledRounded(limit.ticks(), limit.ticks()), limit);
    EXPECT_EQ((limit - ticks(1)).scaledRounded(limit.ticks(), limit.ticks()), limit - ticks(1));
    EXPECT_EQ(limit.scaledRounded(limit.ticks() - 1, limit.ticks()), limit - ticks(1));
    EXPECT_EQ(limit.scaledRounded(limit.ticks(), 1).ticks(), 914'400'000LL * 914'400'000LL);
    EXPECT_EQ((-limit).scaledRounded(limit.ticks(), 1).ticks(), -914'400'000LL * 914'400'000LL);
}

TEST(Length, ScalingByADoubleRoundsToTheTick) {
    EXPECT_EQ(Length::inches(3).scaledRounded(0.5), Length::inches(1, 1, 2));
    EXPECT_EQ(ticks(3).scaledRounded(0.5), ticks(2));
    EXPECT_EQ(ticks(-3).scaledRounded(0.5), ticks(-2));
}

TEST(Length, AHalfGoesTowardsMinusInfinity) {
    EXPECT_EQ(ticks(4).halfRoundedDown(), ticks(2));
    EXPECT_EQ(ticks(5).halfRoundedDown(), ticks(2));
    EXPECT_EQ(ticks(-5).halfRoundedDown(), ticks(-3));
    EXPECT_EQ(ticks(-4).halfRoundedDown(), ticks(-2));
}

TEST(Length, CrossProductsOfDifferencesWithinTheLimitFitIn64Bits) {
    const std::int64_t difference = 2 * Length::coordinateLimit().ticks();
    EXPECT_LT(difference, INT64_MAX / 2 / difference) << "two products, subtracted";
}

TEST(Length, ComparesAndCountsLikeANumber) {
    EXPECT_LT(ticks(-1), ticks(0));
    EXPECT_TRUE(ticks(-1).isNegative());
    EXPECT_FALSE(ticks(0).isNegative());
    EXPECT_FALSE(ticks(0).isPositive());
    EXPECT_TRUE(ticks(1).isPositive());
    EXPECT_EQ(abs(ticks(-7)), ticks(7));
    EXPECT_EQ(abs(ticks(7)), ticks(7));
    Length sum = Length::inches(1);
    sum += Length::millimetres(1);
    sum -= Length::inches(1);
    EXPECT_EQ(sum, Length::millimetres(1));
    EXPECT_EQ(ratio(Length::inches(3), Length::inches(4)), 0.75);
    EXPECT_TRUE(ticks(0).isMultipleOf(ticks(7)));
    EXPECT_TRUE(ticks(-14).isMultipleOf(ticks(7)));
    EXPECT_FALSE(ticks(13).isMultipleOf(ticks(7)));
}

TEST(Length, ReadsAsDoublesInEveryUnit) {
    EXPECT_DOUBLE_EQ(Length::inches(8, 1, 2).toMillimetres(), 215.9);
    EXPECT_DOUBLE_EQ(Length::inches(8, 1, 2).toPoints(), 612);
    EXPECT_DOUBLE_EQ(Length::inches(8, 1, 2).toInches(), 8.5);
}

}  // namespace
}  // namespace matwright
