// SPDX-License-Identifier: MIT
#include "core/printers/test_sheet.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/measure/catalogue.h"

namespace matwright {

namespace {

PrinterPaper paperOf(Size size) {
    PrinterPaper paper = startingPrinters(Unit::Inch).front().papers.front();
    paper.size = size;
    return paper;
}

std::string textsOf(const Drawing& drawing) {
    std::string all;
    for (const Layer& layer : drawing.layers) {
        for (const DrawingItem& item : layer.items) {
            if (const auto* text = std::get_if<TextItem>(&item)) {
                all += text->text + ' ';
            }
        }
    }
    return all;
}

Rect extentOf(const Drawing& drawing) {
    Rect all =
        Rect::at({drawing.size.width.halfRoundedDown(), drawing.size.height.halfRoundedDown()}, {});
    for (const Layer& layer : drawing.layers) {
        for (const DrawingItem& item : layer.items) {
            if (const auto* text = std::get_if<TextItem>(&item)) {
                const Length width = textWidthBound(text->text, text->height, text->bold);
                const Length x = Length::roundedFromTicks(text->at.x);
                const Length y = Length::roundedFromTicks(text->at.y);
                const Length left =
                    text->anchor == TextAnchor::Start ? x : x - width.halfRoundedDown();
                all = all.united({{left, left + width}, {y - text->height, y}});
            } else {
                for (const Path& path : std::get<PathItem>(item).paths) {
                    all = all.united(boundsOf(path));
                }
            }
        }
    }
    return all;
}

TEST(ATestSheet, OfA4x6HasMarksThreeAndFiveInchesApartAndSaysSo) {
    const Printer printer = startingPrinters(Unit::Inch).front();
    const TestSheet sheet = testSheet(printer, printer.papers.front(), Borders::Without);
    EXPECT_EQ(sheet.drawing.size, (Size{Length::inches(4), Length::inches(6)}));
    EXPECT_EQ(sheet.marks, (Size{Length::inches(3), Length::inches(5)}));
    EXPECT_EQ(sheet.b.x - sheet.a.x, Length::inches(3));
    EXPECT_EQ(sheet.d.y - sheet.c.y, Length::inches(5));
    const std::string texts = textsOf(sheet.drawing);
    EXPECT_NE(texts.find("from mark A to"), std::string::npos) << texts;
    EXPECT_NE(texts.find("3 in"), std::string::npos) << texts;
    EXPECT_NE(texts.find("5 in"), std::string::npos) << texts;
    EXPECT_NE(texts.find("Small printer"), std::string::npos) << texts;
}

TEST(ATestSheet, OfAPaperInMillimetresHasMarksWholeCentimetresApart) {
    const TestSheet sheet =
        testSheet(startingPrinters(Unit::Millimetre)[1],
                  startingPrinters(Unit::Millimetre)[1].papers.front(), Borders::With);
    EXPECT_EQ(sheet.marks, (Size{Length::millimetres(180), Length::millimetres(260)}));
    EXPECT_NE(textsOf(sheet.drawing).find("180 mm"), std::string::npos);
}

TEST(ATestSheet, StaysOnItsPaperForEverySizeOfTheCatalogues) {
    const Printer printer = startingPrinters(Unit::Inch).front();
    for (const auto sizes : {printSizes(), sheetSizes()}) {
        for (const NamedSize& size : sizes) {
            for (const Size& lying : {size.size, size.size.turned()}) {
                for (const Borders borders : {Borders::With, Borders::Without}) {
                    const TestSheet sheet = testSheet(printer, paperOf(lying), borders);
                    EXPECT_TRUE(Rect::at({}, lying).contains(extentOf(sheet.drawing)))
                        << size.id << " " << extentOf(sheet.drawing).right().toInches() << " "
                        << extentOf(sheet.drawing).bottom().toInches();
                    // With 5 % of enlargement the marks are still there.
                    EXPECT_LT(1.05 * sheet.marks.width.toInches() + 0.1, lying.width.toInches());
                }
            }
        }
    }
}

TEST(ATestSheet, IsCorrectedAboutTheMiddleAndSaysSo) {
    const Printer printer = startingPrinters(Unit::Inch).front();
    const PrinterPaper& paper = printer.papers.front();
    const Correction correction =
        *correctionOf({Length::inches(3), Length::inches(5)},
                      {Length::inches(3, 3, 50), Length::inches(5)}, "2026-07-14");
    const TestSheet plain = testSheet(printer, paper, Borders::Without);
    const TestSheet sheet = testSheet(printer, paper, Borders::Without, correction);
    EXPECT_EQ(sheet.a, corrected(plain.a, paper.size, correction));
    EXPECT_EQ(sheet.marks.height, Length::inches(5));
    EXPECT_NEAR(sheet.marks.width.toInches(), 3 / 1.02, 1e-5);
    EXPECT_NE(textsOf(sheet.drawing).find("Corrected"), std::string::npos);
}

}  // namespace

}  // namespace matwright
