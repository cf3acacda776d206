// SPDX-License-Identifier: MIT
#include "core/library/names.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

std::string times(int count, const std::string& text) {
    std::string all;
    for (int i = 0; i < count; ++i) {
        all += text;
    }
    return all;
}

TEST(Names, TellSketchFilesByTheirEnding) {
    EXPECT_TRUE(hasSketchSuffix("Harbour day.sketch.svg"));
    EXPECT_TRUE(hasSketchSuffix("2026/Harbour day.sketch.svg"));
    EXPECT_FALSE(hasSketchSuffix(".sketch.svg"));
    EXPECT_FALSE(hasSketchSuffix("2026/.sketch.svg"));
    EXPECT_FALSE(hasSketchSuffix("Harbour day.svg"));
    EXPECT_EQ(stemOf("2026/Harbour day.sketch.svg"), "Harbour day");
    EXPECT_EQ(stemOf("picture.svg"), "picture.svg");
}

TEST(Names, CountFilesOfOneName) {
    EXPECT_EQ(numberedFileName("Harbour day", 1), "Harbour day.sketch.svg");
    EXPECT_EQ(numberedFileName("Harbour day", 2), "Harbour day (2).sketch.svg");
    EXPECT_EQ(numberedFileName("Harbour day (2)", 1), "Harbour day (2).sketch.svg");
    EXPECT_EQ(numberedFileName("Harbour day (2)", 3), "Harbour day (3).sketch.svg");
    EXPECT_EQ(numberedFileName("Harbour (old)", 2), "Harbour (old) (2).sketch.svg");
}

TEST(Names, LoseTheirEndAtTheEndOfACharacterWhereTheyAreTooLong) {
    const std::string letters = times(244, "a");
    EXPECT_EQ(numberedFileName(letters, 1), letters + ".sketch.svg");
    EXPECT_EQ(numberedFileName(letters, 1).size(), maxFileNameBytes);
    EXPECT_EQ(numberedFileName(letters, 2), times(240, "a") + " (2).sketch.svg");
    // Three bytes a character: 240 bytes hold 80 of them, 239 only 79.
    const std::string signs = times(81, "\u5199");
    EXPECT_EQ(numberedFileName(signs, 2), times(80, "\u5199") + " (2).sketch.svg");
    EXPECT_EQ(numberedFileName(signs, 10), times(79, "\u5199") + " (10).sketch.svg");
    const std::string wide = times(61, "\U0001F642");
    EXPECT_EQ(numberedFileName(wide, 12), times(59, "\U0001F642") + " (12).sketch.svg");
}

TEST(Names, GiveUpOnlyANumberBehind) {
    const std::pair<const char*, const char*> cases[] = {
        {"Page (2)", "Page"},       {"Page (12)", "Page"},           {"Page", "Page"},
        {"Page (02)", "Page (02)"}, {"Page ()", "Page ()"},          {"Page (2", "Page (2"},
        {"Page(2)", "Page(2)"},     {"Page (2) b", "Page (2) b"},    {" (2)", " (2)"},
        {"Page (a)", "Page (a)"},   {"Page (20260)", "Page (20260)"}};
    for (const auto& [stem, expected] : cases) {
        EXPECT_EQ(withoutNumber(stem), expected);
    }
}

TEST(Names, ShownAreTheSketchsOwnWithTheNumberOfTheFile) {
    EXPECT_EQ(shownSketchName("Harbour day", "2026/Harbour day.sketch.svg"), "Harbour day");
    EXPECT_EQ(shownSketchName("Harbour day", "Harbour day (2).sketch.svg"), "Harbour day (2)");
    EXPECT_EQ(shownSketchName("Harbour day", "a17.sketch.svg"), "Harbour day");
    EXPECT_EQ(shownSketchName("Harbour day", "2026/a17 (3).sketch.svg"), "Harbour day (3)");
    EXPECT_EQ(shownSketchName("", "2026/a17.sketch.svg"), "a17");
}

TEST(Names, TypedAreTakenWithoutSpacesAround) {
    EXPECT_EQ(checkedName("  Harbour day ").value(), "Harbour day");
    EXPECT_EQ(checkedName("Ha\u0308fen & \u5199\u771F 4x6").value(),
              "Ha\u0308fen & \u5199\u771F 4x6");
    EXPECT_EQ(checkedName(times(244, "a")).value(), times(244, "a"));
}

TEST(Names, ThatNoFileCanHaveAreRefusedWithASentence) {
    for (const std::string& typed :
         {std::string(), std::string("   "), std::string("4/6"), std::string("two\nlines"),
          std::string("bell\a"), std::string("del\x7F"), std::string("nul\0", 4),
          std::string("\xFF"), std::string(".hidden"), times(245, "a")}) {
        const auto name = checkedName(typed);
        ASSERT_FALSE(name) << typed;
        EXPECT_EQ(name.error().code, ErrorCode::BadText);
        EXPECT_TRUE(name.error().sentence.ends_with('.')) << name.error().sentence;
    }
}

TEST(Names, OfFoldersMayGoDeeper) {
    EXPECT_EQ(checkedFolder("").value(), "");
    EXPECT_EQ(checkedFolder(" 2026/ Holidays ").value(), "2026/Holidays");
    EXPECT_EQ(checkedFolder("2026/").value(), "2026");
    for (const char* typed : {"/etc", "..", "2026/../..", "2026//Holidays", "a/.matwright"}) {
        EXPECT_FALSE(checkedFolder(typed)) << typed;
    }
}

}  // namespace
}  // namespace matwright
