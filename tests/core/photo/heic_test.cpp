// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/photo/photo_source.h"
#include "tests/support/check_data.h"
#include "tests/support/made_photos.h"

namespace matwright {
namespace {

using test::checkData;
using test::noCheckData;

// The pictures of the HEIC samples and what their makers say they look like (reference PNGs of
// kimageformats). HEVC loses a little; a wrong turn differs by far more.
void expectLooksLike(const std::filesystem::path& heic, const std::filesystem::path& png) {
    const auto picture = decodePhoto(heic, 0);
    const auto reference = decodePhoto(png, 0);
    ASSERT_TRUE(picture) << heic << picture.error().sentence;
    ASSERT_TRUE(reference) << png;
    ASSERT_EQ(picture->size, reference->size) << heic;
    const test::Difference difference = test::differenceOf(*picture, *reference);
    EXPECT_LE(difference.mean, 2) << heic;
    std::printf("%-24s mean difference %.3f, worst %d\n", heic.filename().c_str(), difference.mean,
                difference.worst);
}

TEST(Heic, IsTurnedByItsBoxesExactlyOnce) {
    const auto folder = checkData("photos/heic/kimageformats");
    if (!folder) {
        GTEST_SKIP() << noCheckData;
    }
    for (int turn = 1; turn <= 8; ++turn) {
        const auto file = *folder / fmt::format("orientation{}.heic", turn);
        expectLooksLike(file, *folder / "orientation_all.png");
        // What is still to be done to the pixels, although the Exif data say the turn again.
        EXPECT_EQ(photoFacts(file)->orientation, 1);
    }
}

TEST(Heic, IsCroppedByItsBoxes) {
    const auto folder = checkData("photos/heic/kimageformats");
    if (!folder) {
        GTEST_SKIP() << noCheckData;
    }
    for (int turn = 1; turn <= 8; ++turn) {
        expectLooksLike(*folder / fmt::format("crop_orientation{}.heic", turn),
                        *folder / fmt::format("crop_orientation{}.png", turn));
    }
}

TEST(Heic, LooksAsItsMakersSay) {
    const auto folder = checkData("photos/heic/kimageformats");
    if (!folder) {
        GTEST_SKIP() << noCheckData;
    }
    for (const std::string name : {"rgb", "rgba", "metadata"}) {
        expectLooksLike(*folder / (name + ".heic"), *folder / (name + ".png"));
    }
}

// Stored 4032 x 3024 with a quarter turn box and with Exif orientation 6: upright it is
// 3024 x 4032, and nothing is left to be turned.
TEST(Heic, OfAPhoneIsUpright) {
    const auto file = checkData("photos/heic/phones/Issue_263.heic");
    if (!file) {
        GTEST_SKIP() << noCheckData;
    }
    const auto facts = photoFacts(*file);
    ASSERT_TRUE(facts);
    EXPECT_EQ(facts->upright, (PixelSize{3024, 4032}));
    EXPECT_EQ(facts->orientation, 1);
    EXPECT_EQ(facts->profile, "Display P3");
    const auto raster = decodePhoto(*file, 512);
    ASSERT_TRUE(raster);
    EXPECT_EQ(raster->size, (PixelSize{384, 512}));
}

TEST(Heic, OfTwoHundredMegapixelsIsRefusedByItsHeader) {
    const auto file = checkData("photos/odd/heif/200MP.heic");
    if (!file) {
        GTEST_SKIP() << noCheckData;
    }
    const auto raster = decodePhoto(*file, 512);
    ASSERT_FALSE(raster);
    EXPECT_EQ(raster.error().code, ErrorCode::TooLarge);
    EXPECT_TRUE(raster.error().sentence.starts_with("The photo has 200 megapixels"))
        << raster.error().sentence;
}

}  // namespace
}  // namespace matwright
