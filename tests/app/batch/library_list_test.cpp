// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>

#include "app/batch/library_table.h"
#include "core/filestore/displaced_file.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/app/batch/library_run.h"

namespace matwright::app {
namespace {

using Words = std::vector<std::string>;

TEST(LibraryList, IsATableInTheOrderOfNames) {
    LibraryRun batch;
    batch.keep("10.sketch.svg", pageOf("Page 10", {spot(4, 6, 1, 1)}));
    batch.keep("trip/9.sketch.svg",
               pageOf("Page 9", {spot(3, 3, 1, 1), spot(5, 7, 5, 1), spot(3, 3, 1, 5)}));
    EXPECT_EQ(batch.library({"list"}), Done);
    EXPECT_EQ(batch.out,
              "Name     Page        Photos  Prints        Tags  Path\n"
              "Page 9   12 × 12 in       3  5×7, two 3×3        trip/9.sketch.svg\n"
              "Page 10  12 × 12 in       1  4×6                 10.sketch.svg\n"
              "2 of 2 sketches\n");
    EXPECT_EQ(batch.err, "");
    EXPECT_EQ(batch.paintingStarts, 0);
}

TEST(LibraryList, InJsonCarriesEveryLengthExactly) {
    LibraryRun batch;
    batch.keep("page.sketch.svg", smallSketch());
    EXPECT_EQ(batch.library({"list", "--json"}), Done);
    const nlohmann::json all = batch.answer();
    EXPECT_EQ(all["sketchesInLibrary"], 1);
    EXPECT_EQ(all["problems"], nlohmann::json::array());
    ASSERT_EQ(all["sketches"].size(), 1U);
    const nlohmann::json& page = all["sketches"][0];
    EXPECT_EQ(page["name"], "Small");
    EXPECT_EQ(page["path"], "page.sketch.svg");
    EXPECT_EQ(page["page"]["size"]["width"]["ticks"], 12 * 914400);
    EXPECT_EQ(page["page"]["doublePage"], false);
    EXPECT_EQ(page["photos"],
              nlohmann::json::parse(R"({"all": 1, "upright": 0, "lying": 1, "square": 0})"));
    EXPECT_EQ(page["prints"][0]["size"]["width"]["text"], "4 in");  // the short side first
    EXPECT_EQ(page["prints"][0]["count"], 1);
    EXPECT_EQ(page["tags"], nlohmann::json::array());
    EXPECT_EQ(page["favourite"], false);
    EXPECT_TRUE(page["lastUsed"].is_null());
    EXPECT_EQ(page["content"].get<std::string>().size(), 32U);
}

TEST(LibraryList, FollowsTheOrderAskedFor) {
    LibraryRun batch;
    batch.keep("a.sketch.svg", pageOf("A", {}));
    batch.keep("b.sketch.svg", pageOf("B", {}));
    const auto now = std::filesystem::file_time_type::clock::now();
    std::filesystem::last_write_time(batch.libraryFolder / "a.sketch.svg",
                                     now - std::chrono::hours(2));
    std::filesystem::last_write_time(batch.libraryFolder / "b.sketch.svg",
                                     now - std::chrono::hours(1));
    EXPECT_EQ(batch.library({"list", "--json"}), Done);
    EXPECT_EQ(batch.paths(), (Words{"a.sketch.svg", "b.sketch.svg"}));
    EXPECT_EQ(batch.library({"list", "--json", "--order", "newest"}), Done);
    EXPECT_EQ(batch.paths(), (Words{"b.sketch.svg", "a.sketch.svg"}));
}

TEST(LibraryList, KeepsItsIndexInTheCacheUnlessToldNotTo) {
    LibraryRun batch;
    batch.keep("a.sketch.svg", pageOf("A", {}));
    EXPECT_EQ(batch.library({"list", "--no-index"}), Done);
    EXPECT_FALSE(std::filesystem::exists(batch.cacheFolder));
    const std::string without = batch.out;
    EXPECT_EQ(batch.library({"list"}), Done);
    EXPECT_TRUE(std::filesystem::exists(batch.cacheFolder));
    EXPECT_EQ(batch.out, without);
    EXPECT_EQ(batch.library({"list"}), Done);  // from the index now
    EXPECT_EQ(batch.out, without);
}

TEST(LibraryList, LeavesNothingInTheLibrary) {
    LibraryRun batch;
    batch.keep("a.sketch.svg", pageOf("A", {}));
    EXPECT_EQ(batch.library({"list"}), Done);
    int names = 0;
    for (const auto& entry : std::filesystem::directory_iterator(batch.libraryFolder)) {
        EXPECT_EQ(entry.path().filename(), "a.sketch.svg");
        ++names;
    }
    EXPECT_EQ(names, 1);
}

TEST(LibraryList, NamesEachProblemOnceAndGoesOn) {
    LibraryRun batch;
    batch.keep("good.sketch.svg", pageOf("Good", {}));
    test::writeFile(batch.libraryFolder / "bad\nname.sketch.svg", "no sketch");
    test::writeFile(batch.libraryFolder / "torn\xff.sketch.svg", "<svg");
    for (int round = 0; round < 2; ++round) {  // read, then remembered
        EXPECT_EQ(batch.library({"list"}), Done);
        EXPECT_EQ(std::ranges::count(batch.err, '\n'), 2) << batch.err;
        EXPECT_NE(batch.err.find("matwright-batch: bad\\x0aname.sketch.svg: "), std::string::npos)
            << batch.err;
        EXPECT_NE(batch.err.find("matwright-batch: torn\\xff.sketch.svg: "), std::string::npos)
            << batch.err;
        EXPECT_NE(batch.out.find("1 of 1 sketches"), std::string::npos) << batch.out;
    }
    EXPECT_EQ(batch.library({"problems"}), Findings);
    EXPECT_EQ(std::ranges::count(batch.out, '\n'), 2) << batch.out;
    EXPECT_EQ(batch.out.rfind("bad\\x0aname.sketch.svg: ", 0), 0U) << batch.out;
    EXPECT_EQ(batch.err, "");
    EXPECT_EQ(batch.library({"problems", "--json"}), Findings);
    ASSERT_EQ(batch.answer()["problems"].size(), 2U);
    EXPECT_EQ(batch.answer()["problems"][1]["path"], "torn\\xff.sketch.svg");
}

TEST(LibraryList, BringsBackWorkThatAKilledProgramLeftHidden) {
    LibraryRun batch;
    std::filesystem::create_directory(batch.libraryFolder / ".matwright");
    const std::string hidden = displacedName("harbour.sketch.svg", 1, 1);
    test::writeFile(batch.libraryFolder / hidden, writeSketch(pageOf("Harbour", {})));
    EXPECT_EQ(batch.library({"list", "--json"}), Done);
    EXPECT_EQ(batch.paths().size(), 1U);
    EXPECT_EQ(std::ranges::count(batch.err, '\n'), 1) << batch.err;
    EXPECT_NE(batch.err.find("is a sketch of the library again"), std::string::npos) << batch.err;
    EXPECT_EQ(batch.library({"list"}), Done);
    EXPECT_EQ(batch.err, "");
}

TEST(LibraryList, OfAFolderThatMayNotBeWrittenIsGivenAllTheSame) {
    LibraryRun batch;
    batch.keep("a.sketch.svg", pageOf("A", {}));
    std::filesystem::create_directory(batch.libraryFolder / ".matwright");
    test::setPermissions(batch.folder.path(), 0755);
    test::setPermissions(batch.libraryFolder / ".matwright", 0555);
    test::setPermissions(batch.libraryFolder, 0555);
    {
        const test::WithoutPrivileges asAnybody;
        EXPECT_EQ(batch.library({"list", "--no-index"}), Done);
        EXPECT_EQ(batch.err, "");
        EXPECT_NE(batch.out.find("1 of 1 sketches"), std::string::npos) << batch.out;
        EXPECT_EQ(batch.library({"label", "a", "--favourite", "--no-index"}), CouldNotWrite);
    }
    test::setPermissions(batch.libraryFolder, 0700);
    test::setPermissions(batch.libraryFolder / ".matwright", 0700);
}

TEST(LibraryList, OfNamesThatAreNoUtf8IsStillJson) {
    LibraryRun batch;
    batch.keep("odd\xff.sketch.svg", pageOf("", {}));
    EXPECT_EQ(batch.library({"list", "--json"}), Done);
    EXPECT_EQ(batch.paths(), (Words{"odd\\xff.sketch.svg"}));
    EXPECT_EQ(batch.answer()["sketches"][0]["name"], "odd\\xff");
    // What it is shown as names it.
    EXPECT_EQ(batch.library({"search", "--family-of", "odd\\xff.sketch.svg"}), Findings);
    EXPECT_EQ(batch.err, "matwright-batch: No other sketch is like \"odd\\xff\".\n");
}

TEST(LibraryList, ALibraryThatIsNotThereIsRefusedWithWhatToDo) {
    LibraryRun batch;
    std::filesystem::remove_all(batch.libraryFolder);
    for (const char* command : {"list", "search", "families", "problems"}) {
        EXPECT_EQ(batch.library({command}), InputRefused) << command;
        EXPECT_EQ(batch.err, "matwright-batch: " + batch.libraryFolder.string() +
                                 ": You have no library here yet. Bring sketches in with "
                                 "\"matwright-batch library import FILE\", or name another "
                                 "library with --folder.\n");
        const std::string missing = (batch.folder / "missing").string();
        EXPECT_EQ(batch.library({command, "--folder", missing}), InputRefused);
        EXPECT_EQ(batch.err.rfind("matwright-batch: " + missing + ": The library folder ", 0), 0U)
            << batch.err;
        EXPECT_EQ(std::ranges::count(batch.err, '\n'), 1) << batch.err;
        EXPECT_EQ(batch.out, "");
    }
}

TEST(LibraryList, ALibraryThatMayNotBeReadIsNotTakenForAMissingOne) {
    LibraryRun batch;
    test::setPermissions(batch.folder.path(), 0);
    {
        const test::WithoutPrivileges asAnybody;
        EXPECT_EQ(batch.library({"list", "--no-index"}), InputRefused);
    }
    test::setPermissions(batch.folder.path(), 0700);
    EXPECT_NE(batch.err.find("You are not allowed to look into the library folder."),
              std::string::npos)
        << batch.err;
}

TEST(LibraryList, WithoutAHomeFolderALibraryHasToBeNamed) {
    LibraryRun batch;
    batch.keep("a.sketch.svg", pageOf("A", {}));
    const std::string library = std::exchange(batch.libraryFolder, {}).string();
    batch.cacheFolder.clear();
    EXPECT_EQ(batch.library({"list"}), WrongUse);
    EXPECT_EQ(batch.library({"list", "--folder", library}), Done);
    EXPECT_EQ(batch.library({"list", "--folder", ""}), WrongUse);
}

TEST(LibraryList, AnIndexThatCannotBeKeptIsSaidAndTheListGivenAllTheSame) {
    LibraryRun batch;
    batch.keep("a.sketch.svg", pageOf("A", {}));
    test::writeFile(batch.cacheFolder, "a file where the folder should be");
    EXPECT_EQ(batch.library({"list"}), Done);
    EXPECT_NE(batch.out.find("1 of 1 sketches"), std::string::npos) << batch.out;
    EXPECT_EQ(std::ranges::count(batch.err, '\n'), 1) << batch.err;
}

TEST(LibraryTable, NamesTheLargestPrintFirst) {
    const Size mm{Length::millimetres(100), Length::millimetres(150)};
    const auto inches = [](int a, int b) { return Size{Length::inches(a), Length::inches(b)}; };
    const std::pair<std::vector<PrintNeed>, std::string> rows[] = {
        {{}, ""},
        {{{inches(4, 6), 1}}, "4×6"},
        {{{inches(3, 4), 2}, {inches(4, 6), 9}, {inches(5, 7), 10}}, "10 5×7, nine 4×6, two 3×4"},
        {{{mm, 3}}, "three 100×150 mm"},
        {{{{Length::inches(3, 1, 2), Length::inches(5)}, 1}}, "3 1/2×5"},
    };
    for (const auto& [needs, text] : rows) {
        EXPECT_EQ(printsText(needs), text);
    }
}

}  // namespace
}  // namespace matwright::app
