// SPDX-License-Identifier: MIT
#include "app/printing/sheet_printer.h"

#include <gtest/gtest.h>

#include <QPrinterInfo>
#include <QTemporaryDir>

#include "core/measure/catalogue.h"
#include "tests/app/rendering/read_back.h"

namespace matwright::app {
namespace {

// Black from 1 in inside every edge.
PdfPage sheetOf(Size size) {
    Drawing drawing;
    drawing.size = size;
    const Path box = [&] {
        const Rect rect = Rect::at({}, size).expanded(-Length::inches(1));
        Path path;
        path.start = vertexAt(rect.topLeft());
        path.lineTo(vertexAt({rect.right(), rect.top()}));
        path.lineTo(vertexAt(rect.bottomRight()));
        path.lineTo(vertexAt({rect.left(), rect.bottom()}));
        path.closed = true;
        return path;
    }();
    drawing.layers.push_back({"all", "All", {PathItem{{box}, {}, Colour{}}}});
    return {drawing, size, {}, {}};
}

class PrintedSheet : public testing::TestWithParam<NamedSize> {
  protected:
    // Prints into a PDF file, the way a printer is painted on.
    bool print(const std::vector<PdfPage>& pages, int first = 0, int last = 0) {
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(path());
        (void)prepare(printer, pages.front().media);
        return paintOn(printer, pages, first, last);
    }
    QString path() const { return m_folder.filePath(QStringLiteral("printed.pdf")); }

  private:
    QTemporaryDir m_folder;
};

#define NEEDS(program)                                            \
    if (!isInstalled(QStringLiteral(program))) {                  \
        GTEST_SKIP() << "SKIPPED: " program " is not installed."; \
    }

TEST_P(PrintedSheet, IsOfItsSizeWithTheContentAtActualSize) {
    NEEDS("pdftoppm");
    for (const Size sheet : {GetParam().size, GetParam().size.turned()}) {
        ASSERT_TRUE(print({sheetOf(sheet)}));
        const double ppi = 300;
        const QImage image = renderedPage(path(), 1, 300);
        // The print system rounds paper to whole points, 1/72 in.
        EXPECT_NEAR(image.width() / ppi, sheet.width.toInches(), 1 / 72.0);
        EXPECT_NEAR(image.height() / ppi, sheet.height.toInches(), 1 / 72.0);
        const auto across = darkInRow(image, image.height() / 2, ppi);
        const auto down = darkInColumn(image, image.width() / 2, ppi);
        ASSERT_TRUE(across && down);
        EXPECT_NEAR(across->first, 1, 1 / ppi);
        EXPECT_NEAR(down->first, 1, 1 / ppi);
        EXPECT_NEAR(across->end - across->first, sheet.width.toInches() - 2, 1.5 / ppi);
        EXPECT_NEAR(down->end - down->first, sheet.height.toInches() - 2, 1.5 / ppi);
    }
}

INSTANTIATE_TEST_SUITE_P(Catalogue, PrintedSheet,
                         testing::ValuesIn(sheetSizes().begin(), sheetSizes().end()),
                         [](const auto& given) {
                             std::string name(given.param.id);
                             std::ranges::replace(name, '.', '_');
                             return name;
                         });

class SheetPrinter : public PrintedSheet {};

TEST_F(SheetPrinter, AsksForUprightPaperTurnedByItsOrientation) {
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    EXPECT_TRUE(prepare(printer, {Length::inches(11), Length::inches(8, 1, 2)}));
    EXPECT_EQ(printer.pageLayout().pageSize().id(), QPageSize::Letter);
    EXPECT_EQ(printer.pageLayout().orientation(), QPageLayout::Landscape);
    EXPECT_TRUE(printer.fullPage());
    EXPECT_EQ(printer.pageLayout().fullRect(QPageLayout::Inch), QRectF(0, 0, 11, 8.5));
    EXPECT_EQ(printer.pageLayout().paintRect(QPageLayout::Inch), QRectF(0, 0, 11, 8.5));
}

TEST_F(SheetPrinter, ReplacesWhatADialogMayHaveChosen) {
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setPageSize(QPageSize(QPageSize::A5));
    printer.setPageOrientation(QPageLayout::Landscape);
    printer.setFullPage(false);
    printer.setDuplex(QPrinter::DuplexLongSide);
    (void)prepare(printer, findSheetSize("a4")->size);
    EXPECT_EQ(printer.pageLayout().pageSize().id(), QPageSize::A4);
    EXPECT_EQ(printer.pageLayout().orientation(), QPageLayout::Portrait);
    EXPECT_TRUE(printer.fullPage());
    EXPECT_EQ(printer.duplex(), QPrinter::DuplexNone);
}

TEST_F(SheetPrinter, PrintsTheRangeOfPagesThatWasAskedFor) {
    NEEDS("pdfinfo");
    const std::vector<PdfPage> pages(4, sheetOf(findSheetSize("letter")->size));
    const auto count = [&] {
        const QByteArray text = outputOf(QStringLiteral("pdfinfo"), {path()});
        return text.mid(text.indexOf("Pages:") + 6).simplified().split(' ').first().toInt();
    };
    ASSERT_TRUE(print(pages));
    EXPECT_EQ(count(), 4);
    ASSERT_TRUE(print(pages, 2, 3));
    EXPECT_EQ(count(), 2);
    ASSERT_TRUE(print(pages, 3, 9));
    EXPECT_EQ(count(), 2);
    EXPECT_FALSE(print(pages, 5, 9));
}

TEST_F(SheetPrinter, SaysWhenItCannotStart) {
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(QStringLiteral("/no-such-folder/printed.pdf"));
    (void)prepare(printer, findSheetSize("letter")->size);
    EXPECT_FALSE(paintOn(printer, {sheetOf(findSheetSize("letter")->size)}));
}

TEST_F(SheetPrinter, KeepsWishesThatDoNotChangeTheSize) {
    const QStringList given = {QStringLiteral("number-up"),     QStringLiteral("4"),
                               QStringLiteral("media-type"),    QStringLiteral("photo"),
                               QStringLiteral("print-scaling"), QStringLiteral("fit")};
    const QStringList kept = {QStringLiteral("print-scaling"), QStringLiteral("none"),
                              QStringLiteral("media-type"), QStringLiteral("photo")};
    EXPECT_EQ(atActualSize(given), kept);
    EXPECT_EQ(atActualSize(kept), kept);
    EXPECT_EQ(atActualSize({}).size(), 2);
}

TEST_F(SheetPrinter, ReachesAsFarAsThePrinterSays) {
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    (void)prepare(printer, findSheetSize("letter")->size);
    EXPECT_EQ(unreachableEdge(printer), Length());
}

TEST_F(SheetPrinter, APrinterThatListsNothingOffersNoSheet) {
    EXPECT_FALSE(offersSheet(QPrinterInfo(), findSheetSize("letter")->size));
}

}  // namespace
}  // namespace matwright::app
