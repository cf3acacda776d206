// SPDX-License-Identifier: MIT
#include "core/carry/springs.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/measure/length.h"

namespace matwright::carry {
namespace {

constexpr double inch = Length::ticksPerInch;

// Point 0 at 0, point 1 between, point 2 held at `end`.
Springs twoInARow(double end, Springs::Shares shares, double weight = 1) {
    Springs springs({0, 2 * inch, 8 * inch}, shares);
    EXPECT_TRUE(springs.require({{2, 1.0}}, end));
    springs.add(Spring{{0, 1, 0}, 2 * inch, 1});
    springs.add(Spring{{1, 2, 0}, 6 * inch, weight});
    return springs;
}

TEST(Springs, shareInProportionToTheirLengths) {
    const auto places = twoInARow(12 * inch, Springs::Shares::InProportion).settle();
    EXPECT_NEAR(places[1], 3 * inch, inch / 1000);
    EXPECT_DOUBLE_EQ(places[2], 12 * inch);
}

TEST(Springs, shareEvenlyWhenAskedTo) {
    const auto places = twoInARow(12 * inch, Springs::Shares::Even).settle();
    EXPECT_NEAR(places[1], 4 * inch, inch / 1000);
}

TEST(Springs, aHeavySpringHardlyGives) {
    const auto places = twoInARow(12 * inch, Springs::Shares::Even, 1000).settle();
    EXPECT_NEAR(places[1], 6 * inch, inch / 100);
}

TEST(Springs, stopAtTheirBoundsAndNotBefore) {
    for (const double least : {1 * inch, 5 * inch}) {
        Springs springs = twoInARow(12 * inch, Springs::Shares::InProportion);
        springs.add(Bound{{0, 1, 0}, least});
        const auto places = springs.settle();
        EXPECT_NEAR(places[1], std::max(least, 3 * inch), inch / 1000) << least;
    }
}

TEST(Springs, equationsHoldWhateverTheSpringsWish) {
    Springs springs({0, inch, 3 * inch}, Springs::Shares::InProportion);
    // Symmetrical about 5 in.
    ASSERT_TRUE(springs.require({{1, 1.0}, {2, 1.0}}, 10 * inch));
    EXPECT_TRUE(springs.require({{2, 2.0}, {1, 2.0}}, 20 * inch));
    EXPECT_FALSE(springs.require({{1, 1.0}, {2, 1.0}}, 11 * inch));
    springs.add(Spring{{1, 2, 0}, 4 * inch, 1});
    const auto places = springs.settle();
    EXPECT_NEAR(places[1] + places[2], 10 * inch, 0.01);
    EXPECT_NEAR(places[2] - places[1], 4 * inch, inch / 100);
}

}  // namespace
}  // namespace matwright::carry
