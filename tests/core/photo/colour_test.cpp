// SPDX-License-Identifier: MIT
// Colours of photos with a profile, against the transicc program of Little CMS.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <sstream>
#include <vips/vips8>

#include "core/photo/photo_source.h"
#include "tests/support/check_data.h"
#include "tests/support/ciede2000.h"
#include "tests/support/made_photos.h"
#include "tests/support/outside_tool.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using test::checkData;

// The pixels of a photo as they are stored, without any turn or profile.
struct Stored {
    vips::VImage image;
    std::string profile;
    const std::uint8_t* pixels;
};

Stored storedOf(const std::filesystem::path& file) {
    const vips::VImage image = vips::VImage::jpegload(file.c_str()).copy_memory();
    std::size_t size = 0;
    const void* profile = image.get_blob(VIPS_META_ICC_NAME, &size);
    return {image, std::string(static_cast<const char*>(profile), size),
            static_cast<const std::uint8_t*>(vips_image_get_data(image.get_image()))};
}

// As transicc reads them: RGB 0 .. 255, inks in percent.
std::string valueText(const Stored& stored, std::size_t pixel) {
    const auto bands = static_cast<std::size_t>(stored.image.bands());
    std::string text;
    for (std::size_t band = 0; band < bands; ++band) {
        const double value = stored.pixels[bands * pixel + band];
        text += fmt::format("{:.6f} ", bands == 4 ? value / 2.55 : value);
    }
    return text + "\n";
}

struct Colour {
    double red = 0;
    double green = 0;
    double blue = 0;
};

// What transicc makes of the stored pixels: relative colorimetric with black point compensation.
std::vector<Colour> byLittleCms(const Stored& stored, const std::vector<std::size_t>& places) {
    const test::TemporaryFolder folder;
    test::writeFile(folder / "from.icc", stored.profile);
    std::string values;
    for (const std::size_t place : places) {
        values += valueText(stored, place);
    }
    test::writeFile(folder / "values.txt", values);
    std::istringstream printed(test::outputOf(fmt::format(
        "transicc -n -t1 -b -i {0}/from.icc -o '*sRGB' < {0}/values.txt", folder.path().string())));
    std::vector<Colour> colours;
    // transicc prints colours that sRGB does not reach as values beyond its ends.
    const auto held = [](double value) { return std::clamp(value, 0.0, 255.0); };
    for (Colour colour; printed >> colour.red >> colour.green >> colour.blue;) {
        colours.push_back({held(colour.red), held(colour.green), held(colour.blue)});
    }
    return colours;
}

struct Fidelity {
    double mean = 0;
    double worst = 0;
};

Fidelity fidelityOf(const std::filesystem::path& file) {
    const Stored stored = storedOf(file);
    const auto raster = decodePhoto(file, 0);
    EXPECT_TRUE(raster);
    std::vector<std::size_t> places;
    const std::size_t count = raster->pixels.size() / 3;
    for (std::size_t place = 0; place < count; place += std::max<std::size_t>(1, count / 2000)) {
        places.push_back(place);
    }
    const std::vector<Colour> wanted = byLittleCms(stored, places);
    EXPECT_EQ(wanted.size(), places.size()) << file.filename();
    Fidelity fidelity;
    for (std::size_t i = 0; i < std::min(wanted.size(), places.size()); ++i) {
        const auto* pixel = raster->pixels.data() + 3 * places[i];
        const double difference =
            test::ciede2000(test::labOfSrgb(pixel[0], pixel[1], pixel[2]),
                            test::labOfSrgb(wanted[i].red, wanted[i].green, wanted[i].blue));
        fidelity.mean += difference / static_cast<double>(places.size());
        fidelity.worst = std::max(fidelity.worst, difference);
    }
    return fidelity;
}

// Upright samples, so that places are the same in both. A mean below 0.5 and no colour off by 2 is
// rounding to 8 bits; Display P3 taken as sRGB reads as a mean of 1.2 to 4.2.
TEST(Colour, IsWhatLittleCmsMakesOfIt) {
    const auto folder = checkData("photos");
    if (!folder) {
        GTEST_SKIP() << test::noCheckData;
    }
    if (!test::hasTool("transicc")) {
        GTEST_SKIP() << "SKIPPED: transicc (liblcms2-utils) is not installed.";
    }
    for (const char* name :
         {"camera/libavif/apple_gainmap_new.jpg",
          "camera/libavif/paris_exif_xmp_icc_gainmap_bigendian.jpg",
          "camera/wide-gamut-tests/P3-sRGB-color-bars.jpg",
          "camera/wide-gamut-tests/P3-sRGB-color-ring.jpg",
          "camera/wide-gamut-tests/R2020-sRGB-red.jpg", "camera/exiftool/ExifTool.jpg",
          "odd/jpeg/Channel_digital_image_CMYK_color.jpg"}) {
        const auto facts = photoFacts(*folder / name);
        ASSERT_TRUE(facts && facts->orientation == 1) << name;
        const Fidelity fidelity = fidelityOf(*folder / name);
        std::printf("%-36s CIEDE2000 mean %.3f, worst %.3f\n", facts->profile.c_str(),
                    fidelity.mean, fidelity.worst);
        EXPECT_LT(fidelity.mean, 0.5) << name;
        EXPECT_LT(fidelity.worst, 2) << name;
    }
}

// A made photo with each of the published small profiles (CC0, saucecontrol/Compact-ICC-Profiles).
TEST(Colour, IsRightForEveryWorkingSpace) {
    const auto folder = checkData("photos/profiles");
    if (!folder) {
        GTEST_SKIP() << test::noCheckData;
    }
    if (!test::hasTool("transicc")) {
        GTEST_SKIP() << "SKIPPED: transicc (liblcms2-utils) is not installed.";
    }
    const test::TemporaryFolder made;
    for (const char* name : {"DisplayP3-v4.icc", "DisplayP3-v2-magic.icc", "AdobeCompat-v4.icc",
                             "AdobeCompat-v2.icc", "ProPhoto-v4.icc", "sRGB-v4.icc"}) {
        const std::string profile = test::readFile(*folder / name);
        test::writeFile(made / "photo.jpg",
                        test::madePhoto({120, 90}, ".jpg[Q=100]", {0, {}, {}, {}, profile}));
        const Fidelity fidelity = fidelityOf(made / "photo.jpg");
        std::printf("%-36s CIEDE2000 mean %.3f, worst %.3f\n", name, fidelity.mean, fidelity.worst);
        EXPECT_LT(fidelity.mean, 0.5) << name;
        EXPECT_LT(fidelity.worst, 2) << name;
    }
}

TEST(Colour, OfABrokenProfileIsTakenAsSrgbAndSaid) {
    const test::TemporaryFolder folder;
    const PixelSize size{60, 40};
    test::writeFile(folder / "plain.jpg", test::madePhoto(size, ".jpg"));
    std::string bytes = test::encoded(
        test::madeImage(test::madePicture(size))
            .icc_transform("srgb", vips::VImage::option()->set("input_profile", "srgb")),
        ".jpg");
    // The signature that every profile has at its byte 36 (ICC.1, 7.2).
    const std::size_t signature = bytes.find("acsp");
    ASSERT_NE(signature, std::string::npos);
    test::writeFile(folder / "sound.jpg", bytes);
    bytes.replace(signature, 4, "none");
    test::writeFile(folder / "broken.jpg", bytes);
    const auto sound = photoFacts(folder / "sound.jpg");
    const auto broken = photoFacts(folder / "broken.jpg");
    ASSERT_TRUE(sound && broken);
    EXPECT_EQ(sound->remarks.size(), 0U);
    EXPECT_NE(sound->profile, "");
    EXPECT_EQ(broken->profile, "a damaged profile");
    ASSERT_EQ(broken->remarks.size(), 1U);
    EXPECT_TRUE(broken->remarks.front().starts_with("Its colour profile is damaged"));
    const auto plain = decodePhoto(folder / "plain.jpg", 0);
    const auto shown = decodePhoto(folder / "broken.jpg", 0);
    ASSERT_TRUE(plain && shown);
    EXPECT_LE(test::differenceOf(*plain, *shown).mean, 1);
}

}  // namespace
}  // namespace matwright
