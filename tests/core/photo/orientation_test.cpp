// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <vips/vips8>

#include "core/photo/photo_source.h"
#include "core/photo/vips_photo.h"
#include "tests/support/check_data.h"
#include "tests/support/made_photos.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using test::checkData;
using test::noCheckData;

// Where the pixel in the top left corner of the stored picture has to come to lie. Exif 2.32, tag
// 0x0112, names the visual side of the 0th row and of the 0th column.
struct Corner {
    bool isRight;
    bool isBottom;
};
constexpr Corner corners[] = {{false, false}, {true, false}, {true, true}, {false, true},
                              {false, false}, {true, false}, {true, true}, {false, true}};

bool isBlueAt(const Raster& raster, Corner corner) {
    const int x = corner.isRight ? raster.size.width - 3 : 2;
    const int y = corner.isBottom ? raster.size.height - 3 : 2;
    return raster.row(y)[3 * static_cast<std::size_t>(x) + 2] > 200;
}

TEST(Orientation, BringsEveryTurnUpright) {
    const test::TemporaryFolder folder;
    const PixelSize size{90, 60};
    for (int turn = 1; turn <= 8; ++turn) {
        test::writeFile(folder / "photo.jpg",
                        test::madePhoto(size, ".jpg[Q=100]", {turn, {}, {}, {}, {}}));
        const auto facts = photoFacts(folder / "photo.jpg");
        const auto raster = decodePhoto(folder / "photo.jpg", 0);
        ASSERT_TRUE(facts && raster) << turn;
        EXPECT_EQ(facts->orientation, turn);
        EXPECT_EQ(facts->stored, size);
        EXPECT_EQ(facts->upright, turn >= 5 ? size.turned() : size);
        EXPECT_EQ(raster->size, facts->upright);
        EXPECT_TRUE(isBlueAt(*raster, corners[turn - 1])) << turn;
    }
}

// libvips' own turning is a second opinion on every pixel.
TEST(Orientation, AgreesWithAnotherWayOfTurning) {
    const test::TemporaryFolder folder;
    for (int turn = 1; turn <= 8; ++turn) {
        const auto file = folder / "photo.jpg";
        test::writeFile(file, test::madePhoto({45, 70}, ".jpg", {turn, {}, {}, {}, {}}));
        const auto raster = decodePhoto(file, 0);
        ASSERT_TRUE(raster);
        const vips::VImage other = vips::VImage::jpegload(file.c_str()).autorot();
        const auto* pixels =
            static_cast<const std::uint8_t*>(vips_image_get_data(other.get_image()));
        ASSERT_EQ(other.width(), raster->size.width);
        EXPECT_TRUE(std::equal(raster->pixels.begin(), raster->pixels.end(), pixels)) << turn;
    }
}

TEST(Orientation, IsOneWhereTheFileSaysSomethingElse) {
    const auto file = checkData("photos/orientation/Landscape_0.jpg");
    if (!file) {
        GTEST_SKIP() << noCheckData;
    }
    const auto facts = photoFacts(*file);
    ASSERT_TRUE(facts);
    EXPECT_EQ(facts->orientation, 1);
    EXPECT_EQ(facts->upright, (PixelSize{1800, 1200}));
    EXPECT_EQ(facts->remarks.size(), 1U);
}

double greyDifference(const Raster& one, const Raster& other) {
    double sum = 0;
    for (std::size_t i = 0; i < one.pixels.size(); i += 3) {
        const auto grey = [&](const Raster& raster) {
            return 0.299 * raster.pixels[i] + 0.587 * raster.pixels[i + 1] +
                   0.114 * raster.pixels[i + 2];
        };
        sum += std::abs(grey(one) - grey(other));
    }
    return sum / static_cast<double>(one.size.count());
}

Raster sixtyBySixty(const std::filesystem::path& file) {
    const auto upright = openUpright(file);
    if (!upright) {
        return {};
    }
    const vips::VImage small = upright->resize(
        60.0 / upright->width(), vips::VImage::option()->set("vscale", 60.0 / upright->height()));
    std::size_t size = 0;
    void* pixels = small.write_to_memory(&size);
    Raster raster{{60, 60}, std::vector<std::uint8_t>(size)};
    std::copy_n(static_cast<const std::uint8_t*>(pixels), size, raster.pixels.begin());
    g_free(pixels);
    return raster;
}

// The published pictures of all eight turns (MIT, recurser/exif-orientation-examples) show the
// same scene: scaled to 60 x 60, turned right they differ by at most 3.4/255 in the mean, turned
// wrong by far more.
TEST(Orientation, MakesThePublishedPicturesAlike) {
    int seen = 0;
    double worst = 0;
    for (const std::string kind : {"Landscape", "Portrait"}) {
        const auto first = checkData("photos/orientation/" + kind + "_1.jpg");
        for (int turn = 0; first && turn <= 8; ++turn) {
            const auto file = checkData(fmt::format("photos/orientation/{}_{}.jpg", kind, turn));
            if (!file) {
                continue;
            }
            const auto facts = photoFacts(*file);
            ASSERT_TRUE(facts);
            EXPECT_EQ(facts->upright,
                      kind == "Landscape" ? PixelSize(1800, 1200) : PixelSize(1200, 1800));
            EXPECT_EQ(facts->orientation, std::max(turn, 1));
            const double difference = greyDifference(sixtyBySixty(*first), sixtyBySixty(*file));
            EXPECT_LE(difference, 3.4) << file->filename();
            worst = std::max(worst, difference);
            ++seen;
        }
    }
    if (seen == 0) {
        GTEST_SKIP() << noCheckData;
    }
    std::printf("%d published turns, worst mean grey difference %.2f of 255\n", seen, worst);
}

}  // namespace
}  // namespace matwright
