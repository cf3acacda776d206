// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <string>

#include "core/sketch/sketch.h"
#include "core/sketch/soundness.h"

namespace matwright {
namespace {

TEST(Text, EveryWellFormedCharacterIsAllowed) {
    // RFC 3629: the first and last of each length, and the neighbours of the surrogates.
    for (const char* text : {"", " ", "~", "\u0080", "\u07FF", "\u0800", "\uD7FF", "\uE000",
                             "\uFFFD", "\U00010000", "\U0010FFFF", "Grüße", "写真", "🙂"}) {
        EXPECT_TRUE(isValidText(text, false)) << text;
    }
}

TEST(Text, MalformedSequencesAreNot) {
    for (const char* text : {"\x80", "\xBF", "a\x80", "\xC3", "\xC3(", "\xE2\x82", "\xE2(\xA1",
                             "\xF0\x9F\x99", "\xF0\x9F(\x82", "\xFE", "\xFF"}) {
        EXPECT_FALSE(isValidText(text, true));
    }
}

TEST(Text, LongerFormsSurrogatesAndWhatLiesBeyondUnicodeAreNot) {
    for (const char* text : {"\xC0\x80", "\xC1\xBF", "\xE0\x80\x80", "\xE0\x9F\xBF",
                             "\xF0\x80\x80\x80", "\xF0\x8F\xBF\xBF", "\xED\xA0\x80", "\xED\xBF\xBF",
                             "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xF8\x88\x80\x80\x80"}) {
        EXPECT_FALSE(isValidText(text, true));
    }
}

TEST(Text, WhatCannotStandInXmlIsNot) {
    // XML 1.0, production 2 (Char): no U+FFFE, no U+FFFF, no control codes but tab and line ends.
    EXPECT_FALSE(isValidText("\uFFFE", true));
    EXPECT_FALSE(isValidText("\uFFFF", true));
    for (char c = 0; c < 0x20; ++c) {
        EXPECT_FALSE(isValidText(std::string(1, c), false)) << static_cast<int>(c);
        EXPECT_EQ(isValidText(std::string(1, c), true), c == '\n') << static_cast<int>(c);
    }
    EXPECT_FALSE(isValidText("\x7F", true));
}

TEST(Text, TheLimitIsInBytes) {
    EXPECT_TRUE(isValidText(std::string(maxTextBytes, 'x'), false));
    EXPECT_FALSE(isValidText(std::string(maxTextBytes + 1, 'x'), false));
    std::string umlauts;
    while (umlauts.size() < maxTextBytes) {
        umlauts += "ü";
    }
    EXPECT_TRUE(isValidText(umlauts, false));
    EXPECT_FALSE(isValidText(umlauts + "ü", false));
}

}  // namespace
}  // namespace matwright
