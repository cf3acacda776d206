// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>
#include <tiffio.h>

#include <algorithm>
#include <thread>
#include <vector>
#include <vips/vips8>

#include "core/content/content_key.h"
#include "core/photo/photo_source.h"
#include "core/photo/vips_photo.h"
#include "tests/support/made_photos.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using test::madePhoto;
using test::madePicture;

class Decode : public testing::Test {
  protected:
    std::filesystem::path keep(const char* name, const std::string& bytes) const {
        test::writeFile(m_folder / name, bytes);
        return m_folder / name;
    }
    Raster decoded(const std::filesystem::path& file, int longSide = 0) const {
        auto raster = decodePhoto(file, longSide);
        EXPECT_TRUE(raster) << raster.error().sentence;
        return raster ? *raster : Raster{};
    }

    test::TemporaryFolder m_folder;
};

TEST_F(Decode, GivesThePixelsOfALosslessFileUnchanged) {
    const PixelSize size{123, 77};
    for (const char* name : {"a.png", "a.tif", "a.webp"}) {
        const std::string ending = std::filesystem::path(name).extension();
        const auto file =
            keep(name, madePhoto(size, ending == ".webp" ? ".webp[lossless=1]" : ending));
        EXPECT_EQ(decoded(file), madePicture(size)) << name;
    }
}

TEST_F(Decode, ShrinksToTheLongSideAndNeverEnlarges) {
    const auto file = keep("a.jpg", madePhoto({1600, 1200}, ".jpg"));
    EXPECT_EQ(decoded(file, 512).size, (PixelSize{512, 384}));
    EXPECT_EQ(decoded(file, 1601).size, (PixelSize{1600, 1200}));
    EXPECT_EQ(decoded(file, 1).size, (PixelSize{1, 1}));
    EXPECT_EQ(decoded(file, 799).size, (PixelSize{799, 599}));
    const auto turned = keep("b.jpg", madePhoto({1600, 1200}, ".jpg", {6, {}, {}, {}, {}}));
    EXPECT_EQ(decoded(turned, 512).size, (PixelSize{384, 512}));
}

// The decoders' own shrinking must not move or darken the picture.
TEST_F(Decode, LooksTheSameWhicheverWayItIsShrunk) {
    const PixelSize size{2000, 1500};
    const Raster reference = decoded(keep("a.png", madePhoto(size, ".png")), 250);
    for (const char* suffix : {".jpg[Q=95]", ".webp[Q=95]", ".tif"}) {
        const auto file = keep("b", madePhoto(size, suffix));
        EXPECT_LT(test::differenceOf(decoded(file, 250), reference).mean, 2.5) << suffix;
    }
}

TEST_F(Decode, IsTheSameEveryTimeAndOnEveryThread) {
    const auto file = keep("a.jpg", madePhoto({900, 700}, ".jpg"));
    const Raster first = decoded(file, 300);
    std::vector<Raster> rasters(8);
    {
        std::vector<std::jthread> threads;
        for (Raster& raster : rasters) {
            threads.emplace_back([&] { raster = *decodePhoto(file, 300); });
        }
    }
    for (const Raster& raster : rasters) {
        EXPECT_EQ(raster, first);
    }
}

TEST_F(Decode, LaysTransparentPartsOnWhite) {
    const vips::VImage clear =
        test::madeImage(madePicture({30, 20})).bandjoin(std::vector<double>{0});
    const auto file = keep("a.png", test::encoded(clear, ".png"));
    const Raster white = decoded(file);
    EXPECT_TRUE(std::ranges::all_of(white.pixels, [](auto v) { return v == 255; }));
    const vips::VImage half =
        test::madeImage(Raster{{2, 2}, std::vector<std::uint8_t>(12, 0)}).bandjoin({127.5});
    EXPECT_NEAR(
        decoded(keep("b.png", test::encoded(half.cast(VIPS_FORMAT_UCHAR), ".png"))).pixels.front(),
        128, 1);
}

TEST_F(Decode, TakesSixteenBitsGreyAndPalettes) {
    const vips::VImage image = test::madeImage(madePicture({40, 30}));
    const Raster plain = madePicture({40, 30});
    const vips::VImage deep = image.colourspace(VIPS_INTERPRETATION_RGB16);
    EXPECT_EQ(decoded(keep("deep.png", test::encoded(deep, ".png"))), plain);
    EXPECT_EQ(decoded(keep("deep.tif", test::encoded(deep, ".tif"))), plain);
    const vips::VImage grey = image.colourspace(VIPS_INTERPRETATION_B_W);
    const Raster greys = decoded(keep("grey.jpg", test::encoded(grey, ".jpg[Q=100]")));
    ASSERT_EQ(greys.size, plain.size);
    EXPECT_EQ(greys.pixels[300], greys.pixels[301]);
    EXPECT_EQ(greys.pixels[300], greys.pixels[302]);
    const Raster palette = decoded(keep("p.png", test::encoded(image, ".png[palette]")));
    EXPECT_LT(test::differenceOf(palette, plain).mean, 12);
}

TEST_F(Decode, TakesPrintingInks) {
    const vips::VImage image = test::madeImage(madePicture({40, 30}));
    const vips::VImage inks = image.icc_transform("cmyk");
    const auto file = keep("inks.jpg", test::encoded(inks, ".jpg[Q=100]"));
    const auto facts = photoFacts(file);
    ASSERT_TRUE(facts);
    EXPECT_EQ(facts->remarks.size(), 1U);
    // Inks reach fewer colours than screens, so only the gist is the same.
    EXPECT_LT(test::differenceOf(decoded(file), madePicture({40, 30})).mean, 40);
}

TEST_F(Decode, TakesTheFirstPictureOfAMovingOne) {
    vips::VImage frames =
        test::madeImage(madePicture({50, 40}))
            .join(test::madeImage(madePicture({50, 40})).invert(), VIPS_DIRECTION_VERTICAL);
    frames = frames.copy();
    vips_image_set_int(frames.get_image(), VIPS_META_PAGE_HEIGHT, 40);
    const auto file = keep("moving.webp", test::encoded(frames, ".webp[lossless=1]"));
    const auto facts = photoFacts(file);
    ASSERT_TRUE(facts);
    EXPECT_EQ(facts->stored, (PixelSize{50, 40}));
    ASSERT_EQ(facts->remarks.size(), 1U);
    EXPECT_EQ(facts->remarks.front(), "It holds 2 pictures; the first is used.");
    EXPECT_EQ(decoded(file), madePicture({50, 40}));
}

TEST_F(Decode, GoesByWhatTheFileHoldsAndNotByItsName) {
    const auto file = keep("a.png", madePhoto({40, 30}, ".jpg"));
    const auto facts = photoFacts(file);
    ASSERT_TRUE(facts);
    EXPECT_EQ(facts->format, "JPEG");
    EXPECT_EQ(facts->remarks, std::vector<std::string>{"It is called .png but is a JPEG photo."});
    EXPECT_EQ(decoded(file).size, (PixelSize{40, 30}));
}

TEST_F(Decode, TellsTheFactsOfAPhoto) {
    const std::string xmp =
        "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF "
        "xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\"><rdf:Description "
        "xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" xmp:Rating=\"4\"/></rdf:RDF></x:xmpmeta>";
    const std::string bytes =
        madePhoto({64, 48}, ".jpg", {1, "2026:07:14 16:03:22", "2026:07:15 00:00:00", xmp, {}});
    const auto facts = photoFacts(keep("a.jpg", bytes));
    ASSERT_TRUE(facts);
    EXPECT_EQ(facts->taken, "2026-07-14 16:03:22");
    EXPECT_EQ(facts->rating, 4);
    EXPECT_EQ(facts->profile, "");
    EXPECT_EQ(facts->bytes, bytes.size());
    EXPECT_EQ(facts->content, contentKeyOf(bytes));
    EXPECT_EQ(facts->remarks, std::vector<std::string>{});
    // A time that is none does not hide the next one.
    const auto other = photoFacts(
        keep("b.jpg",
             madePhoto({8, 8}, ".jpg", {1, "0000:00:00 00:00:00", "2026:07:15 00:00:00", {}, {}})));
    ASSERT_TRUE(other);
    EXPECT_EQ(other->taken, "2026-07-15 00:00:00");
}

// Written by libtiff itself, as no other writer here makes such files.
void writeTiff(const std::filesystem::path& file, std::uint32_t subfile, const char* taken) {
    TIFF* tiff = TIFFOpen(file.c_str(), "w");
    const auto describe = [&] {
        TIFFSetField(tiff, TIFFTAG_IMAGEWIDTH, 4);
        TIFFSetField(tiff, TIFFTAG_IMAGELENGTH, 1);
        TIFFSetField(tiff, TIFFTAG_BITSPERSAMPLE, 8);
        TIFFSetField(tiff, TIFFTAG_PHOTOMETRIC, PHOTOMETRIC_MINISBLACK);
        TIFFSetField(tiff, TIFFTAG_SUBFILETYPE, subfile);
    };
    describe();
    char grey[] = "\x10\x20\x30\x40";
    TIFFWriteScanline(tiff, grey, 0, 0);
    TIFFWriteDirectory(tiff);
    std::uint64_t place = 0;
    TIFFCreateEXIFDirectory(tiff);
    TIFFSetField(tiff, EXIFTAG_DATETIMEORIGINAL, taken);
    TIFFWriteCustomDirectory(tiff, &place);
    TIFFSetDirectory(tiff, 0);
    TIFFSetField(tiff, TIFFTAG_EXIFIFD, place);
    TIFFRewriteDirectory(tiff);
    TIFFClose(tiff);
}

TEST_F(Decode, FindsTheTimeOfATiff) {
    writeTiff(m_folder / "a.tif", 0, "2026:07:14 16:03:22");
    const auto facts = photoFacts(m_folder / "a.tif");
    ASSERT_TRUE(facts) << facts.error().sentence;
    EXPECT_EQ(facts->taken, "2026-07-14 16:03:22");
    EXPECT_EQ(decoded(m_folder / "a.tif").pixels,
              (std::vector<std::uint8_t>{16, 16, 16, 32, 32, 32, 48, 48, 48, 64, 64, 64}));
}

TEST_F(Decode, DoesNotTakeThePreviewOfARawPictureForThePhoto) {
    writeTiff(m_folder / "a.dng", FILETYPE_REDUCEDIMAGE, "2026:07:14 16:03:22");
    const auto expectRefused = [](const auto& read) {
        ASSERT_FALSE(read);
        EXPECT_EQ(read.error().code, ErrorCode::WrongFormat);
        EXPECT_TRUE(read.error().sentence.starts_with("This is a camera's raw picture"));
    };
    expectRefused(photoFacts(m_folder / "a.dng"));
    expectRefused(decodePhoto(m_folder / "a.dng", 0));
}

TEST_F(Decode, GivesTheToneSampleThatItsDecodedPhotoHas) {
    const auto file = keep("a.jpg", madePhoto({900, 700}, ".jpg", {6, {}, {}, {}, {}}));
    const auto sample = toneSample(file);
    ASSERT_TRUE(sample);
    EXPECT_EQ(*sample, histogramOf(decoded(file, toneSampleSide)));
    EXPECT_FALSE(toneSample(m_folder / "none.jpg"));
}

TEST_F(Decode, StopsWhenItIsAskedTo) {
    const auto file = keep("a.png", madePhoto({3000, 2000}, ".png[compression=1]"));
    std::stop_source stop;
    stop.request_stop();
    const auto raster = decodePhoto(file, 0, stop.get_token());
    ASSERT_FALSE(raster);
    EXPECT_EQ(raster.error().code, ErrorCode::Unsupported);
    EXPECT_EQ(raster.error().sentence, "Reading the photo was called off.");
}

TEST_F(Decode, OpensUprightForOtherPartsOfTheCore) {
    const auto file = keep("a.jpg", madePhoto({101, 60}, ".jpg", {6, {}, {}, {}, {}}));
    const auto full = openUpright(file);
    ASSERT_TRUE(full);
    EXPECT_EQ(full->width(), 60);
    EXPECT_EQ(full->height(), 101);
    EXPECT_EQ(full->bands(), 3);
    const auto half = openUpright(file, 2);
    ASSERT_TRUE(half);
    EXPECT_EQ(half->width(), 30);
    EXPECT_NEAR(half->height(), 50.5, 0.5);
    // It lives on without the file and without what it was made with.
    const vips::VImage part = [&] {
        const auto handle = openUpright(file);
        std::filesystem::remove(file);
        return handle->extract_area(10, 10, 20, 20);
    }();
    EXPECT_EQ(part.avg(), full->extract_area(10, 10, 20, 20).avg());
}

TEST_F(Decode, WritesAndReadsSmallJpegs) {
    const Raster raster = madePicture({160, 120});
    const std::string bytes = smallJpeg(raster, 90);
    const auto again = fromSmallJpeg(bytes);
    ASSERT_TRUE(again);
    EXPECT_LT(test::differenceOf(*again, raster).mean, 5);
    EXPECT_FALSE(bytes.contains("Exif"));
    EXPECT_LT(smallJpeg(raster, 20).size(), bytes.size());
    EXPECT_EQ(smallJpeg({}, 90), "");
    for (const std::string& bad :
         {std::string(), std::string("no picture"), bytes.substr(0, bytes.size() / 2)}) {
        const auto refused = fromSmallJpeg(bad);
        ASSERT_FALSE(refused);
        EXPECT_TRUE(refused.error().sentence.ends_with("."));
    }
}

}  // namespace
}  // namespace matwright
