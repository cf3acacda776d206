// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/papers/papers_store.h"
#include "tests/app/batch/batch_run.h"
#include "tests/support/temporary_folder.h"

namespace matwright::app {
namespace {

struct WithPapers : BatchRun {
    WithPapers() {
        dataFolder = folder.path() / "data";
        addSketch("page.sketch.svg", smallSketch());
    }
    std::vector<PaperOnHand> listed() {
        auto store = PapersStore::open(dataFolder / "papers.sqlite");
        return store->list().value();
    }
    void addAll() {
        EXPECT_EQ(run({"papers", "add", "white", "--size", "12x12", "--count", "2"}), Done) << err;
        EXPECT_EQ(run({"papers", "add", "Navy", "--size", "8.5x11"}), Done) << err;
        EXPECT_EQ(run({"papers", "add", "wave", "--size", "12 x 1", "--scrap"}), Done) << err;
    }

    test::TemporaryFolder folder;
};

TEST(BatchPapers, AddsListsAndTakesBack) {
    WithPapers batch;
    EXPECT_EQ(batch.run({"papers", "list"}), Done);
    EXPECT_EQ(batch.out, "There are no papers on hand.\n");
    EXPECT_EQ(
        batch.run({"papers", "add", "blue dots", "--size", "5 1/2 x 7 in", "--scrap", "--up",
                   "--two-sided", "--count", "3", "--thickness", "216 gsm", "--colour", "#5a783c"}),
        Done)
        << batch.err;
    EXPECT_EQ(batch.out, "Added 3 × blue dots, 5 1/2 × 7 in.\n");
    PaperOnHand wanted;
    wanted.id = {1};
    wanted.name = "blue dots";
    wanted.size = {Length::inches(5, 1, 2), Length::inches(7)};
    wanted.count = 3;
    wanted.kind = PaperKind::Scrap;
    wanted.pattern = PaperPattern::HasUp;
    wanted.sides = PaperSides::Two;
    wanted.thickness = "216 gsm";
    wanted.colour = {0x5a, 0x78, 0x3c};
    EXPECT_EQ(batch.listed(), std::vector{wanted});
    EXPECT_EQ(batch.run({"papers", "list"}), Done);
    EXPECT_EQ(batch.out,
              "Name       Size          Count  Kind   Pattern  Sides  Thickness\n"
              "blue dots  5 1/2 × 7 in      3  scrap  up       two    216 gsm\n");
    EXPECT_EQ(batch.run({"papers", "list", "--json"}), Done);
    const auto json = nlohmann::json::parse(batch.out);
    EXPECT_EQ(json["papers"][0]["colour"], "#5a783c");
    EXPECT_EQ(json["papers"][0]["size"]["width"]["text"], "5 1/2 in");
    EXPECT_EQ(batch.run({"papers", "undo"}), Done);
    EXPECT_EQ(batch.out, "Taken back: Add blue dots\n");
    EXPECT_TRUE(batch.listed().empty());
    EXPECT_EQ(batch.run({"papers", "undo"}), Findings);
    EXPECT_EQ(batch.run({"papers", "redo"}), Done);
    EXPECT_EQ(batch.out, "Brought back: Add blue dots\n");
    EXPECT_EQ(batch.listed(), std::vector{wanted});
}

TEST(BatchPapers, WhatCannotBeAPaperIsRefused) {
    WithPapers batch;
    for (const std::vector<std::string>& wrong :
         {std::vector<std::string>{"papers", "add", "kraft"},
          {"papers", "add", "kraft", "--size", "large"},
          {"papers", "add", " ", "--size", "12x12"},
          {"papers", "add", "kraft", "--size", "12x12", "--count", "10001"},
          {"papers", "add", "kraft", "--size", "12x12", "--colour", "brown"},
          {"papers", "add", "kraft", "--size", "12x12", "--picture", "kraft.png"},
          {"papers", "sell"}}) {
        EXPECT_EQ(batch.run(wrong), WrongUse) << wrong.back();
        EXPECT_FALSE(batch.err.empty());
    }
    EXPECT_FALSE(std::filesystem::exists(batch.dataFolder / "papers.sqlite"));
}

TEST(BatchPapers, ExportAndImportAreATable) {
    WithPapers batch;
    batch.addAll();
    EXPECT_EQ(batch.run({"papers", "export", "papers.csv"}), Done);
    EXPECT_EQ(batch.out, "Wrote papers.csv: 3 papers\n");
    const std::string table = batch.files.files["papers.csv"];
    EXPECT_EQ(batch.run({"papers", "export", "papers.csv"}), CouldNotWrite);
    EXPECT_EQ(batch.files.files["papers.csv"], table);
    const std::string other = (batch.folder.path() / "other.sqlite").string();
    EXPECT_EQ(batch.run({"papers", "import", "papers.csv", "--store", other}), Done) << batch.err;
    EXPECT_EQ(batch.out, "Added 3 papers.\n");
    EXPECT_EQ(batch.run({"papers", "export", "again.csv", "--store", other}), Done);
    EXPECT_EQ(batch.files.files["again.csv"], table);
    batch.files.files["faulty.csv"] = "name,width,height\nkraft,12,12\nkraft,wide,12\n";
    EXPECT_EQ(batch.run({"papers", "import", "faulty.csv"}), InputRefused);
    EXPECT_NE(batch.err.find("faulty.csv: Line 3: Width is \"wide\""), std::string::npos)
        << batch.err;
    EXPECT_EQ(batch.run({"papers", "export", "papers.txt"}), WrongUse);
}

TEST(BatchPapers, ATableOfWhatIsThereAlreadyDoesNotDoubleTheList) {
    WithPapers batch;
    batch.addAll();
    const auto before = batch.listed();
    EXPECT_EQ(batch.run({"papers", "export", "papers.csv"}), Done);
    EXPECT_EQ(batch.run({"papers", "import", "papers.csv"}), Done) << batch.err;
    EXPECT_EQ(batch.out,
              "3 papers are on the list already and not added; --all adds them all the same.\n"
              "Added 0 papers.\n");
    EXPECT_EQ(batch.listed(), before);
    EXPECT_EQ(batch.run({"papers", "undo"}), Done);
    EXPECT_EQ(batch.out, "Taken back: Add wave\n");
    EXPECT_EQ(batch.run({"papers", "import", "papers.csv"}), Done);
    EXPECT_EQ(batch.listed().size(), 3U);
    EXPECT_EQ(batch.run({"papers", "import", "papers.csv", "--all"}), Done);
    EXPECT_EQ(batch.out, "Added 3 papers.\n");
    EXPECT_EQ(batch.listed().size(), 6U);
}

TEST(BatchCut, TellsSheetsPiecesAndSteps) {
    WithPapers batch;
    batch.addAll();
    EXPECT_EQ(batch.run({"cut", "page.sketch.svg"}), Done) << batch.err;
    for (const char* words :
         {"3 sheets, proved cheapest.", "Sheet 1: ", "white, 12 × 12 in", "Navy, 8 1/2 × 11 in",
          "wave, 12 × 1 in, a scrap", "A: inner mat under lighthouse (no. 1)", "  1. ",
          "Set the trimmer to ", "Cut away from your hand"}) {
        EXPECT_NE(batch.out.find(words), std::string::npos) << words << "\n" << batch.out;
    }
    EXPECT_EQ(batch.listed().size(), 3U);
}

TEST(BatchCut, SaysWhatIsToBeBoughtAndWhatCannotBeCut) {
    WithPapers batch;
    EXPECT_EQ(batch.run({"cut", "page.sketch.svg"}), Done) << batch.err;
    EXPECT_NE(batch.out.find("To buy: 1 sheet of navy, 12 × 12 in"), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(batch.dataFolder));
    EXPECT_EQ(batch.run({"cut", "page.sketch.svg", "--buy", "8x8", "--buy", "a4"}), Findings);
    EXPECT_NE(batch.out.find("it fits on no sheet of wave"), std::string::npos) << batch.out;
    EXPECT_EQ(batch.run({"cut", "page.sketch.svg", "--buy-nothing"}), Findings);
    EXPECT_NE(batch.out.find("There is no wave on hand."), std::string::npos);
    Sketch bare = smallSketch();
    bare.pieces.begin()->second.mats[0].paper.clear();
    batch.addSketch("bare.sketch.svg", bare);
    EXPECT_EQ(batch.run({"cut", "bare.sketch.svg"}), Findings);
    EXPECT_NE(batch.out.find("Needs a paper: inner mat under lighthouse"), std::string::npos);
}

TEST(BatchCut, APageThatIsNamedTwiceIsPlannedOnce) {
    WithPapers batch;
    EXPECT_EQ(batch.run({"cut", "page.sketch.svg"}), Done);
    const std::string once = batch.out;
    EXPECT_EQ(batch.run({"cut", "page.sketch.svg", "./page.sketch.svg"}), Done);
    EXPECT_EQ(batch.out, once);
    EXPECT_NE(batch.err.find("named twice"), std::string::npos) << batch.err;
}

TEST(BatchCut, JsonIsExact) {
    WithPapers batch;
    batch.addAll();
    EXPECT_EQ(batch.run({"cut", "page.sketch.svg", "--json"}), Done);
    const auto json = nlohmann::json::parse(batch.out);
    ASSERT_EQ(json["sheets"].size(), 3U);
    EXPECT_TRUE(json["provedCheapest"]);
    const auto& sheet = json["sheets"][0];
    EXPECT_EQ(sheet["source"], "on hand");
    EXPECT_EQ(sheet["pieces"][0]["letter"], "A");
    EXPECT_FALSE(sheet["steps"].empty());
}

TEST(BatchCut, TakesOffWhatIsCutAndThatCanBeTakenBack) {
    WithPapers batch;
    batch.addAll();
    const auto before = batch.listed();
    EXPECT_EQ(batch.run({"cut", "page.sketch.svg", "--take-off"}), Done) << batch.err;
    EXPECT_NE(batch.out.find("Took 3 sheets off the list and put "), std::string::npos);
    EXPECT_NE(batch.listed(), before);
    EXPECT_EQ(batch.run({"papers", "undo"}), Done);
    EXPECT_EQ(batch.out, "Taken back: Cut papers for Small\n");
    EXPECT_EQ(batch.listed(), before);
}

TEST(BatchCut, TheSamePapersAreTakenOffOnceUnlessToldSo) {
    WithPapers batch;
    EXPECT_EQ(batch.run({"papers", "add", "white", "--size", "12x12", "--count", "9"}), Done);
    EXPECT_EQ(batch.run({"papers", "add", "navy", "--size", "12x12", "--count", "9"}), Done);
    const std::vector<std::string> call{"cut", "page.sketch.svg", "--take-off"};
    EXPECT_EQ(batch.run(call), Done) << batch.err;
    const auto once = batch.listed();
    EXPECT_EQ(batch.run(call), Findings);
    EXPECT_NE(batch.err.find("were taken off the list already on 20"), std::string::npos)
        << batch.err;
    EXPECT_NE(batch.err.find("Cut papers for Small"), std::string::npos) << batch.err;
    EXPECT_EQ(batch.listed(), once);
    EXPECT_EQ(batch.run({"cut", "page.sketch.svg", "--take-off", "--again"}), Done) << batch.err;
    EXPECT_NE(batch.listed(), once);
    EXPECT_EQ(batch.run(call), Findings);
    EXPECT_EQ(batch.run({"papers", "undo"}), Done);
    EXPECT_EQ(batch.run({"papers", "undo"}), Done);
    EXPECT_EQ(batch.run(call), Done) << batch.err;
    EXPECT_EQ(batch.listed().size(), once.size());
    EXPECT_EQ(batch.listed().front().count, once.front().count);
    EXPECT_EQ(batch.run({"cut", "page.sketch.svg", "--again"}), WrongUse);
}

TEST(BatchCut, WritesAPdfAndPicturesButNeverOverAFile) {
    WithPapers batch;
    DiskFileStore disk;
    const auto pdf = batch.folder.path() / "plan.pdf";
    const auto pictures = batch.folder.path() / "pictures";
    const auto page = batch.folder.path() / "page.sketch.svg";
    ASSERT_TRUE(disk.replace(page, batch.files.files["page.sketch.svg"]));
    batch.disk = &disk;
    const std::vector<std::string> call{"cut",   page.string(), "--pdf",   pdf.string(),
                                        "--svg", pictures,      "--sheet", "a4"};
    EXPECT_EQ(batch.run(call), Done) << batch.err;
    EXPECT_EQ(batch.paintingStarts, 1);
    EXPECT_TRUE(test::readFile(pdf).starts_with("%PDF-1.7"));
    EXPECT_NE(test::readFile(pictures / "sheet-1.svg").find("<svg"), std::string::npos);
    EXPECT_TRUE(std::filesystem::exists(pictures / "sheet-3.svg"));
    EXPECT_EQ(batch.run(call), CouldNotWrite);
    EXPECT_EQ(batch.run({"cut", page.string(), "--pdf", "plan.txt"}), WrongUse);
}

TEST(BatchCut, BesideFilesTheJsonStaysJson) {
    WithPapers batch;
    DiskFileStore disk;
    const auto page = batch.folder.path() / "page.sketch.svg";
    ASSERT_TRUE(disk.replace(page, batch.files.files["page.sketch.svg"]));
    batch.disk = &disk;
    const std::vector<std::string> call{"cut",   page.string(),
                                        "--pdf", batch.folder.path() / "plan.pdf",
                                        "--svg", batch.folder.path() / "pictures",
                                        "--json"};
    EXPECT_EQ(batch.run(call), Done) << batch.err;
    EXPECT_EQ(nlohmann::json::parse(batch.out)["sheets"].size(), 3U);
    EXPECT_TRUE(std::filesystem::exists(batch.folder.path() / "pictures" / "sheet-3.svg"));
}

TEST(BatchCut, WrongWishesAreRefused) {
    WithPapers batch;
    EXPECT_EQ(batch.run({"cut"}), WrongUse);
    EXPECT_EQ(batch.run({"cut", "nowhere.sketch.svg"}), InputRefused);
    EXPECT_EQ(batch.run({"cut", "page.sketch.svg", "--glue-edge", "-1"}), WrongUse);
    EXPECT_EQ(batch.run({"cut", "page.sketch.svg", "--buy", "huge"}), WrongUse);
    EXPECT_EQ(batch.run({"cut", "page.sketch.svg", "--buy", "12x12", "--buy-nothing"}), WrongUse);
    for (const char* seconds : {"-3", "nan", "-nan", "inf", "3601", "soon"}) {
        EXPECT_EQ(batch.run({"cut", "page.sketch.svg", "--seconds", seconds}), WrongUse) << seconds;
    }
}

}  // namespace
}  // namespace matwright::app
