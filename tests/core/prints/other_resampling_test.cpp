// SPDX-License-Identifier: MIT
// Prints against what other programs make of the same part of the same photo.
#include <gtest/gtest.h>

#include <cstdio>

#include <fmt/format.h>

#include "core/prints/rendering.h"
#include "tests/core/prints/print_probe.h"
#include "tests/support/busy_photo.h"
#include "tests/support/check_data.h"
#include "tests/support/outside_tool.h"
#include "tests/support/tool_run.h"

namespace matwright {

namespace {

// Wrong filters, linear light and a crop one pixel off all fall below this (measured; no source).
constexpr double leastPsnr = 42.5;

// A print whose window takes whole pixels of a photo of 4032 x 3024, so that both cut alike.
struct Case {
    Size paper;
    const char* geometry;
};
const Case cases[] = {
    {{Length::inches(3), Length::inches(4)}, "2268x3024+882+0"},
    {{Length::inches(4), Length::inches(6)}, "2016x3024+1008+0"},
    {{Length::inches(6), Length::inches(4)}, "4032x2688+0+168"},
    {{Length::inches(2), Length::inches(2)}, "3024x3024+504+0"},
    {{Length::inches(8), Length::inches(6)}, "4032x3024+0+0"},
    {{Length::inches(12), Length::inches(9)}, "4032x3024+0+0"},
    {{Length::inches(16), Length::inches(12)}, "4032x3024+0+0"},
};

class OtherResampling : public testing::Test {
  protected:
    // Decodes what the other program wrote.
    double psnrOf(const Raster& ours, const char* file) const {
        const auto other = decodePhoto(place / file, 0);
        return other ? test::psnr(ours, *other) : 0;
    }
    test::TemporaryFolder place;
};

TEST_F(OtherResampling, OfImageMagicksLanczosIsTheSame) {
    if (!test::hasTool("convert")) {
        GTEST_SKIP() << "SKIPPED: ImageMagick's convert is not installed.";
    }
    Photo photo;
    photo.path = test::writeBusyPhoto(place / "photo.jpg", {4032, 3024}, 11);
    for (const Case& one : cases) {
        const auto ours = renderPrint(test::plainPrint(one.paper), photo, {});
        ASSERT_TRUE(ours) << ours.error().text();
        const auto size = fmt::format("{}x{}!", ours->size.width, ours->size.height);
        const auto run =
            test::runTool({"convert", photo.path, "-crop", one.geometry, "+repage", "-filter",
                           "Lanczos", "-resize", size, "-depth", "8", "other.png"},
                          place.path());
        ASSERT_EQ(run.code, 0);
        const double db = psnrOf(*ours, "other.png");
        std::printf("%s of 4032x3024 to %s: %.1f dB against ImageMagick's Lanczos\n", one.geometry,
                    size.c_str(), db);
        EXPECT_GE(db, leastPsnr) << one.geometry;
    }
}

TEST_F(OtherResampling, OfAPartBetweenPixelsIsInItsPlace) {
    if (!test::hasTool("convert")) {
        GTEST_SKIP() << "SKIPPED: ImageMagick's convert is not installed.";
    }
    // Odd parts: their middles lie between the pixels of the smaller picture the decoder gives.
    Photo photo;
    photo.path = test::writeBusyPhoto(place / "photo.jpg", {4032, 3024}, 12);
    Print print = test::plainPrint({Length::inches(3), Length::inches(4)});
    for (const int left : {883, 884, 885}) {
        const double middle = left + 2268 / 2.0;
        print.crop.centreX = static_cast<std::int32_t>(std::lround(middle / 4032 * Crop::one));
        const auto ours = renderPrint(print, photo, {});
        ASSERT_TRUE(ours);
        const auto run = test::runTool(
            {"convert", photo.path, "-crop", fmt::format("2268x3024+{}+0", left), "+repage",
             "-filter", "Lanczos", "-resize", "900x1200!", "-depth", "8", "other.png"},
            place.path());
        ASSERT_EQ(run.code, 0);
        const double db = psnrOf(*ours, "other.png");
        std::printf("part from pixel %d on: %.1f dB\n", left, db);
        EXPECT_GE(db, leastPsnr);
    }
}

TEST_F(OtherResampling, OfLibvipsOwnCommandLineIsTheSame) {
    if (!test::hasTool("vipsthumbnail")) {
        GTEST_SKIP() << "SKIPPED: vipsthumbnail is not installed.";
    }
    Photo photo;
    photo.path = test::writeBusyPhoto(place / "photo.jpg", {4032, 3024}, 13);
    const auto ours =
        renderPrint(test::plainPrint({Length::inches(3), Length::inches(4)}), photo, {});
    ASSERT_TRUE(ours);
    const auto run = test::runTool({"vipsthumbnail", photo.path, "-s", "900x1200", "--smartcrop",
                                    "centre", "-o", (place / "other.png").string()},
                                   place.path());
    ASSERT_EQ(run.code, 0);
    const double db = psnrOf(*ours, "other.png");
    std::printf("3x4: %.1f dB against vipsthumbnail\n", db);
    EXPECT_GE(db, leastPsnr);
}

TEST_F(OtherResampling, OfTurnedPhotosIsTheSame) {
    const auto folder = test::checkData("photos/orientation");
    if (!folder || !test::hasTool("convert")) {
        GTEST_SKIP() << test::noCheckData;
    }
    const Print print = test::plainPrint({Length::inches(3), Length::inches(2)});
    int compared = 0;
    for (int orientation = 1; orientation <= 8; ++orientation) {
        Photo photo;
        photo.path = *folder / fmt::format("Landscape_{}.jpg", orientation);
        if (!std::filesystem::exists(photo.path)) {
            continue;
        }
        ++compared;
        const auto ours = renderPrint(print, photo, {});
        ASSERT_TRUE(ours) << ours.error().text();
        const auto run = test::runTool({"convert", photo.path, "-auto-orient", "+repage", "-filter",
                                        "Lanczos", "-resize", "900x600!", "-strip", "other.png"},
                                       place.path());
        ASSERT_EQ(run.code, 0);
        const double db = psnrOf(*ours, "other.png");
        std::printf("orientation %d: %.1f dB\n", orientation, db);
        EXPECT_GE(db, leastPsnr) << orientation;
    }
    EXPECT_GE(compared, 5);
}

}  // namespace

}  // namespace matwright
