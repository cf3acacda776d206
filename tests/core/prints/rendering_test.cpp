// SPDX-License-Identifier: MIT
#include "core/prints/rendering.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/photo/photo_source.h"
#include "core/prints/photo_view.h"
#include "tests/support/busy_photo.h"
#include "tests/support/temporary_folder.h"

namespace matwright {

namespace {

constexpr Length in(std::int64_t n) {
    return Length::inches(n);
}
constexpr Length pixels(std::int64_t n) {
    return Length::inches(0, n, 300);
}

Print printOf(Size paper) {
    Print print;
    print.paper = paper;
    print.trim = Rect::at({}, paper);
    print.window = paper;
    return print;
}

std::array<int, 3> at(const Raster& raster, int x, int y) {
    const auto row = raster.row(y).subspan(3 * static_cast<std::size_t>(x), 3);
    return {row[0], row[1], row[2]};
}

// A white picture with a blue left half.
Raster halves(PixelSize size) {
    Raster raster{size, std::vector<std::uint8_t>(3 * static_cast<std::size_t>(size.count()), 255)};
    for (int y = 0; y < size.height; ++y) {
        for (int x = 0; x < size.width / 2; ++x) {
            const auto pixel =
                3 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(size.width) +
                     static_cast<std::size_t>(x));
            raster.pixels[pixel] = 0;
            raster.pixels[pixel + 1] = 0;
        }
    }
    return raster;
}

class Rendering : public testing::Test {
  protected:
    Photo written(const Raster& raster, const char* name = "photo.jpg") {
        Photo photo;
        photo.path = place / name;
        photo.upright = raster.size;
        test::writeFile(photo.path, smallJpeg(raster, 95));
        return photo;
    }
    test::TemporaryFolder place;
};

TEST_F(Rendering, EqualsTheDecodedPhotoWhereSizesAgree) {
    const Photo photo = written(test::busyPhoto({600, 900}, 7));
    Print print = printOf({in(2), in(3)});
    const auto rendered = renderPrint(print, photo, {});
    const auto decoded = decodePhoto(photo.path, 0);
    ASSERT_TRUE(rendered) << rendered.error().text();
    ASSERT_TRUE(decoded);
    EXPECT_EQ(*rendered, *decoded);
    // With tone: what the screen shows at 100 % is the file's, within 1/255.
    print.tone = {true, 12, -7, 20, 15, 0};
    const auto toned = renderPrint(print, photo, {});
    Raster shown = *decoded;
    apply(toneMapOf(print.tone, *toneSample(photo.path)), shown);
    ASSERT_TRUE(toned);
    ASSERT_NE(*toned, *rendered);
    for (std::size_t i = 0; i < shown.pixels.size(); ++i) {
        ASSERT_LE(std::abs(shown.pixels[i] - toned->pixels[i]), 1);
    }
}

TEST_F(Rendering, KeepsTheBorderWhite) {
    const Photo photo = written(test::busyPhoto({600, 900}, 7));
    Print print = printOf({in(2), in(3)});
    print.border = pixels(30);
    print.window = {in(2) - pixels(60), in(3) - pixels(60)};
    print.tone.brightness = -60;
    print.tone.sharpen = 100;
    const auto rendered = renderPrint(print, photo, {});
    ASSERT_TRUE(rendered);
    for (int x = 0; x < 600; ++x) {
        ASSERT_EQ(at(*rendered, x, 29), (std::array{255, 255, 255}));
        ASSERT_EQ(at(*rendered, x, 870), (std::array{255, 255, 255}));
    }
    EXPECT_NE(at(*rendered, 30, 30), (std::array{255, 255, 255}));
    EXPECT_NE(at(*rendered, 569, 869), (std::array{255, 255, 255}));
}

TEST_F(Rendering, TurnsQuartersExactly) {
    const Photo photo = written(halves({600, 300}));
    Print print = printOf({in(1), in(2)});
    print.crop.quarterTurns = 1;
    const auto right = renderPrint(print, photo, {});
    ASSERT_TRUE(right);
    // The left half comes to the top.
    EXPECT_LT(at(*right, 150, 100)[0], 10);
    EXPECT_GT(at(*right, 150, 500)[0], 245);
    print.crop.quarterTurns = 3;
    const auto left = renderPrint(print, photo, {});
    ASSERT_TRUE(left);
    for (int y = 0; y < 600; ++y) {
        for (int x = 0; x < 300; ++x) {
            ASSERT_EQ(at(*left, x, y), at(*right, 299 - x, 599 - y));
        }
    }
}

TEST_F(Rendering, StraightensClockwise) {
    // The edge between the halves, turned clockwise by 10 degrees, leans to the right at its top.
    const Photo photo = written(halves({2000, 2000}));
    Print print = printOf({in(2), in(2)});
    print.crop.straighten = Angle::degrees(10);
    const auto rendered = renderPrint(print, photo, {});
    ASSERT_TRUE(rendered);
    const auto edgeIn = [&](int y) {
        double dark = 0;
        for (int x = 0; x < 600; ++x) {
            dark += (255 - at(*rendered, x, y)[0]) / 255.0;
        }
        return dark;
    };
    const double slant = std::tan(10 * std::numbers::pi / 180);
    for (const int y : {50, 150, 300, 450, 550}) {
        EXPECT_NEAR(edgeIn(y), 300 - (y + 0.5 - 300) * slant, 0.3) << y;
    }
}

TEST_F(Rendering, ShowsTwoPartsThatMeetWithoutASeam) {
    const Photo photo = written(test::busyPhoto({2400, 1600}, 3));
    const auto whole = renderPrint(printOf({in(3), in(2)}), photo, {});
    Print left = printOf({in(1), in(2)});
    left.window = {in(3), in(2)};
    left.to = 1.0 / 3;
    Print right = printOf({in(2), in(2)});
    right.window = {in(3), in(2)};
    right.from = 1.0 / 3;
    const auto first = renderPrint(left, photo, {});
    const auto second = renderPrint(right, photo, {});
    ASSERT_TRUE(whole && first && second);
    double sum = 0;
    for (int y = 0; y < 600; ++y) {
        for (int x = 0; x < 900; ++x) {
            const auto part = x < 300 ? at(*first, x, y) : at(*second, x - 300, y);
            for (std::size_t band = 0; band < 3; ++band) {
                const double difference = part[band] - at(*whole, x, y)[band];
                sum += difference * difference;
            }
        }
    }
    EXPECT_LT(sum / (900 * 600 * 3), 0.5);
}

TEST_F(Rendering, RepeatsThePhotosEdgeInTheBleed) {
    const Photo photo = written(halves({600, 600}));
    PrintOptions options;
    options.bleed = pixels(30);
    Print print = printOf({in(2) + pixels(60), in(2) + pixels(60)});
    print.trim = Rect::at({pixels(30), pixels(30)}, {in(2), in(2)});
    print.window = {in(2), in(2)};
    const auto rendered = renderPrint(print, photo, options);
    ASSERT_TRUE(rendered);
    EXPECT_EQ(rendered->size, (PixelSize{660, 660}));
    EXPECT_LT(at(*rendered, 0, 0)[0], 10);
    EXPECT_LT(at(*rendered, 310, 330)[0], 20);
    EXPECT_GT(at(*rendered, 350, 330)[0], 235);
    EXPECT_GT(at(*rendered, 659, 659)[0], 245);
}

TEST_F(Rendering, RepeatsThePhotosEdgeInTheBleedOfAPrintThatIsFinerThanThePhoto) {
    // White, so that a black edge would show; straightened too, where the corners are beyond it.
    Raster white{{300, 300}, std::vector<std::uint8_t>(3U * 300 * 300, 250)};
    const Photo photo = written(white);
    PrintOptions options;
    options.bleed = pixels(30);
    Print print = printOf({in(2) + pixels(60), in(2) + pixels(60)});
    print.trim = Rect::at({pixels(30), pixels(30)}, {in(2), in(2)});
    print.window = {in(2), in(2)};
    for (const Angle turn : {Angle::degrees(0), Angle::degrees(7), Angle::degrees(340)}) {
        print.crop.straighten = turn;
        const auto rendered = renderPrint(print, photo, options);
        ASSERT_TRUE(rendered);
        EXPECT_GT(*std::ranges::min_element(rendered->pixels), 240) << turn.toDegrees();
    }
}

TEST_F(Rendering, SaysWhyAPhotoCannotBePrinted) {
    Photo photo;
    photo.path = place / "gone.jpg";
    const auto gone = renderPrint(printOf({in(2), in(3)}), photo, {});
    ASSERT_FALSE(gone);
    EXPECT_EQ(gone.error().code, ErrorCode::NotFound);

    const std::string whole = smallJpeg(test::busyPhoto({600, 900}, 7), 95);
    photo.path = place / "short.jpg";
    test::writeFile(photo.path, whole.substr(0, whole.size() / 2));
    const auto damaged = renderPrint(printOf({in(2), in(3)}), photo, {});
    ASSERT_FALSE(damaged);
    EXPECT_EQ(damaged.error().code, ErrorCode::Malformed);
}

TEST_F(Rendering, RefusesAFileThatHoldsAnotherPictureNow) {
    Photo photo = written(test::busyPhoto({600, 900}, 7));
    photo.content = photoFacts(photo.path)->content;
    EXPECT_TRUE(renderPrint(printOf({in(2), in(3)}), photo, {}));
    written(test::busyPhoto({600, 900}, 8));  // of the same name
    const auto other = renderPrint(printOf({in(2), in(3)}), photo, {});
    ASSERT_FALSE(other);
    EXPECT_EQ(other.error().code, ErrorCode::NotFound);
    EXPECT_NE(other.error().sentence.find("another picture"), std::string::npos);
    EXPECT_EQ(other.error().where, photo.path);
}

TEST_F(Rendering, RefusesPixelsNobodyPrints) {
    const Photo photo = written(halves({600, 600}));
    PrintOptions options;
    options.ppi = 71;
    EXPECT_EQ(renderPrint(printOf({in(2), in(2)}), photo, options).error().code,
              ErrorCode::OutOfRange);
    options.ppi = 1201;
    EXPECT_EQ(renderPrint(printOf({in(2), in(2)}), photo, options).error().code,
              ErrorCode::OutOfRange);
}

TEST_F(Rendering, RefusesAPaperOfTooManyPixels) {
    const Photo photo = written(halves({600, 600}));
    PrintOptions options;
    options.ppi = 1200;
    const Print huge = printOf({in(100), in(100)});  // 14,400 megapixels, 43 GB
    const auto refused = renderPrint(huge, photo, options);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::TooLarge);
    EXPECT_NE(refused.error().sentence.find("fewer pixels an inch"), std::string::npos);
    const auto sheet = renderGang(
        {huge.paper, {{0, {}, false}}}, {huge}, [&](PhotoId) -> const Photo& { return photo; },
        options);
    ASSERT_FALSE(sheet);
    EXPECT_EQ(sheet.error().code, ErrorCode::TooLarge);
}

TEST_F(Rendering, StopsWhenAsked) {
    const Photo photo = written(test::busyPhoto({1200, 900}, 7));
    std::stop_source source;
    source.request_stop();
    const auto stopped = renderPrint(printOf({in(3), in(2)}), photo, {}, source.get_token());
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().code, ErrorCode::Unsupported);
}

TEST_F(Rendering, LaysTwoPrintsOnOneSheet) {
    const Photo photo = written(halves({900, 1200}));
    const std::vector<Print> prints{printOf({in(3), in(4)}), printOf({in(4), in(3)})};
    const std::vector<Gang> gangs = simpleGangs(prints);
    ASSERT_EQ(gangs.size(), 1U);
    const auto photoOf = [&](PhotoId) -> const Photo& { return photo; };
    const auto sheet = renderGang(gangs[0], prints, photoOf, {});
    ASSERT_TRUE(sheet);
    EXPECT_EQ(sheet->size, (PixelSize{1800, 1200}));
    EXPECT_LT(at(*sheet, 10, 600)[0], 10);
    EXPECT_GT(at(*sheet, 899, 600)[0], 245);
    // The lying one is turned to the right: its blue left half is at the top.
    EXPECT_LT(at(*sheet, 901, 10)[0], 10);
    EXPECT_GT(at(*sheet, 901, 1190)[0], 245);
}

TEST(DecoderShrink, LeavesEnoughToChooseFrom) {
    EXPECT_EQ(decoderShrink(1), 1);
    EXPECT_EQ(decoderShrink(2.3), 1);
    EXPECT_EQ(decoderShrink(2.52), 2);
    EXPECT_EQ(decoderShrink(5.04), 4);
    EXPECT_EQ(decoderShrink(100), 8);
}

}  // namespace

}  // namespace matwright
