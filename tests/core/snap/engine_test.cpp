// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "tests/core/snap/scene.h"

namespace matwright {
namespace {

using namespace test;

SnapResult snapped(const Sketch& sketch, const SnapBox& at, const SnapSettings& settings = {},
                   const SnapEdges& edges = move) {
    return snap(SnapContext(sketch, {}), at, edges, settings);
}

TEST(Snap, doesNothingWhereNothingIsNear) {
    const SnapResult result =
        snapped(blankSketch(), bare(Rect::at({in(1), in(1)}, {in(2), in(2)})));
    EXPECT_FALSE(result.horizontal);
    EXPECT_FALSE(result.vertical);
    EXPECT_EQ(result.by(), Point());
}

TEST(Snap, takesTheNearestOnEachAxis) {
    // Left: the margin is 1/16 in away, a neighbour's edge 1/32 in. Top: only the margin.
    const Sketch sketch =
        sceneOf({Rect::at({six(8) + six(1) + six(1).halfRoundedDown(), in(7)}, {in(9), in(2)})});
    const SnapResult result = snapped(sketch, bare(Rect::at({six(9), six(7)}, {in(2), in(2)})));
    ASSERT_TRUE(result.horizontal);
    EXPECT_EQ(result.horizontal->why, "in line with 1 \u00B7 block");
    ASSERT_TRUE(result.vertical);
    EXPECT_EQ(result.vertical->why, "top margin");
    EXPECT_EQ(result.by(), (Point{six(1).halfRoundedDown(), six(1)}));
}

TEST(Snap, prefersTheLowerRankAtEqualDistance) {
    Sketch sketch = sceneOf({box(4, 1, 3, 1), Rect::at({six(8), in(9)}, {in(1), in(1)})});
    const auto at = [](Length left) { return bare(Rect::at({left, in(5)}, {in(1), in(1)})); };
    // A margin and a neighbour in line with it.
    EXPECT_EQ(snapped(sketch, at(six(9))).horizontal->why, "left margin");
    // A margin 1/16 in to the right and a page edge as far to the left.
    sketch.page.margins.left = six(2);
    EXPECT_EQ(snapped(sketch, at(six(1))).horizontal->why, "page edge");
    EXPECT_EQ(snapped(sketch, at(six(1))).by().x, -six(1));
    // The same at the right, where the page edge lies to the right.
    sketch.page.margins.right = six(2);
    const SnapResult right = snapped(sketch, at(in(11) - six(1)));
    EXPECT_EQ(right.horizontal->why, "page edge");
    EXPECT_EQ(right.by().x, six(1));
}

TEST(Snap, goesLeftBetweenTwoOfOneRankAtEqualDistance) {
    const Sketch sketch = sceneOf({Rect::at({in(3), in(1)}, {in(4), in(1)}),
                                   Rect::at({in(3) + six(2), in(3)}, {in(4), in(1)})});
    const SnapResult result =
        snapped(sketch, bare(Rect::at({in(3) + six(1), in(8)}, {in(2), in(2)})));
    EXPECT_EQ(result.by().x, -six(1));
}

TEST(Snap, showsEverythingThatHoldsWhereTheBoxLands) {
    // Left edge in line with one neighbour, right edge with another.
    const Sketch sketch = sceneOf({box(3, 1, 6, 1), box(0, 9, 5, 1).moved({-six(1), {}}),
                                   Rect::at({in(5), in(9)}, {in(6), six(8)})});
    const SnapResult result = snapped(sketch, bare(box(3, 5, 2, 2).moved({six(1), {}})));
    ASSERT_TRUE(result.horizontal);
    std::vector<Length> lines;
    for (const SnapGuide& guide : result.horizontal->guides) {
        lines.push_back(guide.at);
    }
    EXPECT_EQ(lines, (std::vector<Length>{in(3), in(5)}));
}

TEST(Snap, drawsOneGuideALineFromEndToEnd) {
    // The page's centre line and the neighbour's edge are one line.
    const Sketch sketch = sceneOf({box(6, 1, 3, 1)});
    const SnapResult result = snapped(sketch, bare(box(6, 5, 2, 2).moved({six(1), {}})));
    ASSERT_TRUE(result.horizontal);
    EXPECT_EQ(result.horizontal->why, "page centre");
    EXPECT_EQ(result.horizontal->guides,
              (std::vector<SnapGuide>{{Axis::Horizontal, in(6), Length(), in(12)}}));
}

TEST(Snap, guidesReachToTheBoxWhereItLandsOnBothAxes) {
    const Sketch sketch = sceneOf({box(3, 1, 4, 1)});
    SnapSettings settings = nothing();
    settings.neighbourEdges = settings.margins = true;
    // Up by 1/16 in onto the bottom margin, and right by 1/16 in into line.
    const Rect at = Rect::at({in(3) - six(1), in(9) + six(9)}, {in(2), in(2)});
    const SnapResult result = snapped(sketch, bare(at), settings);
    EXPECT_EQ(result.by(), (Point{six(1), -six(1)}));
    ASSERT_TRUE(result.horizontal);
    EXPECT_EQ(result.horizontal->guides,
              (std::vector<SnapGuide>{{Axis::Horizontal, in(3), in(1), in(11) + six(8)}}));
}

TEST(Snap, showsTheGutterGapBesideTheLine) {
    const Sketch sketch = sceneOf({box(4, 4, 2, 2)});
    const SnapResult result = snapped(sketch, bare(box(6, 4, 3, 3).moved({six(4) + six(1), {}})));
    ASSERT_TRUE(result.horizontal);
    EXPECT_EQ(result.horizontal->why, "1/4 in gutter");
    ASSERT_EQ(result.horizontal->gaps.size(), 1U);
    EXPECT_EQ(result.horizontal->gaps[0],
              (SnapGap{Axis::Horizontal, in(5), in(6), in(6) + six(4)}));
}

TEST(Snap, showsAGapWhereItIsOnceBothAxesHaveSnapped) {
    const Sketch sketch = sceneOf({box(4, 4, 2, 2)});
    const SnapResult result =
        snapped(sketch, bare(box(6, 4, 3, 1).moved({six(4) + six(1), six(1)})));
    ASSERT_TRUE(result.horizontal);
    EXPECT_EQ(result.by(), (Point{-six(1), -six(1)}));
    EXPECT_EQ(
        result.horizontal->gaps,
        (std::vector<SnapGap>{{Axis::Horizontal, Length::inches(4, 1, 2), in(6), in(6) + six(4)}}));
}

TEST(Snap, joinsGuidesOfTwoRulesOnOneLineInBothDirections) {
    // A gutter from the neighbour beside it, and in line with one above or below.
    for (const std::int64_t top : {1, 9}) {
        const Sketch sketch =
            sceneOf({box(1, 4, 2, 2), Rect::at({in(3) + six(4), in(top)}, {in(5), in(1)})});
        const SnapResult result =
            snapped(sketch, bare(Rect::at({in(3) + six(4), in(4)}, {in(2), in(2)})));
        ASSERT_TRUE(result.horizontal);
        EXPECT_EQ(result.horizontal->why, "1/4 in gutter");
        EXPECT_EQ(result.horizontal->guides,
                  (std::vector<SnapGuide>{{Axis::Horizontal, in(3) + six(4), in(top == 1 ? 1 : 4),
                                           in(top == 1 ? 6 : 10)}}));
    }
}

TEST(Snap, aResizeMovesOnlyAlongTheDraggedAxis) {
    const SnapBox at = bare(Rect::at({six(9), six(9)}, {in(11) - six(2), in(2)}));
    const SnapResult result = snapped(blankSketch(), at, {}, resizeRight);
    ASSERT_TRUE(result.horizontal);
    EXPECT_EQ(result.horizontal->why, "right margin");
    EXPECT_FALSE(result.vertical);
}

TEST(Snap, aCornerResizeSnapsBothDraggedEdges) {
    const SnapEdges bottomRight{false, true, false, true};
    const SnapBox at = bare(Rect::at({six(9), six(9)}, {in(11) - six(2), in(11) - six(2)}));
    const SnapResult result = snapped(blankSketch(), at, {}, bottomRight);
    EXPECT_EQ(result.by(), (Point{six(1), six(1)}));
    EXPECT_EQ(result.horizontal->why, "right margin");
    EXPECT_EQ(result.vertical->why, "bottom margin");
}

TEST(Snap, aResizeNeverClosesTheBox) {
    // The dragged right edge is 1/16 in from the left one, which stands on the neighbour's edge.
    const Sketch sketch = sceneOf({box(4, 1, 3, 1)});
    const SnapBox thin = bare(Rect::at({in(4), in(5)}, {six(1), in(1)}));
    EXPECT_FALSE(snapped(sketch, thin, {}, resizeRight).horizontal);
}

TEST(Snap, knowsOnlyTheRulesThatAreOn) {
    EXPECT_TRUE(snapRules(nothing()).empty());
    EXPECT_EQ(snapRules(SnapSettings{}).size(), 8U);  // all but thirds and grid
    SnapSettings all;
    all.thirds = all.grid = true;
    EXPECT_EQ(snapRules(all).size(), 10U);
}

}  // namespace
}  // namespace matwright
