// SPDX-License-Identifier: MIT
#include "core/measure/rect.h"

#include <gtest/gtest.h>

#include <vector>

namespace matwright {
namespace {

constexpr Length at(std::int64_t n) {
    return Length::fromTicks(n);
}
constexpr Interval stretch(std::int64_t low, std::int64_t high) {
    return {at(low), at(high)};
}
constexpr Rect rect(std::int64_t left, std::int64_t top, std::int64_t right, std::int64_t bottom) {
    return {stretch(left, right), stretch(top, bottom)};
}

// Every stretch within 0..5, single points included.
std::vector<Interval> allStretches() {
    std::vector<Interval> all;
    for (int low = 0; low <= 5; ++low) {
        for (int high = low; high <= 5; ++high) {
            all.push_back(stretch(low, high));
        }
    }
    return all;
}

TEST(Interval, ContainsItsEndsAndInteriorContainsDoesNot) {
    const Interval i = stretch(2, 5);
    const bool inside[] = {false, false, true, true, true, true, false};
    const bool interior[] = {false, false, false, true, true, false, false};
    for (int v = 0; v <= 6; ++v) {
        EXPECT_EQ(i.contains(at(v)), inside[v]) << v;
        EXPECT_EQ(i.interiorContains(at(v)), interior[v]) << v;
    }
}

TEST(Interval, TouchingCountsForIntersectsOnly) {
    struct Row {
        Interval a, b;
        bool intersects, interior;
    };
    for (const Row& row : std::vector<Row>{
             {stretch(0, 2), stretch(3, 5), false, false},
             {stretch(0, 2), stretch(2, 5), true, false},
             {stretch(0, 3), stretch(2, 5), true, true},
             {stretch(0, 5), stretch(2, 3), true, true},
             {stretch(2, 3), stretch(2, 3), true, true},
         }) {
        EXPECT_EQ(row.a.intersects(row.b), row.intersects);
        EXPECT_EQ(row.b.intersects(row.a), row.intersects);
        EXPECT_EQ(row.a.interiorIntersects(row.b), row.interior);
        EXPECT_EQ(row.b.interiorIntersects(row.a), row.interior);
    }
}

TEST(Interval, PredicatesAgreeWithLookingAtEveryPoint) {
    for (const Interval& a : allStretches()) {
        for (const Interval& b : allStretches()) {
            bool shared = false;
            bool all = true;
            for (int v = 0; v <= 5; ++v) {
                shared = shared || (a.contains(at(v)) && b.contains(at(v)));
                all = all && (!b.contains(at(v)) || a.contains(at(v)));
            }
            EXPECT_EQ(a.intersects(b), shared);
            EXPECT_EQ(a.contains(b), all);
        }
    }
}

TEST(Interval, UnitedIsTheSmallestThatHoldsBoth) {
    for (const Interval& a : allStretches()) {
        for (const Interval& b : allStretches()) {
            const Interval both = a.united(b);
            EXPECT_TRUE(both.contains(a) && both.contains(b));
            EXPECT_TRUE(both.low == a.low || both.low == b.low);
            EXPECT_TRUE(both.high == a.high || both.high == b.high);
            EXPECT_EQ(both, b.united(a));
            EXPECT_EQ(both == a, a.contains(b));
        }
    }
}

TEST(Interval, MovesGrowsAndFindsItsMiddle) {
    EXPECT_EQ(stretch(2, 5).moved(at(-3)), stretch(-1, 2));
    EXPECT_EQ(stretch(2, 5).expanded(at(2)), stretch(0, 7));
    EXPECT_EQ(stretch(0, 7).expanded(at(-2)), stretch(2, 5));
    EXPECT_EQ(stretch(2, 5).length(), at(3));
    EXPECT_EQ(stretch(2, 5).centreRoundedDown(), at(3));
    EXPECT_EQ(stretch(-5, -2).centreRoundedDown(), at(-4));
    EXPECT_EQ(stretch(2, 6).centreRoundedDown(), at(4));
}

TEST(Size, FitsAsItLiesEqualSizesIncluded) {
    const Size print{at(4), at(6)};
    EXPECT_TRUE(print.contains(print));
    EXPECT_TRUE(print.contains({at(3), at(6)}));
    EXPECT_FALSE(print.contains({at(5), at(6)}));
    EXPECT_FALSE(print.contains(print.turned()));
    EXPECT_EQ(print.turned().turned(), print);
}

TEST(Size, KnowsItsStanding) {
    EXPECT_TRUE((Size{at(4), at(6)}).isUpright());
    EXPECT_FALSE((Size{at(6), at(4)}).isUpright());
    EXPECT_FALSE((Size{at(4), at(4)}).isUpright());
    EXPECT_TRUE((Size{at(1), at(1)}).isPositive());
    EXPECT_FALSE((Size{at(0), at(1)}).isPositive());
    EXPECT_FALSE((Size{at(1), at(-1)}).isPositive());
}

TEST(Rect, IsBuiltFromACornerAndASizeOrFromTwoPoints) {
    const Rect expected = rect(1, 2, 5, 8);
    EXPECT_EQ(Rect::at({at(1), at(2)}, {at(4), at(6)}), expected);
    EXPECT_EQ(Rect::spanning({at(1), at(2)}, {at(5), at(8)}), expected);
    EXPECT_EQ(Rect::spanning({at(5), at(2)}, {at(1), at(8)}), expected);
    EXPECT_EQ(Rect::spanning({at(5), at(8)}, {at(1), at(2)}), expected);
    EXPECT_EQ(Rect::at(expected.topLeft(), expected.size()), expected);
    EXPECT_EQ(expected.bottomRight(), (Point{at(5), at(8)}));
    EXPECT_EQ(expected.centreRoundedDown(), (Point{at(3), at(5)}));
}

TEST(Rect, NeedsBothAxesForEveryPredicate) {
    const Rect r = rect(0, 0, 4, 4);
    EXPECT_TRUE(r.contains(Point{at(4), at(0)}));
    EXPECT_FALSE(r.contains(Point{at(4), at(5)}));
    EXPECT_FALSE(r.contains(Point{at(5), at(4)}));
    EXPECT_TRUE(r.contains(rect(0, 0, 4, 4)));
    EXPECT_FALSE(r.contains(rect(0, 0, 4, 5)));
    EXPECT_FALSE(r.contains(rect(-1, 0, 4, 4)));
    EXPECT_TRUE(r.intersects(rect(4, 4, 6, 6))) << "a shared corner";
    EXPECT_FALSE(r.interiorIntersects(rect(4, 4, 6, 6)));
    EXPECT_FALSE(r.interiorIntersects(rect(4, 0, 6, 4))) << "a shared edge";
    EXPECT_FALSE(r.intersects(rect(5, 0, 6, 4)));
    EXPECT_FALSE(r.intersects(rect(0, 5, 4, 6)));
    EXPECT_TRUE(r.interiorIntersects(rect(3, 3, 6, 6)));
}

TEST(Rect, MovesGrowsAndUnitesPerAxis) {
    EXPECT_EQ(rect(0, 0, 2, 3).moved({at(5), at(-1)}), rect(5, -1, 7, 2));
    EXPECT_EQ(rect(2, 2, 4, 6).expanded(at(1)), rect(1, 1, 5, 7));
    EXPECT_EQ(rect(0, 4, 1, 5).united(rect(3, 0, 9, 1)), rect(0, 0, 9, 5));
}

TEST(Point, AddsAndSubtractsPerAxis) {
    const Point a{at(3), at(-4)};
    const Point b{at(10), at(20)};
    EXPECT_EQ(a + b, (Point{at(13), at(16)}));
    EXPECT_EQ(a + b - b, a);
}

}  // namespace
}  // namespace matwright
