// SPDX-License-Identifier: MIT
#include "core/outline/region.h"

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>
#include <numbers>

#include "core/outline/outline.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

Rect box(int left, int top, int right, int bottom) {
    return {{Length::inches(left), Length::inches(right)},
            {Length::inches(top), Length::inches(bottom)}};
}

Region boxRegion(int left, int top, int right, int bottom) {
    return regionOf(rectPath(box(left, top, right, bottom)));
}

TEST(Region, ABoxHasItsArea) {
    EXPECT_NEAR(areaSquareInches(boxRegion(0, 0, 4, 6)), 24, 24e-9);
    EXPECT_NEAR(areaSquareInches(boxRegion(-3, -2, -1, 1)), 6, 6e-9);
}

TEST(Region, ADiscHasTheAreaOfItsCircleWithinTheCurveError) {
    EXPECT_NEAR(areaSquareInches(regionOf(ovalPath(box(0, 0, 4, 4)))), 4 * std::numbers::pi,
                4 * std::numbers::pi * 0.0006);
}

TEST(Region, FewerThanThreeCornersAreEmpty) {
    EXPECT_TRUE(regionOf(polygonPath({})).isEmpty());
    EXPECT_TRUE(regionOf(polygonPath({{1, 1}})).isEmpty());
    EXPECT_TRUE(regionOf(polygonPath({{1, 1}, {2, 2}})).isEmpty());
}

TEST(Region, TheEmptyRegionIsNeutral) {
    const Region some = boxRegion(0, 0, 2, 2);
    EXPECT_EQ(areaSquareInches(Region{}), 0);
    EXPECT_TRUE(united({}).isEmpty());
    EXPECT_NEAR(areaSquareInches(united({Region{}, some, Region{}})), 4, 1e-9);
    EXPECT_TRUE(intersected(some, {}).isEmpty());
    EXPECT_TRUE(intersected({}, some).isEmpty());
    EXPECT_NEAR(areaSquareInches(subtracted(some, {})), 4, 1e-9);
    EXPECT_TRUE(subtracted({}, some).isEmpty());
    EXPECT_EQ(boundsOf(Region{}), Rect{});
}

TEST(Region, TouchingBoxesShareNoArea) {
    const Region a = boxRegion(0, 0, 2, 2);
    EXPECT_EQ(areaSquareInches(intersected(a, boxRegion(2, 0, 4, 2))), 0);
    EXPECT_EQ(areaSquareInches(intersected(a, boxRegion(2, 2, 4, 4))), 0);
    EXPECT_NEAR(areaSquareInches(united({a, boxRegion(2, 0, 4, 2)})), 8, 1e-8);
}

TEST(Region, AHoleIsNotArea) {
    const Region frame = subtracted(boxRegion(0, 0, 4, 4), boxRegion(1, 1, 3, 3));
    ASSERT_EQ(frame.parts.size(), 1u);
    EXPECT_EQ(frame.parts.front().holes.size(), 1u);
    EXPECT_NEAR(areaSquareInches(frame), 12, 1e-8);
    EXPECT_EQ(boundsOf(frame), box(0, 0, 4, 4));
    EXPECT_TRUE(intersected(frame, boxRegion(1, 1, 3, 3)).isEmpty());
}

TEST(Region, ApartBoxesStayTwoParts) {
    const Region both = united({boxRegion(0, 0, 1, 1), boxRegion(3, 4, 5, 6)});
    EXPECT_EQ(both.parts.size(), 2u);
    EXPECT_EQ(boundsOf(both), box(0, 0, 5, 6));
}

TEST(Region, AnOutlineThatCrossesItselfIsNoCrash) {
    const double i = Length::ticksPerInch;
    const Region bowTie = regionOf(polygonPath({{0, 0}, {2 * i, 2 * i}, {2 * i, 0}, {0, 2 * i}}));
    EXPECT_NO_THROW({
        united({bowTie, boxRegion(0, 0, 1, 2)});
        intersected(bowTie, boxRegion(0, 0, 1, 2));
        subtracted(bowTie, boxRegion(0, 0, 1, 2));
    });
}

// |A or B| + |A and B| = |A| + |B| and |A without B| + |A and B| = |A|
TEST(Region, AreasAddUpForRandomPieces) {
    constexpr std::uint64_t seed = 4711;
    constexpr int runs = 2'000;
    test::Random random(seed);
    double worst = 0;
    for (int run = 0; run < runs; ++run) {
        const Piece a = test::randomPiece(random);
        Piece b = test::randomPiece(random);
        if (run % 3 == 0) {
            // Laid edge to edge as far as ticks allow, where set operations are hardest.
            b = a;
            b.place.x += Length::roundedFromTicks(a.rotation.cosine() *
                                                  static_cast<double>(a.size.width.ticks()));
            b.place.y += Length::roundedFromTicks(a.rotation.sine() *
                                                  static_cast<double>(a.size.width.ticks()));
        }
        const Region ra = regionOf(outermostOutline(a));
        const Region rb = regionOf(outermostOutline(b));
        const double areaA = areaSquareInches(ra), areaB = areaSquareInches(rb);
        const double both = areaSquareInches(intersected(ra, rb));
        worst =
            std::max(worst, std::abs(areaSquareInches(united({ra, rb})) + both - areaA - areaB));
        worst = std::max(worst, std::abs(areaSquareInches(subtracted(ra, rb)) + both - areaA));
    }
    std::cout << runs << " pairs, seed " << seed << ": areas add up within " << worst << " sq in\n";
    EXPECT_LT(worst, 1e-6);
}

}  // namespace
}  // namespace matwright
