// SPDX-License-Identifier: MIT
#include "core/library/text_fold.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

using Words = std::vector<std::string_view>;

TEST(TextFold, LettersLoseCaseAndAccents) {
    const struct {
        std::string_view text, folded;
    } cases[] = {
        {"", ""},
        {"Beach DAY 4", "beach day 4"},
        {"Café", "cafe"},
        {"Cafe\u0301", "cafe"},
        {"Süße Straße", "susse strasse"},
        {"ÆØÅ œuvre Þór", "aeoa oeuvre thor"},
        {"Łódź Žluťoučký İstanbul ığ", "lodz zlutoucky istanbul ig"},
        {"Việt Nam", "viet nam"},
        {"ẞ ẛ Ǽ ǿ", "ss s ae o"},
        {"ΑΣ Ώρα", "ασ ώρα"},
        {"τους", "τουσ"},
        {"ДЕНЬ Ёлка Ґ", "день ёлка ґ"},
        {"写真 🙂 3 × 4", "写真 🙂 3 × 4"},
    };
    for (const auto& one : cases) {
        EXPECT_EQ(foldedText(one.text), one.folded);
    }
}

std::string utf8(unsigned c) {
    std::string text;
    if (c < 0x800) {
        text += static_cast<char>(0xc0 | c >> 6);
    } else {
        text += static_cast<char>(0xe0 | c >> 12);
        text += static_cast<char>(0x80 | (c >> 6 & 0x3f));
    }
    return text += static_cast<char>(0x80 | (c & 0x3f));
}

TEST(TextFold, FoldingTwiceChangesNothing) {
    for (unsigned c = 0x80; c < 0x3100; ++c) {
        const std::string once = foldedText(utf8(c));
        EXPECT_EQ(foldedText(once), once) << c;
    }
}

TEST(TextFold, BytesThatAreNoTextSeparateWords) {
    EXPECT_EQ(foldedText("a\xff\x62"), "a b");
    EXPECT_EQ(foldedText("a\xc3"), "a ");
}

TEST(TextFold, WordsAreRunsOfLettersAndDigits) {
    EXPECT_EQ(wordsIn(""), Words());
    EXPECT_EQ(wordsIn(" ,-\n"), Words());
    EXPECT_EQ(wordsIn("beach"), Words({"beach"}));
    EXPECT_EQ(wordsIn(" two-photo page_2 (4x6) "), Words({"two", "photo", "page", "2", "4x6"}));
    EXPECT_EQ(wordsIn("3 × 4"), Words({"3", "4"}));
    EXPECT_EQ(wordsIn("写真、海\u2014день"), Words({"写真", "海", "день"}));
    EXPECT_EQ(wordsIn("a\xff\x62"), Words({"a", "b"}));
}

TEST(TextFold, NumbersAreOrderedByTheirValue) {
    const std::string_view ordered[] = {"",
                                        "Page",
                                        "page 2",
                                        "Page 9",
                                        "page 10",
                                        "page 010b",
                                        "Page 99999999999999999999",
                                        "page 100000000000000000000",
                                        "pagf",
                                        "Zug",
                                        "zugx"};
    for (std::size_t i = 1; i < std::size(ordered); ++i) {
        EXPECT_LT(orderKey(ordered[i - 1]), orderKey(ordered[i])) << ordered[i];
    }
    EXPECT_EQ(orderKey("Été 007"), orderKey("ete 7"));
    EXPECT_LT(orderKey("b"), orderKey("Ça"));
    EXPECT_LT(orderKey("0"), orderKey("1"));
}

}  // namespace
}  // namespace matwright
