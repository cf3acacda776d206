// SPDX-License-Identifier: MIT
#include "core/snap/page_edge_rule.h"

#include <gtest/gtest.h>

#include "tests/core/snap/scene.h"

namespace matwright {
namespace {

using namespace test;

TEST(PageEdgeRule, bringsTheOutermostEdgesToThePageEdgesOfTheirSides) {
    const Sketch sketch = blankSketch();
    struct Row {
        Axis axis;
        Rect at;
        Length by;
    };
    const Row rows[] = {
        {Axis::Horizontal, box(0, 4, 3, 3).moved({six(1), {}}), -six(1)},
        {Axis::Horizontal, box(9, 4, 3, 3).moved({six(2), {}}), -six(2)},
        {Axis::Vertical, box(4, 0, 3, 3).moved({{}, -six(1)}), six(1)},
        {Axis::Vertical, box(4, 9, 3, 3).moved({{}, -six(1)}), six(1)},
    };
    for (const Row& row : rows) {
        const auto found = offered<PageEdgeRule>(row.axis, sketch, bare(row.at));
        ASSERT_EQ(found.size(), 1U);
        EXPECT_EQ(found[0].by, row.by);
        EXPECT_EQ(found[0].why, "page edge");
        const auto withMat =
            offered<PageEdgeRule>(row.axis, sketch, {row.at.expanded(-six(2)), row.at});
        EXPECT_EQ(withMat, found);
    }
}

TEST(PageEdgeRule, stopsJustBeyondReach) {
    const Sketch sketch = blankSketch();
    const Rect atReach = box(0, 4, 3, 3).moved({six(2), {}});
    EXPECT_EQ(offered<PageEdgeRule>(Axis::Horizontal, sketch, bare(atReach)).size(), 1U);
    EXPECT_TRUE(
        offered<PageEdgeRule>(Axis::Horizontal, sketch, bare(atReach.moved({tick, {}}))).empty());
}

TEST(PageEdgeRule, aRightEdgeDoesNotSnapToALeftPageEdge) {
    EXPECT_TRUE(
        offered<PageEdgeRule>(Axis::Horizontal, blankSketch(), bare(box(-3, 4, 3, 3))).empty());
}

TEST(PageEdgeRule, knowsBothPagesAndTheirFoldEdges) {
    const Sketch sketch = doublePage(in(1));
    struct Row {
        Rect at;
        const char* why;
    };
    const Row rows[] = {{box(0, 4, 3, 3), "page edge"},
                        {box(9, 4, 3, 3), "fold edge"},
                        {box(13, 4, 3, 3), "fold edge"},
                        {box(22, 4, 3, 3), "page edge"}};
    for (const Row& row : rows) {
        const auto found = offered<PageEdgeRule>(Axis::Horizontal, sketch, bare(row.at));
        ASSERT_EQ(found.size(), 1U) << row.at.left().toInches();
        EXPECT_EQ(found[0].by, Length());
        EXPECT_EQ(found[0].why, row.why);
    }
}

TEST(PageEdgeRule, aResizeSnapsOnlyTheDraggedEdge) {
    const SnapBox wide = bare(box(0, 0, 12, 12));
    EXPECT_EQ(offered<PageEdgeRule>(Axis::Horizontal, blankSketch(), wide).size(), 2U);
    EXPECT_EQ(offered<PageEdgeRule>(Axis::Horizontal, blankSketch(), wide, resizeRight).size(), 1U);
    EXPECT_TRUE(offered<PageEdgeRule>(Axis::Vertical, blankSketch(), wide, resizeRight).empty());
}

TEST(PageEdgeRule, theGuideSpansThePageAndTheBox) {
    const auto found =
        offered<PageEdgeRule>(Axis::Horizontal, blankSketch(), bare(box(0, 10, 3, 4)));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].guides,
              (std::vector<SnapGuide>{{Axis::Horizontal, Length(), Length(), in(14)}}));
}

}  // namespace
}  // namespace matwright
