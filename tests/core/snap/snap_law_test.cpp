// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>

#include "core/snap/axis.h"
#include "tests/core/snap/scene.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

using namespace test;
using snapping::across;
using snapping::along;
using snapping::bothAxes;

constexpr int runs = 600;

struct Scene {
    Sketch sketch;
    SnapBox at;
    SnapEdges edges;
    SnapSettings settings;
};

SnapSettings randomSettings(Random& random) {
    SnapSettings settings;
    for (bool* on :
         {&settings.pageEdges, &settings.margins, &settings.pageCentres, &settings.thirds,
          &settings.grid, &settings.neighbourEdges, &settings.neighbourCentres, &settings.gutter,
          &settings.equalGaps, &settings.matEdges}) {
        *on = below(random, 3) != 0;
    }
    settings.reach = Length::fromTicks(static_cast<std::int64_t>(below(random, 300'000)));
    return settings;
}

SnapEdges randomEdges(Random& random) {
    const SnapEdges choices[] = {move,
                                 move,
                                 move,
                                 resizeRight,
                                 resizeLeft,
                                 resizeBottom,
                                 SnapEdges{false, true, true, false}};
    return choices[below(random, std::size(choices))];
}

Scene randomScene(Random& random) {
    Scene scene;
    scene.sketch = randomSketch(random, static_cast<int>(below(random, 30)));
    const Piece moved = randomPiece(random);
    scene.at = {trimBounds(moved), outermostBounds(moved)};
    scene.edges = randomEdges(random);
    scene.settings = randomSettings(random);
    return scene;
}

SnapResult snapped(const Scene& scene) {
    return snap(SnapContext(scene.sketch, {}), scene.at, scene.edges, scene.settings);
}

std::vector<const SnapCandidate*> snapsOf(const SnapResult& result) {
    std::vector<const SnapCandidate*> snaps;
    for (const auto* one : {&result.horizontal, &result.vertical}) {
        if (*one) {
            snaps.push_back(&**one);
        }
    }
    return snaps;
}

SnapBox landed(const Scene& scene, Point by) {
    const auto shift = [&](Rect rect) {
        for (const Axis axis : bothAxes) {
            Interval& side = axis == Axis::Horizontal ? rect.x : rect.y;
            const Length d = axis == Axis::Horizontal ? by.x : by.y;
            side.low += snapping::lowMoves(scene.edges, axis) ? d : Length();
            side.high += snapping::highMoves(scene.edges, axis) ? d : Length();
        }
        return rect;
    };
    return {shift(scene.at.trim), shift(scene.at.outermost)};
}

TEST(SnapLaws, noSnapMovesFurtherThanItsReachOrAlongAnAxisThatIsNotDragged) {
    Random random(71);
    for (int i = 0; i < runs; ++i) {
        const Scene scene = randomScene(random);
        const SnapResult result = snapped(scene);
        for (const SnapCandidate* one : snapsOf(result)) {
            EXPECT_LE(abs(one->by), scene.settings.reach) << "seed 71, scene " << i;
            EXPECT_TRUE(snapping::lowMoves(scene.edges, one->axis) ||
                        snapping::highMoves(scene.edges, one->axis));
            EXPECT_FALSE(one->why.empty());
        }
    }
}

// What a guide says is true: a line of the landed box stands on it to the tick.
TEST(SnapLaws, everyGuideStandsOnALineOfTheLandedBox) {
    Random random(72);
    for (int i = 0; i < runs; ++i) {
        const Scene scene = randomScene(random);
        const SnapResult result = snapped(scene);
        const SnapBox there = landed(scene, result.by());
        for (const SnapCandidate* one : snapsOf(result)) {
            const Interval trim = along(there.trim, one->axis);
            const Interval outermost = along(there.outermost, one->axis);
            EXPECT_FALSE(one->guides.empty() && one->gaps.empty());
            for (const SnapGuide& guide : one->guides) {
                const Length lines[] = {trim.low, trim.high, trim.centreRoundedDown(),
                                        outermost.low, outermost.high};
                EXPECT_TRUE(std::ranges::find(lines, guide.at) != std::end(lines))
                    << one->why << " seed 72, scene " << i;
                EXPECT_LE(guide.from, guide.to);
            }
        }
    }
}

TEST(SnapLaws, everyGapEndsAtAnOutermostEdgeAndEqualOnesAreEqual) {
    Random random(73);
    int gutters = 0, equals = 0;
    for (int i = 0; i < 5 * runs; ++i) {
        Scene scene = randomScene(random);
        scene.settings = nothing();
        scene.settings.reach = six(4);
        (i % 2 == 0 ? scene.settings.gutter : scene.settings.equalGaps) = true;
        const SnapResult result = snapped(scene);
        const SnapBox there = landed(scene, result.by());
        for (const SnapCandidate* one : snapsOf(result)) {
            const Interval own = along(there.outermost, one->axis);
            bool ownGap = false;
            Length smallest = one->gaps.front().to - one->gaps.front().from;
            Length largest = smallest;
            for (const SnapGap& gap : one->gaps) {
                ownGap = ownGap || gap.from == own.high || gap.to == own.low;
                smallest = std::min(smallest, gap.to - gap.from);
                largest = std::max(largest, gap.to - gap.from);
            }
            EXPECT_TRUE(ownGap) << "seed 73, scene " << i;
            if (scene.settings.gutter) {
                ++gutters;
                EXPECT_EQ(smallest, scene.sketch.page.gutter);
                EXPECT_EQ(largest, scene.sketch.page.gutter);
            } else if (one->gaps.size() == 2) {
                ++equals;
                EXPECT_LE(largest - smallest, tick) << "seed 73, scene " << i;
            }
        }
    }
    EXPECT_GT(gutters, 100);
    EXPECT_GT(equals, 100);
}

TEST(SnapLaws, aSnappedBoxStaysWhereItIs) {
    Random random(74);
    for (int i = 0; i < runs; ++i) {
        Scene scene = randomScene(random);
        const SnapResult first = snapped(scene);
        // Where the other axis moved the box, pieces may face it that did not; the reach of
        // the neighbours that count is the same, so one axis at a time.
        if (first.horizontal.has_value() == first.vertical.has_value()) {
            continue;
        }
        scene.at = landed(scene, first.by());
        EXPECT_EQ(snapped(scene).by(), Point()) << "seed 74, scene " << i;
    }
}

TEST(SnapLaws, nothingSnapsWithEverySettingOff) {
    Random random(75);
    for (int i = 0; i < 200; ++i) {
        Scene scene = randomScene(random);
        scene.settings = nothing();
        EXPECT_TRUE(snapsOf(snapped(scene)).empty());
    }
}

TEST(SnapLaws, movingTheWholeSceneMovesTheResult) {
    Random random(76);
    const Point by{in(3) + tick, -six(5)};
    for (int i = 0; i < runs; ++i) {
        Scene scene = randomScene(random);
        // The page does not move with the pieces; turned bounds may round by a tick.
        scene.settings.pageEdges = scene.settings.margins = scene.settings.pageCentres = false;
        scene.settings.thirds = scene.settings.grid = false;
        Scene moved = scene;
        for (auto* pieces : {&scene.sketch.pieces, &moved.sketch.pieces}) {
            for (auto& [id, piece] : *pieces) {
                piece.rotation = Angle();
                piece.place = pieces == &moved.sketch.pieces ? piece.place + by : piece.place;
            }
        }
        moved.at = {scene.at.trim.moved(by), scene.at.outermost.moved(by)};
        const SnapResult a = snapped(scene);
        const SnapResult b = snapped(moved);
        ASSERT_EQ(a.by(), b.by()) << "seed 76, scene " << i;
        ASSERT_EQ(snapsOf(a).size(), snapsOf(b).size());
        for (std::size_t k = 0; k < snapsOf(a).size(); ++k) {
            EXPECT_EQ(snapsOf(a)[k]->why, snapsOf(b)[k]->why) << "seed 76, scene " << i;
            EXPECT_EQ(snapsOf(a)[k]->guides.size(), snapsOf(b)[k]->guides.size());
        }
    }
}

TEST(SnapLaws, theOrderOfThePiecesChangesNothingButTheirNumbers) {
    Random random(77);
    for (int i = 0; i < runs; ++i) {
        const Scene scene = randomScene(random);
        Scene shuffled = scene;
        auto& order = shuffled.sketch.order;
        for (std::size_t n = order.size(); n > 1; --n) {
            std::swap(order[n - 1], order[below(random, n)]);
        }
        const SnapResult a = snapped(scene);
        const SnapResult b = snapped(shuffled);
        ASSERT_EQ(a.by(), b.by()) << "seed 77, scene " << i;
        for (std::size_t k = 0; k < snapsOf(a).size(); ++k) {
            EXPECT_EQ(snapsOf(a)[k]->guides, snapsOf(b)[k]->guides) << "seed 77, scene " << i;
            EXPECT_EQ(snapsOf(a)[k]->gaps, snapsOf(b)[k]->gaps) << "seed 77, scene " << i;
        }
        EXPECT_EQ(gapsAround(SnapContext(scene.sketch, {}), scene.at.outermost),
                  gapsAround(SnapContext(shuffled.sketch, {}), scene.at.outermost));
    }
}

// Looks at every piece, as the engine must not have to.
Length plainGapToTheRight(const Sketch& sketch, const Rect& at) {
    Length best = Length::coordinateLimit();
    for (const Rect& page : pages(sketch.page)) {
        best = page.right() >= at.right() ? std::min(best, page.right()) : best;
    }
    for (const auto& [id, piece] : sketch.pieces) {
        const Rect other = outermostBounds(piece);
        if (other.y.interiorIntersects(at.y) && other.left() >= at.right()) {
            best = std::min(best, other.left());
        }
    }
    return best;
}

TEST(SnapLaws, gapsToTheRightAreThoseFoundByLookingAtEveryPiece) {
    Random random(78);
    for (int i = 0; i < runs; ++i) {
        const Scene scene = randomScene(random);
        const Rect& at = scene.at.outermost;
        const Length expected = plainGapToTheRight(scene.sketch, at);
        const auto found = gapsAround(SnapContext(scene.sketch, {}), at);
        const auto gap = std::ranges::find_if(found, [&](const SnapGap& g) {
            return g.axis == Axis::Horizontal && g.from == at.right();
        });
        ASSERT_EQ(gap != found.end(), expected != Length::coordinateLimit())
            << "seed 78, scene " << i;
        if (gap != found.end()) {
            EXPECT_EQ(gap->to, expected) << "seed 78, scene " << i;
        }
    }
}

}  // namespace
}  // namespace matwright
