// SPDX-License-Identifier: MIT
#include "core/snap/page_centre_rule.h"

#include <gtest/gtest.h>

#include "tests/core/snap/scene.h"

namespace matwright {
namespace {

using namespace test;

TEST(PageCentreRule, bringsTheCentreOrAnEdgeToThePagesCentreLine) {
    for (const std::int64_t left : {3, 5, 6}) {  // right edge, centre, left edge; 3 or 2 in wide
        const Rect at = box(left, 1, left == 5 ? 2 : 3, 2).moved({-six(1), {}});
        const auto found = offered<PageCentreRule>(Axis::Horizontal, blankSketch(), bare(at));
        ASSERT_EQ(found.size(), 1U) << left;
        EXPECT_EQ(found[0].by, six(1));
        EXPECT_EQ(found[0].why, "page centre");
        EXPECT_EQ(found[0].guides[0].at, in(6));
    }
}

TEST(PageCentreRule, goesByTheTrim) {
    const Rect trim = box(5, 1, 2, 2);
    const SnapBox deepBottom{trim, {trim.x.expanded(six(2)), {in(1) - six(2), in(5)}}};
    EXPECT_EQ(offered<PageCentreRule>(Axis::Horizontal, blankSketch(), deepBottom).size(), 1U);
}

TEST(PageCentreRule, roundsAnOddCentreToTheTickBelow) {
    const Rect odd = Rect::at({in(5), in(1)}, {in(2) + tick, in(1)});
    const auto found = offered<PageCentreRule>(Axis::Horizontal, blankSketch(), bare(odd));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].by, Length());
}

TEST(PageCentreRule, hasACentreForEachPageOfADoublePage) {
    const Sketch sketch = doublePage(in(1));
    EXPECT_EQ(offered<PageCentreRule>(Axis::Horizontal, sketch, bare(box(5, 1, 2, 2))).size(), 1U);
    EXPECT_EQ(offered<PageCentreRule>(Axis::Horizontal, sketch, bare(box(18, 1, 2, 2))).size(), 1U);
    EXPECT_TRUE(offered<PageCentreRule>(Axis::Horizontal, sketch, bare(box(11, 1, 3, 2))).empty());
}

TEST(PageCentreRule, aResizeBringsTheDraggedEdgeButNotTheCentre) {
    EXPECT_TRUE(
        offered<PageCentreRule>(Axis::Horizontal, blankSketch(), bare(box(5, 1, 2, 2)), resizeRight)
            .empty());
    EXPECT_EQ(
        offered<PageCentreRule>(Axis::Horizontal, blankSketch(), bare(box(3, 1, 3, 2)), resizeRight)
            .size(),
        1U);
}

}  // namespace
}  // namespace matwright
