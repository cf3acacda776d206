// SPDX-License-Identifier: MIT
#include "core/carry/line_sets.h"

#include <gtest/gtest.h>

namespace matwright::carry {
namespace {

constexpr Length ticks(std::int64_t n) {
    return Length::fromTicks(n);
}

TEST(LineSets, distancesAddUpAlongAChain) {
    LineSets sets(4);
    EXPECT_TRUE(sets.require(3, 2, ticks(5)));
    EXPECT_TRUE(sets.require(1, 2, ticks(-2)));
    EXPECT_TRUE(sets.require(0, 1, ticks(100)));
    EXPECT_EQ(sets.setOf(3), 0U);
    EXPECT_EQ(sets.offsetOf(2), ticks(98));
    EXPECT_EQ(sets.offsetOf(3), ticks(93));
}

TEST(LineSets, takesWhatFollowsAndRefusesWhatContradicts) {
    LineSets sets(3);
    ASSERT_TRUE(sets.require(1, 2, ticks(7)));
    EXPECT_TRUE(sets.require(2, 1, ticks(-7)));
    EXPECT_FALSE(sets.require(1, 2, ticks(8)));
    EXPECT_EQ(sets.offsetOf(2) - sets.offsetOf(1), ticks(7));
    EXPECT_NE(sets.setOf(1), sets.setOf(0));
}

}  // namespace
}  // namespace matwright::carry
