// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "tests/core/tone/tone_pictures.h"

namespace matwright::test {
namespace {

int lumaOf(const std::uint8_t* p) {
    return 54 * p[0] + 183 * p[1] + 19 * p[2];
}

// The same written as plainly as it can be: both blurs at once, in doubles.
Raster sharpenedPlainly(const Raster& before, int amount) {
    constexpr std::array<double, 7> weights = {1, 6, 15, 20, 15, 6, 1};
    const auto [width, height] = before.size;
    const auto pixel = [&](int x, int y) {
        const auto cx = static_cast<std::size_t>(std::clamp(x, 0, width - 1));
        const auto cy = static_cast<std::size_t>(std::clamp(y, 0, height - 1));
        return &before.pixels[3 * (cy * static_cast<std::size_t>(width) + cx)];
    };
    Raster after = before;
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            double blurred = 0;
            for (int j = -3; j <= 3; ++j) {
                for (int i = -3; i <= 3; ++i) {
                    blurred += weights[static_cast<std::size_t>(i + 3)] *
                               weights[static_cast<std::size_t>(j + 3)] *
                               lumaOf(pixel(x + i, y + j)) / 4096;
                }
            }
            const double change = (lumaOf(pixel(x, y)) - blurred) / 256 * 1.5 * amount / 100;
            for (std::size_t c = 0; c < 3; ++c) {
                const std::size_t at =
                    static_cast<std::size_t>(pixel(x, y) - &before.pixels[0]) + c;
                after.pixels[at] = static_cast<std::uint8_t>(
                    std::clamp(std::lround(before.pixels[at] + change), 0L, 255L));
            }
        }
    }
    return after;
}

TEST(Sharpen, AmountZeroChangesNothing) {
    Random random(20'261'130);
    const Raster photo = hills(random, {40, 30}, 10, 240);
    Raster same = photo;
    sharpen(same, 0);
    EXPECT_EQ(same, photo);
}

TEST(Sharpen, IsThePlainUnsharpMaskOnLumaUpToItsEdges) {
    Random random(20'261'130);
    for (const PixelSize size :
         {PixelSize{40, 30}, PixelSize{1, 1}, PixelSize{2, 9}, PixelSize{9, 2}, PixelSize{7, 7}}) {
        for (const int amount : {1, 35, 100}) {
            const Raster photo = hills(random, size, 10, 240, {1, 0.8, 0.9});
            Raster sharp = photo;
            sharpen(sharp, amount);
            const Raster plain = sharpenedPlainly(photo, amount);
            for (std::size_t i = 0; i < sharp.pixels.size(); ++i) {
                ASSERT_NEAR(sharp.pixels[i], plain.pixels[i], 1);
            }
        }
    }
}

TEST(Sharpen, AnEdgeBecomesSteeperAndAPlainAreaStays) {
    Raster edge = raster({40, 9}, [](int x, int) {
        const int v = x < 20 ? 100 : 150;
        return std::array{v, v, v};
    });
    const Raster before = edge;
    sharpen(edge, 100);
    EXPECT_LT(edge.row(4)[3 * 19], 95);
    EXPECT_GT(edge.row(4)[3 * 20], 155);
    for (int x = 0; x < 17; ++x) {
        EXPECT_EQ(edge.row(4)[static_cast<std::size_t>(3 * x)], 100) << x;
    }
    EXPECT_EQ(before.row(4)[3 * 19], 100);
}

TEST(Sharpen, ColoursMoveTogether) {
    Random random(20'261'130);
    const Raster photo = hills(random, {30, 30}, 90, 160, {1, 0.9, 0.8});
    Raster sharp = photo;
    sharpen(sharp, 40);
    for (std::size_t i = 0; i + 2 < photo.pixels.size(); i += 3) {
        const int red = sharp.pixels[i] - photo.pixels[i];
        ASSERT_EQ(sharp.pixels[i + 1] - photo.pixels[i + 1], red);
        ASSERT_EQ(sharp.pixels[i + 2] - photo.pixels[i + 2], red);
    }
}

}  // namespace
}  // namespace matwright::test
