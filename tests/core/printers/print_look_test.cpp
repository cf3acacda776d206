// SPDX-License-Identifier: MIT
#include "core/printers/print_look.h"

#include <gtest/gtest.h>

#include <random>

#include "tests/core/printers/made_looks.h"

namespace matwright {

namespace {

TEST(APrintLook, IsReadAsItWasWritten) {
    constexpr unsigned seed = 7;
    std::mt19937_64 random(seed);
    for (int i = 0; i < 5000; ++i) {
        const PrintLook look = test::randomLook(random);
        const auto again = parsePrintLook(textOf(look));
        ASSERT_TRUE(again) << "seed " << seed << ": " << textOf(look);
        EXPECT_EQ(*again, look);
    }
}

TEST(APrintLook, HasAnotherTextWhereAnythingDiffers) {
    const PrintLook look = test::madeLook(1);
    PrintLook other = look;
    other.crop.centreX += 1;
    EXPECT_NE(textOf(look), textOf(other));
    other = look;
    other.tone.sharpen = 1;
    EXPECT_NE(textOf(look), textOf(other));
    other = look;
    other.bleed = Length::fromTicks(1);
    EXPECT_NE(look, other);
    EXPECT_NE(textOf(look), textOf(other));
    other.bleed = -other.bleed;
    EXPECT_FALSE(parsePrintLook(textOf(other)));
    other = look;
    other.from = 1e-16;
    EXPECT_NE(textOf(look), textOf(other));
    EXPECT_TRUE(isAlike(look, other));
    other.paper = other.paper.turned();
    EXPECT_TRUE(isAlike(look, other));
    EXPECT_FALSE(isAlike(look, test::madeLook(2)));
}

TEST(APrintLook, IsNotReadFromAnythingElse) {
    const std::string text = textOf(test::madeLook(1));
    for (const std::string& bad : {std::string(), std::string("x"), text + " 1", text + " ",
                                   " " + text, text.substr(0, text.size() - 2), text.substr(1),
                                   "+" + text, std::string(text).replace(40, 1, "x"),
                                   std::string(text) + "99999999999999999999999999"}) {
        EXPECT_FALSE(parsePrintLook(bad)) << bad;
    }
    // Every byte exchanged once: read as another sound look with the same text, or not at all.
    for (std::size_t i = 0; i < text.size(); ++i) {
        std::string changed = text;
        changed[i] = changed[i] == '9' ? '-' : '9';
        const auto read = parsePrintLook(changed);
        EXPECT_TRUE(!read || textOf(*read) == changed) << changed;
    }
}

}  // namespace

}  // namespace matwright
