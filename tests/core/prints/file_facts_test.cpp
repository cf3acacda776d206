// SPDX-License-Identifier: MIT
// What exiftool reads in the files of prints.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/prints/rendering.h"
#include "tests/core/prints/print_probe.h"
#include "tests/support/busy_photo.h"
#include "tests/support/outside_tool.h"
#include "tests/support/tool_run.h"

namespace matwright {

namespace {

constexpr Size fourBySix{Length::inches(4), Length::inches(6)};

class FileFacts : public testing::Test {
  protected:
    void SetUp() override {
        if (!test::hasTool("exiftool")) {
            GTEST_SKIP() << "SKIPPED: exiftool is not installed.";
        }
        photo.path = test::writeBusyPhoto(place / "photo.jpg", {1200, 1800}, 5);
        photo.taken = "2026-07-14 16:03:22";
    }

    // All that exiftool tells of a print, by "group:tag", numbers as numbers.
    nlohmann::json factsOf(PrintOptions options, const char* name) {
        const auto file = printFile(test::plainPrint(fourBySix), photo, options);
        EXPECT_TRUE(file);
        test::writeFile(place / name, file ? *file : "");
        return read(name);
    }
    nlohmann::json read(const char* name) {
        const auto run =
            test::runTool({"exiftool", "-json", "-G1", "-a", "-n", (place / name).string()});
        return nlohmann::json::parse(run.output).at(0);
    }

    test::TemporaryFolder place;
    Photo photo;
};

TEST_F(FileFacts, OfAJpegHaveTheDensityInBothHeaders) {
    for (const int ppi : {72, 240, 300, 360, 600}) {
        PrintOptions options;
        options.ppi = ppi;
        const nlohmann::json facts = factsOf(options, "print.jpg");
        EXPECT_EQ(facts.at("JFIF:XResolution"), ppi);
        EXPECT_EQ(facts.at("JFIF:YResolution"), ppi);
        EXPECT_EQ(facts.at("JFIF:ResolutionUnit"), 1);  // inches there,
        EXPECT_EQ(facts.at("IFD0:XResolution"), ppi);
        EXPECT_EQ(facts.at("IFD0:YResolution"), ppi);
        EXPECT_EQ(facts.at("IFD0:ResolutionUnit"), 2);  // and here
        EXPECT_EQ(facts.at("IFD0:Orientation"), 1);
        EXPECT_EQ(facts.at("File:ImageWidth"), 4 * ppi);
        EXPECT_EQ(facts.at("File:ImageHeight"), 6 * ppi);
    }
}

TEST_F(FileFacts, OfAPngHaveTheDensityToTheNearestPixelAMetre) {
    PrintOptions options;
    options.format = PrintFormat::Png;
    const nlohmann::json facts = factsOf(options, "print.png");
    // 300 / 0.0254 = 11811.02; back it is 299.9994.
    EXPECT_EQ(facts.at("PNG-pHYs:PixelsPerUnitX"), 11811);
    EXPECT_EQ(facts.at("PNG-pHYs:PixelUnits"), 1);
    EXPECT_NEAR(facts.at("PNG-pHYs:PixelsPerUnitX").get<double>() * 0.0254, 300, 0.001);
}

TEST_F(FileFacts, OfATiffHaveTheDensityInInches) {
    PrintOptions options;
    options.format = PrintFormat::Tiff;
    const nlohmann::json facts = factsOf(options, "print.tif");
    EXPECT_NEAR(facts.at("IFD0:XResolution").get<double>(), 300, 0.001);
    EXPECT_NEAR(facts.at("IFD0:YResolution").get<double>(), 300, 0.001);
    EXPECT_EQ(facts.at("IFD0:ResolutionUnit"), 2);
    EXPECT_EQ(facts.at("IFD0:Orientation"), 1);
}

TEST_F(FileFacts, KeepTheCaptureDateAndAnSrgbProfileInEveryFormat) {
    for (const auto& [format, name] : {std::pair{PrintFormat::Jpeg, "print.jpg"},
                                       {PrintFormat::Png, "print.png"},
                                       {PrintFormat::Tiff, "print.tif"}}) {
        PrintOptions options;
        options.format = format;
        const nlohmann::json facts = factsOf(options, name);
        EXPECT_EQ(facts.at("XMP-exif:DateTimeOriginal"), "2026:07:14 16:03:22") << name;
        EXPECT_TRUE(
            facts.at("ICC_Profile:ProfileDescription").get<std::string>().starts_with("sRGB"))
            << name;
    }
    EXPECT_EQ(read("print.jpg").at("ExifIFD:DateTimeOriginal"), "2026:07:14 16:03:22");
}

TEST_F(FileFacts, LeavePlaceAndSerialNumbersOutUnlessAskedFor) {
    const auto marked = test::runTool(
        {"exiftool", "-overwrite_original", "-GPSLatitude=48.5", "-GPSLatitudeRef=N",
         "-GPSLongitude=9.25", "-GPSLongitudeRef=E", "-ExifIFD:SerialNumber=12345", "-Make=Anybody",
         "-UserComment=words", "-XMP-dc:Creator=Anybody", photo.path});
    ASSERT_EQ(marked.code, 0);
    nlohmann::json facts = factsOf({}, "print.jpg");
    for (const auto& [tag, value] : facts.items()) {
        EXPECT_FALSE(tag.starts_with("GPS:")) << tag;
        EXPECT_FALSE(tag.starts_with("IFD1:")) << tag;
        EXPECT_EQ(tag.find("Serial"), std::string::npos) << tag;
        EXPECT_EQ(tag.find("Make"), std::string::npos) << tag;
        EXPECT_EQ(tag.find("Creator:"), std::string::npos) << tag;
        EXPECT_EQ(tag.find("UserComment"), std::string::npos) << tag;
    }
    PrintOptions keeping;
    keeping.keepPlace = true;
    facts = factsOf(keeping, "kept.jpg");
    EXPECT_NEAR(facts.at("GPS:GPSLatitude").get<double>(), 48.5, 1e-6);
    EXPECT_NEAR(facts.at("GPS:GPSLongitude").get<double>(), 9.25, 1e-6);
    EXPECT_EQ(facts.at("ExifIFD:SerialNumber"), 12345);
    EXPECT_EQ(facts.count("IFD0:Make"), 0U);
}

TEST_F(FileFacts, HaveFullColourFromQuality90On) {
    PrintOptions options;
    options.quality = 90;
    // 1 1 is no subsampling, 2 2 is half the colour each way.
    EXPECT_EQ(factsOf(options, "print.jpg").at("File:YCbCrSubSampling"), "1 1");
    options.quality = 89;
    EXPECT_EQ(factsOf(options, "print.jpg").at("File:YCbCrSubSampling"), "2 2");
}

TEST_F(FileFacts, OfLosslessFilesHoldTheRenderedPixelsExactly) {
    const Print print = test::plainPrint({Length::inches(3), Length::inches(4)});
    const auto rendered = renderPrint(print, photo, {});
    ASSERT_TRUE(rendered);
    for (const PrintFormat format : {PrintFormat::Png, PrintFormat::Tiff}) {
        PrintOptions options;
        options.format = format;
        const auto file = printFile(print, photo, options);
        ASSERT_TRUE(file);
        test::writeFile(place / "lossless", *file);
        const auto decoded = decodePhoto(place / "lossless", 0);
        ASSERT_TRUE(decoded) << decoded.error().text();
        const double db = test::psnr(*decoded, *rendered);
        EXPECT_TRUE(std::isinf(db)) << db;
    }
}

}  // namespace

}  // namespace matwright
