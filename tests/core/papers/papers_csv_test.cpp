// SPDX-License-Identifier: MIT
#include "core/papers/papers_csv.h"

#include <gtest/gtest.h>

#include "core/papers/csv_rows.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

std::vector<CsvRow> fieldsOf(std::string_view text) {
    std::vector<CsvRow> all;
    const auto rows = readCsv(text);
    EXPECT_TRUE(rows) << rows.error().text();
    for (const NumberedRow& row : *rows) {
        all.push_back(row.fields);
    }
    return all;
}

// The examples of RFC 4180 (Y. Shafranovich, October 2005), section 2, rules 1, 2, 5, 6 and 7.
TEST(Csv, ReadsTheExamplesOfRfc4180) {
    const std::vector<CsvRow> plain{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}};
    EXPECT_EQ(fieldsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), plain);
    EXPECT_EQ(fieldsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx"), plain);
    EXPECT_EQ(fieldsOf("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"), plain);
    EXPECT_EQ(fieldsOf("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"),
              (std::vector<CsvRow>{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    EXPECT_EQ(fieldsOf("\"aaa\",\"b\"\"bb\",\"ccc\""),
              (std::vector<CsvRow>{{"aaa", "b\"bb", "ccc"}}));
}

// RFC 4180, section 2, rule 4: "Spaces are considered part of a field and should not be ignored."
TEST(Csv, BlanksArePartOfTheirField) {
    EXPECT_EQ(fieldsOf(" a , b\n"), (std::vector<CsvRow>{{" a ", " b"}}));
    EXPECT_EQ(fieldsOf(" a ,b\n,\n"), (std::vector<CsvRow>{{" a ", "b"}, {"", ""}}));
}

TEST(Csv, LinesAreNumberedAsAnEditorShowsThem) {
    const auto rows = readCsv("a\n\n\"b\n\nb\"\nc\n");
    ASSERT_TRUE(rows);
    ASSERT_EQ(rows->size(), 3U);
    EXPECT_EQ((*rows)[0].line, 1U);
    EXPECT_EQ((*rows)[1].line, 3U);
    EXPECT_EQ((*rows)[2].line, 6U);
}

TEST(Csv, AQuoteInTheWrongPlaceIsTold) {
    for (const char* text : {"a\nb\"b,c\n", "a\n\"b\"b,c\n", "a\n\"b,c\n"}) {
        const auto rows = readCsv(text);
        ASSERT_FALSE(rows) << text;
        EXPECT_EQ(rows.error().code, ErrorCode::Malformed);
        EXPECT_TRUE(rows.error().sentence.starts_with("Line 2: ")) << rows.error().sentence;
    }
}

TEST(Csv, WhatIsBeyondTheLimitsIsNotStored) {
    EXPECT_EQ(readCsv("a,b\n\nc,d\n", 2, 2)->size(), 2U);
    // A quote in the wrong place behind the limit is never come to.
    const auto rows = readCsv("a\nb\nc\nd\"d\n", 2, 2);
    ASSERT_FALSE(rows);
    EXPECT_EQ(rows.error().code, ErrorCode::TooLarge);
    EXPECT_NE(rows.error().sentence.find("at most 2 lines"), std::string::npos);
    const auto lastRow = readCsv("a\nb\nc", 2, 2);
    ASSERT_FALSE(lastRow);
    EXPECT_EQ(lastRow.error().code, ErrorCode::TooLarge);
    for (const char* text : {"a,b\na,b,c\nd\"d\n", "a,b\na,b,c"}) {
        const auto fields = readCsv(text, 2, 2);
        ASSERT_FALSE(fields);
        EXPECT_EQ(fields.error().code, ErrorCode::TooLarge);
        EXPECT_TRUE(fields.error().sentence.starts_with("Line 2 has more than 2 fields"));
    }
}

TEST(PapersCsv, ATableOfSixteenMegabytesOfNothingIsRefusedForItsSize) {
    constexpr std::size_t most = 16UL * 1024 * 1024;
    std::string lines = "name,width,height\n";
    while (lines.size() + 2 <= most) {
        lines += "a\n";
    }
    for (const std::string& text : {std::string(most, ','), lines}) {
        const auto read = readPapersCsv(text);
        ASSERT_FALSE(read);
        EXPECT_EQ(read.error().code, ErrorCode::TooLarge) << read.error().sentence;
    }
}

TEST(Csv, WhatIsWrittenIsReadAsItWas) {
    const CsvRow row{"plain", "a,b", "a \"quoted\" word", "two\r\nlines", " blanks ", "", "é×"};
    EXPECT_EQ(csvLine({"a", "b c", "d,e"}), "a,b c,\"d,e\"\r\n");
    EXPECT_EQ(fieldsOf(csvLine(row) + csvLine(row)), (std::vector<CsvRow>{row, row}));
}

PaperOnHand dotsPaper() {
    PaperOnHand paper;
    paper.name = "dots, blue";
    paper.size = {Length::inches(5, 1, 2), Length::millimetres(170)};
    paper.colour = {0x5a, 0x78, 0x3c};
    paper.picture = "/papers/dots \"blue\".png";
    paper.pictureWidth = Length::inches(12);
    paper.count = 3;
    paper.kind = PaperKind::Scrap;
    paper.pattern = PaperPattern::HasUp;
    paper.sides = PaperSides::Two;
    paper.thickness = "216 gsm";
    return paper;
}

TEST(PapersCsv, IsWrittenInPlainWords) {
    const PaperOnHand paper = dotsPaper();
    EXPECT_EQ(
        papersCsv(std::span(&paper, 1)),
        "Name,Width,Height,Count,Kind,Pattern,Sides,Thickness,Colour,Picture,Picture width\r\n"
        "\"dots, blue\",5 1/2 in,170 mm,3,scrap,up,two,216 gsm,#5a783c,"
        "\"/papers/dots \"\"blue\"\".png\",12 in\r\n");
}

TEST(PapersCsv, WhatIsWrittenIsReadAsItWas) {
    test::Random random(20'261'128);
    std::vector<PaperOnHand> papers{dotsPaper()};
    for (int i = 0; i < 300; ++i) {
        PaperOnHand paper = dotsPaper();
        paper.name = std::string("p\"") + static_cast<char>(' ' + test::below(random, 95)) + "x";
        paper.size.width =
            smallestPaperSide +
            Length::fromTicks(static_cast<std::int64_t>(test::below(random, 90'000'000)));
        paper.count = static_cast<int>(test::below(random, maxPaperCount + 1));
        paper.pictureWidth =
            Length::fromTicks(1 + static_cast<std::int64_t>(test::below(random, 180'000'000)));
        papers.push_back(paper);
    }
    const auto read = readPapersCsv(papersCsv(papers));
    ASSERT_TRUE(read) << read.error().text();
    ASSERT_EQ(read->size(), papers.size());
    for (std::size_t i = 0; i < papers.size(); ++i) {
        EXPECT_EQ((*read)[i], papers[i]) << papers[i].name << ", seed 20261128";
    }
}

TEST(PapersCsv, ColumnsStandInAnyOrderAndMayBeMissing) {
    const auto read = readPapersCsv("\xEF\xBB\xBFheight, NAME ,width\n 7 1/2,kraft , 21 cm\n\n");
    ASSERT_TRUE(read) << read.error().text();
    ASSERT_EQ(read->size(), 1U);
    PaperOnHand wanted;
    wanted.name = "kraft";
    wanted.size = {Length::millimetres(210), Length::inches(7, 1, 2)};
    EXPECT_EQ(read->front(), wanted);
}

TEST(PapersCsv, EveryFaultyLineIsNamedAndNothingIsRead) {
    const auto read = readPapersCsv(
        "name,width,height,count,kind,colour\n"
        "kraft,12,12,1,whole,\n"
        "kraft,twelve,12,1,whole,\n"
        ",12,12,1,whole,\n"
        "kraft,12,12,1.5,whole,\n"
        "kraft,12,12,1,half,\n"
        "kraft,12,12,1,whole,brown\n"
        "kraft,12,12,99999,whole,\n"
        "kraft,12\n");
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::Malformed);
    const std::string& text = read.error().sentence;
    EXPECT_EQ(text.find("Line 2:"), std::string::npos) << text;
    for (const char* words :
         {"Line 3: Width is \"twelve\"", "Line 4: A paper needs a name", "Line 5: Count is \"1.5\"",
          "Line 6: Kind is \"half\"; it has to be whole or scrap", "Line 7: Colour is \"brown\"",
          "Line 8: Of one paper", "Line 9: 2 fields"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words << "\n" << text;
    }
}

TEST(PapersCsv, AHeadingThatCannotBeFollowedIsTold) {
    for (const char* text :
         {"", "name,width\nkraft,12\n", "name,width,height,weight\n", "name,name,width,height\n"}) {
        const auto read = readPapersCsv(text);
        ASSERT_FALSE(read) << text;
        EXPECT_FALSE(read.error().sentence.empty());
    }
    const auto noPapers = readPapersCsv("name,width,height\n");
    ASSERT_TRUE(noPapers);
    EXPECT_TRUE(noPapers->empty());
}

TEST(PapersCsv, SemicolonsAreReadWhereTheFirstLineHasThem) {
    const auto papers = readPapersCsv(
        "Name;Width;Height;Count;Thickness\r\n\"dots; blue\";5 1/2 in;178 mm;3;216 gsm\r\n"
        "red, plain;12;12;;\r\n");
    ASSERT_TRUE(papers) << papers.error().text();
    ASSERT_EQ(papers->size(), 2U);
    EXPECT_EQ((*papers)[0].name, "dots; blue");
    EXPECT_EQ((*papers)[0].size.height, Length::hundredthMillimetres(17'800));
    EXPECT_EQ((*papers)[0].count, 3);
    EXPECT_EQ((*papers)[1].name, "red, plain");
}

TEST(PapersCsv, FirstLineWithCommasAndSemicolonsIsReadWithCommas) {
    const auto papers = readPapersCsv("Name,Width,Height\nred; plain,12,12\n");
    ASSERT_TRUE(papers);
    EXPECT_EQ(papers->front().name, "red; plain");
}

}  // namespace
}  // namespace matwright
