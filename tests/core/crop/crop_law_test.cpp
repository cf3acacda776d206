// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cmath>
#include <iostream>

#include "core/crop/crop.h"
#include "tests/support/random_sketch.h"

namespace matwright::test {
namespace {

constexpr std::uint64_t seed = 20'261'127;
constexpr int runs = 20'000;

int within(Random& random, int low, int high) {
    return low + static_cast<int>(below(random, static_cast<std::uint64_t>(high - low + 1)));
}

struct Case {
    PixelSize photo;
    Size window;
    Crop crop;
};

Size randomWindow(Random& random) {
    return {Length::inches(0, within(random, 1, 3200), 16),
            Length::inches(0, within(random, 1, 3200), 16)};
}

Case randomCase(Random& random) {
    Crop crop{.centreX = within(random, 0, Crop::one),
              .centreY = within(random, 0, Crop::one),
              .quarterTurns = within(random, 0, 3)};
    if (below(random, 2) == 0) {
        crop.straighten = Angle::millidegrees(within(random, -45'000, 45'000));
    }
    if (below(random, 3) != 0) {
        crop.zoom =
            within(random, Crop::one, below(random, 2) == 0 ? 3 * Crop::one : Crop::largestZoom);
    }
    return {{within(random, 1, 9000), within(random, 1, 9000)}, randomWindow(random), crop};
}

// How far the corners of what shows reach outside the photo; negative: they are all inside.
double reachOutside(const CropWindow& shown, PixelSize photo) {
    double reach = -1e300;
    for (const auto& [u, v] : {std::pair{0.0, 0.0}, {1.0, 0.0}, {0.0, 1.0}, {1.0, 1.0}}) {
        const PhotoPoint p = photoPointAt(shown, u, v);
        reach = std::max({reach, -p.x, -p.y, p.x - photo.width, p.y - photo.height});
    }
    return reach;
}

class CropLaw : public testing::Test {
  protected:
    static void SetUpTestSuite() { std::cout << "seed " << seed << '\n'; }
    Random random{seed};
};

TEST_F(CropLaw, WhatShowsNeverReachesOutsideThePhotoAndHasTheWindowsRatio) {
    for (int run = 0; run < runs; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", run " << run);
        const Case c = randomCase(random);
        const CropWindow shown = windowIn(c.crop, c.photo, c.window);
        ASSERT_LE(reachOutside(shown, turnedSize(c.crop, c.photo)), 1e-6);
        ASSERT_GT(shown.width, 0);
        ASSERT_NEAR(shown.width / shown.height / ratio(c.window.width, c.window.height), 1, 1e-12);
        const double loss = lossOf(c.crop, c.photo, c.window);
        ASSERT_GE(loss, -1e-12);
        ASSERT_LT(loss, 1);
    }
}

TEST_F(CropLaw, AtZoomOneNothingLargerWouldFit) {
    for (int run = 0; run < runs; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", run " << run);
        Case c = randomCase(random);
        c.crop.zoom = Crop::one;
        const CropWindow shown = windowIn(c.crop, c.photo, c.window);
        const PixelSize photo = turnedSize(c.crop, c.photo);
        // It touches two opposite sides, so no move makes room for more.
        const auto spanOf = [&](auto member) {
            double low = 1e300;
            double high = -1e300;
            for (const auto& [u, v] : {std::pair{0.0, 0.0}, {1.0, 0.0}, {0.0, 1.0}, {1.0, 1.0}}) {
                const PhotoPoint p = photoPointAt(shown, u, v);
                low = std::min(low, p.*member);
                high = std::max(high, p.*member);
            }
            return high - low;
        };
        const double spareX = photo.width - spanOf(&PhotoPoint::x);
        const double spareY = photo.height - spanOf(&PhotoPoint::y);
        ASSERT_NEAR(std::min(spareX, spareY), 0, 1e-6);
    }
}

TEST_F(CropLaw, SettlingTwiceIsSettlingOnce) {
    for (int run = 0; run < runs; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", run " << run);
        const Case c = randomCase(random);
        const Crop once = settled(c.crop, c.photo, c.window);
        ASSERT_TRUE(isSound(once));
        ASSERT_EQ(settled(once, c.photo, c.window), once);
    }
}

TEST_F(CropLaw, ADragThereAndBackEndsWhereItBegan) {
    int inside = 0;
    for (int run = 0; run < runs; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", run " << run);
        const Case c = randomCase(random);
        const Crop start = settled(c.crop, c.photo, c.window);
        const Point by{c.window.width.scaledRounded(within(random, -50, 50), 100),
                       c.window.height.scaledRounded(within(random, -50, 50), 100)};
        const Crop there = dragged(start, c.photo, c.window, by);
        ASSERT_TRUE(isSound(there));
        ASSERT_LE(reachOutside(windowIn(there, c.photo, c.window), turnedSize(there, c.photo)),
                  1e-6);
        ASSERT_EQ(there.zoom, start.zoom);
        const Crop back = dragged(there, c.photo, c.window, {-by.x, -by.y});
        const CropWindow a = windowIn(start, c.photo, c.window);
        const CropWindow b = windowIn(there, c.photo, c.window);
        const double moved = std::hypot(a.centreX - b.centreX, a.centreY - b.centreY);
        const double wished =
            std::hypot(by.x.toInches(), by.y.toInches()) * a.width / c.window.width.toInches();
        const double grain = (c.photo.width + c.photo.height) * 2e-6;
        ASSERT_LE(moved, wished + grain);
        if (reachOutside(b, turnedSize(there, c.photo)) < -grain) {  // it stopped at no edge
            ++inside;
            ASSERT_NEAR(moved, wished, grain);
            ASSERT_NEAR(back.centreX, start.centreX, 2);
            ASSERT_NEAR(back.centreY, start.centreY, 2);
        }
    }
    EXPECT_GT(inside, runs / 10);
}

TEST_F(CropLaw, ZoomingAboutAPointKeepsThePointInItsPlace) {
    for (int run = 0; run < runs; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", run " << run);
        const Case c = randomCase(random);
        const Crop start = settled(c.crop, c.photo, c.window);
        const double u = within(random, 0, 100) / 100.0;
        const double v = within(random, 0, 100) / 100.0;
        const Point about{c.window.width.scaledRounded(u - 0.5),
                          c.window.height.scaledRounded(v - 0.5)};
        const double factor = within(random, 100, 400) / 100.0;  // inwards no edge is in the way
        const Crop after = zoomedAbout(start, c.photo, c.window, factor, about);
        ASSERT_TRUE(isSound(after));
        const PhotoPoint before = photoPointAt(windowIn(start, c.photo, c.window), u, v);
        const PhotoPoint now = photoPointAt(windowIn(after, c.photo, c.window), u, v);
        const double grain = (c.photo.width + c.photo.height) * 2e-6;
        ASSERT_NEAR(now.x, before.x, grain);
        ASSERT_NEAR(now.y, before.y, grain);
    }
}

TEST_F(CropLaw, ZoomingStopsAtItsEndsAndInsideThePhoto) {
    for (int run = 0; run < runs; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", run " << run);
        const Case c = randomCase(random);
        const Point about{c.window.width.scaledRounded(within(random, -50, 50), 100), Length()};
        const double factor = std::pow(2.0, within(random, -80, 80) / 8.0);
        const Crop after = zoomedAbout(c.crop, c.photo, c.window, factor, about);
        ASSERT_TRUE(isSound(after));
        ASSERT_LE(reachOutside(windowIn(after, c.photo, c.window), turnedSize(after, c.photo)),
                  1e-6);
        ASSERT_NEAR(after.zoom,
                    std::clamp<double>(c.crop.zoom * factor, Crop::one, Crop::largestZoom), 1);
    }
}

TEST_F(CropLaw, AStartingCropIsSettledWholeAndNeverTurned) {
    for (int run = 0; run < runs; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", run " << run);
        const Case c = randomCase(random);
        const Crop start = startingCrop(c.photo, c.window);
        ASSERT_EQ(settled(start, c.photo, c.window), start);
        ASSERT_EQ(start.zoom, Crop::one);
        ASSERT_EQ(start.quarterTurns, 0);
        ASSERT_EQ(start.straighten, Angle());
        const double r = static_cast<double>(c.photo.width) / c.photo.height;
        const double s = ratio(c.window.width, c.window.height);
        ASSERT_NEAR(lossOf(start, c.photo, c.window), 1 - std::min(r, s) / std::max(r, s), 1e-9);
    }
}

}  // namespace
}  // namespace matwright::test
