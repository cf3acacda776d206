// SPDX-License-Identifier: MIT
// Colours of photos with a profile against what Little CMS' own program makes of them.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>

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

}  // namespace

}  // namespace matwright
