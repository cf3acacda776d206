// SPDX-License-Identifier: MIT
#include "core/drawing/drawing.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

// One em is a whole number of font units, so that the figures below are exact.
constexpr Length em = Length::fromTicks(2048 * 10);

std::int64_t units(const std::string& text, bool bold) {
    return textWidthBound(text, em, bold).ticks() / 10;
}

// Advances read from the font's own table (DejaVu Sans 2.37, hmtx) through Qt's font metrics at
// 2,048 px per em.
TEST(TextWidthBound, AddsTheAdvancesOfTheFont) {
    EXPECT_EQ(units("", false), 0);
    EXPECT_EQ(units(" ", false), 651);
    EXPECT_EQ(units("i", false), 569);
    EXPECT_EQ(units("W", false), 2025);
    EXPECT_EQ(units("W", true), 2259);
    EXPECT_EQ(units("~", false), 1716);
    EXPECT_EQ(units("4 \u00D7 6", false), 1303 + 651 + 1716 + 651 + 1303);
    EXPECT_EQ(units("\u2248\u00BD\u00BC\u00BE\u215B\u215C\u215D\u215E", false), 1716 + 7 * 1985);
    EXPECT_EQ(units("\u00B7\u2013\u2014", false), 651 + 1024 + 2048);
    EXPECT_EQ(units("\u00B7\u2013\u2014", true), 778 + 1024 + 2048);
}

TEST(TextWidthBound, CountsAnyOtherCharacterAsOneEm) {
    EXPECT_EQ(units("\u00FC", false), 2048);
    EXPECT_EQ(units("\u5199\u771F", true), 2 * 2048);
    EXPECT_EQ(units("\U0001F642", false), 2048);
}

TEST(TextWidthBound, OfASumIsTheSumAndGrowsWithTheHeight) {
    EXPECT_EQ(units("trim 3 7/8", false), units("trim ", false) + units("3 7/8", false));
    EXPECT_EQ(textWidthBound("trim", em * 3, false), textWidthBound("trim", em, false) * 3);
}

TEST(TextWidthBound, RoundsUpToATick) {
    EXPECT_EQ(textWidthBound("i", Length::fromTicks(1), false), Length::fromTicks(1));
}

}  // namespace
}  // namespace matwright
