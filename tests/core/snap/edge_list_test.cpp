// SPDX-License-Identifier: MIT
#include "core/snap/edge_list.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/random_sketch.h"

namespace matwright::snapping {
namespace {

Length t(std::int64_t ticks) {
    return Length::fromTicks(ticks);
}

TEST(EdgeList, findsTheNearestPlaceOnEachSide) {
    const EdgeList list({{t(20), {t(0), t(5)}, 0}, {t(10), {t(0), t(5)}, 1}});
    EXPECT_EQ(list.placeFrom(t(10)), t(10));
    EXPECT_EQ(list.placeBefore(t(10)), std::nullopt);
    EXPECT_EQ(list.placeFrom(t(11)), t(20));
    EXPECT_EQ(list.placeBefore(t(11)), t(10));
    EXPECT_EQ(list.placeFrom(t(21)), std::nullopt);
    EXPECT_EQ(EdgeList().placeFrom(t(0)), std::nullopt);
    EXPECT_EQ(EdgeList().placeBefore(t(0)), std::nullopt);
}

TEST(EdgeList, holdsCoincidingEdgesOnceAsTheLowestNeighbours) {
    const EdgeList list({{t(1), {t(0), t(5)}, 7}, {t(1), {t(0), t(5)}, 3}});
    EXPECT_EQ(list.edges(), (std::vector<Edge>{{t(1), {t(0), t(5)}, 3}}));
}

std::vector<Edge> randomEdges(test::Random& random, std::uint32_t count, std::uint64_t places) {
    std::vector<Edge> edges;
    for (std::uint32_t i = 0; i < count; ++i) {
        const auto low = static_cast<std::int64_t>(test::below(random, 100));
        const auto length = static_cast<std::int64_t>(test::below(random, 30));
        edges.push_back({t(static_cast<std::int64_t>(test::below(random, places))),
                         {t(low), t(low + length)},
                         i});
    }
    return edges;
}

Interval randomInterval(test::Random& random) {
    const auto low = static_cast<std::int64_t>(test::below(random, 140)) - 20;
    return {t(low), t(low + static_cast<std::int64_t>(test::below(random, 20)))};
}

Length distance(Interval a, Interval b) {
    return std::max({a.low - b.high, b.low - a.high, Length()});
}

TEST(EdgeList, givesAnEdgeThatMeetsTheSpanWhereThereIsOne) {
    test::Random random(61);
    for (int i = 0; i < 500; ++i) {
        const EdgeList list(randomEdges(random, 40, 20));
        const Interval span = randomInterval(random);
        for (const Edge& edge : list.edges()) {
            const Edge& found = list.edgeAt(edge.at, span);
            EXPECT_EQ(found.at, edge.at);
            if (edge.across.intersects(span)) {
                EXPECT_TRUE(found.across.intersects(span)) << "seed 61, list " << i;
            } else if (edge.across.low > span.high) {
                EXPECT_LE(distance(found.across, span), distance(edge.across, span))
                    << "seed 61, list " << i;
            }
        }
    }
}

// On few places many edges share one; on many, long runs of edges do not meet the band.
TEST(FacingEdges, findTheSameAsLookingAtEveryEdge) {
    test::Random random(62);
    int passedByMany = 0;
    for (int i = 0; i < 1000; ++i) {
        const std::uint64_t places = i % 2 == 0 ? 20 : 2000;
        const auto edges =
            randomEdges(random, static_cast<std::uint32_t>(test::below(random, 300)), places);
        const FacingEdges facing(edges);
        const Interval band = randomInterval(random);
        const Length from = t(static_cast<std::int64_t>(test::below(random, places)) - 2);
        const Length to = from + t(static_cast<std::int64_t>(test::below(random, places)) - 2);
        std::optional<Length> first, last;
        int passedBy = 0;
        for (const Edge& edge : edges) {
            if (from > edge.at || edge.at > to) {
                continue;
            }
            if (edge.across.intersects(band)) {
                first = std::min(first.value_or(edge.at), edge.at);
                last = std::max(last.value_or(edge.at), edge.at);
            } else {
                ++passedBy;
            }
        }
        passedByMany += passedBy > 50 ? 1 : 0;
        const Edge* foundFirst = facing.firstIn(from, to, band);
        const Edge* foundLast = facing.lastIn(from, to, band);
        ASSERT_EQ(foundFirst != nullptr, first.has_value()) << "seed 62, run " << i;
        ASSERT_EQ(foundLast != nullptr, last.has_value()) << "seed 62, run " << i;
        if (first) {
            EXPECT_EQ(foundFirst->at, *first) << "seed 62, run " << i;
            EXPECT_EQ(foundLast->at, *last) << "seed 62, run " << i;
            EXPECT_TRUE(foundFirst->across.intersects(band));
            EXPECT_TRUE(foundLast->across.intersects(band));
        }
    }
    EXPECT_GT(passedByMany, 100);
}

TEST(FacingEdges, staysExactAcrossTheWholeCoordinateRange) {
    const Length limit = Length::coordinateLimit();
    const FacingEdges facing({{limit, {-limit, limit}, 0}, {-limit, {-limit, limit}, 1}});
    EXPECT_EQ(facing.firstIn(-limit + t(1), limit, {limit, limit})->neighbour, 0U);
    EXPECT_EQ(facing.firstIn(-limit, limit, {-limit, -limit})->neighbour, 1U);
    EXPECT_EQ(facing.lastIn(-limit, limit - t(1), {limit, limit})->neighbour, 1U);
    // Asking from beyond the limit is allowed.
    EXPECT_EQ(facing.lastIn(-3 * limit, 3 * limit, {-3 * limit, 3 * limit})->neighbour, 0U);
}

}  // namespace
}  // namespace matwright::snapping
