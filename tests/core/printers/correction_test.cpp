// SPDX-License-Identifier: MIT
#include "core/printers/correction.h"

#include <gtest/gtest.h>

#include <random>

#include "core/measure/catalogue.h"

namespace matwright {

namespace {

constexpr Length in(std::int64_t n) {
    return Length::inches(n);
}
constexpr Size fourBySix{in(4), in(6)};
constexpr const char* day = "2026-07-14";

Correction correctionFor(Length across, Length down) {
    return *correctionOf({in(3), in(5)}, {across, down}, day);
}

TEST(ACorrection, OfATrueSheetChangesNothing) {
    const Correction same = correctionFor(in(3), in(5));
    const Rect place = Rect::at({in(1), in(1)}, {in(2), in(3)});
    EXPECT_EQ(corrected(place, fourBySix, same), place);
    EXPECT_EQ(edgeEffect(fourBySix, same), EdgeEffect{});
    EXPECT_EQ(correctionText(fourBySix, true, same), "Comes out true to size.");
}

TEST(ACorrection, SendsSmallerAboutTheMiddleWhatComesOutTooLarge) {
    // 3 in came out as 3 1/8 in: sent 24/25 as large. By arithmetic: the middle of 4 in stays, the
    // left edge goes in by 4 x 1/25 / 2 = 2/25 in.
    const Correction large = correctionFor(Length::inches(3, 1, 8), in(5));
    const Rect sent = corrected(Rect::at({}, fourBySix), fourBySix, large);
    EXPECT_EQ(sent.left(), Length::inches(0, 2, 25));
    EXPECT_EQ(sent.right(), in(4) - Length::inches(0, 2, 25));
    EXPECT_EQ(sent.y, (Interval{Length(), in(6)}));
    EXPECT_EQ(corrected(Point{in(2), in(3)}, fourBySix, large), (Point{in(2), in(3)}));
}

TEST(ACorrection, TellsWhatHasToGoOnBeyondTheEdgeAndWhatStaysWhite) {
    const EdgeEffect large = edgeEffect(fourBySix, correctionFor(Length::inches(3, 1, 8), in(5)));
    EXPECT_EQ(large.bleedAcross, Length::inches(0, 2, 25));
    EXPECT_TRUE(large.bleedDown.isZero());
    EXPECT_TRUE(large.lostAcross.isZero());
    // 5 in came out as 4 in less: the paper's 6 in show 6 x 4.8 / 5 = 5.76 in, 0.12 in a side.
    const EdgeEffect small = edgeEffect(fourBySix, correctionFor(in(3), Length::inches(4, 4, 5)));
    EXPECT_EQ(small.lostDown, Length::inches(0, 3, 25));
    EXPECT_TRUE(small.bleedDown.isZero());
    const std::string text =
        correctionText(fourBySix, true, correctionFor(Length::inches(3, 1, 8), in(5)));
    EXPECT_NE(text.find("4.2 % too large across"), std::string::npos) << text;
    EXPECT_NE(text.find("2.0 mm beyond"), std::string::npos) << text;
    EXPECT_EQ(correctionText(fourBySix, false, correctionFor(Length::inches(3, 1, 8), in(5)))
                  .find("beyond"),
              std::string::npos);
}

TEST(ACorrection, IsRefusedBeyondItsLimitsWithWhatToLookAt) {
    for (const Length across :
         {Length::inches(2, 39, 100), Length::inches(3, 76, 100), Length(), -in(3), in(61)}) {
        const auto refused = correctionOf({in(3), in(5)}, {across, in(5)}, day);
        ASSERT_FALSE(refused) << across.toInches();
        EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange);
        EXPECT_GT(refused.error().sentence.size(), 40U);
    }
    // 0.8 and 1.25 themselves.
    EXPECT_TRUE(correctionOf({in(4), in(4)}, {in(5), Length::inches(3, 1, 5)}, day));
    EXPECT_FALSE(correctionOf({in(4), in(4)}, {in(4), in(4)}, "yesterday"));
    EXPECT_FALSE(correctionOf({in(4), in(4)}, {in(4), in(4)}, "2026-7-14"));
}

TEST(ACorrection, UndoesTheEnlargementToATickAndKeepsTouchingEdgesTogether) {
    constexpr unsigned seed = 20260714;
    std::mt19937_64 random(seed);
    const auto upTo = [&](std::int64_t n) {
        return static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(n));
    };
    for (int round = 0; round < 2000; ++round) {
        const Size paper{Length::fromTicks(in(3).ticks() + upTo(in(10).ticks())),
                         Length::fromTicks(in(3).ticks() + upTo(in(10).ticks()))};
        const Correction correction{{in(5), Length::fromTicks(in(5).ticks() + upTo(250'000))},
                                    {in(5), Length::fromTicks(in(5).ticks() - upTo(250'000))},
                                    day};
        const Length x = Length::fromTicks(upTo(paper.width.ticks()));
        const Point sent = corrected(Point{x, {}}, paper, correction);
        // What the printer makes of it, as doubles.
        const double middle = static_cast<double>(paper.width.ticks()) / 2;
        const double printed =
            middle + (static_cast<double>(sent.x.ticks()) - middle) / correction.across.factor();
        EXPECT_NEAR(printed, static_cast<double>(x.ticks()), 0.6) << "seed " << seed;
        const Rect left{{Length(), x}, {}};
        const Rect right{{x, paper.width}, {}};
        EXPECT_EQ(corrected(left, paper, correction).right(),
                  corrected(right, paper, correction).left());
    }
}

}  // namespace

}  // namespace matwright
