// SPDX-License-Identifier: MIT
#include "core/snap/mat_edge_rule.h"

#include <gtest/gtest.h>

#include "tests/core/snap/scene.h"

namespace matwright {
namespace {

using namespace test;

TEST(MatEdgeRule, bringsMatEdgeToMatEdge) {
    Sketch sketch = blankSketch();
    addMattedSlot(sketch, box(4, 1, 5, 2), six(4));
    const Rect at = Rect::at({in(4) - six(4) + six(2) + six(1), in(7)}, {in(1), in(1)});
    const auto found = offered<MatEdgeRule>(Axis::Horizontal, sketch, matted(at, six(2)));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].by, -six(1));
    EXPECT_EQ(found[0].why, "mat in line with 1 \u00B7 photo slot");
}

TEST(MatEdgeRule, letsOneOfTheTwoBeWithoutMats) {
    Sketch withMats = blankSketch();
    addMattedSlot(withMats, box(4, 1, 5, 2), six(4));
    const Rect at = Rect::at({in(4) - six(4), in(7)}, {in(1), in(1)});
    EXPECT_EQ(offered<MatEdgeRule>(Axis::Horizontal, withMats, bare(at)).size(), 1U);
    const Sketch without = sceneOf({box(4, 1, 5, 2)});
    EXPECT_EQ(offered<MatEdgeRule>(Axis::Horizontal, without,
                                   matted(box(4, 7, 1, 1).moved({six(4), {}}), six(4)))
                  .size(),
              1U);
}

TEST(MatEdgeRule, leavesTwoBarePiecesToTheNeighbourEdges) {
    const Sketch sketch = sceneOf({box(4, 1, 5, 2)});
    EXPECT_TRUE(offered<MatEdgeRule>(Axis::Horizontal, sketch, bare(box(4, 7, 1, 1))).empty());
}

TEST(MatEdgeRule, aResizeSnapsOnlyTheDraggedEdge) {
    Sketch sketch = blankSketch();
    addMattedSlot(sketch, box(4, 1, 2, 2), six(4));
    const SnapBox same = matted(box(4, 7, 2, 2), six(4));
    EXPECT_EQ(offered<MatEdgeRule>(Axis::Horizontal, sketch, same).size(), 2U);
    EXPECT_EQ(offered<MatEdgeRule>(Axis::Horizontal, sketch, same, resizeLeft).size(), 1U);
}

}  // namespace
}  // namespace matwright
