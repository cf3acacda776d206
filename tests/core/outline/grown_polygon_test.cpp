// SPDX-License-Identifier: MIT
#include "core/outline/grown_polygon.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <numbers>
#include <random>

#include "core/outline/region.h"

namespace matwright {
namespace {

constexpr double inch = Length::ticksPerInch;

std::vector<Vertex> scaled(std::vector<Vertex> corners, double by) {
    for (Vertex& v : corners) {
        v = {v.x * by, v.y * by};
    }
    return corners;
}

double areaOf(const std::vector<Vertex>& corners) {
    double sum = 0;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Vertex a = corners[i], b = corners[(i + 1) % corners.size()];
        sum += a.x * b.y - b.x * a.y;
    }
    return sum / 2;
}

double distanceTo(const std::vector<Vertex>& corners, Vertex p) {
    double nearest = INFINITY;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Vertex a = corners[i], b = corners[(i + 1) % corners.size()];
        const double dx = b.x - a.x, dy = b.y - a.y;
        const double t =
            std::clamp(((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy), 0.0, 1.0);
        nearest = std::min(nearest, std::hypot(a.x + t * dx - p.x, a.y + t * dy - p.y));
    }
    return nearest;
}

Region regionOfCorners(const std::vector<Vertex>& corners) {
    return regionOf(polygonPath(corners));
}

TEST(GrownPolygon, ARectangleGetsItsBordersExactly) {
    const std::vector<Vertex> grown = grownPolygon({{0, 0}, {40, 0}, {40, 30}, {0, 30}}, 10, 25);
    EXPECT_EQ(grown, (std::vector<Vertex>{{-10, -10}, {50, -10}, {50, 55}, {-10, 55}}));
}

TEST(GrownPolygon, KeepsTheDirectionTheCornersRunIn) {
    const std::vector<Vertex> clockwise{{0, 0}, {40, 0}, {20, 30}};
    std::vector<Vertex> other = clockwise;
    std::ranges::reverse(other);
    const double a = areaOf(grownPolygon(clockwise, 5, 5));
    const double b = areaOf(grownPolygon(other, 5, 5));
    EXPECT_GT(a, 0);
    EXPECT_NEAR(a, -b, 1e-9);
}

TEST(GrownPolygon, ACornerInTheMiddleOfAStraightSideChangesNothing) {
    const double plain = areaOf(grownPolygon({{0, 0}, {40, 0}, {40, 30}, {0, 30}}, 10, 25));
    const double split =
        areaOf(grownPolygon({{0, 0}, {15, 0}, {40, 0}, {40, 30}, {11, 30}, {0, 30}}, 10, 25));
    EXPECT_NEAR(plain, split, 1e-9);
}

TEST(GrownPolygon, ASharpCornerIsBevelled) {
    // A mitre reaches border / sin(half the corner's angle): 4 borders at 28.955 degrees.
    const auto spike = [](double degrees) {
        const double h = 100 * std::tan(degrees / 2 * std::numbers::pi / 180);
        return std::vector<Vertex>{{0, 0}, {100, h}, {100, -h}};
    };
    EXPECT_EQ(grownPolygon(spike(29.1), 1, 1).size(), 3u);
    EXPECT_EQ(grownPolygon(spike(28.8), 1, 1).size(), 4u);
}

TEST(GrownPolygon, SlantedSidesTakePartOfALargerBottomBorder) {
    // The lower sides of a diamond face down by sqrt(1/2).
    const std::vector<Vertex> corners{{2, 0}, {4, 2}, {2, 4}, {0, 2}};
    const std::vector<Vertex> grown = grownPolygon(scaled(corners, inch), inch, 3 * inch);
    const double by = 1 + 2 * std::sqrt(0.5);
    EXPECT_NEAR(grown[0].y / inch, -std::sqrt(2.0), 1e-9);
    EXPECT_NEAR(grown[2].y / inch, 4 + by * std::sqrt(2.0), 1e-9);
}

TEST(GrownPolygon, AWideNotchStaysANotch) {
    const std::vector<Vertex> corners{{0, 0}, {3, 0},  {3, 4},  {7, 4},
                                      {7, 0}, {10, 0}, {10, 8}, {0, 8}};
    const std::vector<Vertex> grown = grownPolygon(corners, 1, 1);
    const std::vector<Vertex> expected{{-1, -1}, {4, -1},  {4, 3},  {6, 3},
                                       {6, -1},  {11, -1}, {11, 9}, {-1, 9}};
    EXPECT_EQ(grown, expected);
}

TEST(GrownPolygon, ANarrowNotchClosesUp) {
    const std::vector<Vertex> corners =
        scaled({{0, 0}, {4, 0}, {4, 4}, {5, 4}, {5, 0}, {10, 0}, {10, 8}, {0, 8}}, inch);
    const std::vector<Vertex> grown = grownPolygon(corners, inch, inch);
    EXPECT_NEAR(areaOf(grown) / (inch * inch), 12 * 10, 1e-9);
    EXPECT_EQ(grown.size(), 4u);
}

TEST(GrownPolygon, APocketThatClosesUpIsFilled) {
    // A room of 6 x 6 with a door 1 wide.
    const std::vector<Vertex> corners = scaled({{0, 0},
                                                {4.5, 0},
                                                {4.5, 2},
                                                {2, 2},
                                                {2, 8},
                                                {8, 8},
                                                {8, 2},
                                                {5.5, 2},
                                                {5.5, 0},
                                                {10, 0},
                                                {10, 10},
                                                {0, 10}},
                                               inch);
    const std::vector<Vertex> grown = grownPolygon(corners, inch, inch);
    EXPECT_NEAR(areaOf(grown) / (inch * inch), 12 * 12, 1e-9);
    EXPECT_EQ(grown.size(), 4u);
}

TEST(GrownPolygon, RandomStarsKeepTheirBorderEverywhere) {
    std::mt19937_64 random(20'260'101);
    const auto unit = [&] { return static_cast<double>(random() % 10'001) / 10'000; };
    int closedUp = 0;
    for (int run = 0; run < 300; ++run) {
        SCOPED_TRACE(testing::Message() << "seed 20260101, run " << run);
        const int n = 3 + static_cast<int>(random() % 12);
        std::vector<Vertex> corners;
        for (int i = 0; i < n; ++i) {
            const double angle = (i + 0.8 * unit()) * 2 * std::numbers::pi / n;
            const double r = (0.3 + 2.7 * unit()) * inch;
            corners.push_back({r * std::cos(angle), r * std::sin(angle)});
        }
        const double border = (0.05 + 0.6 * unit()) * inch;
        const std::vector<Vertex> grown = grownPolygon(corners, border, border);
        closedUp += grown.size() < corners.size() ? 1 : 0;
        for (const Vertex& v : grown) {
            const double distance = distanceTo(corners, v);
            EXPECT_GE(distance, border * (1 - 1e-6));
            EXPECT_LE(distance, border * (4 + 1e-6));
        }
        const Region outside = subtracted(regionOfCorners(corners), regionOfCorners(grown));
        EXPECT_LT(areaSquareInches(outside), 1e-9);
    }
    std::cout << "300 stars, seed 20260101; of " << closedUp << " some notch closed up\n";
    EXPECT_GT(closedUp, 0);
}

}  // namespace
}  // namespace matwright
