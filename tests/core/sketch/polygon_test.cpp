// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <utility>
#include <vector>

#include "core/sketch/sketch.h"
#include "core/sketch/soundness.h"

namespace matwright {
namespace {

using Corners = std::vector<std::pair<int, int>>;

// In a box of 10 x 10 in, corners in whole inches.
Piece polygonPiece(const Corners& corners) {
    Piece piece;
    piece.size = {Length::inches(10), Length::inches(10)};
    PolygonShape shape;
    for (const auto& [x, y] : corners) {
        shape.corners.push_back({Length::inches(x), Length::inches(y)});
    }
    piece.shape = shape;
    return piece;
}

std::string faultOf(const Corners& corners) {
    const auto fault = findFault(polygonPiece(corners));
    return fault ? fault->sentence : "";
}

const std::string crosses =
    "The polygon's outline crosses or touches itself; pull its corners apart.";

TEST(Polygon, SimpleOutlinesAreSoundEitherWayRound) {
    for (Corners corners :
         std::vector<Corners>{{{0, 0}, {10, 0}, {5, 10}},
                              {{0, 0}, {10, 0}, {10, 10}, {0, 10}},
                              {{0, 0}, {5, 0}, {10, 0}, {10, 10}, {0, 10}},  // straight on at 5, 0
                              {{0, 0}, {10, 0}, {10, 10}, {5, 1}, {0, 10}},  // a deep notch
                              {{0, 0}, {10, 0}, {10, 10}, {9, 10}, {9, 1}, {0, 1}}}) {  // an L
        EXPECT_EQ(faultOf(corners), "");
        std::ranges::reverse(corners);
        EXPECT_EQ(faultOf(corners), "");
    }
}

TEST(Polygon, CrossingAndTouchingOutlinesAreNot) {
    for (const Corners& corners : std::vector<Corners>{
             {{0, 0}, {10, 10}, {10, 0}, {0, 10}},                    // a bow tie
             {{0, 0}, {10, 0}, {10, 10}, {5, 0}, {0, 10}},            // a corner on a side
             {{0, 0}, {5, 5}, {10, 0}, {10, 10}, {5, 5}, {0, 10}},    // a corner on a corner
             {{0, 0}, {10, 0}, {10, 5}, {10, 2}, {10, 10}, {0, 10}},  // back over itself
             {{0, 0}, {10, 0}, {5, 0}},                               // flat
             {{0, 0}, {10, 0}, {5, 0}, {5, 10}},                      // a spike without width
             {{0, 0}, {0, 0}, {10, 0}, {5, 10}},                      // a corner twice
             {{0, 0}, {10, 0}, {5, 10}, {0, 0}}}) {                   // the first repeated
        EXPECT_EQ(faultOf(corners), crosses);
    }
}

TEST(Polygon, ACrossingIsFoundWhereverTheOutlineStarts) {
    const Corners bowTie{{0, 0}, {4, 0}, {8, 0}, {8, 8}, {2, 2}, {2, 8}, {4, 8}, {8, 4}, {0, 4}};
    for (std::size_t start = 0; start < bowTie.size(); ++start) {
        Corners corners = bowTie;
        std::ranges::rotate(corners, corners.begin() + static_cast<std::ptrdiff_t>(start));
        EXPECT_EQ(faultOf(corners), crosses) << start;
    }
}

TEST(Polygon, CornersLieInsideTheBoxOrOnItsEdge) {
    EXPECT_EQ(faultOf({{0, 0}, {10, 0}, {10, 10}}), "");
    for (const auto& outside : Corners{{-1, 5}, {11, 5}, {5, -1}, {5, 11}}) {
        EXPECT_EQ(faultOf({{0, 0}, {10, 0}, outside}),
                  "A polygon's corner lies outside the piece's box; move it inside.");
    }
}

TEST(Polygon, HasThreeToAThousandCorners) {
    EXPECT_NE(faultOf({}), "");
    EXPECT_NE(faultOf({{0, 0}, {5, 5}}), "");
    const auto saw = [](std::size_t count) {
        Piece piece;
        piece.size = {Length::inches(10), Length::inches(10)};
        PolygonShape shape;
        for (std::size_t i = 0; i + 2 < count; ++i) {
            shape.corners.push_back({Length::fromTicks(static_cast<std::int64_t>(i) * 1'000),
                                     Length::fromTicks(i % 2 == 0 ? 0 : 5'000)});
        }
        shape.corners.push_back({Length::inches(9), Length::inches(10)});
        shape.corners.push_back({Length(), Length::inches(10)});
        piece.shape = shape;
        return findFault(piece);
    };
    EXPECT_FALSE(saw(maxPolygonCorners));
    const auto tooMany = saw(maxPolygonCorners + 1);
    ASSERT_TRUE(tooMany);
    EXPECT_EQ(tooMany->sentence, "A polygon needs 3 to 1000 corners; give it some.");
}

// The plain definition, against which the sweep is checked.
bool crossesByEveryPair(const std::vector<Point>& corners) {
    const auto cross = [](Point a, Point b, Point c) {
        const auto v =
            (b.x - a.x).ticks() * (c.y - a.y).ticks() - (b.y - a.y).ticks() * (c.x - a.x).ticks();
        return (v > 0) - (v < 0);
    };
    const auto on = [&](Point a, Point b, Point p) {
        return cross(a, b, p) == 0 && Rect::spanning(a, b).contains(p);
    };
    const std::size_t n = corners.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Point a = corners[i], b = corners[(i + 1) % n];
        for (std::size_t j = i + 1; j < n; ++j) {
            const Point c = corners[j], d = corners[(j + 1) % n];
            if (b == c || a == d) {
                const Point shared = b == c ? b : a;
                const Point first = b == c ? a : b;
                const Point last = b == c ? d : c;
                if (first == shared || last == shared || on(shared, first, last) ||
                    on(shared, last, first)) {
                    return true;
                }
                if ((i + 1) % n == j || (j + 1) % n == i) {
                    continue;
                }
            }
            if (cross(a, b, c) * cross(a, b, d) < 0 && cross(c, d, a) * cross(c, d, b) < 0) {
                return true;
            }
            if (on(a, b, c) || on(a, b, d) || on(c, d, a) || on(c, d, b)) {
                return true;
            }
        }
    }
    return false;
}

TEST(Polygon, TheSweepAgreesWithComparingEveryPair) {
    constexpr std::uint64_t seed = 12;
    std::mt19937_64 random(seed);
    int sound = 0;
    constexpr int runs = 20'000;
    for (int run = 0; run < runs; ++run) {
        Corners corners(3 + random() % 5);
        for (auto& [x, y] : corners) {
            x = static_cast<int>(random() % 7);
            y = static_cast<int>(random() % 7);
        }
        const Piece piece = polygonPiece(corners);
        const bool crossing = crossesByEveryPair(std::get<PolygonShape>(piece.shape).corners);
        sound += crossing ? 0 : 1;
        ASSERT_EQ(faultOf(corners) == crosses, crossing) << "seed " << seed << ", run " << run;
    }
    EXPECT_GT(sound, runs / 10);
    EXPECT_LT(sound, runs);
}

}  // namespace
}  // namespace matwright
