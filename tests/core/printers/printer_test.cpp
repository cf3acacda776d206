// SPDX-License-Identifier: MIT
#include "core/printers/printer.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

#include "core/measure/catalogue.h"

namespace matwright {

namespace {

Printer soundPrinter() {
    return startingPrinters(Unit::Inch).front();
}

struct Broken {
    const char* what;
    std::function<void(Printer&)> breakIt;
};

TEST(StartingPrinters, AreSoundAndHavePapersOfTheStandardsSizes) {
    // PWG 5101.1 media sizes in 1/100 mm: index-4x6 10160x15240, 5x7 12700x17780, govt-letter
    // 20320x25400, letter 21590x27940. ISO 216: A4 is 210 x 297 mm.
    struct Wanted {
        const char* printer;
        std::size_t paper;
        int width, height;
    };
    const auto printers = startingPrinters(Unit::Inch);
    ASSERT_EQ(printers.size(), 3U);
    const auto sizeOf = [&](std::size_t printer, std::size_t paper) {
        return printers[printer].papers.at(paper).size;
    };
    const auto pwg = [](int width, int height) {
        return Size{Length::hundredthMillimetres(width), Length::hundredthMillimetres(height)};
    };
    EXPECT_EQ(sizeOf(0, 0), pwg(10160, 15240));
    EXPECT_EQ(sizeOf(0, 1), pwg(12700, 17780));
    EXPECT_EQ(sizeOf(1, 0), pwg(21590, 27940));
    EXPECT_EQ(sizeOf(2, 2), pwg(20320, 25400));
    EXPECT_EQ(startingPrinters(Unit::Millimetre)[1].papers[0].size, pwg(21000, 29700));
    for (const Unit unit : {Unit::Inch, Unit::Millimetre}) {
        for (const Printer& printer : startingPrinters(unit)) {
            EXPECT_EQ(findFault(printer), std::nullopt) << printer.name;
            EXPECT_EQ(printer.id, PrinterId{});
        }
    }
}

TEST(StartingPrinters, HaveMarginsWhereTheyPrintWithBorders) {
    const auto printers = startingPrinters(Unit::Inch);
    EXPECT_EQ(printers[0].papers[0].reach(), SheetMargin{});
    EXPECT_EQ(printers[1].papers[0].reach().left, Length::inches(0, 1, 4));
    EXPECT_EQ(printers[2].kind, PrinterKind::PrintShop);
    EXPECT_EQ(paperText(printers[0].papers[0]), "4 × 6 in, without borders");
    EXPECT_EQ(paperText(printers[1].papers[0]), "Letter 8 1/2 × 11 in, with borders");
}

// By arithmetic: a paper of 4 x 6 that enlarges by 1/50 across and 1/100 down has, lying, its 6 in
// enlarged by 1/100 across.
TEST(APaperInAnotherSize, KeepsWhatWasMeasuredOnlyWhereItIsTurned) {
    const Size marks{Length::inches(3), Length::inches(5)};
    PrinterPaper paper = soundPrinter().papers[0];
    paper.withoutBorders =
        correctionOf(marks, {Length::inches(3, 3, 50), Length::inches(5, 1, 20)}, "2026-07-14")
            .value();
    paper.withBorders =
        correctionOf(marks, {Length::inches(3), Length::inches(5, 1, 20)}, "2026-07-14").value();
    const PrinterPaper lying = resized(paper, paper.size.turned());
    EXPECT_EQ(lying.size, (Size{Length::inches(6), Length::inches(4)}));
    EXPECT_EQ(lying.withoutBorders->across.applied(Length::inches(6, 3, 50)), Length::inches(6));
    EXPECT_EQ(lying.withoutBorders->down, paper.withoutBorders->across);
    EXPECT_EQ(lying.withBorders->across, paper.withBorders->down);
    EXPECT_EQ(resized(lying, paper.size), paper);
    EXPECT_EQ(resized(paper, paper.size), paper);
    const PrinterPaper larger = resized(paper, {Length::inches(5), Length::inches(7)});
    EXPECT_EQ(larger.withoutBorders, std::nullopt);
    EXPECT_EQ(larger.withBorders, std::nullopt);
    EXPECT_EQ(larger.name, paper.name);
}

TEST(APrinter, IsRefusedWhereARuleIsBroken) {
    const Broken all[] = {
        {"no name", [](Printer& p) { p.name = "  "; }},
        {"a line break", [](Printer& p) { p.name = "a\nb"; }},
        {"a long name", [](Printer& p) { p.name.assign(201, 'x'); }},
        {"a long queue", [](Printer& p) { p.queue.assign(201, 'x'); }},
        {"a paper without a name", [](Printer& p) { p.papers[0].name = ""; }},
        {"two papers of a name", [](Printer& p) { p.papers[1].name = p.papers[0].name; }},
        {"a small paper", [](Printer& p) { p.papers[0].size.width = Length::inches(0, 7, 8); }},
        {"a large paper", [](Printer& p) { p.papers[0].size.height = Length::inches(61); }},
        {"a negative margin",
         [](Printer& p) { p.papers[0].margin.top = -Length::inches(0, 1, 8); }},
        {"margins that meet",
         [](Printer& p) { p.papers[0].margin.left = Length::inches(3, 3, 4); }},
        {"a huge margin", [](Printer& p) { p.papers[0].margin.left = Length::coordinateLimit(); }},
        {"a negative price", [](Printer& p) { p.papers[0].price = -1; }},
        {"a huge price", [](Printer& p) { p.papers[0].price = maxSheetPrice + 1; }},
        {"fewer than none", [](Printer& p) { p.papers[0].atHand = -1; }},
        {"too many at hand", [](Printer& p) { p.papers[0].atHand = maxPapersAtHand + 1; }},
        {"an unsound correction", [](Printer& p) { p.papers[0].withBorders = Correction{}; }},
        {"too many papers",
         [](Printer& p) {
             for (std::size_t i = 0; i < maxPapersOfPrinter; ++i) {
                 p.papers.push_back(p.papers[0]);
                 p.papers.back().name = std::to_string(i);
             }
         }},
    };
    for (const Broken& broken : all) {
        Printer printer = soundPrinter();
        broken.breakIt(printer);
        const std::optional<Error> fault = findFault(printer);
        ASSERT_TRUE(fault) << broken.what;
        EXPECT_GT(fault->sentence.size(), 20U) << broken.what;
    }
}

}  // namespace

}  // namespace matwright
