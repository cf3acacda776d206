// SPDX-License-Identifier: MIT
#include "core/snap/gutter_rule.h"

#include <gtest/gtest.h>

#include "tests/core/snap/scene.h"

namespace matwright {
namespace {

using namespace test;

constexpr Length gutter = six(4);  // of a blank sketch

TEST(GutterRule, keepsAGutterOnEverySideOfANeighbour) {
    const Sketch sketch = sceneOf({box(4, 4, 2, 2)});
    struct Row {
        Axis axis;
        Rect at;
        Interval gap;
    };
    const Row rows[] = {
        {Axis::Horizontal, box(6, 4, 2, 2).moved({gutter, {}}), {in(6), in(6) + gutter}},
        {Axis::Horizontal, box(2, 4, 2, 2).moved({-gutter, {}}), {in(4) - gutter, in(4)}},
        {Axis::Vertical, box(4, 6, 2, 2).moved({{}, gutter}), {in(6), in(6) + gutter}},
        {Axis::Vertical, box(4, 2, 2, 2).moved({{}, -gutter}), {in(4) - gutter, in(4)}},
    };
    for (const Row& row : rows) {
        for (const Length off : {-six(2), -tick, Length(), tick, six(2)}) {
            const Rect at = row.at.moved({off, off});
            const auto found = offered<GutterRule>(row.axis, sketch, bare(at));
            ASSERT_EQ(found.size(), 1U);
            EXPECT_EQ(found[0].by, -off);
            EXPECT_EQ(found[0].why, "1/4 in gutter");
            ASSERT_EQ(found[0].gaps.size(), 1U);
            EXPECT_EQ((Interval{found[0].gaps[0].from, found[0].gaps[0].to}), row.gap);
        }
        const Point beyond{six(2) + tick, six(2) + tick};
        EXPECT_TRUE(offered<GutterRule>(row.axis, sketch, bare(row.at.moved(beyond))).empty());
    }
}

TEST(GutterRule, needsPiecesThatFaceEachOtherOrNearlySo) {
    const Sketch sketch = sceneOf({box(4, 4, 2, 2)});
    const Rect below = box(6, 6, 2, 2).moved({gutter, {}});
    EXPECT_EQ(offered<GutterRule>(Axis::Horizontal, sketch, bare(below)).size(), 1U);
    EXPECT_EQ(offered<GutterRule>(Axis::Horizontal, sketch, bare(below.moved({{}, six(2)}))).size(),
              1U);
    EXPECT_TRUE(
        offered<GutterRule>(Axis::Horizontal, sketch, bare(below.moved({{}, six(2) + tick})))
            .empty());
}

TEST(GutterRule, countsFromMatEdgeToMatEdge) {
    Sketch sketch = blankSketch();
    addMattedSlot(sketch, box(4, 4, 2, 2), six(2));
    const Rect at = box(6, 4, 2, 2).moved({six(2) + gutter + six(1), {}});
    const auto found = offered<GutterRule>(Axis::Horizontal, sketch, matted(at, six(1)));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].by, Length());
}

TEST(GutterRule, looksPastNeighboursThatDoNotFace) {
    // The edge right at the gutter belongs to a piece far below; the one that faces is 1/16 in off.
    const Sketch sketch =
        sceneOf({box(4, 9, 2, 2), Rect::at({in(4), in(4)}, {in(2) + six(1), in(2)})});
    const auto found =
        offered<GutterRule>(Axis::Horizontal, sketch, bare(box(6, 4, 2, 2).moved({gutter, {}})));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].by, six(1));
}

TEST(GutterRule, isSilentWithoutAGutter) {
    Sketch sketch = sceneOf({box(4, 4, 2, 2)});
    sketch.page.gutter = Length();
    EXPECT_TRUE(offered<GutterRule>(Axis::Horizontal, sketch, bare(box(6, 4, 2, 2))).empty());
}

TEST(GutterRule, saysTheGutterOnTheChosenScale) {
    const Sketch sketch = sceneOf({box(4, 4, 2, 2)});
    SnapSettings settings = nothing();
    settings.scale = Scale::HalfMillimetre;
    const auto found = offered<GutterRule>(
        Axis::Horizontal, sketch, bare(box(6, 4, 2, 2).moved({gutter, {}})), move, settings);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].why, lengthText(gutter, Scale::HalfMillimetre) + " gutter");
}

TEST(GutterRule, aResizeSnapsOnlyTheDraggedEdge) {
    const Sketch sketch = sceneOf({box(0, 4, 2, 2), box(6, 4, 2, 2)});
    const SnapBox between = bare({{in(2) + gutter, in(6) - gutter}, {in(4), in(6)}});
    EXPECT_EQ(offered<GutterRule>(Axis::Horizontal, sketch, between).size(), 2U);
    const auto found = offered<GutterRule>(Axis::Horizontal, sketch, between, resizeRight);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].gaps[0].to, in(6));
}

}  // namespace
}  // namespace matwright
