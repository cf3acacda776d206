// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <iostream>
#include <sstream>

#include "core/tone/stretch.h"
#include "tests/core/tone/tone_pictures.h"
#include "tests/support/temporary_folder.h"

namespace matwright::test {
namespace {

constexpr std::uint64_t seed = 20'261'128;

void writePpm(const std::filesystem::path& path, const Raster& picture) {
    std::ofstream file(path, std::ios::binary);
    file << "P6\n" << picture.size.width << ' ' << picture.size.height << "\n255\n";
    file.write(reinterpret_cast<const char*>(picture.pixels.data()),
               static_cast<std::streamsize>(picture.pixels.size()));
}

std::vector<std::uint8_t> readPpmPixels(const std::filesystem::path& path, std::size_t count) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream all;
    all << file.rdbuf();
    const std::string bytes = all.str();
    return bytes.size() < count
               ? std::vector<std::uint8_t>()
               : std::vector<std::uint8_t>(bytes.end() - static_cast<long>(count), bytes.end());
}

// The simplest colour balance as it was published: every channel by itself.
Raster balanced(Raster picture, std::uint32_t share) {
    const Histogram histogram = histogramOf(picture);
    ToneMap map;
    for (std::size_t channel = 0; channel < 3; ++channel) {
        map.curve[channel] = stretchOver(rangeWithout(histogram.counts[channel], share));
    }
    apply(map, picture);
    return picture;
}

// The contrast stretch of an image program of wide use, in which the same was made independently.
TEST(ToneOutside, StretchingEveryChannelIsTheContrastStretchOfAnotherProgram) {
    if (std::system("convert -version >/dev/null 2>&1") != 0) {
        GTEST_SKIP() << "SKIPPED: there is no convert (ImageMagick) here";
    }
    const TemporaryFolder folder;
    Random random(seed);
    std::cout << "seed " << seed << '\n';
    const std::array<std::array<double, 3>, 3> tints = {{{1, 1, 1}, {1, 0.9, 0.7}, {0.6, 0.95, 1}}};
    int worst = 0;
    for (const auto& tint : tints) {
        for (const int tenths : {1, 5, 10, 30}) {  // of a percent
            const Raster picture = hills(random, {160, 120}, 60, 190, tint);
            writePpm(folder.path() / "in.ppm", picture);
            std::ostringstream command;
            command << "convert '" << (folder.path() / "in.ppm").string()
                    << "' -channel RGB -contrast-stretch " << tenths / 10.0 << "%x" << tenths / 10.0
                    << "% -depth 8 '" << (folder.path() / "out.ppm").string() << "'";
            ASSERT_EQ(std::system(command.str().c_str()), 0);
            const auto theirs = readPpmPixels(folder.path() / "out.ppm", picture.pixels.size());
            const Raster ours = balanced(picture, static_cast<std::uint32_t>(tenths) * 1'000);
            ASSERT_EQ(theirs.size(), ours.pixels.size());
            for (std::size_t i = 0; i < theirs.size(); ++i) {
                worst = std::max(worst, std::abs(theirs[i] - ours.pixels[i]));
            }
            ASSERT_NE(ours, picture);
        }
    }
    std::cout << "worst difference to the other program: " << worst << " of 255\n";
    EXPECT_LE(worst, 1);
}

}  // namespace
}  // namespace matwright::test
