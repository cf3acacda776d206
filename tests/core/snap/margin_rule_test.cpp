// SPDX-License-Identifier: MIT
#include "core/snap/margin_rule.h"

#include <gtest/gtest.h>

#include "tests/core/snap/scene.h"

namespace matwright {
namespace {

using namespace test;

TEST(MarginRule, bringsTheOutermostEdgesToTheMarginsOfTheirSides) {
    Sketch sketch = blankSketch();
    sketch.page.margins = {in(1), in(2), in(3), in(4)};
    struct Row {
        Axis axis;
        Rect at;
        const char* why;
    };
    const Row rows[] = {{Axis::Horizontal, box(1, 5, 2, 1), "left margin"},
                        {Axis::Horizontal, box(7, 5, 2, 1), "right margin"},
                        {Axis::Vertical, box(5, 2, 2, 1), "top margin"},
                        {Axis::Vertical, box(5, 7, 2, 1), "bottom margin"}};
    for (const Row& row : rows) {
        const Rect off = row.at.moved({six(1), six(1)});
        const auto found = offered<MarginRule>(row.axis, sketch, {off.expanded(-six(2)), off});
        ASSERT_EQ(found.size(), 1U) << row.why;
        EXPECT_EQ(found[0].by, -six(1));
        EXPECT_EQ(found[0].why, row.why);
    }
}

TEST(MarginRule, stopsJustBeyondReach) {
    const Rect atReach = box(0, 5, 2, 2).moved({six(8 + 2), {}});
    EXPECT_EQ(offered<MarginRule>(Axis::Horizontal, blankSketch(), bare(atReach)).size(), 1U);
    EXPECT_TRUE(
        offered<MarginRule>(Axis::Horizontal, blankSketch(), bare(atReach.moved({tick, {}})))
            .empty());
}

TEST(MarginRule, hasTheMarginsOfBothPages) {
    const Sketch sketch = doublePage(in(1));
    for (const std::int64_t left : {0, 13}) {
        const Rect wide = Rect::at({in(left) + six(8), in(4)}, {in(11), in(2)});
        EXPECT_EQ(offered<MarginRule>(Axis::Horizontal, sketch, bare(wide)).size(), 2U);
    }
}

TEST(MarginRule, aResizeSnapsOnlyTheDraggedEdge) {
    const SnapBox full = bare(insideMargins(PageSetup{}).front());
    EXPECT_EQ(offered<MarginRule>(Axis::Horizontal, blankSketch(), full, resizeLeft).size(), 1U);
    EXPECT_TRUE(offered<MarginRule>(Axis::Vertical, blankSketch(), full, resizeLeft).empty());
    EXPECT_EQ(offered<MarginRule>(Axis::Vertical, blankSketch(), full, resizeBottom)[0].why,
              "bottom margin");
}

}  // namespace
}  // namespace matwright
