// SPDX-License-Identifier: MIT
#include "core/crop/crop.h"

#include <gtest/gtest.h>

#include <numbers>

namespace matwright::test {
namespace {

constexpr PixelSize phone{4032, 3024};

constexpr Size inches(std::int64_t width, std::int64_t height) {
    return {Length::inches(width), Length::inches(height)};
}

// A photo that fills a window of the same way round, both ratios as whole numbers.
double lossBetween(PixelSize photo, Size window) {
    return lossOf(startingCrop(photo, window), photo, window);
}

TEST(Crop, ThePartOfAPhotoThatIsLostIsTheExactFractionOfItsRatios) {
    // 1 - min(r) / max(r) for the ratios of common photos and prints: arithmetic.
    struct Row {
        PixelSize photo;
        Size window;
        double lost;
    };
    const Size a4{Length::millimetres(297), Length::millimetres(210)};
    const Size letter{Length::inches(11), Length::inches(8, 1, 2)};
    const Size snapshot{Length::inches(5), Length::inches(3, 1, 2)};
    const Row rows[] = {{{4, 3}, inches(1, 1), 1.0 / 4},
                        {{4, 3}, inches(10, 8), 1.0 / 16},
                        {{4, 3}, inches(14, 11), 1.0 / 22},
                        {{4, 3}, inches(8, 6), 0},
                        {{4, 3}, inches(7, 5), 1.0 / 21},
                        {{4, 3}, snapshot, 1.0 / 15},
                        {{4, 3}, inches(6, 4), 1.0 / 9},
                        {{4, 3}, letter, 1.0 / 34},
                        {{4, 3}, a4, 17.0 / 297},
                        {{3, 2}, inches(1, 1), 1.0 / 3},
                        {{3, 2}, inches(10, 8), 1.0 / 6},
                        {{3, 2}, inches(14, 11), 5.0 / 33},
                        {{3, 2}, inches(8, 6), 1.0 / 9},
                        {{3, 2}, inches(7, 5), 1.0 / 15},
                        {{3, 2}, snapshot, 1.0 / 21},
                        {{3, 2}, inches(6, 4), 0},
                        {{3, 2}, letter, 7.0 / 51},
                        {{3, 2}, a4, 2.0 / 35},
                        {{16, 9}, inches(1, 1), 7.0 / 16},
                        {{16, 9}, inches(10, 8), 19.0 / 64},
                        {{16, 9}, inches(14, 11), 25.0 / 88},
                        {{16, 9}, inches(8, 6), 1.0 / 4},
                        {{16, 9}, inches(7, 5), 17.0 / 80},
                        {{16, 9}, snapshot, 11.0 / 56},
                        {{16, 9}, inches(6, 4), 5.0 / 32},
                        {{16, 9}, letter, 37.0 / 136},
                        {{16, 9}, a4, 229.0 / 1120},
                        {{1, 1}, inches(1, 1), 0},
                        {{1, 1}, inches(10, 8), 1.0 / 5},
                        {{1, 1}, inches(14, 11), 3.0 / 14},
                        {{1, 1}, inches(8, 6), 1.0 / 4},
                        {{1, 1}, inches(7, 5), 2.0 / 7},
                        {{1, 1}, snapshot, 3.0 / 10},
                        {{1, 1}, inches(6, 4), 1.0 / 3},
                        {{1, 1}, letter, 5.0 / 22},
                        {{1, 1}, a4, 29.0 / 99}};
    for (const Row& row : rows) {
        const PixelSize large{row.photo.width * 1000, row.photo.height * 1000};
        EXPECT_NEAR(lossBetween(large, row.window), row.lost, 1e-12)
            << row.photo.width << ":" << row.photo.height << " into " << row.window.width.toInches()
            << " x " << row.window.height.toInches();
        EXPECT_NEAR(lossBetween(large.turned(), row.window.turned()), row.lost, 1e-12);
    }
}

TEST(Crop, PixelsAnInchOfATwelveMegapixelPhotoAreTheQuotientOfItsSides) {
    // 4032 x 3024 pixels, filled: arithmetic.
    const std::pair<Size, double> rows[] = {{inches(6, 4), 672},           {inches(7, 5), 576},
                                            {inches(10, 8), 378},          {inches(12, 8), 336},
                                            {inches(14, 11), 3024.0 / 11}, {inches(12, 12), 252}};
    for (const auto& [window, ppi] : rows) {
        EXPECT_NEAR(effectivePpi(startingCrop(phone, window), phone, window), ppi, 1e-9);
        const PixelSize upright = phone.turned();
        const Size turned = window.turned();
        EXPECT_NEAR(effectivePpi(startingCrop(upright, turned), upright, turned), ppi, 1e-9);
    }
    EXPECT_NEAR(effectivePpi({.zoom = 2 * Crop::one}, phone, inches(6, 4)), 336, 1e-9);
}

TEST(Crop, ALyingPhotoInALyingSlotLosesAThirdOfTheLossAboveAndTwoThirdsBelow) {
    const CropWindow shown = windowIn(startingCrop(phone, inches(6, 4)), phone, inches(6, 4));
    // 4032 x 2688 of 4032 x 3024: 336 rows go, 112 of them above.
    EXPECT_NEAR(shown.width, 4032, 1e-9);
    EXPECT_NEAR(shown.height, 2688, 1e-9);
    EXPECT_NEAR(shown.centreX, 2016, 1e-9);
    EXPECT_NEAR(shown.centreY - shown.height / 2, 112, 3024e-6);
}

TEST(Crop, AnUprightPhotoInASquareKeepsItsUpperPart) {
    const PixelSize photo{3000, 4000};
    const CropWindow shown = windowIn(startingCrop(photo, inches(4, 4)), photo, inches(4, 4));
    EXPECT_NEAR(shown.centreY - shown.height / 2, 1000.0 / 3, 4000e-6);
    EXPECT_EQ(shown.radians, 0);
}

TEST(Crop, APhotoThatIsTooWideIsCutAlikeOnBothSides) {
    const CropWindow shown = windowIn(startingCrop(phone, inches(3, 4)), phone, inches(3, 4));
    EXPECT_NEAR(shown.centreX, 2016, 1e-9);
    EXPECT_NEAR(shown.height, 3024, 1e-9);
    EXPECT_NEAR(shown.width, 2268, 1e-9);
}

TEST(Crop, APhotoOfTheWindowsRatioIsNotCutAtAll) {
    EXPECT_EQ(startingCrop(phone, inches(4, 3)), Crop());
    EXPECT_NEAR(lossBetween(phone, inches(4, 3)), 0, 1e-15);
}

TEST(Crop, AQuarterTurnedPhotoFillsAWindowThatLiesTheOtherWay) {
    const Crop turned = turnedRight(Crop(), phone, inches(3, 4));
    EXPECT_EQ(turned.quarterTurns, 1);
    EXPECT_NEAR(lossOf(turned, phone, inches(3, 4)), 0, 1e-15);
    EXPECT_EQ(turnedSize(turned, phone), phone.turned());
}

TEST(Crop, WhatWasInTheMiddleStaysThereWhenThePhotoIsTurned) {
    const Size window = inches(1, 1);
    const Crop start{.centreX = 300'000, .centreY = 400'000, .zoom = 4 * Crop::one};
    const Crop once = turnedRight(start, phone, window);
    // A quarter turn clockwise takes the top edge to the right: (x, y) to (1 - y, x).
    EXPECT_EQ(once.centreX, 600'000);
    EXPECT_EQ(once.centreY, 300'000);
    Crop four = start;
    for (int i = 0; i < 4; ++i) {
        four = turnedRight(four, phone, window);
    }
    EXPECT_EQ(four, start);
}

TEST(Crop, ASquareTurnedByHalfARightAngleShowsHalfOfASquarePhoto) {
    // The largest upright square in a square turned by 45 degrees has its corners in the middles of
    // the sides: half the area.
    const PixelSize square{1000, 1000};
    const Crop crop = straightened(Crop(), square, inches(1, 1), Angle::degrees(45));
    EXPECT_NEAR(lossOf(crop, square, inches(1, 1)), 0.5, 1e-12);
    const CropWindow shown = windowIn(crop, square, inches(1, 1));
    EXPECT_NEAR(shown.width, 1000 / std::numbers::sqrt2, 1e-9);
    EXPECT_NEAR(shown.radians, std::numbers::pi / 4, 1e-15);
}

TEST(Crop, ClockwiseStraighteningShowsThePhotoTurnedClockwise) {
    const Crop crop = straightened(Crop(), phone, inches(4, 3), Angle::degrees(10));
    const CropWindow shown = windowIn(crop, phone, inches(4, 3));
    const PhotoPoint left = photoPointAt(shown, 0, 0.5);
    const PhotoPoint right = photoPointAt(shown, 1, 0.5);
    // Of a photo turned clockwise the left of what shows is lower in the photo than the right.
    EXPECT_GT(left.y, right.y);
    EXPECT_LT(left.x, right.x);
    const Crop back = straightened(Crop(), phone, inches(4, 3), Angle::degrees(350));
    EXPECT_NEAR(windowIn(back, phone, inches(4, 3)).radians, -shown.radians, 1e-15);
}

TEST(Crop, StraighteningStopsAtFortyFiveDegrees) {
    const auto angleFor = [](int degrees) {
        return straightened(Crop(), phone, inches(4, 3), Angle::degrees(degrees)).straighten;
    };
    EXPECT_EQ(angleFor(45), Angle::degrees(45));
    EXPECT_EQ(angleFor(46), Angle::degrees(45));
    EXPECT_EQ(angleFor(179), Angle::degrees(45));
    EXPECT_EQ(angleFor(-45), Angle::degrees(315));
    EXPECT_EQ(angleFor(-46), Angle::degrees(315));
    EXPECT_EQ(angleFor(0), Angle());
}

TEST(Crop, DraggingRightShowsMoreOfTheLeft) {
    const Size window = inches(4, 3);
    const Crop start{.zoom = 2 * Crop::one};
    const Crop after = dragged(start, phone, window, {Length::inches(1), Length()});
    // 2016 pixels on 4 in: an inch is 504 pixels, an eighth of the photo.
    EXPECT_EQ(after.centreX, 375'000);
    EXPECT_EQ(after.centreY, 500'000);
    const Crop edge = dragged(start, phone, window, {Length::inches(100), -Length::inches(100)});
    EXPECT_EQ(edge.centreX, 250'000);
    EXPECT_EQ(edge.centreY, 750'000);
}

TEST(Crop, EveryMemberHasARange) {
    EXPECT_TRUE(isSound(Crop()));
    EXPECT_TRUE(isSound({0, Crop::one, Crop::largestZoom, 3, Angle::degrees(45)}));
    EXPECT_TRUE(isSound({.straighten = Angle::degrees(315)}));
    EXPECT_FALSE(isSound({.centreX = -1}));
    EXPECT_FALSE(isSound({.centreX = Crop::one + 1}));
    EXPECT_FALSE(isSound({.centreY = -1}));
    EXPECT_FALSE(isSound({.centreY = Crop::one + 1}));
    EXPECT_FALSE(isSound({.zoom = Crop::one - 1}));
    EXPECT_FALSE(isSound({.zoom = Crop::largestZoom + 1}));
    EXPECT_FALSE(isSound({.quarterTurns = -1}));
    EXPECT_FALSE(isSound({.quarterTurns = 4}));
    EXPECT_FALSE(isSound({.straighten = Angle::millidegrees(45'001)}));
    EXPECT_FALSE(isSound({.straighten = Angle::millidegrees(314'999)}));
}

}  // namespace
}  // namespace matwright::test
