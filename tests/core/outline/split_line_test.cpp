// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cmath>
#include <iostream>

#include "core/outline/outline.h"
#include "core/outline/region.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

constexpr double inch = Length::ticksPerInch;

Region coverBox(double left, double top, double right, double bottom) {
    return regionOf(polygonPath({{left * inch, top * inch},
                                 {right * inch, top * inch},
                                 {right * inch, bottom * inch},
                                 {left * inch, bottom * inch}}));
}

Path line(double x1, double y1, double x2, double y2) {
    return linePath({x1 * inch, y1 * inch}, {x2 * inch, y2 * inch});
}

Path square(double left, double top, double side) {
    return polygonPath({{left * inch, top * inch},
                        {(left + side) * inch, top * inch},
                        {(left + side) * inch, (top + side) * inch},
                        {left * inch, (top + side) * inch}});
}

double lengthOf(const std::vector<Path>& paths) {
    double sum = 0;
    for (const Path& path : paths) {
        std::vector<Vertex> corners = flattened(path, chordTolerance);
        if (path.closed) {
            corners.push_back(corners.front());
        }
        for (std::size_t i = 1; i < corners.size(); ++i) {
            sum += std::hypot(corners[i].x - corners[i - 1].x, corners[i].y - corners[i - 1].y);
        }
    }
    return sum / inch;
}

void expectPath(const Path& path, const Path& expected) {
    ASSERT_EQ(path.segments.size(), expected.segments.size());
    EXPECT_EQ(path.closed, expected.closed);
    EXPECT_NEAR(path.start.x, expected.start.x, 1e-6);
    EXPECT_NEAR(path.start.y, expected.start.y, 1e-6);
    for (std::size_t i = 0; i < expected.segments.size(); ++i) {
        EXPECT_NEAR(path.segments[i].end.x, expected.segments[i].end.x, 1e-6);
        EXPECT_NEAR(path.segments[i].end.y, expected.segments[i].end.y, 1e-6);
    }
}

TEST(SplitLine, NoCoverLeavesTheLineAsItIs) {
    const SplitLine split = splitUnder(square(0, 0, 2), {});
    EXPECT_EQ(split.visible, std::vector{square(0, 0, 2)});
    EXPECT_TRUE(split.hidden.empty());
}

TEST(SplitLine, ALineThroughACoverIsVisibleHiddenVisible) {
    const SplitLine split = splitUnder(line(0, 1, 10, 1), coverBox(3, 0, 5, 2));
    ASSERT_EQ(split.visible.size(), 2u);
    ASSERT_EQ(split.hidden.size(), 1u);
    expectPath(split.visible[0], line(0, 1, 3, 1));
    expectPath(split.hidden[0], line(3, 1, 5, 1));
    expectPath(split.visible[1], line(5, 1, 10, 1));
}

TEST(SplitLine, KeepsTheDirectionOfTheLine) {
    const SplitLine split = splitUnder(line(10, 1, 0, 1), coverBox(3, 0, 5, 2));
    ASSERT_EQ(split.hidden.size(), 1u);
    expectPath(split.hidden[0], line(5, 1, 3, 1));
}

TEST(SplitLine, AWholeLineUnderACoverIsHiddenAndUnchanged) {
    const Path oval =
        ovalPath({{Length::inches(1), Length::inches(2)}, {Length::inches(1), Length::inches(3)}});
    const SplitLine split = splitUnder(oval, coverBox(0, 0, 5, 5));
    EXPECT_TRUE(split.visible.empty());
    EXPECT_EQ(split.hidden, std::vector{oval});
}

TEST(SplitLine, AnUncutCurveBesideACoverStaysACurve) {
    const Path oval =
        ovalPath({{Length::inches(1), Length::inches(2)}, {Length::inches(1), Length::inches(3)}});
    EXPECT_EQ(splitUnder(oval, coverBox(2, 0, 5, 5)).visible, std::vector{oval});
}

TEST(SplitLine, WhatRunsAlongTheCoversEdgeIsVisible) {
    const Region cover = coverBox(2, 2, 4, 4);
    for (const Path& along :
         {line(2, 2, 4, 2), line(0, 2, 9, 2), line(4, 9, 4, 0), square(2, 2, 2)}) {
        const SplitLine split = splitUnder(along, cover);
        EXPECT_TRUE(split.hidden.empty());
        EXPECT_EQ(split.visible, std::vector{along});
    }
}

TEST(SplitLine, OneTickInsideTheEdgeIsHiddenOneTickOutsideIsNot) {
    const double tick = 1 / inch;
    const Region cover = coverBox(2, 2, 4, 4);
    EXPECT_NEAR(lengthOf(splitUnder(line(0, 2 + tick, 9, 2 + tick), cover).hidden), 2, 1e-5);
    EXPECT_EQ(lengthOf(splitUnder(line(0, 2 - tick, 9, 2 - tick), cover).hidden), 0);
}

TEST(SplitLine, ACornerThatTouchesTheCoverFromOutsideCutsNothing) {
    const SplitLine split = splitUnder(square(0, 0, 2), coverBox(2, 2, 4, 4));
    EXPECT_EQ(split.visible, std::vector{square(0, 0, 2)});
}

TEST(SplitLine, AClosedLineIsCutIntoOpenOnesThatJoinAcrossItsStart) {
    // The cover takes the middle of the right side; the rest is one run over the start corner.
    const SplitLine split = splitUnder(square(0, 0, 3), coverBox(2, 1, 4, 2));
    ASSERT_EQ(split.visible.size(), 1u);
    ASSERT_EQ(split.hidden.size(), 1u);
    expectPath(split.hidden[0], line(3, 1, 3, 2));
    Path rest = line(3, 2, 3, 3);
    for (const auto& [x, y] : {std::pair{0.0, 3.0}, {0.0, 0.0}, {3.0, 0.0}, {3.0, 1.0}}) {
        rest.lineTo({x * inch, y * inch});
    }
    expectPath(split.visible[0], rest);
}

TEST(SplitLine, ACoverOverTheStartCornerHidesAcrossIt) {
    const SplitLine split = splitUnder(square(0, 0, 3), coverBox(-1, -1, 1, 1));
    ASSERT_EQ(split.hidden.size(), 1u);
    Path corner = line(0, 1, 0, 0);
    corner.lineTo({1 * inch, 0});
    expectPath(split.hidden[0], corner);
    EXPECT_EQ(split.visible.size(), 1u);
}

TEST(SplitLine, AHoleInTheCoverShowsTheLine) {
    const Region frame = subtracted(coverBox(0, 0, 6, 6), coverBox(2, 2, 4, 4));
    const SplitLine split = splitUnder(line(-1, 3, 7, 3), frame);
    EXPECT_EQ(split.hidden.size(), 2u);
    EXPECT_EQ(split.visible.size(), 3u);
    EXPECT_NEAR(lengthOf(split.hidden), 4, 1e-9);
}

TEST(SplitLine, VisibleAndHiddenAddUpToTheLineForRandomPieces) {
    constexpr std::uint64_t seed = 815;
    constexpr int runs = 500;
    test::Random random(seed);
    int cut = 0;
    for (int run = 0; run < runs; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", run " << run);
        const Path outline = outermostOutline(test::randomPiece(random));
        const Region cover = united({regionOf(outermostOutline(test::randomPiece(random))),
                                     regionOf(outermostOutline(test::randomPiece(random)))});
        const SplitLine split = splitUnder(outline, cover);
        cut += split.visible.empty() || split.hidden.empty() ? 0 : 1;
        EXPECT_NEAR(lengthOf(split.visible) + lengthOf(split.hidden), lengthOf({outline}), 1e-5);
        for (const Path& path : split.hidden) {
            const std::vector<Vertex> corners = flattened(path, chordTolerance);
            const Vertex middle{(corners[0].x + corners[1].x) / 2,
                                (corners[0].y + corners[1].y) / 2};
            // A speck around the middle must be covered all over.
            const Region speck = regionOf(polygonPath({{middle.x - 0.2, middle.y - 0.2},
                                                       {middle.x + 0.2, middle.y - 0.2},
                                                       {middle.x, middle.y + 0.2}}));
            EXPECT_TRUE(subtracted(speck, cover).isEmpty());
        }
    }
    std::cout << runs << " outlines, seed " << seed << ", " << cut << " of them cut\n";
    EXPECT_GT(cut, runs / 10);
}

}  // namespace
}  // namespace matwright
