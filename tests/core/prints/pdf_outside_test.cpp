// SPDX-License-Identifier: MIT
// What poppler's and qpdf's programs find in the PDF of prints.
#include <gtest/gtest.h>

#include <sstream>

#include "core/prints/rendering.h"
#include "tests/core/prints/print_probe.h"
#include "tests/support/busy_photo.h"
#include "tests/support/outside_tool.h"
#include "tests/support/tool_run.h"

namespace matwright {

namespace {

class PrintPdf : public testing::Test {
  protected:
    void SetUp() override {
        if (!test::hasTool("pdfinfo") || !test::hasTool("pdfimages") || !test::hasTool("qpdf")) {
            GTEST_SKIP() << "SKIPPED: pdfinfo, pdfimages or qpdf is not installed.";
        }
        photo.path = test::writeBusyPhoto(place / "photo.jpg", {1200, 1800}, 5);
        options.format = PrintFormat::Pdf;
    }
    std::string write(const Result<std::string>& pdf) {
        EXPECT_TRUE(pdf);
        test::writeFile(place / "print.pdf", pdf ? *pdf : "");
        return (place / "print.pdf").string();
    }
    // The four numbers behind "TrimBox:" and the like.
    static std::vector<double> boxIn(const std::string& info, const std::string& name) {
        std::istringstream text(info.substr(info.find(name + ":") + name.size() + 1));
        std::vector<double> box(4);
        for (double& side : box) {
            text >> side;
        }
        return box;
    }
    test::TemporaryFolder place;
    Photo photo;
    PrintOptions options;
};

TEST_F(PrintPdf, HasThePaperAsItsPage) {
    // An A6 print, in points by arithmetic from 25.4 mm to the inch: 297.638 x 419.528.
    const Size a6{Length::millimetres(105), Length::millimetres(148)};
    const std::string file = write(printFile(test::plainPrint(a6), photo, options));
    const std::string info = test::runTool({"pdfinfo", "-box", file}).output;
    EXPECT_NEAR(boxIn(info, "MediaBox")[2], 297.638, 0.01);
    EXPECT_NEAR(boxIn(info, "MediaBox")[3], 419.528, 0.01);
    EXPECT_NE(info.find("PDF version:     1.7"), std::string::npos) << info;
    EXPECT_EQ(test::runTool({"qpdf", "--check", file}).code, 0);
    const std::string json = test::runTool({"qpdf", "--json", file}).output;
    EXPECT_NE(json.find("\"/PrintScaling\": \"/None\""), std::string::npos);
    EXPECT_NE(json.find("\"/PickTrayByPDFSize\": true"), std::string::npos);
    EXPECT_NE(json.find("/ICCBased"), std::string::npos);
}

TEST_F(PrintPdf, HasTrimAndBleedBoxes) {
    options.bleed = Length::inches(0, 1, 8);
    Print print = test::plainPrint({Length::inches(5), Length::inches(7)});
    print.trim = Rect::at({Length::inches(0, 1, 2), Length::inches(0, 1, 4)},
                          {Length::inches(4), Length::inches(6)});
    print.window = {Length::inches(4), Length::inches(6)};
    const std::string info =
        test::runTool({"pdfinfo", "-box", write(printFile(print, photo, options))}).output;
    // Counted from the bottom: 7 - 6 1/4 = 3/4 in is 54 pt.
    EXPECT_EQ(boxIn(info, "TrimBox"), (std::vector<double>{36, 54, 324, 486}));
    EXPECT_EQ(boxIn(info, "BleedBox"), (std::vector<double>{27, 45, 333, 495}));
}

TEST_F(PrintPdf, CarriesTheJpegToTheByte) {
    const Print print = test::plainPrint({Length::inches(4), Length::inches(6)});
    const std::string file = write(printFile(print, photo, options));
    const std::string list = test::runTool({"pdfimages", "-list", file}).output;
    EXPECT_NE(list.find("1200  1800  icc"), std::string::npos) << list;
    ASSERT_EQ(test::runTool({"pdfimages", "-all", file, "inside"}, place.path()).code, 0);
    PrintOptions asJpeg = options;
    asJpeg.format = PrintFormat::Jpeg;
    const auto jpeg = printFile(print, photo, asJpeg);
    ASSERT_TRUE(jpeg);
    EXPECT_EQ(test::readFile(place / "inside-000.jpg"), *jpeg);
}

TEST_F(PrintPdf, IsEqualForEqualPrints) {
    const Print print = test::plainPrint({Length::inches(2), Length::inches(3)});
    EXPECT_EQ(*printFile(print, photo, options), *printFile(print, photo, options));
}

TEST_F(PrintPdf, HasAPageForEveryPrint) {
    const std::vector<Print> prints{test::plainPrint({Length::inches(2), Length::inches(3)}),
                                    test::plainPrint({Length::inches(3), Length::inches(2)})};
    const auto photoOf = [&](PhotoId) -> const Photo& { return photo; };
    const std::string file = write(printsPdf(prints, "A page", photoOf, options));
    const std::string info = test::runTool({"pdfinfo", "-l", "2", file}).output;
    EXPECT_NE(info.find("Pages:           2"), std::string::npos) << info;
    EXPECT_NE(info.find("144 x 216"), std::string::npos) << info;
    EXPECT_NE(info.find("216 x 144"), std::string::npos) << info;
    EXPECT_NE(info.find("A page"), std::string::npos) << info;
    EXPECT_FALSE(printsPdf({}, "Nothing", photoOf, options));
}

TEST_F(PrintPdf, ShowsThePrintsPixels) {
    if (!test::hasTool("pdftocairo")) {
        GTEST_SKIP() << "SKIPPED: pdftocairo is not installed.";
    }
    const Print print = test::plainPrint({Length::inches(2), Length::inches(3)});
    const std::string file = write(printFile(print, photo, options));
    ASSERT_EQ(test::runTool({"pdftocairo", "-r", "300", "-png", "-singlefile", file, "shown"},
                            place.path())
                  .code,
              0);
    const auto shown = decodePhoto(place / "shown.png", 0);
    const auto rendered = renderPrint(print, photo, options);
    ASSERT_TRUE(shown && rendered);
    const double db = test::psnr(*shown, *rendered);
    std::printf("PDF rendered by poppler: %.1f dB of the print (JPEG quality 95)\n", db);
    EXPECT_GE(db, 40);
}

}  // namespace

}  // namespace matwright
