// SPDX-License-Identifier: MIT
#include "core/prints/way_round.h"

#include <gtest/gtest.h>

namespace matwright {

namespace {

// Where the stored picture's first row and first column are seen, by tiff:Orientation of Adobe's
// XMP documents: 1 top/left, 2 top/right, 3 bottom/right, 4 bottom/left, 5 left/top, 6 right/top,
// 7 right/bottom, 8 left/bottom. So this is where its first pixel is seen in a picture shown 2 wide
// and 3 high, or lying.
struct Corner {
    int orientation;
    bool isRight;
    bool isBottom;
    bool isTurned;
};
constexpr Corner corners[] = {{1, false, false, false}, {2, true, false, false},
                              {3, true, true, false},   {4, false, true, false},
                              {5, false, false, true},  {6, true, false, true},
                              {7, true, true, true},    {8, false, true, true}};

TEST(WayRound, ShowsTheFirstPixelWhereTheStandardHasIt) {
    const PixelSize stored{3, 2};
    for (const Corner& corner : corners) {
        const WayRound way = wayRound(corner.orientation, 0);
        const PixelSize shown = turned(way, stored);
        EXPECT_EQ(shown, corner.isTurned ? stored.turned() : stored) << corner.orientation;
        const PixelPart first = shownPart(way, {0, 0, 1, 1}, stored);
        EXPECT_EQ(first.left, corner.isRight ? shown.width - 1 : 0) << corner.orientation;
        EXPECT_EQ(first.top, corner.isBottom ? shown.height - 1 : 0) << corner.orientation;
    }
}

TEST(WayRound, TurnsPixelsAsItTurnsParts) {
    ASSERT_EQ(VIPS_INIT("test"), 0);
    const PixelSize stored{3, 2};
    std::vector<std::uint8_t> pixels{10, 20, 30, 40, 50, 60};
    const auto picture = vips::VImage::new_from_memory(pixels.data(), pixels.size(), stored.width,
                                                       stored.height, 1, VIPS_FORMAT_UCHAR);
    for (int orientation = 1; orientation <= 8; ++orientation) {
        for (int quarters = 0; quarters < 4; ++quarters) {
            const WayRound way = wayRound(orientation, quarters);
            const vips::VImage shown = turned(way, picture);
            for (int y = 0; y < stored.height; ++y) {
                for (int x = 0; x < stored.width; ++x) {
                    const PixelPart there = shownPart(way, {double(x), double(y), 1, 1}, stored);
                    EXPECT_EQ(shown(static_cast<int>(there.left), static_cast<int>(there.top))[0],
                              pixels[static_cast<std::size_t>(y * stored.width + x)])
                        << orientation << " " << quarters;
                }
            }
        }
    }
}

TEST(WayRound, LeadsBackExactly) {
    const PixelSize stored{4032, 3024};
    const PixelPart part{12.5, 7.25, 100.75, 333};
    for (int orientation = 0; orientation <= 9; ++orientation) {
        for (int quarters = 0; quarters < 4; ++quarters) {
            const WayRound way = wayRound(orientation, quarters);
            const PixelPart back = storedPart(way, shownPart(way, part, stored), stored);
            EXPECT_EQ(back.left, part.left);
            EXPECT_EQ(back.top, part.top);
            EXPECT_EQ(back.width, part.width);
            EXPECT_EQ(back.height, part.height);
        }
    }
}

TEST(WayRound, TakesAnIllegalOrientationAsUpright) {
    EXPECT_EQ(wayRound(0, 0), WayRound{});
    EXPECT_EQ(wayRound(9, 0), WayRound{});
}

}  // namespace

}  // namespace matwright
