// SPDX-License-Identifier: MIT
#include "app/rendering/pdf.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "app/rendering/pdf_boxes.h"
#include "core/measure/catalogue.h"
#include "tests/app/rendering/read_back.h"

namespace matwright::app {
namespace {

constexpr Colour black{0, 0, 0};
const double inch = Length::ticksPerInch;

DrawingItem block(const Rect& box) {
    Path path;
    path.start = vertexAt(box.topLeft());
    path.lineTo({vertexAt(box.bottomRight()).x, vertexAt(box.topLeft()).y});
    path.lineTo(vertexAt(box.bottomRight()));
    path.lineTo({vertexAt(box.topLeft()).x, vertexAt(box.bottomRight()).y});
    path.closed = true;
    return PathItem{{path}, {}, black};
}

// A drawing that is black from 1/4 in inside every edge.
Drawing blockInside(Size size) {
    Drawing drawing;
    drawing.size = size;
    drawing.layers.push_back(
        {"all", "All", {block(Rect::at({}, size).expanded(-Length::inches(0, 1, 4)))}});
    return drawing;
}

PdfPage sheetOf(Size size) {
    return {blockInside(size), size, {}, {}};
}

std::vector<NamedSize> wholeCatalogue() {
    std::vector<NamedSize> all;
    for (const auto& part : {pageSizes(), printSizes(), sheetSizes()}) {
        all.insert(all.end(), part.begin(), part.end());
    }
    return all;
}

class Pdf : public testing::Test {
  protected:
    QString saved(const QByteArray& bytes) {
        const QString path = m_folder.filePath(QStringLiteral("a.pdf"));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return path;
    }

  private:
    QTemporaryDir m_folder;
};

#define NEEDS(program)                                            \
    if (!isInstalled(QStringLiteral(program))) {                  \
        GTEST_SKIP() << "SKIPPED: " program " is not installed."; \
    }

std::vector<double> numbersAfter(const QByteArray& text, const QByteArray& key) {
    const QRegularExpression pattern(QString::fromLatin1(key) + QStringLiteral("([-0-9. \n]+)"));
    std::vector<double> numbers;
    const QString found = pattern.match(QString::fromLatin1(text)).captured(1);
    for (const QString& word :
         found.split(QRegularExpression(QStringLiteral("\\s+")), Qt::SkipEmptyParts)) {
        numbers.push_back(word.toDouble());
    }
    return numbers;
}

class PdfOfSize : public Pdf, public testing::WithParamInterface<NamedSize> {};

TEST_P(PdfOfSize, HasExactBoxes) {
    NEEDS("qpdf");
    const Size size = GetParam().size;
    const Result<QByteArray> pdf = pdfBytes({sheetOf(size)}, QStringLiteral("A page"));
    ASSERT_TRUE(pdf) << pdf.error().text();
    const QString path = saved(*pdf);
    const QByteArray text =
        outputOf(QStringLiteral("qpdf"),
                 {QStringLiteral("--qdf"), QStringLiteral("--object-streams=disable"), path,
                  QStringLiteral("-")});
    for (const char* key : {"/MediaBox \\[", "/TrimBox \\["}) {
        const std::vector<double> box = numbersAfter(text, key);
        ASSERT_EQ(box.size(), 4u) << key;
        EXPECT_EQ(box[0], 0);
        EXPECT_EQ(box[1], 0);
        EXPECT_NEAR(box[2], size.width.toPoints(), 0.001);
        EXPECT_NEAR(box[3], size.height.toPoints(), 0.001);
    }
}

TEST_P(PdfOfSize, HasItsContentAtTrueSizeFromTheTopLeftCorner) {
    NEEDS("pdftoppm");
    const Size size = GetParam().size;
    const Result<QByteArray> pdf = pdfBytes({sheetOf(size)}, QStringLiteral("A page"));
    ASSERT_TRUE(pdf);
    const QString path = saved(*pdf);
    const double ppi = 300;
    const QImage image = renderedPage(path, 1, 300);
    ASSERT_FALSE(image.isNull());
    const auto across = darkInRow(image, image.height() / 2, ppi);
    const auto down = darkInColumn(image, image.width() / 2, ppi);
    ASSERT_TRUE(across && down);
    const double onePixel = 1 / ppi;
    EXPECT_NEAR(across->first, 0.25, onePixel);
    EXPECT_NEAR(across->end, size.width.toInches() - 0.25, onePixel);
    EXPECT_NEAR(down->first, 0.25, onePixel);
    EXPECT_NEAR(down->end, size.height.toInches() - 0.25, onePixel);
}

INSTANTIATE_TEST_SUITE_P(Catalogue, PdfOfSize, testing::ValuesIn(wholeCatalogue()));

}  // namespace
}  // namespace matwright::app

namespace matwright {

// What a failing test shows instead of bytes.
void PrintTo(const NamedSize& size, std::ostream* out) {
    *out << size.id;
}

}  // namespace matwright

namespace matwright::app {
namespace {

TEST_F(Pdf, SaysTheSameBoxesToPoppler) {
    NEEDS("pdfinfo");
    const Size a4 = findSheetSize("a4")->size;
    const Result<QByteArray> pdf = pdfBytes({sheetOf(a4)}, QStringLiteral("A4"));
    ASSERT_TRUE(pdf);
    const QByteArray text =
        outputOf(QStringLiteral("pdfinfo"), {QStringLiteral("-box"), saved(*pdf)});
    // 210 x 297 mm (ISO 216) in points of 1/72 in.
    EXPECT_EQ(numbersAfter(text, "MediaBox:"), (std::vector{0.0, 0.0, 595.28, 841.89}));
    EXPECT_TRUE(text.contains("PDF version:     1.7"));
    EXPECT_TRUE(text.contains("Title:           A4"));
    EXPECT_FALSE(text.contains("CreationDate"));
}

TEST_F(Pdf, PagesMayDifferInSizeOffsetAndTrim) {
    NEEDS("pdfinfo");
    NEEDS("pdftoppm");
    const Size page = {Length::inches(4), Length::inches(6)};
    const Size letter = findSheetSize("letter")->size;
    const Point offset{Length::inches(2), Length::inches(1)};
    const Result<QByteArray> pdf =
        pdfBytes({sheetOf({Length::millimetres(148), Length::millimetres(105)}),
                  {blockInside(page), letter, Rect::at(offset, page), offset}},
                 QStringLiteral("Two"));
    ASSERT_TRUE(pdf);
    const QString path = saved(*pdf);
    const QByteArray text =
        outputOf(QStringLiteral("pdfinfo"),
                 {QStringLiteral("-box"), QStringLiteral("-f"), QStringLiteral("1"),
                  QStringLiteral("-l"), QStringLiteral("2"), path});
    EXPECT_EQ(numbersAfter(text, "Page +1 MediaBox:"), (std::vector{0.0, 0.0, 419.53, 297.64}));
    EXPECT_EQ(numbersAfter(text, "Page +2 MediaBox:"), (std::vector{0.0, 0.0, 612.0, 792.0}));
    // From the bottom: 11 - 1 - 6 = 4 in.
    EXPECT_EQ(numbersAfter(text, "Page +2 TrimBox:"), (std::vector{144.0, 288.0, 432.0, 720.0}));
    const QImage image = renderedPage(path, 2, 300);
    const auto across = darkInRow(image, 1200, 300);
    const auto down = darkInColumn(image, 1200, 300);
    ASSERT_TRUE(across && down);
    EXPECT_NEAR(across->first, 2.25, 1 / 300.0);
    EXPECT_NEAR(across->end, 5.75, 1 / 300.0);
    EXPECT_NEAR(down->first, 1.25, 1 / 300.0);
    EXPECT_NEAR(down->end, 6.75, 1 / 300.0);
}

Drawing lettered(const std::string& text, bool bold = false) {
    Drawing drawing = blockInside({Length::inches(6), Length::inches(4)});
    drawing.layers.push_back(
        {"words",
         "Words",
         {TextItem{{0.5 * inch, 0.2 * inch}, Length::points(11), text, {}, {}, false, black},
          TextItem{{3 * inch, 0.2 * inch}, Length::points(11), text, {}, {}, bold, black}}});
    return drawing;
}

TEST_F(Pdf, TextStaysTextInEmbeddedFontsAndNothingBecomesPixels) {
    NEEDS("pdftotext");
    const Drawing drawing = lettered("Trim 3 1/2 × 5 in", true);
    const Result<QByteArray> pdf = pdfBytes({{drawing, drawing.size, {}, {}}}, {});
    ASSERT_TRUE(pdf);
    const QString path = saved(*pdf);
    const QByteArray text = outputOf(QStringLiteral("pdftotext"), {path, QStringLiteral("-")});
    EXPECT_EQ(text.count("Trim 3 1/2 × 5 in"), 2);
    const QByteArrayList fonts =
        outputOf(QStringLiteral("pdffonts"), {path}).trimmed().split('\n').mid(2);
    ASSERT_EQ(fonts.size(), 2);  // plain and bold
    for (const QByteArray& line : fonts) {
        // name, type, encoding, embedded, subset, to Unicode, object ID
        const QRegularExpression embedded(QStringLiteral("Identity-H +yes +(yes|no) +yes"));
        EXPECT_TRUE(embedded.match(QString::fromLatin1(line)).hasMatch()) << line.toStdString();
        EXPECT_TRUE(line.contains("DejaVuSans")) << line.toStdString();
    }
    EXPECT_EQ(outputOf(QStringLiteral("pdfimages"), {QStringLiteral("-list"), path})
                  .trimmed()
                  .count('\n'),
              1);  // two lines of heading, no image
}

TEST_F(Pdf, IsSoundAndAsksForTrueSizeInPrint) {
    NEEDS("qpdf");
    const Drawing drawing = lettered("abc");
    const Result<QByteArray> pdf = pdfBytes({{drawing, drawing.size, {}, {}}}, {});
    ASSERT_TRUE(pdf);
    const QString path = saved(*pdf);
    int exitCode = -1;
    outputOf(QStringLiteral("qpdf"), {QStringLiteral("--check"), path}, &exitCode);
    EXPECT_EQ(exitCode, 0);
    const QByteArray text =
        outputOf(QStringLiteral("qpdf"),
                 {QStringLiteral("--qdf"), QStringLiteral("--object-streams=disable"), path,
                  QStringLiteral("-")});
    EXPECT_TRUE(text.contains("/PrintScaling /None"));
    EXPECT_TRUE(text.contains("/PickTrayByPDFSize true"));
    EXPECT_FALSE(text.contains("/UserUnit"));
}

TEST_F(Pdf, EqualPagesGiveEqualBytes) {
    const Drawing drawing = lettered("abc", true);
    const std::vector<PdfPage> pages(2, PdfPage{drawing, drawing.size, {}, {}});
    EXPECT_EQ(pdfBytes(pages, QStringLiteral("x")), pdfBytes(pages, QStringLiteral("x")));
    EXPECT_NE(pdfBytes(pages, QStringLiteral("x")), pdfBytes(pages, QStringLiteral("y")));
}

TEST_F(Pdf, RefusesSheetsNoReaderTakes) {
    const Length limit = maxPdfSide;
    const Length tick = Length::fromTicks(1);
    EXPECT_TRUE(pdfBytes({sheetOf({limit, limit})}, {}));
    EXPECT_EQ(pdfBytes({sheetOf({limit + tick, limit})}, {}).error().code, ErrorCode::Unsupported);
    EXPECT_EQ(pdfBytes({sheetOf({limit, limit + tick})}, {}).error().code, ErrorCode::Unsupported);
    EXPECT_EQ(pdfBytes({{{}, {Length{}, limit}, {}, {}}}, {}).error().code, ErrorCode::Unsupported);
    EXPECT_EQ(pdfBytes({}, {}).error().code, ErrorCode::Unsupported);
}

TEST(PdfBoxesOf, RefusesWhatIsNoPdfOrHasOtherPages) {
    EXPECT_EQ(withTrueBoxes("no PDF", {}).error().code, ErrorCode::WriteFailed);
    const Result<QByteArray> one = pdfBytes({sheetOf({Length::inches(4), Length::inches(6)})}, {});
    ASSERT_TRUE(one);
    EXPECT_EQ(withTrueBoxes(*one, {}).error().code, ErrorCode::WriteFailed);
}

}  // namespace
}  // namespace matwright::app
