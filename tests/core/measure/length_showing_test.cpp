// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <random>
#include <vector>

#include "core/measure/length_text.h"

namespace matwright {
namespace {

constexpr Scale allScales[] = {Scale::EighthInch, Scale::SixteenthInch, Scale::ThirtySecondInch,
                               Scale::WholeMillimetre, Scale::HalfMillimetre};
constexpr Length tick = Length::fromTicks(1);

struct Shown {
    Length length;
    Scale scale;
    const char* text;
};

class Shows : public testing::TestWithParam<Shown> {};

TEST_P(Shows, TheNearestFigureAndAMarkWhereItIsNotExact) {
    EXPECT_EQ(figureText(GetParam().length, GetParam().scale), GetParam().text);
}

INSTANTIATE_TEST_SUITE_P(
    Inches, Shows,
    testing::Values(Shown{Length(), Scale::SixteenthInch, "0"},
                    Shown{Length::inches(3), Scale::SixteenthInch, "3"},
                    Shown{Length::inches(3, 1, 2), Scale::SixteenthInch, "3 1/2"},
                    Shown{Length::inches(0, 1, 8), Scale::SixteenthInch, "1/8"},
                    Shown{Length::inches(0, 15, 16), Scale::SixteenthInch, "15/16"},
                    Shown{Length::inches(0, 6, 32), Scale::ThirtySecondInch, "3/16"},
                    Shown{Length::inches(2, 1, 32), Scale::ThirtySecondInch, "2 1/32"},
                    Shown{Length::inches(-3, -1, 2), Scale::SixteenthInch, "-3 1/2"},
                    Shown{Length::inches(0, -1, 4), Scale::EighthInch, "-1/4"}));

INSTANTIATE_TEST_SUITE_P(
    RoundedInches, Shows,
    testing::Values(Shown{Length::inches(2, 1, 32), Scale::SixteenthInch, "\u22482 1/16"},
                    Shown{Length::inches(2, 1, 32) - tick, Scale::SixteenthInch, "\u22482"},
                    Shown{Length::inches(0, 1, 16), Scale::EighthInch, "\u22481/8"},
                    Shown{Length::inches(3) - tick, Scale::SixteenthInch, "\u22483"},
                    Shown{Length::inches(3) + tick, Scale::SixteenthInch, "\u22483"},
                    Shown{tick, Scale::SixteenthInch, "\u22480"},
                    Shown{-tick, Scale::SixteenthInch, "\u22480"},
                    Shown{Length::inches(-2, -1, 32), Scale::SixteenthInch, "\u2248-2 1/16"},
                    Shown{Length::millimetres(89), Scale::SixteenthInch, "\u22483 1/2"}));

INSTANTIATE_TEST_SUITE_P(
    Millimetres, Shows,
    testing::Values(Shown{Length::millimetres(89), Scale::WholeMillimetre, "89"},
                    Shown{Length::hundredthMillimetres(8850), Scale::HalfMillimetre, "88.5"},
                    Shown{Length::hundredthMillimetres(50), Scale::HalfMillimetre, "0.5"},
                    Shown{Length::hundredthMillimetres(-50), Scale::HalfMillimetre, "-0.5"},
                    Shown{Length::hundredthMillimetres(8850), Scale::WholeMillimetre, "\u224889"},
                    Shown{Length::hundredthMillimetres(8849), Scale::WholeMillimetre, "\u224888"},
                    Shown{Length::inches(4), Scale::HalfMillimetre, "\u2248101.5"},
                    Shown{Length::inches(5), Scale::WholeMillimetre, "127"}));

TEST(LengthShowing, AllSixteenthsOfAnInchAreInLowestTerms) {
    const std::vector<std::string> expected{"0",   "1/16",  "1/8", "3/16",  "1/4", "5/16",
                                            "3/8", "7/16",  "1/2", "9/16",  "5/8", "11/16",
                                            "3/4", "13/16", "7/8", "15/16", "1"};
    for (int n = 0; n <= 16; ++n) {
        EXPECT_EQ(figureText(Length::inches(0, n, 16), Scale::SixteenthInch),
                  expected[static_cast<std::size_t>(n)]);
    }
}

TEST(LengthShowing, TheUnitFollowsTheScale) {
    EXPECT_EQ(lengthText(Length::inches(3, 1, 2), Scale::SixteenthInch), "3 1/2 in");
    EXPECT_EQ(lengthText(Length::millimetres(89), Scale::WholeMillimetre), "89 mm");
    for (const Scale scale : allScales) {
        EXPECT_TRUE(lengthText(Length::inches(3), scale)
                        .ends_with(unitOf(scale) == Unit::Inch ? " in" : " mm"));
    }
}

TEST(LengthShowing, ASizeIsWidthTimesHeightWithOneUnit) {
    EXPECT_EQ(sizeText({Length::inches(4), Length::inches(6)}, Scale::SixteenthInch), "4 × 6 in");
    EXPECT_EQ(sizeText({Length::inches(3, 1, 2), Length::inches(5)}, Scale::WholeMillimetre),
              "≈89 × 127 mm");
}

TEST(LengthShowing, ASizeIsNaturalInTheUnitItIsExactIn) {
    const auto natural = [](Length width, Length height) {
        return naturalSizeText({width, height});
    };
    EXPECT_EQ(natural(Length::inches(3, 1, 2), Length::inches(5)), "3 1/2 × 5 in");
    EXPECT_EQ(natural(Length::inches(5), Length::inches(5, 1, 32)), "5 × 5 1/32 in");
    EXPECT_EQ(natural(Length::millimetres(100), Length::millimetres(150)), "100 × 150 mm");
    EXPECT_EQ(natural(Length::hundredthMillimetres(8950), Length::millimetres(1)), "89.5 × 1 mm");
    EXPECT_EQ(natural(Length::millimetres(100), Length::inches(6)), "≈3 15/16 × 6 in");
    EXPECT_EQ(natural(Length::inches(5) + tick, Length::inches(5)), "≈5 × 5 in");
}

std::vector<Length> everyKindOfLength() {
    std::vector<Length> lengths{Length(), tick, Length::coordinateLimit(),
                                Length::coordinateLimit() - tick};
    for (int n = 1; n < 200; ++n) {
        lengths.push_back(Length::inches(0, n, 64));
        lengths.push_back(Length::hundredthMillimetres(n * 37));
        lengths.push_back(Length::points(n));
        lengths.push_back(Length::inches(0, n, 7));
    }
    std::mt19937_64 random(3);
    for (int i = 0; i < 5'000; ++i) {
        lengths.push_back(Length::fromTicks(static_cast<std::int64_t>(
            random() % static_cast<std::uint64_t>(Length::coordinateLimit().ticks() + 1))));
    }
    return lengths;
}

TEST(LengthShowing, AFigureWithoutAMarkReadsBackAsTheSameLength) {
    int exact = 0;
    for (const Length length : everyKindOfLength()) {
        for (const Scale scale : allScales) {
            const std::string text = figureText(length, scale);
            const bool marked = text.starts_with("\u2248");
            EXPECT_EQ(marked, !length.isMultipleOf(stepOf(scale)));
            if (!marked) {
                ++exact;
                EXPECT_EQ(parseLength(text, unitOf(scale)), length) << text;
                EXPECT_EQ(parseLength(lengthText(length, scale), Unit::Inch), length);
            }
        }
    }
    EXPECT_GT(exact, 300);
}

TEST(LengthShowing, AShownFigureIsAtMostHalfAStepAway) {
    for (const Length length : everyKindOfLength()) {
        for (const Scale scale : allScales) {
            std::string text = figureText(length, scale);
            if (text.starts_with("\u2248")) {
                text.erase(0, std::string("\u2248").size());
            }
            const Result<Length> read = parseLength(text, unitOf(scale));
            ASSERT_TRUE(read || length > Length::coordinateLimit() - stepOf(scale)) << text;
            if (read) {
                EXPECT_LE(2 * abs(*read - length), stepOf(scale)) << text;
            }
        }
    }
}

TEST(LengthShowing, ExactTextReadsBackAsTheSameLengthBothSigns) {
    for (const Length length : everyKindOfLength()) {
        for (const Length signedLength : {length, -length}) {
            const std::string text = exactText(signedLength);
            EXPECT_EQ(parseLength(text, Unit::Inch), signedLength) << text;
            EXPECT_EQ(parseLength(text, Unit::Millimetre), signedLength) << "it names its unit";
        }
    }
}

TEST(LengthShowing, ExactTextIsTheFormAPersonWouldChoose) {
    EXPECT_EQ(exactText(Length()), "0 in");
    EXPECT_EQ(exactText(Length::inches(0, 1, 8)), "1/8 in");
    EXPECT_EQ(exactText(Length::inches(3, 15, 32)), "3 15/32 in");
    EXPECT_EQ(exactText(Length::inches(0, 3, 64)), "3/64 in");
    EXPECT_EQ(exactText(-Length::inches(3, 1, 2)), "-3 1/2 in");
    EXPECT_EQ(exactText(Length::millimetres(89)), "89 mm");
    EXPECT_EQ(exactText(Length::hundredthMillimetres(890)), "8.9 mm");
    EXPECT_EQ(exactText(-Length::hundredthMillimetres(1)), "-0.01 mm");
    EXPECT_EQ(exactText(Length::inches(0, 1, 10)), "0.1 in");
    EXPECT_EQ(exactText(Length::inches(0, 33, 10)), "3.3 in");
    EXPECT_EQ(exactText(Length::hundredthMillimetres(127)), "1.27 mm");
    EXPECT_EQ(exactText(Length::inches(0, 1, 72)), "0.013889 in");
    EXPECT_EQ(exactText(tick), "0.000001 in");
}

TEST(LengthShowing, StepsAreWhatTheirNamesSay) {
    EXPECT_EQ(8 * stepOf(Scale::EighthInch), Length::inches(1));
    EXPECT_EQ(16 * stepOf(Scale::SixteenthInch), Length::inches(1));
    EXPECT_EQ(32 * stepOf(Scale::ThirtySecondInch), Length::inches(1));
    EXPECT_EQ(stepOf(Scale::WholeMillimetre), Length::millimetres(1));
    EXPECT_EQ(2 * stepOf(Scale::HalfMillimetre), Length::millimetres(1));
}

}  // namespace
}  // namespace matwright
