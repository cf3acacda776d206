// SPDX-License-Identifier: MIT
#include "app/prints/page_export.h"

#include <QPainter>

#include "tests/app/prints/prints_fixture.h"
#include "tests/support/temporary_folder.h"

namespace matwright::app {
namespace {

class PageExportTest : public PrintsFixture {};

TEST_F(PageExportTest, PageIsAsLargeAsItSaysAndShowsPhotosAndPapers) {
    const PieceId slot =
        addSlot({Length::inches(2), Length::inches(2)}, {Length::inches(4), Length::inches(6)});
    put(addPhoto(4, {900, 1200}), slot);
    Edit edit;
    edit.pieces[slot] = making.sketch.pieces.at(slot);
    edit.pieces[slot]->mats.push_back({Length::inches(0, 1, 2), {}, "kraft"});
    ASSERT_TRUE(apply(making.sketch, edit));
    making.work.papers["kraft"] = PaperLook{{150, 110, 70}, {}, {}, {}};
    const auto page = pageImage(making, 50);
    ASSERT_TRUE(page);
    EXPECT_EQ(page->picture.size(), QSize(600, 600));
    EXPECT_TRUE(page->missing.isEmpty());
    EXPECT_EQ(page->picture.pixelColor(85, 200), QColor(150, 110, 70));
    EXPECT_EQ(page->picture.pixelColor(550, 550), QColor(Qt::white));
    // The photo's middle against its own file, cropped by hand: 3:4 to 2:3 keeps the height.
    const QImage photo(QString::fromStdString(making.work.photos.at(PhotoId{1}).path));
    const QColor there = page->picture.pixelColor(100 + 100, 100 + 150);
    const QColor own = photo.scaled(225, 300, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                           .pixelColor(112, 150);
    EXPECT_NEAR(there.red(), own.red(), 16);
    EXPECT_NEAR(there.green(), own.green(), 16);
    EXPECT_NEAR(there.blue(), own.blue(), 16);
}

TEST_F(PageExportTest, PaperPictureHasItsWidthInTruth) {
    QImage halves(40, 20, QImage::Format_RGB32);
    halves.fill(Qt::red);
    QPainter(&halves).fillRect(20, 0, 20, 20, Qt::blue);
    const auto file = folder() / "paper.png";
    ASSERT_TRUE(halves.save(QString::fromStdString(file)));
    Piece strip;
    strip.kind = PieceKind::Strip;
    strip.place = {Length::inches(1), Length::inches(1)};
    strip.size = {Length::inches(8), Length::inches(2)};
    strip.paper = "stripes";
    ASSERT_TRUE(apply(making.sketch, addPieces(making.sketch, std::span(&strip, 1))));
    making.work.papers["stripes"] = PaperLook{{}, file.string(), {}, Length::inches(4)};
    const auto page = pageImage(making, 50);
    ASSERT_TRUE(page);
    // Two inches red, two blue, from the strip's left edge on.
    EXPECT_EQ(page->picture.pixelColor(50 + 50, 100), QColor(Qt::red));
    EXPECT_EQ(page->picture.pixelColor(50 + 150, 100), QColor(Qt::blue));
    EXPECT_EQ(page->picture.pixelColor(50 + 250, 100), QColor(Qt::red));
}

TEST_F(PageExportTest, MissingPhotosAreNamedAndGrey) {
    const PieceId slot =
        addSlot({Length::inches(2), Length::inches(2)}, {Length::inches(4), Length::inches(6)});
    put(addPhoto(4, {900, 1200}), slot);
    making.work.photos.at(PhotoId{1}).path = "/nowhere/lost.jpg";
    const auto page = pageImage(making, 50);
    ASSERT_TRUE(page);
    ASSERT_EQ(page->missing.size(), 1);
    EXPECT_TRUE(page->missing.front().startsWith(QStringLiteral("lost.jpg: ")));
}

TEST_F(PageExportTest, AFileThatHoldsAnotherPictureNowIsGreyAndNamed) {
    const PieceId slot =
        addSlot({Length::inches(2), Length::inches(2)}, {Length::inches(4), Length::inches(6)});
    put(addPhoto(4, {900, 1200}), slot);
    Piece strip;
    strip.kind = PieceKind::Strip;
    strip.size = {Length::inches(8), Length::inches(1)};
    strip.paper = "stripes";
    ASSERT_TRUE(apply(making.sketch, addPieces(making.sketch, std::span(&strip, 1))));
    const std::string paper = folder() / "paper.png";
    QImage plain(20, 20, QImage::Format_RGB32);
    plain.fill(Qt::red);
    ASSERT_TRUE(plain.save(QString::fromStdString(paper)));
    making.work.papers["stripes"] =
        PaperLook{{}, paper, contentKeyOf(test::readFile(paper)), Length::inches(4)};
    EXPECT_TRUE(pageImage(making, 50)->missing.isEmpty());
    test::writeJpeg(making.work.photos.at(PhotoId{1}).path, test::paintedPhoto(5, {900, 1200}), {});
    plain.fill(Qt::blue);
    ASSERT_TRUE(plain.save(QString::fromStdString(paper)));
    const auto page = pageImage(making, 50);
    ASSERT_TRUE(page);
    ASSERT_EQ(page->missing.size(), 2);
    EXPECT_TRUE(page->missing.filter(QStringLiteral("another picture")).size() == 2)
        << page->missing.join(u'\n').toStdString();
    EXPECT_NE(page->picture.pixelColor(100, 20), QColor(Qt::blue));
}

TEST_F(PageExportTest, FilesCarryTheDensityAndThePdfIsThePage) {
    const auto page = pageImage(making, 30);
    ASSERT_TRUE(page);
    const auto png = pageFile(making, *page, PrintFormat::Png, 30, "Page");
    ASSERT_TRUE(png);
    EXPECT_EQ(QImage::fromData(QByteArray::fromStdString(*png)).size(), QSize(360, 360));
    const auto pdf = pageFile(making, *page, PrintFormat::Pdf, 30, "Page");
    ASSERT_TRUE(pdf);
    EXPECT_TRUE(pdf->starts_with("%PDF-1.7"));
}

TEST_F(PageExportTest, TooLargeAPictureIsRefusedWithASentence) {
    making.sketch.page.size = {Length::inches(40), Length::inches(40)};
    const auto page = pageImage(making, 600);
    ASSERT_FALSE(page);
    EXPECT_EQ(page.error().code, ErrorCode::TooLarge);
    EXPECT_FALSE(pageImage(making, 601));
}

}  // namespace
}  // namespace matwright::app
