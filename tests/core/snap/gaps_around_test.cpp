// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "tests/core/snap/scene.h"

namespace matwright {
namespace {

using namespace test;

std::vector<SnapGap> gaps(const Sketch& sketch, const Rect& at) {
    return gapsAround(SnapContext(sketch, {}), at);
}

TEST(GapsAround, goToThePageEdgesOfAnEmptyPage) {
    EXPECT_EQ(gaps(blankSketch(), box(2, 3, 4, 2)),
              (std::vector<SnapGap>{{Axis::Horizontal, in(4), Length(), in(2)},
                                    {Axis::Horizontal, in(4), in(6), in(12)},
                                    {Axis::Vertical, in(4), Length(), in(3)},
                                    {Axis::Vertical, in(4), in(5), in(12)}}));
}

TEST(GapsAround, goToTheNearestNeighbourAndStandInTheMiddleOfWhatTheyShare) {
    const Sketch sketch = sceneOf({box(0, 4, 1, 7), box(7, 2, 1, 2), box(9, 2, 1, 2)});
    const auto found = gaps(sketch, box(2, 3, 4, 2));
    ASSERT_EQ(found.size(), 4U);
    EXPECT_EQ(found[0], (SnapGap{Axis::Horizontal, Length::inches(4, 1, 2), in(1), in(2)}));
    EXPECT_EQ(found[1], (SnapGap{Axis::Horizontal, Length::inches(3, 1, 2), in(6), in(7)}));
}

TEST(GapsAround, goFromMatEdgesOfNeighbours) {
    Sketch sketch = blankSketch();
    addMattedSlot(sketch, box(8, 3, 2, 2), six(4));
    EXPECT_EQ(gaps(sketch, box(2, 3, 4, 2))[1].to, in(8) - six(4));
}

TEST(GapsAround, passByNeighboursThatOnlyTouchOrLieUnderTheBox) {
    // One ends where the box begins on the other axis, one reaches under it, one holds it.
    const Sketch sketch = sceneOf({box(7, 1, 1, 2), box(5, 3, 4, 2), box(1, 1, 10, 10)});
    const auto found = gaps(sketch, box(2, 3, 4, 2));
    EXPECT_EQ(found[0].from, Length());
    EXPECT_EQ(found[1].to, in(12));
}

TEST(GapsAround, areZeroWhereTwoTouch) {
    const auto found = gaps(sceneOf({box(6, 3, 1, 2)}), box(2, 3, 4, 2));
    EXPECT_EQ(found[1].from, in(6));
    EXPECT_EQ(found[1].to, in(6));
}

TEST(GapsAround, haveNoneOnASideThatHangsOverThePage) {
    const auto found = gaps(blankSketch(), box(-1, 3, 4, 2));
    EXPECT_EQ(found.size(), 3U);
    EXPECT_EQ(found[0], (SnapGap{Axis::Horizontal, in(4), in(3), in(12)}));
}

TEST(GapsAround, stopAtTheFoldOfADoublePage) {
    Sketch sketch = doublePage(in(1));
    const auto right = gaps(sketch, box(15, 3, 4, 2));
    EXPECT_EQ(right[0].from, in(13));
    EXPECT_EQ(right[1].to, in(25));
    const auto left = gaps(sketch, box(2, 3, 4, 2));
    EXPECT_EQ(left[1].to, in(12));
}

TEST(GapsAround, leaveOutThePiecesThatMove) {
    const Sketch sketch = sceneOf({box(7, 3, 1, 2)});
    const PieceId moving[] = {PieceId{1}};
    EXPECT_EQ(gapsAround(SnapContext(sketch, moving), box(2, 3, 4, 2))[1].to, in(12));
}

}  // namespace
}  // namespace matwright
