// SPDX-License-Identifier: MIT
#include "core/outline/path.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr Length tick = Length::fromTicks(1);

Rect box(std::int64_t left, std::int64_t top, std::int64_t right, std::int64_t bottom) {
    return {{Length::fromTicks(left), Length::fromTicks(right)},
            {Length::fromTicks(top), Length::fromTicks(bottom)}};
}

double distanceToSegment(Vertex p, Vertex a, Vertex b) {
    const double dx = b.x - a.x, dy = b.y - a.y;
    const double squared = dx * dx + dy * dy;
    const double t = squared > 0 ? ((p.x - a.x) * dx + (p.y - a.y) * dy) / squared : 0;
    const double c = std::clamp(t, 0.0, 1.0);
    return std::hypot(a.x + c * dx - p.x, a.y + c * dy - p.y);
}

TEST(Path, ARectangleRunsClockwiseFromItsTopLeftCorner) {
    const Path path = rectPath(box(1, 2, 30, 40));
    EXPECT_TRUE(path.closed);
    const std::vector<Vertex> expected{{1, 2}, {30, 2}, {30, 40}, {1, 40}};
    EXPECT_EQ(flattened(path, tick), expected);
}

TEST(Path, AnOvalStaysWithin3In10000OfTheTrueCircle) {
    const double r = 1'000'000;
    const Path path = ovalPath(box(-1'000'000, -1'000'000, 1'000'000, 1'000'000));
    double largest = 0;
    for (const Vertex& v : flattened(path, tick)) {
        largest = std::max(largest, std::abs(std::hypot(v.x, v.y) - r) / r);
    }
    EXPECT_LT(largest, 0.0003);
    EXPECT_GT(largest, 0.0002) << "the usual constant strays this much; a smaller figure means the "
                                  "test looks at the wrong points";
}

TEST(Path, AnOvalTouchesTheFourSidesOfItsBox) {
    for (const Rect& b : {box(0, 0, 10, 4), box(-7, 3, 1'000'001, 2'000'000), box(1, 1, 2, 2)}) {
        EXPECT_EQ(boundsOf(ovalPath(b)), b);
    }
}

TEST(Path, ATurnedCircleKeepsItsBoundsWithinTheCurveError) {
    const Rect b = box(-1'000'000, -1'000'000, 1'000'000, 1'000'000);
    for (int degrees = 0; degrees < 360; degrees += 7) {
        const Rect bounds = boundsOf(turned(ovalPath(b), Angle::degrees(degrees), {0, 0}));
        for (const Length side : {bounds.right(), bounds.bottom(), -bounds.left(), -bounds.top()}) {
            EXPECT_NEAR(static_cast<double>(side.ticks()), 1'000'000, 301) << degrees;
        }
    }
}

TEST(Path, BoundsHoldEveryPointOfACurveAndTouchIt) {
    Path path{{0, 0}, {}, true};
    path.curveTo({4'000, 9'000}, {-3'000, -9'000}, {1'000, 500});
    path = turned(path, Angle::degrees(33), {10, 20});
    const Rect bounds = boundsOf(path);
    double left = INFINITY, right = -INFINITY, top = INFINITY, bottom = -INFINITY;
    const PathSegment& s = path.segments.front();
    for (int i = 0; i <= 100'000; ++i) {
        const double t = i / 100'000.0, u = 1 - t;
        const auto at = [&](double a, double b, double c, double d) {
            return u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
        };
        const double x = at(path.start.x, s.control1.x, s.control2.x, s.end.x);
        const double y = at(path.start.y, s.control1.y, s.control2.y, s.end.y);
        left = std::min(left, x);
        right = std::max(right, x);
        top = std::min(top, y);
        bottom = std::max(bottom, y);
    }
    EXPECT_EQ(bounds.left().ticks(), std::floor(left));
    EXPECT_EQ(bounds.right().ticks(), std::ceil(right));
    EXPECT_EQ(bounds.top().ticks(), std::floor(top));
    EXPECT_EQ(bounds.bottom().ticks(), std::ceil(bottom));
}

TEST(Path, ARadiusIsCutDownToHalfTheShorterSide) {
    const Rect b = box(0, 0, 100, 40);
    EXPECT_EQ(roundedRectPath(b, Length::fromTicks(20)), roundedRectPath(b, Length::inches(9)));
    EXPECT_NE(roundedRectPath(b, Length::fromTicks(20)), roundedRectPath(b, Length::fromTicks(19)));
    EXPECT_EQ(boundsOf(roundedRectPath(b, Length::inches(9))), b);
}

TEST(Path, ARoundedRectangleWithoutARadiusIsARectangle) {
    EXPECT_EQ(roundedRectPath(box(0, 0, 9, 9), Length()), rectPath(box(0, 0, 9, 9)));
}

TEST(Path, ARoundedSquareOfHalfItsSideIsACircleWithoutStraightSides) {
    const Path path = roundedRectPath(box(0, 0, 100, 100), Length::fromTicks(50));
    EXPECT_EQ(path.segments.size(), 4u);
    EXPECT_TRUE(std::ranges::all_of(path.segments, &PathSegment::curved));
}

TEST(Path, QuarterTurnsAreExactAndClockwiseOnThePage) {
    const Path right = linePath({10, 10}, {20, 10});
    EXPECT_EQ(turned(right, Angle::degrees(90), {10, 10}), linePath({10, 10}, {10, 20}));
    EXPECT_EQ(turned(right, Angle::degrees(180), {10, 10}), linePath({10, 10}, {0, 10}));
    EXPECT_EQ(turned(right, Angle::degrees(270), {10, 10}), linePath({10, 10}, {10, 0}));
    EXPECT_EQ(turned(right, Angle(), {3, 4}), right);
}

TEST(Path, ATurnAndItsOppositeGiveThePathBack) {
    const Path path = ovalPath(box(100, 200, 5'000, 9'000));
    const Path back = turned(turned(path, Angle::millidegrees(12'345), {7, -9}),
                             Angle::millidegrees(-12'345), {7, -9});
    for (std::size_t i = 0; i < path.segments.size(); ++i) {
        EXPECT_NEAR(back.segments[i].end.x, path.segments[i].end.x, 1e-8);
        EXPECT_NEAR(back.segments[i].control2.y, path.segments[i].control2.y, 1e-8);
    }
}

TEST(Path, MovingKeepsTheShape) {
    const Rect b = box(0, 0, 30, 50);
    EXPECT_EQ(moved(ovalPath(b), {100, -7}), ovalPath(box(100, -7, 130, 43)));
}

TEST(Path, ChordsStayWithinTheToleranceOfTheCurve) {
    const Path path = ovalPath(box(0, 0, 9'144'000, 4'572'000));
    const std::vector<Vertex> fine = flattened(path, tick);
    for (const Length tolerance : {Length::hundredthMillimetres(1), Length::millimetres(1)}) {
        const std::vector<Vertex> coarse = flattened(path, tolerance);
        ASSERT_LT(coarse.size(), fine.size());
        double largest = 0;
        for (const Vertex& p : fine) {
            double nearest = INFINITY;
            for (std::size_t i = 0; i < coarse.size(); ++i) {
                nearest = std::min(
                    nearest, distanceToSegment(p, coarse[i], coarse[(i + 1) % coarse.size()]));
            }
            largest = std::max(largest, nearest);
        }
        EXPECT_LE(largest, static_cast<double>(tolerance.ticks()) + 1);
    }
}

TEST(Path, AClosedPathDoesNotRepeatItsFirstPoint) {
    Path path = rectPath(box(0, 0, 5, 5));
    path.lineTo(path.start);
    EXPECT_EQ(flattened(path, tick).size(), 4u);
    EXPECT_EQ(flattened(ovalPath(box(0, 0, 5, 5)), Length::inches(1)).size(), 4u);
}

}  // namespace
}  // namespace matwright
