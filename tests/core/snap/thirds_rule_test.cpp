// SPDX-License-Identifier: MIT
#include "core/snap/thirds_rule.h"

#include <gtest/gtest.h>

#include "tests/core/snap/scene.h"

namespace matwright {
namespace {

using namespace test;

TEST(ThirdsRule, bringsTheCentreOrAnEdgeToAThirdOfThePage) {
    for (const std::int64_t left : {1, 3, 4, 5, 7, 8}) {
        // 3 in wide with an edge, or 2 in wide with the centre, on 4 or 8 in.
        const std::int64_t width = left == 3 || left == 7 ? 2 : 3;
        const Rect at = box(left, 1, width, 2).moved({six(1), {}});
        const auto found = offered<ThirdsRule>(Axis::Horizontal, blankSketch(), bare(at));
        ASSERT_EQ(found.size(), 1U) << left;
        EXPECT_EQ(found[0].by, -six(1));
        EXPECT_EQ(found[0].why, "third");
    }
}

TEST(ThirdsRule, goesToTheNearestTickWhereAThirdHasNone) {
    Sketch sketch = blankSketch();
    sketch.page.size.width = in(12) + tick;
    const auto lower = offered<ThirdsRule>(Axis::Horizontal, sketch, bare(box(4, 1, 1, 1)));
    ASSERT_EQ(lower.size(), 1U);
    EXPECT_EQ(lower[0].by, Length());
    const auto upper = offered<ThirdsRule>(Axis::Horizontal, sketch, bare(box(8, 1, 1, 1)));
    ASSERT_EQ(upper.size(), 1U);
    EXPECT_EQ(upper[0].by, tick);
}

TEST(ThirdsRule, hasTheThirdsOfBothPages) {
    const Sketch sketch = doublePage(in(1));
    for (const std::int64_t left : {4, 8, 17, 21}) {
        EXPECT_EQ(offered<ThirdsRule>(Axis::Horizontal, sketch, bare(box(left, 1, 1, 1))).size(),
                  1U)
            << left;
    }
}

TEST(ThirdsRule, aResizeBringsTheDraggedEdgeButNotTheCentre) {
    EXPECT_TRUE(
        offered<ThirdsRule>(Axis::Horizontal, blankSketch(), bare(box(3, 1, 2, 2)), resizeRight)
            .empty());
    EXPECT_EQ(
        offered<ThirdsRule>(Axis::Horizontal, blankSketch(), bare(box(1, 1, 3, 2)), resizeRight)
            .size(),
        1U);
}

}  // namespace
}  // namespace matwright
