// SPDX-License-Identifier: MIT
#include "core/snap/grid_rule.h"

#include <gtest/gtest.h>

#include "tests/core/snap/scene.h"

namespace matwright {
namespace {

using namespace test;

TEST(GridRule, bringsEachEdgeToTheNearestGridLine) {
    const Rect at = Rect::at({in(1) + six(1), in(1)}, {in(2) + six(3), in(1)});
    const auto found = offered<GridRule>(Axis::Horizontal, blankSketch(), bare(at));
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].by, -six(1));
    EXPECT_EQ(found[1].by, Length());
    EXPECT_EQ(found[0].why, "grid");
}

TEST(GridRule, followsTheStepAndTheReach) {
    SnapSettings settings = nothing();
    settings.gridStep = in(1);
    const auto at = [](Length left) { return bare(Rect::at({left, in(1)}, {six(7), in(1)})); };
    EXPECT_EQ(offered<GridRule>(Axis::Horizontal, blankSketch(), at(in(3) + six(2)), move, settings)
                  .size(),
              1U);
    EXPECT_TRUE(offered<GridRule>(Axis::Horizontal, blankSketch(), at(in(3) + six(2) + tick), move,
                                  settings)
                    .empty());
    settings.gridStep = Length();
    EXPECT_TRUE(
        offered<GridRule>(Axis::Horizontal, blankSketch(), at(in(3)), move, settings).empty());
}

TEST(GridRule, startsAnewOnEachPageAndEndsWithIt) {
    const Sketch sketch = doublePage(six(1));
    SnapSettings settings = nothing();
    settings.gridStep = in(1);
    const auto onRight = offered<GridRule>(
        Axis::Horizontal, sketch, bare(box(14, 1, 3, 3).moved({six(1), {}})), move, settings);
    ASSERT_EQ(onRight.size(), 2U);
    EXPECT_EQ(onRight[0].by, Length());
    EXPECT_EQ(onRight[1].by, Length());
    EXPECT_TRUE(offered<GridRule>(Axis::Horizontal, sketch, bare(box(-5, 1, 3, 3)), move, settings)
                    .empty());
}

TEST(GridRule, aResizeSnapsOnlyTheDraggedEdge) {
    const SnapBox onGrid = bare(box(1, 1, 2, 2));
    EXPECT_EQ(offered<GridRule>(Axis::Horizontal, blankSketch(), onGrid, resizeRight).size(), 1U);
    EXPECT_TRUE(offered<GridRule>(Axis::Vertical, blankSketch(), onGrid, resizeRight).empty());
}

}  // namespace
}  // namespace matwright
