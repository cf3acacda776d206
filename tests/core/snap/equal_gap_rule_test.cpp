// SPDX-License-Identifier: MIT
#include "core/snap/equal_gap_rule.h"

#include <gtest/gtest.h>

#include "tests/core/snap/scene.h"

namespace matwright {
namespace {

using namespace test;

TEST(EqualGapRule, bringsTheBoxIntoTheMiddleBetweenTwoNeighbours) {
    const Sketch sketch = sceneOf({box(1, 4, 2, 2), box(8, 4, 2, 2)});
    const Rect at = box(4, 4, 3, 2).moved({six(1), {}});
    const auto found = offered<EqualGapRule>(Axis::Horizontal, sketch, bare(at));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].by, -six(1));
    EXPECT_EQ(found[0].why, "equal gaps of 1 in");
    EXPECT_EQ(found[0].gaps, (std::vector<SnapGap>{{Axis::Horizontal, in(5), in(3), in(4)},
                                                   {Axis::Horizontal, in(5), in(7), in(8)}}));
}

TEST(EqualGapRule, givesAnOddTickToTheSecondGap) {
    const Sketch sketch = sceneOf({box(1, 4, 2, 2), box(8, 4, 2, 2).moved({tick, {}})});
    const auto found = offered<EqualGapRule>(Axis::Horizontal, sketch, bare(box(4, 4, 3, 2)));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].by, Length());
}

TEST(EqualGapRule, goesOnWithTheGapOfARowOnEitherSide) {
    const Sketch sketch = sceneOf({box(2, 4, 2, 2), box(5, 4, 2, 2)});
    const auto after =
        offered<EqualGapRule>(Axis::Horizontal, sketch, bare(box(8, 4, 3, 2).moved({six(2), {}})));
    ASSERT_EQ(after.size(), 1U);
    EXPECT_EQ(after[0].by, -six(2));
    EXPECT_EQ(after[0].gaps, (std::vector<SnapGap>{{Axis::Horizontal, in(5), in(4), in(5)},
                                                   {Axis::Horizontal, in(5), in(7), in(8)}}));
    const auto before = offered<EqualGapRule>(Axis::Horizontal, sketch,
                                              bare(box(-1, 4, 2, 2).moved({-six(1), {}})));
    ASSERT_EQ(before.size(), 1U);
    EXPECT_EQ(before[0].by, six(1));
}

TEST(EqualGapRule, worksDownThePageToo) {
    const Sketch sketch = sceneOf({box(4, 2, 2, 2), box(4, 5, 2, 2)});
    const auto found =
        offered<EqualGapRule>(Axis::Vertical, sketch, bare(box(4, 8, 2, 2).moved({{}, six(1)})));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].by, -six(1));
}

TEST(EqualGapRule, countsFromMatEdgeToMatEdge) {
    Sketch sketch = sceneOf({box(1, 4, 2, 2)});
    addMattedSlot(sketch, box(9, 4, 2, 2), in(1));
    const auto found =
        offered<EqualGapRule>(Axis::Horizontal, sketch, matted(box(4, 4, 3, 2), six(4)));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].by, Length());
    EXPECT_EQ(found[0].why, "equal gaps of 3/4 in");
}

TEST(EqualGapRule, needsNeighboursThatFaceTheBox) {
    const Sketch sketch = sceneOf({box(1, 4, 2, 2), box(8, 7, 2, 2)});
    EXPECT_TRUE(offered<EqualGapRule>(Axis::Horizontal, sketch, bare(box(4, 4, 3, 2))).empty());
}

TEST(EqualGapRule, isSilentWhereNothingIsBetween) {
    // The box fits exactly: no gap to make equal. And touching pieces make no row to go on with.
    const Sketch tight = sceneOf({box(1, 4, 3, 2), box(7, 4, 2, 2)});
    EXPECT_TRUE(offered<EqualGapRule>(Axis::Horizontal, tight, bare(box(4, 4, 3, 2))).empty());
    const Sketch touching = sceneOf({box(1, 4, 2, 2), box(3, 4, 2, 2)});
    EXPECT_TRUE(offered<EqualGapRule>(Axis::Horizontal, touching, bare(box(5, 4, 2, 2))).empty());
}

TEST(EqualGapRule, hasNothingForAResize) {
    const Sketch sketch = sceneOf({box(1, 4, 2, 2), box(8, 4, 2, 2)});
    EXPECT_TRUE(offered<EqualGapRule>(Axis::Horizontal, sketch, bare(box(4, 4, 3, 2)), resizeRight)
                    .empty());
}

}  // namespace
}  // namespace matwright
