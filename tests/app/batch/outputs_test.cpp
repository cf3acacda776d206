// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <QImage>

#include "core/measure/catalogue.h"
#include "tests/app/batch/batch_run.h"

namespace matwright::app {
namespace {

BatchRun withPage() {
    BatchRun batch;
    batch.addSketch("page.svg", smallSketch());
    return batch;
}

bool startsWith(const std::string& text, const std::string& start) {
    return text.rfind(start, 0) == 0;
}

TEST(BatchTemplate, IsAnSvgOfTheTrueSize) {
    BatchRun batch = withPage();
    EXPECT_EQ(batch.run({"template", "page.svg", "-o", "out.svg"}), Done);
    EXPECT_EQ(batch.out, "Wrote out.svg: 12 × 12 in page in one piece\n");
    const std::string& svg = batch.files.files.at("out.svg");
    EXPECT_NE(svg.find("width=\"304.8mm\""), std::string::npos);
    EXPECT_NE(svg.find("height=\"304.8mm\""), std::string::npos);
    EXPECT_EQ(batch.paintingStarts, 0);  // an SVG needs no fonts
}

TEST(BatchTemplate, IsAPdfWhereTheNameSaysSoInAnyCase) {
    BatchRun batch = withPage();
    EXPECT_EQ(batch.run({"template", "page.svg", "-o", "out.PDF"}), Done);
    EXPECT_TRUE(startsWith(batch.files.files.at("out.PDF"), "%PDF-1.7"));
    EXPECT_EQ(batch.paintingStarts, 1);
}

TEST(BatchTemplate, TiledSvgsAreNumberedAndNamedAsTheSheetsAre) {
    BatchRun batch = withPage();
    EXPECT_EQ(batch.run({"template", "page.svg", "-o", "out.svg", "--tiled"}), Done);
    for (const char* name : {"out-1-A1.svg", "out-2-A2.svg", "out-3-B1.svg", "out-4-B2.svg"}) {
        ASSERT_TRUE(batch.files.files.contains(name)) << name;
        EXPECT_NE(batch.files.files[name].find("width=\"215.9mm\""), std::string::npos);
    }
    EXPECT_EQ(batch.files.files.size(), 5u);
    EXPECT_FALSE(batch.files.files.contains("out.svg"));
}

TEST(BatchTemplate, ADoublePageIsTiledPageByPage) {
    Sketch sketch = smallSketch();
    sketch.page.doublePage = true;
    BatchRun batch;
    batch.addSketch("page.svg", sketch);
    EXPECT_EQ(batch.run({"template", "page.svg", "-o", "out.svg", "--tiled"}), Done);
    for (const char* name :
         {"out-1-left-A1.svg", "out-4-left-B2.svg", "out-5-right-A1.svg", "out-8-right-B2.svg"}) {
        EXPECT_TRUE(batch.files.files.contains(name)) << name;
    }
    EXPECT_EQ(batch.files.files.size(), 9u);
    EXPECT_EQ(batch.run({"template", "page.svg", "-o", "out.pdf", "--tiled"}), Done);
    EXPECT_TRUE(
        batch.out.ends_with("Wrote out.pdf: Two pages of 12 × 12 in on 8 Letter sheets, "
                            "joined with 1/4 in overlap\n"))
        << batch.out;
}

TEST(BatchTemplate, TiledPdfHoldsAllSheets) {
    BatchRun batch = withPage();
    EXPECT_EQ(batch.run({"template", "page.svg", "-o", "out.pdf", "--tiled", "--sheet", "a3",
                         "--overlap", "1/2"}),
              Done);
    EXPECT_EQ(batch.out,
              "Wrote out.pdf: 12 × 12 in page on 2 A3 sheets, joined with 1/2 in overlap\n");
}

TEST(BatchTemplate, CanLeavePartsOut) {
    BatchRun batch = withPage();
    ASSERT_EQ(batch.run({"template", "page.svg", "-o", "all.svg"}), Done);
    for (const char* option :
         {"--no-labels", "--no-dimensions", "--no-guides", "--no-check-squares"}) {
        ASSERT_EQ(batch.run({"template", "page.svg", "-o", "some.svg", option}), Done);
        EXPECT_NE(batch.files.files["some.svg"], batch.files.files["all.svg"]) << option;
    }
    ASSERT_EQ(batch.run({"template", "page.svg", "-o", "some.svg", "--note", "For Ma’s album"}),
              Done);
    EXPECT_NE(batch.files.files["some.svg"].find("For Ma’s album"), std::string::npos);
}

TEST(BatchCutLines, AreAnSvgOfTheTrueSize) {
    BatchRun batch = withPage();
    EXPECT_EQ(batch.run({"cutlines", "page.svg", "-o", "cut.svg"}), Done);
    EXPECT_NE(batch.files.files.at("cut.svg").find("width=\"304.8mm\""), std::string::npos);
    EXPECT_EQ(batch.files.files.at("cut.svg").find("<text"), std::string::npos);
}

TEST(BatchPicture, IsAPngAsWideAsAsked) {
    BatchRun batch = withPage();
    EXPECT_EQ(batch.run({"picture", "page.svg", "-o", "page.png", "--width", "333"}), Done);
    const std::string& bytes = batch.files.files.at("page.png");
    const QImage image = QImage::fromData(QByteArray::fromStdString(bytes), "PNG");
    EXPECT_EQ(image.size(), QSize(333, 333));
    EXPECT_EQ(batch.out, "Wrote page.png: 333 × 333 pixels\n");
}

TEST(BatchPicture, OfEveryCataloguePageIsExactlyAsWideAsAsked) {
    for (const NamedSize& page : pageSizes()) {
        BatchRun batch;
        Sketch sketch = blankSketch();
        sketch.page.size = page.size;
        batch.addSketch("page.svg", sketch);
        for (const int width : {1, 97, 640, 1001}) {
            ASSERT_EQ(
                batch.run({"picture", "page.svg", "-o", "p.png", "--width", std::to_string(width)}),
                Done);
            const QImage image =
                QImage::fromData(QByteArray::fromStdString(batch.files.files["p.png"]), "PNG");
            EXPECT_EQ(image.width(), width) << page.id;
        }
    }
}

TEST(BatchOutputs, NeverGoOverTheSketchItself) {
    BatchRun batch = withPage();
    const std::string before = batch.files.files["page.svg"];
    EXPECT_EQ(batch.run({"template", "page.svg", "-o", "page.svg"}), WrongUse);
    EXPECT_EQ(batch.run({"cutlines", "page.svg", "-o", "./page.svg"}), WrongUse);
    EXPECT_EQ(batch.err,
              "matwright-batch: ./page.svg: This is the sketch itself; give the result "
              "another name.\n");
    EXPECT_EQ(batch.files.files["page.svg"], before);
}

TEST(BatchOutputs, SayWhenTheyCannotBeWritten) {
    BatchRun batch = withPage();
    batch.files.failReplacesWith = Error{ErrorCode::WriteFailed, "The disk is full.", "out.svg"};
    EXPECT_EQ(batch.run({"template", "page.svg", "-o", "out.svg"}), CouldNotWrite);
    EXPECT_EQ(batch.err, "matwright-batch: out.svg: The disk is full.\n");
    EXPECT_EQ(batch.out, "");
    EXPECT_EQ(batch.run({"cutlines", "page.svg", "-o", "out.svg"}), CouldNotWrite);
    EXPECT_EQ(batch.run({"picture", "page.svg", "-o", "out.png"}), CouldNotWrite);
    EXPECT_EQ(batch.run({"template", "page.svg", "-o", "out.pdf", "--tiled"}), CouldNotWrite);
}

}  // namespace
}  // namespace matwright::app
