// SPDX-License-Identifier: MIT
#include "core/tone/curve.h"

#include <gtest/gtest.h>

#include "core/tone/stretch.h"

namespace matwright::test {
namespace {

constexpr std::int64_t bends[] = {-600, -400, -200, -1, 0, 1, 250, 600, 1'500};

TEST(ToneCurve, BendsKeepBothEndsAndNeverGoDown) {
    for (const std::int64_t bend : bends) {
        EXPECT_EQ(bent(0, bend), 0);
        EXPECT_EQ(bent(fullTone, bend), fullTone);
        EXPECT_EQ(contrasted(0, bend), 0);
        EXPECT_EQ(contrasted(fullTone, bend), fullTone);
        for (std::int64_t tone = 1; tone <= fullTone; ++tone) {
            ASSERT_GE(bent(tone, bend), bent(tone - 1, bend)) << bend;
            ASSERT_GE(contrasted(tone, bend), contrasted(tone - 1, bend)) << bend << " " << tone;
        }
    }
}

TEST(ToneCurve, NoBendChangesNothing) {
    for (std::int64_t tone = 0; tone <= fullTone; ++tone) {
        ASSERT_EQ(bent(tone, 0), tone);
        ASSERT_EQ(contrasted(tone, 0), tone);
    }
}

TEST(ToneCurve, BendsHaveTheValuesOfTheirFormula) {
    // t / (k (1 - t) + 1) at t = 1/2: 1 / (k + 2).
    EXPECT_NEAR(static_cast<double>(bent(fullTone / 2, 1'000)) / fullTone, 1.0 / 3, 1e-4);
    EXPECT_NEAR(static_cast<double>(bent(fullTone / 2, -500)) / fullTone, 1.0 / 1.5, 1e-4);
    EXPECT_NEAR(static_cast<double>(bent(fullTone / 4, 1'000)) / fullTone, 0.25 / 1.75, 1e-4);
}

TEST(ToneCurve, TheOppositeBendTakesABendBack) {
    for (const std::int64_t bend : bends) {
        for (std::int64_t tone = 0; tone <= fullTone; tone += 257) {
            ASSERT_NEAR(static_cast<double>(bent(bent(tone, bend), oppositeBend(bend))),
                        static_cast<double>(tone), 80);
        }
    }
}

TEST(ToneCurve, TheBendBetweenTwoTonesBringsOneToTheOther) {
    for (const auto& [from, to] : {std::pair{20'000, 30'000}, {40'000, 33'000}, {9'000, 12'000}}) {
        EXPECT_NEAR(static_cast<double>(bent(from, bendBetween(from, to))), to, 40);
    }
}

TEST(ToneStretch, ClipsAtMostTheShareAndNotMoreThanItMust) {
    std::array<std::uint32_t, 256> counts{};
    counts[10] = 5;
    counts[20] = 1;
    counts[100] = 988;
    counts[200] = 6;
    // 0.5 % of 1,000 is 5: those at 10 go, those at 200 are too many.
    EXPECT_EQ(rangeWithout(counts, 5'000), (ToneRange{20, 200}));
    EXPECT_EQ(rangeWithout(counts, 0), (ToneRange{10, 200}));
    EXPECT_EQ(rangeWithout(counts, 6'000), (ToneRange{100, 100}));
    EXPECT_EQ(rangeWithout(std::array<std::uint32_t, 256>{}, 5'000), ToneRange{});
}

TEST(ToneStretch, SpreadsTheRangeOverEverything) {
    const auto table = stretchOver({50, 101});
    EXPECT_EQ(table[0], 0);
    EXPECT_EQ(table[50], 0);
    EXPECT_EQ(table[51], 5);
    EXPECT_EQ(table[100], 250);
    EXPECT_EQ(table[101], 255);
    EXPECT_EQ(table[255], 255);
    for (std::size_t value = 0; value < 256; ++value) {
        EXPECT_EQ(stretchOver({0, 255})[value], value);
    }
    EXPECT_EQ(stretchOver({7, 7})[6], 0);
    EXPECT_EQ(stretchOver({7, 7})[7], 255);
}

}  // namespace
}  // namespace matwright::test
