// SPDX-License-Identifier: MIT
#include "core/drawing/colour_text.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

// CSS Color Module Level 4, section 6.1: named colours with their hexadecimal notation.
TEST(ColourText, IsTheHexadecimalNotationOfNamedColours) {
    EXPECT_EQ(colourText({255, 228, 196}), "#ffe4c4");  // bisque
    EXPECT_EQ(colourText({0, 0, 128}), "#000080");      // navy
    EXPECT_EQ(parseColour("#ffe4c4"), (Colour{255, 228, 196}));
    EXPECT_EQ(parseColour("#FFE4C4"), (Colour{255, 228, 196}));
    EXPECT_EQ(parseColour("#000080"), (Colour{0, 0, 128}));
}

TEST(ColourText, NothingElseIsAColour) {
    for (const char* text : {"", "#", "ffe4c4", "#ffe4c", "#ffe4c44", "#fe4", "#ffe4cg", "#-fe4c4",
                             "#+fe4c4", "# ffe4c", "#0xffe4", "navy"}) {
        EXPECT_FALSE(parseColour(text)) << text;
    }
}

}  // namespace
}  // namespace matwright
