// SPDX-License-Identifier: MIT
// What poppler's and qpdf's programs find in the files for the printers.
#include "core/printplan/sheet_files.h"

#include <gtest/gtest.h>

#include <functional>
#include <sstream>

#include "tests/core/printplan/made_plans.h"
#include "tests/support/busy_photo.h"
#include "tests/support/outside_tool.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/tool_run.h"

namespace matwright {

namespace {

using test::inches;

class SheetFiles : public testing::Test {
  protected:
    PlanInput input(const std::vector<Size>& prints) {
        PlanPage page = test::madePage("A page", prints);
        const auto file = test::writeBusyPhoto(m_folder / "photo.jpg", {1600, 1200}, 3);
        for (auto& [id, photo] : page.making.work.photos) {
            photo.path = file;
            photo.content = contentKeyOf(test::readFile(file));
            photo.upright = {1600, 1200};
        }
        std::vector<Printer> printers = test::keptPrinters();
        printers.erase(printers.begin() + 1);
        return test::inputOf({page}, printers);
    }
    test::TemporaryFolder m_folder;
};

TEST_F(SheetFiles, AreOneAPrinterWithPagesOfThePapersExactSize) {
    if (!test::hasTool("pdfinfo") || !test::hasTool("pdfimages") || !test::hasTool("qpdf")) {
        GTEST_SKIP() << "SKIPPED: pdfinfo, pdfimages or qpdf is not installed.";
    }
    PlanInput plan = input({inches(3, 4), inches(3, 4), inches(8, 10)});
    plan.printers[0].papers[0].withoutBorders = *correctionOf(
        inches(3, 5), {Length::inches(3, 1, 20), Length::inches(5, 1, 10)}, "2026-07-14");
    const PrintPlan made = test::soundPlan(plan);
    const auto files = sheetFiles(made, plan.printers, {});
    ASSERT_TRUE(files) << files.error().text();
    ASSERT_EQ(files->size(), 2U);
    EXPECT_EQ((*files)[0].name, "Small printer.pdf");
    EXPECT_EQ((*files)[1].name, "Print shop.pdf");
    // PWG 5101.1: index-4x6 is 10160x15240, govt-letter 20320x25400 (1/100 mm): 288 x 432 pt and
    // 576 x 720 pt.
    const std::pair<double, double> sizes[] = {{288, 432}, {576, 720}};
    for (std::size_t i = 0; i < 2; ++i) {
        test::writeFile(m_folder / "out.pdf", (*files)[i].bytes);
        const std::string file = m_folder / "out.pdf";
        const std::string info = test::runTool({"pdfinfo", "-box", file}).output;
        for (const char* box : {"MediaBox:", "TrimBox:"}) {
            std::istringstream text(info.substr(info.find(box) + std::string(box).size()));
            double left = 1;
            double bottom = 1;
            double right = 0;
            double top = 0;
            text >> left >> bottom >> right >> top;
            EXPECT_NEAR(left, 0, 0.001);
            EXPECT_NEAR(bottom, 0, 0.001);
            EXPECT_NEAR(right, sizes[i].first, 0.01) << info;
            EXPECT_NEAR(top, sizes[i].second, 0.01) << info;
        }
        EXPECT_NE(info.find("Pages:           1"), std::string::npos) << info;
        EXPECT_EQ(test::runTool({"qpdf", "--check", file}).code, 0);
        const std::string json = test::runTool({"qpdf", "--json", file}).output;
        EXPECT_NE(json.find("\"/PrintScaling\": \"/None\""), std::string::npos);
        const std::string images = test::runTool({"pdfimages", "-list", file}).output;
        EXPECT_NE(images.find("   300   300 "), std::string::npos) << images;
    }
}

TEST_F(SheetFiles, HaveSafeNamesAndNoTwoAlike) {
    PlanInput plan = input({inches(3, 4), inches(8, 10)});
    plan.printers[0].name = "../up: and \"away\"";
    plan.printers[1].name = ".. up- and -away-";
    const PrintPlan made = test::soundPlan(plan);
    const auto files = sheetFiles(made, plan.printers, {});
    ASSERT_TRUE(files) << files.error().text();
    ASSERT_EQ(files->size(), 2U);
    EXPECT_EQ((*files)[0].name, "-.-up- and -away-.pdf");
    EXPECT_EQ((*files)[1].name, "-. up- and -away-.pdf");
    plan.printers[1].name = plan.printers[0].name;
    const auto same = sheetFiles(made, plan.printers, {});
    EXPECT_EQ((*same)[1].name, "-.-up- and -away- (2).pdf");
}

TEST_F(SheetFiles, AreRefusedWhereThePrintersAreNotAsPlanned) {
    const PlanInput input = this->input({inches(3, 4), inches(8, 10)});
    const PrintPlan made = test::soundPlan(input);
    ASSERT_EQ(made.sheets.size(), 2U);
    ASSERT_TRUE(sheetFiles(made, input.printers, {}));
    const auto refused = [&](const std::function<void(std::vector<Printer>&)>& change) {
        std::vector<Printer> printers = input.printers;
        change(printers);
        const auto files = sheetFiles(made, printers, {});
        const auto sheet = renderSheet(made, made.sheets[0], printers, {});
        return !files && files.error().code == ErrorCode::NotFound && !sheet &&
               sheet.error().code == ErrorCode::NotFound &&
               files.error().sentence.contains("Plan anew");
    };
    ASSERT_EQ(made.sheets[0].paper, input.printers[0].papers[0].id);
    EXPECT_FALSE(refused([](auto&) {}));
    EXPECT_TRUE(refused([](auto& printers) { printers.erase(printers.begin()); }));
    EXPECT_TRUE(
        refused([](auto& printers) { printers[0].papers.erase(printers[0].papers.begin()); }));
    EXPECT_TRUE(refused([](auto& printers) { printers[0].papers[0].borderless = false; }));
    EXPECT_TRUE(refused([](auto& printers) { printers[0].papers[0].size = inches(5, 7); }));
    // What was measured since is made up for.
    EXPECT_FALSE(refused([](auto& printers) {
        printers[0].papers[0].withoutBorders = *correctionOf(
            inches(3, 5), {Length::inches(3, 1, 20), Length::inches(5, 1, 10)}, "2026-07-14");
    }));
}

TEST_F(SheetFiles, AreRefusedWhereAPrintLiesInMarginsThatAreWiderNow) {
    PlanInput input = this->input({inches(3, 4)});
    input.printers.resize(1);
    input.printers[0].papers.resize(1);
    input.printers[0].papers[0].borderless = false;
    const PrintPlan made = test::soundPlan(input);
    ASSERT_EQ(made.sheets.size(), 1U);
    ASSERT_TRUE(sheetFiles(made, input.printers, {}));
    input.printers[0].papers[0].margin.left = Length::inches(1);
    EXPECT_EQ(sheetFiles(made, input.printers, {}).error().code, ErrorCode::NotFound);
}

}  // namespace

}  // namespace matwright
