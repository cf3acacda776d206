// SPDX-License-Identifier: MIT
// Colours of photos with a profile against what Little CMS' own program makes of them.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <sstream>
#include <vips/vips8>

#include "core/prints/rendering.h"
#include "tests/core/prints/print_probe.h"
#include "tests/support/check_data.h"
#include "tests/support/ciede2000.h"
#include "tests/support/outside_tool.h"
#include "tests/support/tool_run.h"

namespace matwright {

namespace {

struct ColourError {
    double mean = 0;
    double worst = 0;
};

ColourError errorOf(const Raster& ours, const Raster& other) {
    ColourError error;
    const std::size_t count = ours.pixels.size() / 3;
    for (std::size_t i = 0; i < count; ++i) {
        const auto lab = [i](const Raster& raster) {
            const std::uint8_t* pixel = raster.pixels.data() + 3 * i;
            return test::labOfSrgb(pixel[0], pixel[1], pixel[2]);
        };
        const double difference = test::ciede2000(lab(ours), lab(other));
        error.mean += difference / static_cast<double>(count);
        error.worst = std::max(error.worst, difference);
    }
    return error;
}

// The whole photo at its own size, as a print of so many pixels.
Result<Raster> wholePrint(const std::filesystem::path& file, PixelSize upright) {
    Photo photo;
    photo.path = file;
    const Size paper{Length::inches(0, upright.width, 300), Length::inches(0, upright.height, 300)};
    return renderPrint(test::plainPrint(paper), photo, {});
}

TEST(ProfilePrint, HasTheColoursThatLittleCmsGives) {
    const auto folder = test::checkData("photos/camera");
    if (!folder || !test::hasTool("jpgicc")) {
        GTEST_SKIP() << test::noCheckData;
    }
    const test::TemporaryFolder place;
    int compared = 0;
    for (const char* name :
         {"wide-gamut-tests/P3-sRGB-color-ring.jpg", "wide-gamut-tests/P3-sRGB-color-bars.jpg",
          "libavif/paris_exif_xmp_icc.jpg"}) {
        const std::filesystem::path file = *folder / name;
        const auto facts = photoFacts(file);
        if (!facts) {
            continue;
        }
        // The same JPEG decoded, converted by jpgicc to its own sRGB at the best quality it has.
        const auto run = test::runTool({"jpgicc", "-t", "1", "-b", "-q", "100", file.string(),
                                        (place / "other.jpg").string()});
        ASSERT_EQ(run.code, 0) << name;
        const auto other = decodePhoto(place / "other.jpg", 0);
        const auto ours = wholePrint(file, facts->upright);
        ASSERT_TRUE(ours && other) << name;
        ASSERT_EQ(ours->size, other->size) << name;
        const ColourError error = errorOf(*ours, *other);
        std::printf("%s (%s): CIEDE2000 mean %.3f, worst %.2f\n", name, facts->profile.c_str(),
                    error.mean, error.worst);
        // The other's JPEG adds to both.
        EXPECT_LT(error.mean, 0.6) << name;
        EXPECT_LT(error.worst, 2) << name;
        ++compared;
    }
    EXPECT_GT(compared, 0);
}

// Even patches, so that resampling and a JPEG's losses stay out of it.
constexpr int patchSide = 12;
constexpr int patchesARow = 16;

std::vector<std::array<int, 3>> patchColours() {
    std::vector<std::array<int, 3>> colours;
    for (const int red : {0, 60, 128, 190, 255}) {
        for (const int green : {0, 60, 128, 190, 255}) {
            for (const int blue : {0, 60, 128, 190, 255}) {
                colours.push_back({red, green, blue});
            }
        }
    }
    return colours;
}

PixelSize writePatches(const std::filesystem::path& png, const std::filesystem::path& profile) {
    const auto colours = patchColours();
    const int rows = (static_cast<int>(colours.size()) + patchesARow - 1) / patchesARow;
    const PixelSize size{patchSide * patchesARow, patchSide * rows};
    std::vector<std::uint8_t> pixels(3 * static_cast<std::size_t>(size.count()), 255);
    for (int y = 0; y < size.height; ++y) {
        for (int x = 0; x < size.width; ++x) {
            const auto patch =
                static_cast<std::size_t>(y / patchSide * patchesARow + x / patchSide);
            const auto at =
                3 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(size.width) +
                     static_cast<std::size_t>(x));
            for (std::size_t band = 0; patch < colours.size() && band < 3; ++band) {
                pixels[at + band] = static_cast<std::uint8_t>(colours[patch][band]);
            }
        }
    }
    preparePhotoReading();
    vips::VImage::new_from_memory(pixels.data(), pixels.size(), size.width, size.height, 3,
                                  VIPS_FORMAT_UCHAR)
        .copy(vips::VImage::option()->set("interpretation", VIPS_INTERPRETATION_sRGB))
        .pngsave(png.c_str(), vips::VImage::option()->set("profile", profile.c_str()));
    return size;
}

// What transicc, the calculator of Little CMS, gives for the patches: relative colorimetric with
// black point compensation, cut to 0 .. 255.
std::vector<std::array<double, 3>> calculated(const std::filesystem::path& profile,
                                              const std::filesystem::path& place) {
    std::string wanted;
    for (const auto& [red, green, blue] : patchColours()) {
        wanted += fmt::format("{} {} {}\n", red, green, blue);
    }
    test::writeFile(place / "colours.txt", wanted);
    const auto run =
        test::runTool({"sh", "-c", R"(transicc -i "$0" -o '*sRGB' -t1 -b -n -s < "$1")",
                       profile.string(), (place / "colours.txt").string()});
    EXPECT_EQ(run.code, 0);
    std::vector<std::array<double, 3>> colours;
    std::istringstream words(run.output);
    for (std::array<double, 3> colour{}; words >> colour[0] >> colour[1] >> colour[2];) {
        colours.push_back(colour);
    }
    return colours;
}

TEST(ProfilePrint, HasTheColoursThatTheCalculatorOfLittleCmsGives) {
    const auto folder = test::checkData("photos/profiles");
    if (!folder || !test::hasTool("transicc")) {
        GTEST_SKIP() << test::noCheckData;
    }
    const test::TemporaryFolder place;
    for (const char* name : {"DisplayP3-v4.icc", "AdobeCompat-v4.icc", "ProPhoto-v4.icc"}) {
        const std::filesystem::path profile = *folder / name;
        const PixelSize size = writePatches(place / "patches.png", profile);
        const auto ours = wholePrint(place / "patches.png", size);
        const auto theirs = calculated(profile, place.path());
        ASSERT_TRUE(ours) << ours.error().text();
        ASSERT_EQ(theirs.size(), patchColours().size()) << name;
        double worst = 0;
        for (std::size_t i = 0; i < theirs.size(); ++i) {
            const int x = static_cast<int>(i) % patchesARow * patchSide + patchSide / 2;
            const int y = static_cast<int>(i) / patchesARow * patchSide + patchSide / 2;
            for (std::size_t band = 0; band < 3; ++band) {
                const int pixel = ours->row(y)[3 * static_cast<std::size_t>(x) + band];
                worst = std::max(worst, std::abs(pixel - theirs[i][band]));
            }
        }
        std::printf("%s: worst difference from transicc %.2f of 255\n", name, worst);
        EXPECT_LE(worst, 1) << name;
    }
}

}  // namespace

}  // namespace matwright
