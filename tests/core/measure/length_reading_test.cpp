// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

#include "core/measure/length_text.h"

namespace matwright {
namespace {

constexpr Length half3 = Length::inches(3, 1, 2);

struct Readable {
    const char* text;
    Length expected;
};

class ReadsInches : public testing::TestWithParam<Readable> {};

TEST_P(ReadsInches, AsWritten) {
    const Result<Length> read = parseLength(GetParam().text, Unit::Inch);
    ASSERT_TRUE(read) << read.error().text();
    EXPECT_EQ(*read, GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    LengthReading, ReadsInches,
    testing::Values(Readable{"3", Length::inches(3)}, Readable{"3.5", half3},
                    Readable{"3 1/2", half3}, Readable{"3-1/2", half3}, Readable{"3\u00BD", half3},
                    Readable{"1/8", Length::inches(0, 1, 8)}, Readable{"3 1/2\"", half3},
                    Readable{"89mm", Length::millimetres(89)},
                    Readable{"8.9 cm", Length::millimetres(89)}, Readable{"3,5", half3},
                    Readable{"8,9 cm", Length::millimetres(89)}, Readable{"0", Length()},
                    Readable{"0.25", Length::inches(0, 1, 4)},
                    Readable{".5", Length::inches(0, 1, 2)}, Readable{"3.", Length::inches(3)},
                    Readable{"007", Length::inches(7)}));

INSTANTIATE_TEST_SUITE_P(Units, ReadsInches,
                         testing::Values(Readable{"3.5 in", half3}, Readable{"3.5in", half3},
                                         Readable{"3.5 in.", half3}, Readable{"3.5 inch", half3},
                                         Readable{"3.5 inches", half3}, Readable{"3.5 IN", half3},
                                         Readable{"3.5 Inches", half3}, Readable{"3 1/2''", half3},
                                         Readable{"3 1/2\u2033", half3},
                                         Readable{"3 1/2\u201D", half3},
                                         Readable{"89 MM", Length::millimetres(89)},
                                         Readable{"1/2 mm", Length::hundredthMillimetres(50)},
                                         Readable{"3 1/2 cm", Length::millimetres(35)}));

INSTANTIATE_TEST_SUITE_P(
    SpacesAndSigns, ReadsInches,
    testing::Values(Readable{"  3 1/2  ", half3}, Readable{"3  1/2", half3},
                    Readable{"3 - 1/2", half3}, Readable{"3\u20131/2", half3},
                    Readable{"3 \u00BD", half3}, Readable{"\u00BD", Length::inches(0, 1, 2)},
                    Readable{"3\u00A01/2", half3}, Readable{"3\u202F1/2", half3},
                    Readable{"3\u20091/2", half3}, Readable{"1 / 8", Length::inches(0, 1, 8)},
                    Readable{"1\u20448", Length::inches(0, 1, 8)}, Readable{"\t3.5\n", half3},
                    Readable{"-3 1/2", -half3}, Readable{"-3-1/2", -half3},
                    Readable{"- 3 1/2", -half3}, Readable{"\u22123 1/2", -half3},
                    Readable{"-1/4", -Length::inches(0, 1, 4)}, Readable{"-0", Length()},
                    Readable{"-8.9 cm", -Length::millimetres(89)}));

INSTANTIATE_TEST_SUITE_P(FractionSigns, ReadsInches,
                         testing::Values(Readable{"1\u00BC", Length::inches(1, 1, 4)},
                                         Readable{"1\u00BE", Length::inches(1, 3, 4)},
                                         Readable{"1\u215B", Length::inches(1, 1, 8)},
                                         Readable{"1\u215C", Length::inches(1, 3, 8)},
                                         Readable{"1\u215D", Length::inches(1, 5, 8)},
                                         Readable{"1\u215E", Length::inches(1, 7, 8)}));

INSTANTIATE_TEST_SUITE_P(RoundedToTheTick, ReadsInches,
                         testing::Values(Readable{"1/3", Length::inches(0, 1, 3)},
                                         Readable{"1/64", Length::fromTicks(14'288)},
                                         Readable{"5/4", Length::inches(1, 1, 4)},
                                         Readable{"0.00000054", Length()},
                                         Readable{"0.00000055", Length::fromTicks(1)},
                                         Readable{"1000", Length::coordinateLimit()},
                                         Readable{"-1000", -Length::coordinateLimit()},
                                         Readable{"25400 mm", Length::coordinateLimit()}));

TEST(LengthReading, ABareNumberTakesTheUnitItIsAskedIn) {
    EXPECT_EQ(parseLength("89", Unit::Millimetre), Length::millimetres(89));
    EXPECT_EQ(parseLength("88.5", Unit::Millimetre), Length::hundredthMillimetres(8850));
    EXPECT_EQ(parseLength("3 1/2 in", Unit::Millimetre), half3);
    EXPECT_EQ(parseLength("1/2", Unit::Millimetre), Length::hundredthMillimetres(50));
}

class RefusesToRead : public testing::TestWithParam<std::string> {};

TEST_P(RefusesToRead, WithASentenceThatHelps) {
    const Result<Length> read = parseLength(GetParam(), Unit::Inch);
    ASSERT_FALSE(read) << read->ticks();
    EXPECT_EQ(read.error().code, ErrorCode::BadText);
    EXPECT_TRUE(read.error().sentence.ends_with(
        " is not a length; type it like 3 1/2, 3.5, 89 mm or 8.9 cm."))
        << read.error().sentence;
}

INSTANTIATE_TEST_SUITE_P(
    LengthReading, RefusesToRead,
    testing::Values("", " ", "x", "in", "\"", "mm", "-", "--3", "3-", "-3-", "+3", "3 4", "3 4 5",
                    ".", ",", "3..5", "3.5.1", "1,000.5", "1/0", "0/0", "1/", "/2", "/", "1//2",
                    "1/2/3", "3 1/2 1/2", "3.5 1/2", "1/2 3", "3 3/2", "3 2/2", "3 -1/-2", "3/-2",
                    "1e3", "1E3", "0x10", "inf", "nan", "-nan", "1 ft", "3'", "3 mm cm", "mm 3",
                    "3 min", "\u00BD\u00BD", "1\u00BD/2", "\u2153x", "three", "3 in 4"));

INSTANTIATE_TEST_SUITE_P(Hostile, RefusesToRead,
                         testing::Values(std::string("3\0", 2), std::string("\0003", 2), "\xFF\xFE",
                                         "3\xC2", "\xE2\x88", "%s%n", "3;DROP", "${3}",
                                         "\u06633",              // a digit of another script
                                         "\uFF13",               // full-width three
                                         "\u202E3",              // right-to-left override
                                         "12345678901234567890"  // more digits than anybody has
                                         ));

TEST(LengthReading, MoreThanTheLimitIsTooLong) {
    for (const char* text : {"1000.001", "1001", "999999999", "25400.1 mm", "-1000 1/16",
                             "999999999/1", "2540.1 cm"}) {
        const Result<Length> read = parseLength(text, Unit::Inch);
        ASSERT_FALSE(read) << text;
        EXPECT_EQ(read.error().code, ErrorCode::OutOfRange) << text;
        EXPECT_TRUE(read.error().sentence.ends_with(" is too long; lengths go up to 1,000 in."));
    }
}

TEST(LengthReading, AHugeTextIsRefusedAndNotRepeated) {
    for (const char c : {'9', ' ', '-', '/', '.', 'x', '\xC2'}) {
        const Result<Length> read = parseLength(std::string(10'000'000, c), Unit::Inch);
        ASSERT_FALSE(read);
        EXPECT_LT(read.error().sentence.size(), 200u);
    }
}

TEST(LengthReading, SpacesAreFreeUpToTheLongestText) {
    EXPECT_EQ(parseLength(std::string(199, ' ') + "3", Unit::Inch), Length::inches(3));
    EXPECT_FALSE(parseLength(std::string(200, ' ') + "3", Unit::Inch));
}

TEST(LengthReading, TheSentenceCutsBetweenCharactersAndCarriesNoControlCodes) {
    const Result<Length> wide = parseLength(std::string(39, 'x') + "\u00BD\u00BD", Unit::Inch);
    ASSERT_FALSE(wide);
    EXPECT_TRUE(wide.error().sentence.starts_with("\"" + std::string(39, 'x') + "\u2026\" is not"))
        << wide.error().sentence;
    const Result<Length> escape = parseLength("\x1B[2Jx\x7F", Unit::Inch);
    ASSERT_FALSE(escape);
    EXPECT_TRUE(escape.error().sentence.starts_with("\"?[2Jx?\" is not"))
        << escape.error().sentence;
}

TEST(LengthReading, RandomBytesAreReadOrRefusedNeverMore) {
    constexpr std::uint64_t seed = 7;
    std::mt19937_64 random(seed);
    const std::string alphabet = "0123456789 ./,-\"inchm\xC2\xBD\xE2\x81\x84";
    int read = 0;
    for (int run = 0; run < 100'000; ++run) {
        std::string text;
        for (auto n = random() % 9; n > 0; --n) {
            text += alphabet[random() % alphabet.size()];
        }
        const Result<Length> length = parseLength(text, Unit::Inch);
        if (length) {
            ++read;
            EXPECT_LE(abs(*length), Length::coordinateLimit()) << text;
        }
    }
    EXPECT_GT(read, 1'000) << "seed " << seed << ": the alphabet hardly makes a length";
}

}  // namespace
}  // namespace matwright
