// SPDX-License-Identifier: MIT
#include "core/prints/pixel_places.h"

#include <gtest/gtest.h>

namespace matwright {

namespace {

constexpr Length in(std::int64_t n) {
    return Length::inches(n);
}

Print plainPrint(Size paper) {
    Print print;
    print.paper = paper;
    print.trim = Rect::at({}, paper);
    print.window = paper;
    return print;
}

TEST(PixelPlaces, HaveThePixelsOfThePrintSizesAt300Ppi) {
    // 300 pixels to every inch: Macalester College, photo guidelines ("divide pixel width and
    // height by 300"); 4x6, Letter and 12x12 as Qt's QPageSize::sizePixels(300) has them too.
    const Length half = Length::inches(0, 1, 2);
    EXPECT_EQ(pixelsOf({in(3) + half, in(5)}, 300), (PixelSize{1050, 1500}));
    EXPECT_EQ(pixelsOf({in(4), in(4)}, 300), (PixelSize{1200, 1200}));
    EXPECT_EQ(pixelsOf({in(4), in(6)}, 300), (PixelSize{1200, 1800}));
    EXPECT_EQ(pixelsOf({in(5), in(7)}, 300), (PixelSize{1500, 2100}));
    EXPECT_EQ(pixelsOf({in(6), in(8)}, 300), (PixelSize{1800, 2400}));
    EXPECT_EQ(pixelsOf({in(8), in(10)}, 300), (PixelSize{2400, 3000}));
    EXPECT_EQ(pixelsOf({in(8), in(12)}, 300), (PixelSize{2400, 3600}));
    EXPECT_EQ(pixelsOf({in(8) + half, in(11)}, 300), (PixelSize{2550, 3300}));
    EXPECT_EQ(pixelsOf({in(11), in(14)}, 300), (PixelSize{3300, 4200}));
    EXPECT_EQ(pixelsOf({in(12), in(12)}, 300), (PixelSize{3600, 3600}));
}

TEST(PixelPlaces, RoundMillimetresToTheNearestPixel) {
    // 100 x 150 mm at 300 ppi: 1181.10 x 1771.65.
    EXPECT_EQ(pixelsOf({Length::millimetres(100), Length::millimetres(150)}, 300),
              (PixelSize{1181, 1772}));
    EXPECT_EQ(pixelsOf({Length::fromTicks(1), Length::fromTicks(1)}, 72), (PixelSize{1, 1}));
}

TEST(PixelPlaces, FillTheWholePaperWhereTrimAndPaperAreOne) {
    const PixelPlaces places = placesOf(plainPrint({in(4), in(6)}), {});
    EXPECT_EQ(places.window, (PixelRect{0, 0, 1200, 1800}));
    EXPECT_EQ(places.picture, places.window);
    EXPECT_EQ(places.trim, places.window);
}

TEST(PixelPlaces, KeepTheWhiteBorderInsideTheTrim) {
    Print print = plainPrint({in(4), in(6)});
    print.border = Length::inches(0, 1, 4);
    const PixelPlaces places = placesOf(print, {});
    EXPECT_EQ(places.window, (PixelRect{75, 75, 1125, 1725}));
    EXPECT_EQ(places.picture, places.window);
}

TEST(PixelPlaces, LetTheBleedGoBeyondTheTrim) {
    PrintOptions options;
    options.bleed = Length::inches(0, 1, 8);
    Print print = plainPrint({in(4) + Length::inches(0, 1, 4), in(6) + Length::inches(0, 1, 4)});
    print.trim = Rect::at({options.bleed, options.bleed}, {in(4), in(6)});
    PixelPlaces places = placesOf(print, options);
    EXPECT_EQ(places.paper, (PixelSize{1275, 1875}));
    EXPECT_EQ(places.window, (PixelRect{38, 38, 1238, 1838}));
    EXPECT_EQ(places.picture, (PixelRect{0, 0, 1275, 1875}));
    // With a border the bleed is white.
    print.border = Length::inches(0, 1, 4);
    places = placesOf(print, options);
    EXPECT_EQ(places.picture, places.window);
}

TEST(PixelPlaces, LeaveNoBorderWhereAPrintMeetsAnother) {
    Print print = plainPrint({in(4), in(6)});
    print.border = Length::inches(0, 1, 4);
    print.to = 0.5;
    EXPECT_EQ(placesOf(print, {}).window, (PixelRect{75, 75, 1200, 1725}));
    print.from = 0.5;
    print.to = 1;
    EXPECT_EQ(placesOf(print, {}).window, (PixelRect{0, 75, 1125, 1725}));
}

}  // namespace

}  // namespace matwright
