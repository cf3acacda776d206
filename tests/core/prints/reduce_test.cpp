// SPDX-License-Identifier: MIT
#include "core/prints/reduce.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace matwright {

namespace {

using vips::VImage;

// A slope: the value of a place is its distance from the left edge plus three times that from the
// top. Resampling must give it back at the middle of every pixel of the result, far from the edges.
VImage slope(int width, int height) {
    return VImage::xyz(width, height).linear({1.0, 3.0}, {0.5, 1.5}).extract_band(0) +
           VImage::xyz(width, height).linear({1.0, 3.0}, {0.5, 1.5}).extract_band(1);
}

// How far the result's grid is off, in pixels of the picture across (down weighs three times).
double worstShift(const Stretch& across, const Stretch& down, int side) {
    const VImage result = resampled(slope(side, side), across, down);
    double worst = 0;
    const int away = 8;
    for (int y = away; y < down.pixels - away; y += 7) {
        for (int x = away; x < across.pixels - away; x += 7) {
            const double wanted = across.start + (x + 0.5) * across.scale() +
                                  3 * (down.start + (y + 0.5) * down.scale());
            worst = std::max(worst, std::abs(result(x, y)[0] - wanted));
        }
    }
    return worst;
}

class Reduce : public testing::Test {
  protected:
    void SetUp() override { ASSERT_EQ(VIPS_INIT("test"), 0); }
};

TEST_F(Reduce, KeepsAWholePictureInItsPlace) {
    EXPECT_LT(worstShift({0, 400, 160}, {0, 400, 160}, 400), 0.1);
}

TEST_F(Reduce, FindsPlacesBetweenPixels) {
    EXPECT_LT(worstShift({37.31, 250.7, 111}, {12.77, 250.7, 111}, 400), 0.2);
    EXPECT_LT(worstShift({37.81, 195.3, 149}, {12.23, 195.3, 149}, 400), 0.3);
}

TEST_F(Reduce, EnlargesInPlace) {
    EXPECT_LT(worstShift({37.31, 80.7, 211}, {12.77, 80.7, 211}, 200), 0.05);
}

TEST_F(Reduce, MovesWhatKeepsItsSizeByWholePixelsAtLeast) {
    EXPECT_EQ(worstShift({30, 100, 100}, {20, 100, 100}, 200), 0);
}

TEST_F(Reduce, RepeatsTheEdgeOutsideThePicture) {
    const VImage grey = VImage::black(40, 40).linear(1, 77).cast(VIPS_FORMAT_UCHAR);
    const VImage result = resampled(grey, {-20, 100, 50}, {-20, 100, 50});
    EXPECT_EQ(result.min(), 77);
    EXPECT_EQ(result.max(), 77);
    EXPECT_EQ(result.width(), 50);
}

TEST_F(Reduce, CutsNearlyExactlyForAnyStretch) {
    constexpr unsigned seed = 4711;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> start(0, 3000);
    std::uniform_real_distribution<double> scale(1.0, 9.0);
    std::uniform_int_distribution<int> pixels(50, 3600);
    int off = 0;
    constexpr int tries = 5000;
    for (int i = 0; i < tries; ++i) {
        Stretch stretch{start(random), 0, pixels(random)};
        stretch.length = stretch.pixels * scale(random);
        const AxisCut cut = cutFor(stretch);
        const long given = std::lround(cut.count / stretch.scale());
        ASSERT_GE(given, cut.skipped + stretch.pixels) << "seed " << seed;
        EXPECT_LE(cut.error, 0.5);
        off += cut.error > 0.04 ? 1 : 0;
    }
    EXPECT_LT(off, tries / 50) << "seed " << seed;
}

}  // namespace

}  // namespace matwright
