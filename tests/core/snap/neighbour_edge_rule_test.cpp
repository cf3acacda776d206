// SPDX-License-Identifier: MIT
#include "core/snap/neighbour_edge_rule.h"

#include <gtest/gtest.h>

#include "tests/core/snap/scene.h"

namespace matwright {
namespace {

using namespace test;

TEST(NeighbourEdgeRule, bringsEitherTrimEdgeToEitherTrimEdgeOfANeighbour) {
    const Sketch sketch = sceneOf({box(4, 1, 2, 2)});
    for (const std::int64_t left : {1, 3, 4, 6}) {  // 3 in wide: one edge at 4 or 6
        const Rect at = box(left, 7, 3, 2).moved({six(1), {}});
        const auto found = offered<NeighbourEdgeRule>(Axis::Horizontal, sketch, bare(at));
        ASSERT_EQ(found.size(), 1U) << left;
        EXPECT_EQ(found[0].by, -six(1));
        EXPECT_EQ(found[0].why, "in line with 1 \u00B7 block");
        EXPECT_EQ(found[0].guides[0].from, in(1));
        EXPECT_EQ(found[0].guides[0].to, in(9));
    }
}

TEST(NeighbourEdgeRule, offersTheNearestOnEachSide) {
    const Sketch sketch = sceneOf({Rect::at({in(4), in(1)}, {in(5), in(1)}),
                                   Rect::at({in(4) + six(2), in(3)}, {in(5), in(1)})});
    const Rect at = Rect::at({in(4) + six(1), in(7)}, {in(2), in(2)});
    const auto found = offered<NeighbourEdgeRule>(Axis::Horizontal, sketch, bare(at));
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].by, -six(1));
    EXPECT_EQ(found[1].by, six(1));
}

TEST(NeighbourEdgeRule, stopsJustBeyondReach) {
    const Sketch sketch = sceneOf({box(4, 1, 5, 2)});
    const Rect atReach = box(4, 7, 2, 2).moved({six(2), {}});
    EXPECT_EQ(offered<NeighbourEdgeRule>(Axis::Horizontal, sketch, bare(atReach)).size(), 1U);
    EXPECT_TRUE(
        offered<NeighbourEdgeRule>(Axis::Horizontal, sketch, bare(atReach.moved({tick, {}})))
            .empty());
}

TEST(NeighbourEdgeRule, goesByTrimsNotByMats) {
    Sketch sketch = blankSketch();
    addMattedSlot(sketch, box(4, 1, 5, 2), in(1));
    const auto found =
        offered<NeighbourEdgeRule>(Axis::Horizontal, sketch, matted(box(4, 7, 2, 2), six(4)));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].by, Length());
}

TEST(NeighbourEdgeRule, namesTheNearestOfTheNeighboursOnTheLine) {
    Sketch sketch = sceneOf({box(4, 1, 5, 1), box(4, 5, 5, 1)});
    sketch.pieces.at(PieceId{2}).name = "Beach";
    const auto found = offered<NeighbourEdgeRule>(Axis::Horizontal, sketch, bare(box(4, 8, 2, 2)));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].why, "in line with 2 \u00B7 Beach");
}

TEST(NeighbourEdgeRule, cutsLongNamesBetweenCharacters) {
    Sketch sketch = sceneOf({box(4, 1, 5, 1)});
    std::string name(39, 'a');
    sketch.pieces.at(PieceId{1}).name = name + "\u00FC\u00FC";
    const auto found = offered<NeighbourEdgeRule>(Axis::Horizontal, sketch, bare(box(4, 8, 2, 2)));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].why, "in line with 1 \u00B7 " + name + "\u2026");
}

TEST(NeighbourEdgeRule, leavesOutThePiecesThatMove) {
    const Sketch sketch = sceneOf({box(4, 1, 5, 1)});
    const PieceId moving[] = {PieceId{1}, PieceId{77}};
    std::vector<SnapCandidate> found;
    NeighbourEdgeRule().addCandidates(SnapContext(sketch, moving), bare(box(4, 8, 2, 2)), move,
                                      nothing(), found);
    EXPECT_TRUE(found.empty());
}

TEST(NeighbourEdgeRule, usesTheBoundsOfTurnedNeighbours) {
    Sketch sketch = sceneOf({box(4, 3, 4, 2)});
    sketch.pieces.at(PieceId{1}).rotation = Angle::degrees(90);  // now 5..7 x 2..6
    const auto found = offered<NeighbourEdgeRule>(Axis::Horizontal, sketch, bare(box(5, 8, 1, 1)));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].by, Length());
}

TEST(NeighbourEdgeRule, aResizeSnapsOnlyTheDraggedEdge) {
    const Sketch sketch = sceneOf({box(4, 1, 2, 2)});
    const SnapBox same = bare(box(4, 7, 2, 2));
    EXPECT_EQ(offered<NeighbourEdgeRule>(Axis::Horizontal, sketch, same).size(), 2U);
    const auto found = offered<NeighbourEdgeRule>(Axis::Horizontal, sketch, same, resizeRight);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].guides[0].at, in(6));
    EXPECT_TRUE(
        offered<NeighbourEdgeRule>(Axis::Vertical, sketch, bare(box(7, 1, 2, 2)), resizeRight)
            .empty());
}

}  // namespace
}  // namespace matwright
