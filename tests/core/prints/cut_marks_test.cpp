// SPDX-License-Identifier: MIT
#include "core/prints/cut_marks.h"

#include <gtest/gtest.h>

#include "core/prints/sheet_pixels.h"

namespace matwright {

namespace {

bool isWhite(const Raster& raster, int x, int y) {
    return raster.row(y)[3 * static_cast<std::size_t>(x)] == 255;
}

int inkIn(const Raster& raster, const PixelRect& rect) {
    int count = 0;
    for (int y = rect.top; y < rect.bottom; ++y) {
        for (int x = rect.left; x < rect.right; ++x) {
            count += isWhite(raster, x, y) ? 0 : 1;
        }
    }
    return count;
}

TEST(CutMarks, LieOutsideTheTrimInLineWithItsEdges) {
    Raster paper = whiteSheet({900, 1200});
    const PixelRect trim{75, 75, 825, 1125};
    drawCutMarks(paper, trim, trim, 300);
    EXPECT_EQ(inkIn(paper, trim), 0);
    // 1/8 in long, eight of them.
    EXPECT_EQ(inkIn(paper, {0, 0, 900, 1200}), 8 * 38);
    EXPECT_FALSE(isWhite(paper, 74, 60));
    EXPECT_FALSE(isWhite(paper, 825, 60));
    EXPECT_FALSE(isWhite(paper, 60, 1125));
    EXPECT_TRUE(isWhite(paper, 74, 74));
}

TEST(CutMarks, StayOutOfTheBleed) {
    Raster paper = whiteSheet({900, 1200});
    const PixelRect trim{150, 150, 750, 1050};
    const PixelRect picture{112, 112, 788, 1088};
    drawCutMarks(paper, trim, picture, 300);
    EXPECT_EQ(inkIn(paper, picture), 0);
    EXPECT_GT(inkIn(paper, {0, 0, 900, 1200}), 0);
}

TEST(CutMarks, AreLeftOutWhereThereIsNoRoom) {
    Raster paper = whiteSheet({900, 1200});
    drawCutMarks(paper, {5, 5, 895, 1195}, {5, 5, 895, 1195}, 300);
    EXPECT_EQ(inkIn(paper, {0, 0, 900, 1200}), 0);
}

}  // namespace

}  // namespace matwright
