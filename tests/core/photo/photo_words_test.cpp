// SPDX-License-Identifier: MIT
#include "core/photo/photo_words.h"

#include <gtest/gtest.h>

#include "core/measure/catalogue.h"

namespace matwright {
namespace {

Size inches(std::int64_t width, std::int64_t height) {
    return {Length::inches(width), Length::inches(height)};
}

Size print(const char* id) {
    return findPrintSize(id)->size;
}

// "Divide the pixels by 300": 1200 x 1600 pixels are 4 x 5.33 in (photo guidelines of Macalester
// College, macalester.edu/communications/resourcecenter/photoquality). The largest catalogue print
// within that is 3 1/2 x 5 in: 17.5 square inches against 16 of 4 x 4 in.
TEST(LargestPrint, IsTheLargestThatThePixelsFill) {
    EXPECT_EQ(largestPrint({1200, 1600}, 300), print("3.5x5"));
    EXPECT_EQ(largestPrint({1600, 1200}, 300), print("3.5x5").turned());
}

// Pixels at 300 ppi by multiplication: 4 x 6 in 1200 x 1800, 8 x 10 in 2400 x 3000.
TEST(LargestPrint, CountsEveryPixel) {
    EXPECT_EQ(largestPrint({1200, 1800}, 300), print("4x6"));
    EXPECT_NE(largestPrint({1199, 1800}, 300), print("4x6"));
    EXPECT_NE(largestPrint({1200, 1799}, 300), print("4x6"));
    EXPECT_EQ(largestPrint({3000, 2400}, 300), print("8x10").turned());
    EXPECT_EQ(largestPrint({4032, 3024}, 300), print("8x10").turned());
    EXPECT_EQ(largestPrint({4032, 3024}, 378), print("8x10").turned());
    EXPECT_NE(largestPrint({4032, 3024}, 379), print("8x10").turned());
}

TEST(LargestPrint, IsNothingForAFewPixels) {
    EXPECT_EQ(largestPrint({599, 599}, 300), std::nullopt);
    EXPECT_EQ(largestPrint({600, 600}, 300), print("2x2"));
    EXPECT_EQ(largestPrint({1, 1}, 100), std::nullopt);
}

TEST(LargestPrintText, SaysWhatIsLeftAtFewerPixels) {
    EXPECT_EQ(largestPrintText({4032, 3024}), "any print, up to 8 × 10 in at 300 ppi");
    EXPECT_EQ(largestPrintText({1200, 1800}), "up to 4 × 6 in at 300 ppi");
    EXPECT_EQ(largestPrintText({500, 500}),
              "too small for any print at 300 ppi; up to 2 1/2 × 2 1/2 in at 200 ppi");
    EXPECT_EQ(largestPrintText({300, 300}),
              "too small for any print at 300 ppi; up to 3 × 3 in at 100 ppi, which looks soft");
    EXPECT_EQ(largestPrintText({100, 100}), "too small for any print, even at 100 ppi");
}

TEST(Sharpness, ChangesExactlyAtItsTwoFigures) {
    EXPECT_EQ(sharpnessAt(300), Sharpness::Fine);
    EXPECT_EQ(sharpnessAt(200), Sharpness::Fine);
    EXPECT_EQ(sharpnessAt(199.999), Sharpness::Soft);
    EXPECT_EQ(sharpnessAt(100), Sharpness::Soft);
    EXPECT_EQ(sharpnessAt(99.999), Sharpness::Poor);
}

TEST(PpiText, NeverShowsAFigureThatWouldNotBeWarnedAbout) {
    EXPECT_EQ(ppiText(412.7), "412 ppi");
    EXPECT_TRUE(ppiText(199.99).starts_with("about 199 ppi: this will look soft; "));
    EXPECT_TRUE(ppiText(72).starts_with("72 ppi: too coarse to print at this size; "));
    EXPECT_TRUE(ppiText(0).starts_with("0 ppi: too coarse"));
}

// The share of its area that a photo loses when it fills a print: 1 - min(r) / max(r) of the two
// ratios, worked out by hand as fractions.
TEST(LossText, TellsExactFractions) {
    const PixelSize phone{4000, 3000};   // 4:3
    const PixelSize camera{6000, 4000};  // 3:2
    const PixelSize square{3000, 3000};
    const auto loss = [](PixelSize photo, Size on) { return lossText(photo, on.turned()); };
    EXPECT_EQ(loss(phone, print("4x6")), "4 × 6 in takes off 1/9 of this photo");
    EXPECT_EQ(loss(phone, print("8x10")), "8 × 10 in takes off 1/16 of this photo");
    EXPECT_EQ(loss(phone, print("5x7")), "5 × 7 in takes off 1/21 of this photo");
    EXPECT_EQ(loss(phone, print("3.5x5")), "3 1/2 × 5 in takes off 1/15 of this photo");
    EXPECT_EQ(loss(phone, print("4x4")), "4 × 4 in takes off 1/4 of this photo");
    EXPECT_EQ(loss(phone, print("6x8")), "nothing is cut off");
    EXPECT_EQ(loss(phone, print("3x4")), "nothing is cut off");
    EXPECT_EQ(loss(camera, print("4x6")), "nothing is cut off");
    EXPECT_EQ(loss(camera, print("8x10")), "8 × 10 in takes off 1/6 of this photo");
    EXPECT_EQ(loss(camera, print("5x7")), "5 × 7 in takes off 1/15 of this photo");
    EXPECT_EQ(loss(camera, print("6x8")), "6 × 8 in takes off 1/9 of this photo");
    EXPECT_EQ(loss(camera, print("4x4")), "4 × 4 in takes off 1/3 of this photo");
    EXPECT_EQ(loss(square, print("5x7")), "5 × 7 in takes off 2/7 of this photo");
    EXPECT_EQ(loss(square, print("3.5x5")), "3 1/2 × 5 in takes off 3/10 of this photo");
    // 17/80 lies nearer to 2/9 than to 1/5.
    EXPECT_EQ(lossText({1600, 900}, inches(7, 5)), "5 × 7 in takes off about 2/9 of this photo");
    EXPECT_EQ(lossText({1600, 900}, inches(4, 4)), "4 × 4 in takes off 7/16 of this photo");
}

TEST(LossText, SaysAboutWhereTheFractionIsNotExact) {
    // 4624 x 3472 is nearly 4:3: 1 - 4624 * 4 / (3472 * 6) = 0.11213…
    EXPECT_EQ(lossText({4624, 3472}, inches(6, 4)), "4 × 6 in takes off about 1/9 of this photo");
    EXPECT_EQ(lossText({3024, 2000}, inches(6, 4)), "4 × 6 in takes off 1/126 of this photo");
    EXPECT_EQ(lossText({3026, 2000}, inches(6, 4)), "4 × 6 in takes off about 1/116 of this photo");
    EXPECT_EQ(lossText({60'010, 40'000}, inches(6, 4)),
              "4 × 6 in takes off less than 1/200 of this photo");
    EXPECT_EQ(lossText({100'000, 1}, inches(2, 2)),
              "2 × 2 in takes off more than 11/12 of this photo");
}

TEST(LossText, NamesAPrintOfNoNameByItsSize) {
    EXPECT_EQ(lossText({2000, 1000}, {Length::inches(3), Length::inches(3, 1, 4)}),
              "3 × 3 1/4 in takes off 7/13 of this photo");
}

}  // namespace
}  // namespace matwright
