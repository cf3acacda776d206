// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <iostream>

#include "core/tone/curve.h"
#include "core/tone/even_out.h"
#include "tests/core/tone/tone_pictures.h"

namespace matwright::test {
namespace {

constexpr std::uint64_t seed = 20'261'129;
constexpr PixelSize sampleSize{64, 48};

Tone evened() {
    return {.evenOut = true};
}

int slider(Random& random) {
    return static_cast<int>(below(random, 201)) - 100;
}

Tone randomTone(Random& random) {
    return {below(random, 2) == 0, slider(random), slider(random),
            slider(random),        slider(random), static_cast<int>(below(random, 101))};
}

Raster randomHills(Random& random) {
    const int low = static_cast<int>(below(random, 200));
    const int high = low + static_cast<int>(below(random, 256 - static_cast<unsigned>(low)));
    const auto tint = [&] { return 0.5 + static_cast<double>(below(random, 51)) / 100; };
    return hills(random, sampleSize, low, high, {tint(), tint(), tint()});
}

double meanOf(const Raster& picture) {
    double sum = 0;
    for (const std::uint8_t value : picture.pixels) {
        sum += value;
    }
    return sum / static_cast<double>(picture.pixels.size());
}

TEST(ToneMap, NoToneIsThePhotoAsItIs) {
    Random random(seed);
    const Raster photo = randomHills(random);
    const ToneMap map = toneMapOf({}, histogramOf(photo));
    EXPECT_TRUE(map.isIdentity());
    Raster same = photo;
    apply(map, same);
    EXPECT_EQ(same, photo);
}

TEST(ToneMap, APhotoThatHasTheFullRangeIsNotEvenedOut) {
    const Raster ramp = raster({256, 4}, [](int x, int) { return std::array{x, x, x}; });
    EXPECT_TRUE(toneMapOf(evened(), histogramOf(ramp)).isIdentity());
    const Raster tinted =
        raster({256, 4}, [](int x, int) { return std::array{x, 255 - x, x / 2}; });
    EXPECT_TRUE(toneMapOf(evened(), histogramOf(tinted)).isIdentity());
}

TEST(ToneMap, APhotoWithNothingToGoByIsNotEvenedOut) {
    const Raster wall =
        raster({50, 50}, [](int x, int) { return std::array{200 + x % 9, 200, 190}; });
    EXPECT_TRUE(toneMapOf(evened(), histogramOf(wall)).isIdentity());
    EXPECT_TRUE(toneMapOf(evened(), Histogram()).isIdentity());
    const Raster black = raster({50, 50}, [](int, int) { return std::array{0, 0, 0}; });
    EXPECT_TRUE(toneMapOf(evened(), histogramOf(black)).isIdentity());
}

TEST(ToneMap, AFlatPhotoGetsMoreContrastAndADarkOneBecomesBrighter) {
    Random random(seed);
    Raster flat = hills(random, sampleSize, 70, 180);
    const ToneMap map = toneMapOf(evened(), histogramOf(flat));
    EXPECT_LT(map.curve[0][80], 80);
    EXPECT_GT(map.curve[0][170], 190);

    Raster dark = hills(random, sampleSize, 5, 110);
    const double before = meanOf(dark);
    apply(toneMapOf(evened(), histogramOf(dark)), dark);
    EXPECT_GT(meanOf(dark), before * 1.2);
}

TEST(ToneMap, ATintedPhotoIsBroughtNearerToGreyByTheCapAtMost) {
    Random random(seed);
    const Raster yellow = hills(random, sampleSize, 60, 200, {1, 0.98, 0.8});
    const EvenOut even = evenOutOf(histogramOf(yellow));
    EXPECT_EQ(even.gain[0], 1'000);
    EXPECT_EQ(even.gain[2], EvenOut::mostBalance);
}

TEST(ToneMap, EveningOutStaysWithinItsCapsAndClipsAtMostHalfAPercent) {
    Random random(seed);
    std::cout << "seed " << seed << '\n';
    int changed = 0;
    for (int run = 0; run < 300; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", run " << run);
        const Raster photo = randomHills(random);
        const Histogram sample = histogramOf(photo);
        const EvenOut even = evenOutOf(sample);
        changed += even == EvenOut() ? 0 : 1;
        ASSERT_LE(even.range.low, EvenOut::highestLow);
        ASSERT_GE(even.range.high, EvenOut::lowestHigh);
        ASSERT_GE(even.bend, EvenOut::mostBrightened);
        ASSERT_LE(even.bend, EvenOut::mostDarkened);
        std::uint64_t below = 0;
        std::uint64_t above = 0;
        for (std::size_t c = 0; c < 3; ++c) {
            ASSERT_GE(even.gain[c], 1'000);
            ASSERT_LE(even.gain[c], EvenOut::mostBalance);
            for (int value = 0; value < 256; ++value) {
                const auto n = sample.counts[c][static_cast<std::size_t>(value)];
                below += value < even.range.low ? n : 0;
                above += value > even.range.high ? n : 0;
            }
        }
        const auto most = photo.pixels.size() * EvenOut::clippedShare / 1'000'000;
        ASSERT_LE(below, most);
        ASSERT_LE(above, most);
    }
    EXPECT_GT(changed, 100);
}

TEST(ToneMap, GreyStaysGreyInAGreyPhotoAndWithinTheCapInAnyOther) {
    Random random(seed);
    for (int run = 0; run < 300; ++run) {
        const Raster photo = randomHills(random);
        const ToneMap map = toneMapOf(evened(), histogramOf(photo));
        for (std::size_t value = 0; value < 256; ++value) {
            const auto [least, most] =
                std::minmax({map.curve[0][value], map.curve[1][value], map.curve[2][value]});
            ASSERT_LE(most, least * EvenOut::mostBalance / 1'000.0 + 1.03) << "run " << run;
        }
    }
    const Raster grey = raster({200, 4}, [](int x, int) {
        const int v = 60 + x / 2;
        return std::array{v, v, v};
    });
    const ToneMap map = toneMapOf(evened(), histogramOf(grey));
    EXPECT_FALSE(map.isIdentity());
    EXPECT_EQ(map.curve[0], map.curve[1]);
    EXPECT_EQ(map.curve[1], map.curve[2]);
}

TEST(ToneMap, CurvesNeverGoDownWhateverTheTone) {
    Random random(seed);
    for (int run = 0; run < 500; ++run) {
        const Tone tone = randomTone(random);
        ASSERT_TRUE(isSound(tone));
        const ToneMap map = toneMapOf(tone, histogramOf(randomHills(random)));
        for (const auto& curve : map.curve) {
            ASSERT_TRUE(std::ranges::is_sorted(curve)) << "seed " << seed << ", run " << run;
        }
        ASSERT_GE(map.saturation, 0);
        ASSERT_LE(map.saturation, 512);
    }
}

TEST(ToneMap, SlidersDoWhatTheySayAndKeepBlackAndWhite) {
    const Histogram none;
    const auto greyAt = [&](const Tone& tone, std::size_t value, std::size_t channel = 0) {
        return int{toneMapOf(tone, none).curve[channel][value]};
    };
    EXPECT_GT(greyAt({.brightness = 50}, 128), 140);
    EXPECT_LT(greyAt({.brightness = -50}, 128), 116);
    EXPECT_LT(greyAt({.contrast = 50}, 64), 60);
    EXPECT_GT(greyAt({.contrast = 50}, 192), 196);
    EXPECT_GT(greyAt({.contrast = -50}, 64), 68);
    EXPECT_NEAR(greyAt({.contrast = 100}, 128), 128, 1);
    EXPECT_GT(greyAt({.warmth = 100}, 128, 0), 132);
    EXPECT_EQ(greyAt({.warmth = 100}, 128, 1), 128);
    EXPECT_LT(greyAt({.warmth = 100}, 128, 2), 124);
    EXPECT_LT(greyAt({.warmth = -100}, 128, 0), 124);
    Random random(seed);
    for (int run = 0; run < 200; ++run) {
        Tone tone = randomTone(random);
        tone.evenOut = false;
        const ToneMap map = toneMapOf(tone, none);
        for (const auto& curve : map.curve) {
            ASSERT_EQ(curve[0], 0);
            ASSERT_EQ(curve[255], 255);
        }
    }
}

TEST(ToneMap, SaturationGoesFromGreyToTwiceAsMuch) {
    Raster red{{1, 1}, {200, 100, 100}};
    Raster grey = red;
    apply(toneMapOf({.saturation = -100}, {}), grey);
    // Luma of ITU-R BT.709: 0.2126 R + 0.7152 G + 0.0722 B = 121.26.
    EXPECT_EQ(grey.pixels, (std::vector<std::uint8_t>{121, 121, 121}));
    Raster more = red;
    apply(toneMapOf({.saturation = 100}, {}), more);
    EXPECT_EQ(more.pixels, (std::vector<std::uint8_t>{255, 79, 79}));
}

TEST(ToneMap, APieceOfAPictureComesOutAsItDoesInTheWhole) {
    Random random(seed);
    Raster whole = randomHills(random);
    const ToneMap map = toneMapOf({true, 10, 20, -30, 40, 0}, histogramOf(whole));
    const auto row = whole.row(17);
    Raster piece{{sampleSize.width, 1}, {row.begin(), row.end()}};
    apply(map, whole);
    apply(map, piece);
    const auto after = whole.row(17);
    EXPECT_TRUE(std::ranges::equal(piece.pixels, after));
}

TEST(ToneMap, EveryMemberHasARange) {
    EXPECT_TRUE(isSound(Tone{}));
    EXPECT_TRUE(isSound({true, 100, -100, 100, -100, 100}));
    EXPECT_FALSE(isSound(Tone{.brightness = 101}));
    EXPECT_FALSE(isSound(Tone{.contrast = -101}));
    EXPECT_FALSE(isSound(Tone{.warmth = 101}));
    EXPECT_FALSE(isSound(Tone{.saturation = 101}));
    EXPECT_FALSE(isSound(Tone{.sharpen = -1}));
    EXPECT_FALSE(isSound(Tone{.sharpen = 101}));
}

}  // namespace
}  // namespace matwright::test
