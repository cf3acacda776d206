// SPDX-License-Identifier: MIT
#include "app/batch/typed_size.h"

#include <gtest/gtest.h>

#include "app/batch/filter_options.h"
#include "core/measure/catalogue.h"

namespace matwright::app {
namespace {

constexpr Length in(std::int64_t whole, std::int64_t part = 0, std::int64_t of = 1) {
    return Length::inches(whole, part, of);
}

TEST(TypedSize, IsReadAsPeopleWriteIt) {
    const std::pair<const char*, Size> rows[] = {
        {"12x12", {in(12), in(12)}},
        {"9x11", {in(9), in(11)}},
        {"9 X 11", {in(9), in(11)}},
        {"9 1/2 x 12 in", {in(9, 1, 2), in(12)}},
        {"9½×12", {in(9, 1, 2), in(12)}},
        {" 9.5  x  12\" ", {in(9, 1, 2), in(12)}},
        {"20x30cm", {Length::millimetres(200), Length::millimetres(300)}},
        {"200 x 300 mm", {Length::millimetres(200), Length::millimetres(300)}},
        {"8in x 30cm", {in(8), Length::millimetres(300)}},
        {"8in x 10", {in(8), in(10)}},
        {"a4", {Length::millimetres(210), Length::millimetres(297)}},
    };
    for (const auto& [text, size] : rows) {
        const Result<Size> page = parsePageSize(text);
        ASSERT_TRUE(page) << text << ": " << page.error().text();
        EXPECT_EQ(*page, size) << text;
    }
}

TEST(TypedSize, OfACatalogueIsReadByItsNameAndWrittenByIt) {
    for (const NamedSize& page : pageSizes()) {
        EXPECT_EQ(parsePageSize(page.id), page.size) << page.id;
        EXPECT_EQ(typedPageSize(page.size), page.id);
    }
    for (const NamedSize& print : printSizes()) {
        EXPECT_EQ(parsePrintSize(print.id), print.size) << print.id;
        EXPECT_EQ(typedPrintSize(print.size), print.id);
    }
}

TEST(TypedSize, IsReadBackAsItIsWritten) {
    for (const Size size : {Size{in(9, 1, 32), in(10)},
                            Size{Length::hundredthMillimetres(12345), Length::millimetres(99)},
                            Size{in(7), Length::fromTicks(914401)}}) {
        EXPECT_EQ(parsePageSize(typedPageSize(size)), size) << typedPageSize(size);
        EXPECT_EQ(parsePrintSize(typedPrintSize(size)), size) << typedPrintSize(size);
    }
}

TEST(TypedSize, ThatIsNoneIsRefusedWithAnExample) {
    for (const char* text : {"", "x", "12", "12x", "x12", "a5", "12x12x12", "4y6", "4x6 apples"}) {
        const Result<Size> page = parsePageSize(text);
        ASSERT_FALSE(page) << text;
        EXPECT_EQ(page.error().code, ErrorCode::BadText) << text;
        EXPECT_NE(page.error().sentence.find("20 x 30 cm"), std::string::npos);
    }
}

TEST(TypedSize, KeepsToWhatPagesAndPrintsCanHave) {
    EXPECT_TRUE(parsePageSize("1x100"));
    for (const char* text : {"0.99x12", "12x100.01", "0x0", "-12x12"}) {
        const Result<Size> page = parsePageSize(text);
        ASSERT_FALSE(page) << text;
        EXPECT_EQ(page.error().code, ErrorCode::OutOfRange) << text;
    }
    EXPECT_TRUE(parsePrintSize("1/64 x 200"));
    EXPECT_FALSE(parsePrintSize("0 x 200"));
    EXPECT_FALSE(parsePrintSize("1 x 200.01"));
}

TEST(ShellWord, IsOneWordOfAShell) {
    const std::pair<const char*, const char*> rows[] = {
        {"beach", "beach"},           {"4x6", "4x6"},           {"Früh", "Früh"},
        {"2026/a.b_c", "2026/a.b_c"}, {"day out", "'day out'"}, {"", "''"},
        {"it's", "'it'\\''s'"},       {"-x", "'-x'"},           {"$HOME", "'$HOME'"},
        {"a\\x0a", "'a\\x0a'"},
    };
    for (const auto& [text, word] : rows) {
        EXPECT_EQ(shellWord(text), word);
    }
}

TEST(TypedSizes, OfPapersAreSheetsOrPrints) {
    EXPECT_EQ(parsePaperSize("letter").value(),
              (Size{Length::inches(8, 1, 2), Length::inches(11)}));
    EXPECT_EQ(parsePaperSize("4x6").value(), (Size{Length::inches(4), Length::inches(6)}));
    EXPECT_FALSE(parsePaperSize("quarto"));
}

}  // namespace
}  // namespace matwright::app
