// SPDX-License-Identifier: MIT
#include "app/printing/template_choice.h"

#include <gtest/gtest.h>

namespace matwright::app {
namespace {

// A page of the drawing's size.
PageSetup setupOf(const Drawing& drawing) {
    PageSetup page;
    page.size = drawing.size;
    return page;
}

Drawing pageOf(Size size) {
    Drawing drawing;
    drawing.size = size;
    return drawing;
}

Size square(std::int64_t inches) {
    return {Length::inches(inches), Length::inches(inches)};
}

TEST(TemplateChoice, StartsInPartsWhereThePageIsLargerThanThePaper) {
    Settings settings;
    Sketch sketch = blankSketch();  // 12 x 12 in
    EXPECT_TRUE(initialChoice(settings, sketch).tiled);
    settings.sheetId = "13x19";
    EXPECT_FALSE(initialChoice(settings, sketch).tiled);
    settings.templateTiled = true;
    EXPECT_TRUE(initialChoice(settings, sketch).tiled);
    settings = {};
    sketch.page.size = square(8);
    EXPECT_FALSE(initialChoice(settings, sketch).tiled);
}

TEST(TemplateChoice, LooksAtBothPagesOfADoublePage) {
    Settings settings;
    settings.sheetId = "12x18";
    Sketch sketch = blankSketch();
    sketch.page.size = {Length::inches(8), Length::inches(12)};
    EXPECT_FALSE(initialChoice(settings, sketch).tiled);
    sketch.page.doublePage = true;
    EXPECT_FALSE(initialChoice(settings, sketch).tiled);  // 16 x 12 in lies on 18 x 12 in
    sketch.page.foldGap = Length::inches(2) + Length::fromTicks(1);
    EXPECT_TRUE(initialChoice(settings, sketch).tiled);
}

TEST(TemplateChoice, AnUnknownSheetInTheSettingsBecomesLetter) {
    Settings settings;
    settings.sheetId = "napkin";
    EXPECT_EQ(initialChoice(settings, blankSketch()).sheet->id, "letter");
}

TEST(TemplateChoice, IsRememberedInTheSettingsAndNothingElseChanges) {
    Settings settings;
    settings.snapOn = false;
    TemplateChoice choice;
    choice.tiled = true;
    choice.howChosen = true;
    choice.sheet = findSheetSize("a3");
    choice.printerMargin = Length::millimetres(5);
    choice.overlap = Length::millimetres(10);
    choice.look.scale = Scale::HalfMillimetre;
    Settings expected = settings;
    expected.templateTiled = true;
    expected.sheetId = "a3";
    expected.printerMargin = Length::millimetres(5);
    expected.overlap = Length::millimetres(10);
    EXPECT_EQ(remembered(settings, choice), expected);
}

TEST(TemplateChoice, InPartsIsRememberedOnlyWhereAPersonSaidSo) {
    Settings settings;
    TemplateChoice choice = initialChoice(settings, blankSketch());
    ASSERT_TRUE(choice.tiled);  // 12 x 12 in on Letter
    choice.overlap = Length::inches(0, 1, 2);
    EXPECT_FALSE(remembered(settings, choice).templateTiled);
    EXPECT_EQ(remembered(settings, choice).overlap, Length::inches(0, 1, 2));
    choice.howChosen = true;
    EXPECT_TRUE(remembered(settings, choice).templateTiled);
    settings.templateTiled = true;
    choice.tiled = false;
    EXPECT_FALSE(remembered(settings, choice).templateTiled);
}

TEST(TemplateChoice, TheLookKnowsTheSeamsOfAPageInParts) {
    const Sketch sketch = blankSketch();
    TemplateChoice choice = initialChoice({}, sketch);
    EXPECT_EQ(lookOnSheets(sketch.page, choice).parts.size(), 4u);
    choice.tiled = false;
    EXPECT_TRUE(lookOnSheets(sketch.page, choice).parts.empty());
    choice.tiled = true;
    choice.printerMargin = Length::inches(4);  // no tiles at all
    EXPECT_TRUE(lookOnSheets(sketch.page, choice).parts.empty());
}

TEST(TemplateChoice, AWholePageFitsOneWayUpOrTheOther) {
    TemplateChoice letter;
    const Size sheet = letter.sheet->size;
    const Length tick = Length::fromTicks(1);
    EXPECT_TRUE(fitsWhole(sheet, letter));
    EXPECT_TRUE(fitsWhole(sheet.turned(), letter));
    EXPECT_FALSE(fitsWhole({sheet.width + tick, sheet.height}, letter));
    EXPECT_FALSE(fitsWhole({sheet.height + tick, sheet.width}, letter));
}

TEST(TemplateSheetsOf, AWholePageToSaveIsAsLargeAsThePage) {
    const Drawing drawing = pageOf(square(12));
    const Result<TemplateSheets> sheets = sheetsToSave(drawing, setupOf(drawing), {});
    ASSERT_TRUE(sheets);
    ASSERT_EQ(sheets->pages.size(), 1u);
    EXPECT_EQ(sheets->pages[0].media, square(12));
    EXPECT_EQ(sheets->pages[0].offset, Point{});
}

TEST(TemplateSheetsOf, AWholePageToPrintIsInTheMiddleOfTheSheet) {
    const Drawing drawing = pageOf(square(8));
    const Result<TemplateSheets> sheets = sheetsToPrint(drawing, setupOf(drawing), {});
    ASSERT_TRUE(sheets);
    EXPECT_EQ(sheets->pages[0].media, findSheetSize("letter")->size);
    EXPECT_EQ(sheets->pages[0].offset, (Point{Length::inches(0, 1, 4), Length::inches(1, 1, 2)}));
    EXPECT_EQ(sheets->pages[0].trim, Rect::at(sheets->pages[0].offset, square(8)));
}

TEST(TemplateSheetsOf, AWholePageTooWideForTheUprightSheetLiesSideways) {
    const Drawing drawing = pageOf({Length::inches(11), Length::inches(8, 1, 2)});
    const Result<TemplateSheets> sheets = sheetsToPrint(drawing, setupOf(drawing), {});
    ASSERT_TRUE(sheets);
    EXPECT_EQ(sheets->pages[0].media, findSheetSize("letter")->size.turned());
    EXPECT_EQ(sheets->pages[0].offset, Point{});
}

TEST(TemplateSheetsOf, AWholePageLargerThanTheSheetIsNotPrinted) {
    const Result<TemplateSheets> sheets = sheetsToPrint(pageOf(square(12)), {}, {});
    ASSERT_FALSE(sheets);
    EXPECT_EQ(sheets.error().code, ErrorCode::Unsupported);
    EXPECT_NE(sheets.error().sentence.find("Letter"), std::string::npos);
}

TEST(TemplateSheetsOf, PartsAreTheSameOnPaperAndInAFile) {
    TemplateChoice choice;
    choice.tiled = true;
    const Drawing drawing = pageOf(square(12));
    const Result<TemplateSheets> saved = sheetsToSave(drawing, setupOf(drawing), choice);
    const Result<TemplateSheets> printed = sheetsToPrint(drawing, setupOf(drawing), choice);
    ASSERT_TRUE(saved && printed);
    ASSERT_EQ(saved->pages.size(), 4u);
    ASSERT_EQ(printed->pages.size(), 4u);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(saved->pages[i].media, findSheetSize("letter")->size);
        EXPECT_EQ(saved->pages[i].media, printed->pages[i].media);
    }
}

struct SentenceCase {
    std::int64_t side;
    bool tiled;
    const char* sheet;
    const char* sentence;
};

TEST(TemplateSentence, SaysWhatWillComeOut) {
    const SentenceCase cases[] = {
        {12, true, "letter", "12 × 12 in page on 4 Letter sheets, joined with 1/4 in overlap."},
        {12, true, "13x19", "12 × 12 in page on one sheet of 13 × 19 in."},
        {12, true, "12x18",
         "12 × 12 in page on 2 sheets of 12 × 18 in, joined with 1/4 in overlap."},
        {12, true, "tabloid", "12 × 12 in page on 2 Tabloid sheets, joined with 1/4 in overlap."},
        {12, false, "letter",
         "12 × 12 in page in one piece, for a print shop. It is too large for Letter paper."},
        {8, false, "letter",
         "8 × 8 in page in one piece, printed in the middle of Letter paper. What lies outside "
         "the reach of the printer stays blank."},
    };
    for (const SentenceCase& one : cases) {
        TemplateChoice choice;
        choice.tiled = one.tiled;
        choice.sheet = findSheetSize(one.sheet);
        const Drawing drawing = pageOf(square(one.side));
        const Result<TemplateSheets> sheets = sheetsToSave(drawing, setupOf(drawing), choice);
        ASSERT_TRUE(sheets);
        EXPECT_EQ(outcomeSentence(drawing, choice, *sheets).toStdString(), one.sentence);
    }
}

TEST(TemplateSentence, SaysThatADoublePageComesPageByPage) {
    const struct {
        const char* sheet;
        const char* sentence;
    } cases[] = {
        {"letter", "Two pages of 12 × 12 in on 8 Letter sheets, joined with 1/4 in overlap."},
        {"13x19", "Two pages of 12 × 12 in on 2 sheets of 13 × 19 in."},
    };
    for (const auto& one : cases) {
        TemplateChoice choice;
        choice.tiled = true;
        choice.sheet = findSheetSize(one.sheet);
        PageSetup page;
        page.doublePage = true;
        const Drawing drawing = pageOf(surface(page).size());
        const Result<TemplateSheets> sheets = sheetsToSave(drawing, page, choice);
        ASSERT_TRUE(sheets);
        EXPECT_EQ(outcomeSentence(drawing, choice, *sheets).toStdString(), one.sentence);
    }
}

TEST(TemplateSentence, SaysWhenTheSheetsLieSideways) {
    TemplateChoice choice;
    choice.tiled = true;
    const Drawing drawing = pageOf({Length::inches(8, 1, 2), Length::inches(11)});
    const Result<TemplateSheets> sheets = sheetsToSave(drawing, setupOf(drawing), choice);
    ASSERT_TRUE(sheets);
    EXPECT_EQ(outcomeSentence(drawing, choice, *sheets).toStdString(),
              "8 1/2 × 11 in page on 2 Letter sheets, sideways, joined with 1/4 in overlap.");
}

TEST(TemplateSentence, NamesTheSquareToMeasureInTheUnitInUse) {
    TemplateChoice choice;
    EXPECT_TRUE(trueSizeSentence(choice).contains(QStringLiteral("1 in square")));
    choice.look.scale = Scale::WholeMillimetre;
    EXPECT_TRUE(trueSizeSentence(choice).contains(QStringLiteral("50 mm square")));
    choice.look.checkSquares = false;
    EXPECT_FALSE(trueSizeSentence(choice).contains(QStringLiteral("square")));
}

// The page's squares may be cut by a seam; every sheet has rulers.
TEST(TemplateSentence, NamesTheRulersOfAPageInParts) {
    TemplateChoice choice;
    choice.tiled = true;
    for (const bool squares : {true, false}) {
        choice.look.checkSquares = squares;
        EXPECT_EQ(trueSizeSentence(choice),
                  QStringLiteral("Print at actual size (100 %). Then measure the ruler on each "
                                 "sheet: 1 in and 50 mm."));
    }
}

}  // namespace
}  // namespace matwright::app
