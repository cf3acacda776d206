// SPDX-License-Identifier: MIT
#include "core/printplan/sheet_marks.h"

#include <gtest/gtest.h>

#include <random>

#include "core/prints/sheet_pixels.h"

namespace matwright {

namespace {

bool isInked(const Raster& sheet, int x, int y) {
    return sheet.row(y)[3 * static_cast<std::size_t>(x)] != 255;
}

TEST(SheetMarks, StandJustOutsideOfAPrintInLineWithItsEdges) {
    Raster sheet = whiteSheet({600, 600});
    const PixelRect print{200, 150, 400, 450};
    drawSheetMarks(sheet, {print}, 300);
    // 1/64 in is 5 pixels, 1/8 in is 38.
    EXPECT_TRUE(isInked(sheet, 199, 150 - 1 - 5));
    EXPECT_TRUE(isInked(sheet, 199, 150 - 1 - 5 - 37));
    EXPECT_FALSE(isInked(sheet, 199, 150 - 1 - 5 - 38));
    EXPECT_FALSE(isInked(sheet, 199, 148));
    EXPECT_FALSE(isInked(sheet, 200, 144));
    EXPECT_TRUE(isInked(sheet, 400, 455));
    EXPECT_TRUE(isInked(sheet, 194, 149));
    EXPECT_TRUE(isInked(sheet, 405, 450));
}

TEST(SheetMarks, AreNeverOnAPrint) {
    constexpr unsigned seed = 5;
    std::mt19937_64 random(seed);
    const auto below = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    for (int round = 0; round < 30; ++round) {
        Raster sheet = whiteSheet({300, 400});
        std::vector<PixelRect> prints;
        for (int i = 0; i < 4; ++i) {
            const int left = below(250) - 20;
            const int top = below(350) - 20;
            prints.push_back({left, top, left + 20 + below(100), top + 20 + below(100)});
        }
        drawSheetMarks(sheet, prints, 300);
        for (int y = 0; y < 400; ++y) {
            for (int x = 0; x < 300; ++x) {
                for (const PixelRect& print : prints) {
                    if (x >= print.left && x < print.right && y >= print.top && y < print.bottom) {
                        ASSERT_FALSE(isInked(sheet, x, y)) << "seed " << seed;
                    }
                }
            }
        }
    }
}

TEST(SheetMarks, AreLeftOutWherePrintsFillTheSheet) {
    Raster sheet = whiteSheet({400, 300});
    drawSheetMarks(sheet, {{0, 0, 200, 300}, {200, 0, 400, 300}}, 300);
    EXPECT_EQ(sheet, whiteSheet({400, 300}));
}

}  // namespace

}  // namespace matwright
