// SPDX-License-Identifier: MIT
#include "app/batch/printing_commands.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/printers/printing_store.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/app/batch/batch_run.h"
#include "tests/support/busy_photo.h"
#include "tests/support/outside_tool.h"
#include "tests/support/temporary_folder.h"

namespace matwright::app {
namespace {

// A page with one 6x4 slot and a photo in it; printers and prints in a folder of their own.
struct WithPrinters : BatchRun {
    WithPrinters() {
        disk = &store;
        commands = makePhotoCommands();
        photoCommands = commands.get();
        dataFolder = place / "data";
        test::writeFile(place / "page.sketch.svg", writeSketch(smallSketch()));
        test::writeBusyPhoto(place / "beach.jpg", {2400, 1800}, 3);
        test::writeFile(place / "list.json",
                        R"({"sketch": "page.sketch.svg",
                            "photos": [{"photo": "beach.jpg", "slot": 1}]})");
        EXPECT_EQ(run({"page", at("list.json"), "-o", at("new.page.svg")}), Done) << err;
    }
    std::string at(const char* name) const { return place / name; }
    nlohmann::json jsonOf(std::vector<std::string> arguments, int code = Done) {
        arguments.emplace_back("--json");
        EXPECT_EQ(run(arguments), code) << err;
        return nlohmann::json::parse(out);
    }

    test::TemporaryFolder place;
    DiskFileStore store;
    std::unique_ptr<PhotoCommands> commands;
};

TEST(BatchPrinters, AreListedAddedMeasuredAndTakenOut) {
    WithPrinters batch;
    EXPECT_EQ(batch.jsonOf({"printers", "list"}).size(), 3U);
    EXPECT_EQ(batch.run({"printers", "add", "Upstairs", "--paper", "4x6", "--paper", "a4",
                         "--margin", "1/4", "--price", "35", "--at-hand", "40"}),
              Done)
        << batch.err;
    const auto all = batch.jsonOf({"printers", "list"});
    ASSERT_EQ(all.size(), 4U);
    EXPECT_EQ(all[3]["papers"][1]["size"]["width"]["mm"], 210);
    EXPECT_EQ(all[3]["papers"][0]["atHand"], 40);
    EXPECT_EQ(all[3]["papers"][0]["margin"]["left"]["text"], "1/4 in");
    // 3 in are meant across a 4x6, 5 in down.
    EXPECT_EQ(batch.run({"printers", "measured", "Small printer", "4x6", "--across", "3 1/16",
                         "--down", "129mm"}),
              Done)
        << batch.err;
    EXPECT_NE(batch.out.find("2.1 % too large across and 1.6 % too large down"), std::string::npos)
        << batch.out;
    EXPECT_EQ(batch.run({"printers", "measured", "small PRINTER", "4x6", "--across", "4"}),
              WrongUse);
    EXPECT_NE(batch.err.find("too far off"), std::string::npos) << batch.err;
    EXPECT_EQ(batch.run({"printers", "remove", "Upstairs", "--paper", "a4"}), Done) << batch.err;
    EXPECT_EQ(batch.run({"printers", "remove", "Upstairs"}), Done) << batch.err;
    EXPECT_EQ(batch.run({"printers", "remove", "Upstairs"}), InputRefused);
    EXPECT_NE(batch.err.find("\"Small printer\""), std::string::npos) << batch.err;
    EXPECT_EQ(batch.run({"printers", "list"}), Done);
    EXPECT_NE(batch.out.find("+2.1 % across"), std::string::npos) << batch.out;
}

TEST(BatchPrinters, OneMeasureLeavesTheOtherWayAsItWas) {
    WithPrinters batch;
    EXPECT_EQ(batch.run({"printers", "measured", "Small printer", "4x6", "--across", "3.06"}),
              WrongUse);
    EXPECT_NE(batch.err.find("--down"), std::string::npos) << batch.err;
    EXPECT_EQ(batch.run({"printers", "measured", "Small printer", "4x6", "--across", "3.06",
                         "--down", "5.05"}),
              Done)
        << batch.err;
    EXPECT_EQ(batch.run({"printers", "measured", "Small printer", "4x6", "--across", "3.03"}), Done)
        << batch.err;
    // 3.03 / 3 and 5.05 / 5 are both 1 % too large.
    EXPECT_NE(batch.out.find("1.0 % too large across and 1.0 % too large down"), std::string::npos)
        << batch.out;
}

TEST(BatchPrinters, OfNearlyOneNameAreToldApartExactlyAndAShopBecomesOne) {
    WithPrinters batch;
    EXPECT_EQ(batch.run({"printers", "add", "Upstairs", "--paper", "4x6"}), Done) << batch.err;
    PrintingStore kept = *PrintingStore::open(batch.dataFolder / printingStoreName);
    Printer other;
    other.name = "UPSTAIRS";
    ASSERT_TRUE(kept.add(other));
    EXPECT_EQ(batch.run({"printers", "remove", "upstairs"}), InputRefused);
    EXPECT_NE(batch.err.find("Several printers"), std::string::npos) << batch.err;
    EXPECT_EQ(batch.run({"printers", "add", "upstairs", "--paper", "5x7"}), InputRefused);
    EXPECT_EQ(batch.run({"printers", "add", "Upstairs", "--print-shop"}), Done) << batch.err;
    EXPECT_EQ(batch.run({"printers", "remove", "UPSTAIRS"}), Done) << batch.err;
    const auto all = batch.jsonOf({"printers", "list"});
    ASSERT_EQ(all.size(), 4U);
    EXPECT_EQ(all[3]["name"], "Upstairs");
    EXPECT_EQ(all[3]["kind"], "print shop");
}

TEST(BatchTestSheet, IsAPdfOfThePapersSizeAndNeverWrittenOver) {
    WithPrinters batch;
    EXPECT_EQ(batch.run({"test-sheet", "Small printer", "4x6", batch.at("test.pdf")}), Done)
        << batch.err;
    EXPECT_NE(batch.out.find("A to B should be 3 in, C to D 5 in"), std::string::npos) << batch.out;
    EXPECT_EQ(batch.run({"test-sheet", "Small printer", "4x6", batch.at("test.pdf")}),
              CouldNotWrite);
    EXPECT_EQ(batch.run({"test-sheet", "Small printer", "4x6", batch.at("test.svg")}), WrongUse);
    EXPECT_EQ(batch.run({"test-sheet", "Small printer", "4x6", batch.at("c.pdf"), "--corrected"}),
              WrongUse);
    if (test::hasTool("pdfinfo")) {
        // 4 x 6 in are 288 x 432 pt (PWG 5101.1 na_index-4x6).
        EXPECT_NE(test::outputOf("pdfinfo -box " + batch.at("test.pdf"))
                      .find("MediaBox:            0.00     0.00   288.00   432.00"),
                  std::string::npos);
    }
}

TEST(BatchPrintPlan, TellsSheetsAndMakesFilesOnce) {
    WithPrinters batch;
    const auto plan = batch.jsonOf({"print-plan", batch.at("new.page.svg"), "--pdf",
                                    batch.at("out"), "--cuts", batch.at("cuts.pdf")});
    ASSERT_EQ(plan["sheets"].size(), 1U);
    EXPECT_EQ(plan["bound"], "1 sheet, proved cheapest");
    EXPECT_EQ(plan["sheets"][0]["printer"], "Small printer");
    EXPECT_EQ(plan["sheets"][0]["prints"][0]["page"], "new");
    EXPECT_EQ(plan["sheets"][0]["prints"][0]["turned"], true);
    EXPECT_TRUE(std::filesystem::exists(batch.at("out/Small printer.pdf")));
    EXPECT_TRUE(std::filesystem::exists(batch.at("cuts.pdf")));
    EXPECT_EQ(batch.run({"print-plan", batch.at("new.page.svg"), "--pdf", batch.at("out")}),
              CouldNotWrite);
    EXPECT_NE(batch.err.find("stays as it is"), std::string::npos) << batch.err;
}

TEST(BatchPrintPlan, SaysWhatIsLeftOutWithAnExitCodeOfItsOwn) {
    WithPrinters batch;
    EXPECT_EQ(batch.run({"printers", "add", "Tiny", "--paper", "2x2"}), Done);
    EXPECT_EQ(batch.run({"print-plan", batch.at("new.page.svg"), "--printer", "tiny"}), Findings)
        << batch.err;
    EXPECT_NE(batch.out.find("Left out"), std::string::npos) << batch.out;
    EXPECT_EQ(batch.run({"print-plan", batch.at("new.page.svg"), "--printer", "none"}),
              InputRefused);
    EXPECT_EQ(batch.run({"print-plan", batch.at("gone.page.svg")}), InputRefused);
}

TEST(BatchPrintPlan, RecordedAsPrintedIsNotPrintedAgainUntilItIsTakenBack) {
    WithPrinters batch;
    EXPECT_EQ(batch.run({"print-plan", batch.at("new.page.svg"), "--printed"}), Done) << batch.err;
    EXPECT_EQ(batch.jsonOf({"prints-on-hand", "list", "--all"}).size(), 1U);
    EXPECT_EQ(batch.jsonOf({"prints-on-hand", "list"}).size(), 0U);
    const auto again = batch.jsonOf({"print-plan", batch.at("new.page.svg")});
    EXPECT_EQ(again["sheets"].size(), 0U);
    EXPECT_EQ(again["there"].size(), 1U);
    EXPECT_EQ(batch.run({"prints-on-hand", "undo"}), Done) << batch.err;
    EXPECT_EQ(batch.jsonOf({"print-plan", batch.at("new.page.svg")})["sheets"].size(), 1U);
    EXPECT_EQ(batch.run({"prints-on-hand", "undo"}), InputRefused);
}

TEST(BatchPrintsOnHand, AreUsedWastedAndPutBack) {
    WithPrinters batch;
    EXPECT_EQ(batch.run({"print-plan", batch.at("new.page.svg"), "--printed"}), Done) << batch.err;
    EXPECT_EQ(batch.run({"prints-on-hand", "put-back", "1"}), Done) << batch.err;
    // On hand and just what the page needs: taken.
    EXPECT_EQ(batch.jsonOf({"print-plan", batch.at("new.page.svg")})["taken"].size(), 1U);
    EXPECT_EQ(batch.run({"prints-on-hand", "use", "1", "--page", "Harbour"}), Done) << batch.err;
    EXPECT_EQ(batch.run({"prints-on-hand", "use", "1", "--page", "Other"}), InputRefused);
    EXPECT_NE(batch.err.find("Harbour"), std::string::npos) << batch.err;
    EXPECT_EQ(batch.run({"prints-on-hand", "waste", "1", "77"}), InputRefused);
    EXPECT_NE(batch.err.find("None of them was changed"), std::string::npos) << batch.err;
    EXPECT_EQ(batch.jsonOf({"prints-on-hand", "list", "--all"})[0]["state"], "used");
    EXPECT_EQ(batch.run({"prints-on-hand", "waste", "1"}), Done) << batch.err;
    EXPECT_EQ(batch.jsonOf({"prints-on-hand", "list", "--all"})[0]["state"], "wasted");
}

TEST(BatchPrintsOnHand, AnEmptyListSaysWhichPrintsThereAreNone) {
    WithPrinters batch;
    EXPECT_EQ(batch.run({"prints-on-hand", "list"}), Done);
    EXPECT_EQ(batch.out, "No print is on hand.\n");
    EXPECT_EQ(batch.run({"prints-on-hand", "list", "--all"}), Done);
    EXPECT_EQ(batch.out, "There are no prints.\n");
}

TEST(BatchPrintPlan, RefusesAWrongNameBeforeAnythingIsMadeAndSaysWhereNothingIs) {
    WithPrinters batch;
    EXPECT_EQ(batch.run({"print-plan", batch.at("new.page.svg"), "--pdf", batch.at("out"), "--cuts",
                         batch.at("cuts.svg"), "--printed"}),
              WrongUse);
    EXPECT_FALSE(std::filesystem::exists(batch.at("out")));
    EXPECT_EQ(batch.jsonOf({"prints-on-hand", "list", "--all"}).size(), 0U);
    EXPECT_EQ(batch.run({"print-plan", batch.at("new.page.svg"), "--printed"}), Done) << batch.err;
    EXPECT_EQ(batch.run({"print-plan", batch.at("new.page.svg"), "--pdf", batch.at("out")}), Done);
    EXPECT_NE(batch.out.find("no files were made"), std::string::npos) << batch.out;
}

// Both pages are made from the sketch "Small", with the same photo and crop.
TEST(BatchPrintPlan, PagesOfOneSketchDoNotAnswerForEachOther) {
    WithPrinters batch;
    EXPECT_EQ(batch.run({"page", batch.at("list.json"), "-o", batch.at("next.page.svg")}), Done);
    EXPECT_EQ(batch.run({"print-plan", batch.at("new.page.svg"), "--printed"}), Done) << batch.err;
    const auto next = batch.jsonOf({"print-plan", batch.at("next.page.svg")});
    EXPECT_EQ(next["sheets"].size(), 1U);
    EXPECT_EQ(next["there"].size(), 0U);
}

TEST(BatchPrintPlan, FillsTheRoomWithWhatWaitingPagesNeed) {
    WithPrinters batch;
    EXPECT_EQ(batch.run({"printers", "add", "Large", "--paper", "8x10"}), Done) << batch.err;
    test::writeBusyPhoto(batch.place / "boat.jpg", {2400, 1800}, 4);
    test::writeFile(batch.place / "list2.json",
                    R"({"sketch": "page.sketch.svg",
                        "photos": [{"photo": "boat.jpg", "slot": 1}]})");
    EXPECT_EQ(batch.run({"page", batch.at("list2.json"), "-o", batch.at("next.page.svg")}), Done);
    const auto plan =
        batch.jsonOf({"print-plan", batch.at("new.page.svg"), "--waiting",
                      batch.at("next.page.svg"), "--printer", "Large", "--fill", "--printed"});
    ASSERT_EQ(plan["sheets"].size(), 1U);
    EXPECT_EQ(plan["sheets"][0]["prints"].size(), 2U);
    EXPECT_EQ(batch.jsonOf({"prints-on-hand", "list"})[0]["photo"], "boat.jpg");
    EXPECT_EQ(batch.jsonOf({"print-plan", batch.at("next.page.svg")})["taken"].size(), 1U);
}

}  // namespace
}  // namespace matwright::app
