// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>

#include "core/sketchfile/sketch_file.h"
#include "tests/app/batch/library_run.h"

namespace matwright::app {
namespace {

using Words = std::vector<std::string>;

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

// Sketches outside the library, and something that is none.
struct Arrivals : LibraryRun {
    Arrivals() {
        std::filesystem::create_directories(from / "more");
        test::writeFile(from / "beach.sketch.svg", writeSketch(pageOf("Beach", {})));
        test::writeFile(from / "more" / "harbour.sketch.svg",
                        writeSketch(pageOf("Harbour", {spot(4, 6, 1, 1)})));
        test::writeFile(from / "letter.txt", "hello");
        test::writeFile(from / "broken.sketch.svg", "no sketch");
    }
    std::filesystem::path from = folder / "arrivals";
    std::string at(const char* name) const { return (from / name).string(); }
};

TEST(LibraryImport, BringsFilesInAndMakesThePersonsOwnLibrary) {
    Arrivals batch;
    std::filesystem::remove_all(batch.libraryFolder);
    EXPECT_EQ(batch.library({"import", batch.at("beach.sketch.svg")}), Done);
    EXPECT_EQ(batch.out, batch.at("beach.sketch.svg") +
                             ": imported as beach.sketch.svg.\n1 imported, 0 already there, 0 left "
                             "out; library " +
                             batch.libraryFolder.string() + "\n");
    EXPECT_EQ(batch.err, "");
    EXPECT_EQ(batch.library({"list", "--json"}), Done);
    EXPECT_EQ(batch.paths(), (Words{"beach.sketch.svg"}));
}

TEST(LibraryImport, MakesNoFolderThatWasChosenAndIsNotThere) {
    Arrivals batch;
    batch.libraryIsChosen = true;
    std::filesystem::remove_all(batch.libraryFolder);
    EXPECT_EQ(batch.library({"import", batch.at("beach.sketch.svg")}), InputRefused);
    EXPECT_TRUE(has(batch.err, "The folder that you chose for your library is not there."))
        << batch.err;
    EXPECT_FALSE(std::filesystem::exists(batch.libraryFolder));
}

TEST(LibraryImport, TakesNothingTwice) {
    Arrivals batch;
    batch.keep("2026/mine.sketch.svg", pageOf("Beach", {}));
    EXPECT_EQ(batch.library({"import", batch.at("beach.sketch.svg")}), Done);
    EXPECT_TRUE(has(batch.out,
                    "not imported. The library has it already, as "
                    "“2026/mine.sketch.svg”."))
        << batch.out;
    EXPECT_TRUE(has(batch.out, "0 imported, 1 already there, 0 left out")) << batch.out;
}

TEST(LibraryImport, GivesATakenNameANumberAndWritesOverNothing) {
    Arrivals batch;
    batch.keep("beach.sketch.svg", pageOf("Another beach", {}));
    const std::string before = test::readFile(batch.libraryFolder / "beach.sketch.svg");
    EXPECT_EQ(batch.library({"import", batch.at("beach.sketch.svg")}), Done);
    EXPECT_TRUE(has(batch.out, "imported as beach (2).sketch.svg. ")) << batch.out;
    EXPECT_EQ(test::readFile(batch.libraryFolder / "beach.sketch.svg"), before);
}

TEST(LibraryImport, TakesFoldersWithTheirSubFoldersAndNamesWhatIsNone) {
    Arrivals batch;
    EXPECT_EQ(batch.library({"import", batch.from.string(), batch.at("letter.txt"),
                             batch.at("missing.sketch.svg"), "--into", "2026"}),
              InputRefused);
    EXPECT_TRUE(has(batch.out, "2 imported, 0 already there, 3 left out")) << batch.out;
    EXPECT_EQ(std::ranges::count(batch.err, '\n'), 3) << batch.err;
    for (const char* name : {"broken.sketch.svg", "letter.txt", "missing.sketch.svg"}) {
        EXPECT_TRUE(has(batch.err, "matwright-batch: " + batch.at(name) + ": ")) << batch.err;
    }
    EXPECT_EQ(batch.library({"list", "--json"}), Done);
    EXPECT_EQ(batch.paths(),
              (Words{"2026/arrivals/beach.sketch.svg", "2026/arrivals/more/harbour.sketch.svg"}));
}

TEST(LibraryImport, ReportsInJson) {
    Arrivals batch;
    EXPECT_EQ(batch.library({"import", batch.from.string(), "--json"}), InputRefused);
    const nlohmann::json all = batch.answer();
    ASSERT_EQ(all["files"].size(), 3U);
    Words outcomes;
    for (const nlohmann::json& file : all["files"]) {
        outcomes.push_back(file["outcome"]);
        EXPECT_EQ(file["path"].get<std::string>().empty(), file["outcome"] == "not a sketch");
    }
    std::ranges::sort(outcomes);
    EXPECT_EQ(outcomes, (Words{"imported", "imported", "not a sketch"}));
}

TEST(LibraryImport, RefusesAFolderWithoutSketchesAndALibraryThatIsNotThere) {
    Arrivals batch;
    std::filesystem::create_directories(batch.folder / "empty");
    EXPECT_EQ(batch.library({"import", (batch.folder / "empty").string()}), InputRefused);
    EXPECT_TRUE(has(batch.err, "No sketch file is in there.")) << batch.err;
    const std::string missing = (batch.folder / "missing").string();
    EXPECT_EQ(batch.library({"import", batch.at("beach.sketch.svg"), "--folder", missing}),
              InputRefused);
    EXPECT_FALSE(std::filesystem::exists(missing));
    EXPECT_EQ(batch.library({"import", batch.at("beach.sketch.svg"), "--into", "../out"}),
              WrongUse);
    EXPECT_FALSE(std::filesystem::exists(batch.folder / "out"));
}

TEST(LibraryExport, WritesAZipOfWhatTheFiltersFind) {
    LibraryRun batch;
    batch.keep("a.sketch.svg", pageOf("A", {spot(4, 6, 1, 1)}));
    batch.keep("2026/b.sketch.svg", pageOf("B", {}));
    const std::string zip = (batch.folder / "out.zip").string();
    EXPECT_EQ(batch.library({"export", "-o", zip}), Done);
    EXPECT_EQ(batch.out, "Wrote " + zip + ": 2 sketches\n");
    const std::string both = test::readFile(zip);
    EXPECT_EQ(both.rfind("PK\x03\x04", 0), 0U);
    // A zip holds its names as they are.
    EXPECT_TRUE(has(both, "2026/b.sketch.svg"));
    EXPECT_EQ(batch.library({"export", "-o", zip, "--photos", "1"}), Done);
    EXPECT_FALSE(has(test::readFile(zip), "2026/b.sketch.svg"));
    EXPECT_EQ(batch.library({"export", "-o", zip, "--words", "b"}), Done);
    EXPECT_FALSE(has(test::readFile(zip), "a.sketch.svg"));
    EXPECT_EQ(batch.library({"export", "a", "-o", zip}), Done);
    EXPECT_FALSE(has(test::readFile(zip), "2026/b.sketch.svg"));
    EXPECT_EQ(batch.paintingStarts, 0);
}

TEST(LibraryExport, WritesAContactSheetToPrint) {
    LibraryRun batch;
    for (int i = 0; i < 30; ++i) {
        batch.keep("p" + std::to_string(i) + ".sketch.svg", pageOf("Page", {spot(4, 6, 1, 1)}));
    }
    const std::string pdf = (batch.folder / "out.pdf").string();
    EXPECT_EQ(batch.library({"export", "-o", pdf, "--columns", "2", "--title", "Mine"}), Done);
    EXPECT_TRUE(batch.out.starts_with("Wrote " + pdf + ": 30 sketches on ")) << batch.out;
    EXPECT_EQ(test::readFile(pdf).rfind("%PDF-1.7", 0), 0U);
    EXPECT_EQ(batch.paintingStarts, 1);
    const std::string letter = test::readFile(pdf);
    EXPECT_EQ(batch.library({"export", "-o", pdf, "--columns", "10", "--paper", "a4"}), Done);
    EXPECT_TRUE(batch.out.ends_with(": 30 sketches on 1 sheet\n")) << batch.out;
    EXPECT_NE(test::readFile(pdf), letter);
}

TEST(LibraryExport, WithoutSketchesWritesNothing) {
    LibraryRun batch;
    batch.keep("a.sketch.svg", pageOf("A", {}));
    const std::string zip = (batch.folder / "out.zip").string();
    EXPECT_EQ(batch.library({"export", "-o", zip, "--photos", "9"}), Findings);
    EXPECT_TRUE(has(batch.err, "Without --photos 9 there would be 1 sketch.")) << batch.err;
    EXPECT_EQ(batch.library({"export", "none", "-o", zip}), InputRefused);
    EXPECT_EQ(batch.library({"export", "a", "-o", zip, "--photos", "0"}), WrongUse);
    EXPECT_EQ(batch.library({"export", "-o", (batch.folder / "out.txt").string()}), WrongUse);
    EXPECT_FALSE(std::filesystem::exists(zip));
    EXPECT_EQ(batch.library({"export", "-o", (batch.folder / "no" / "out.zip").string()}),
              CouldNotWrite);
}

TEST(LibraryLabel, SetsTagsFavouriteAndNoteAndTheSearchFindsThem) {
    LibraryRun batch;
    batch.keep("a.sketch.svg", pageOf("A", {}));
    batch.keep("2026/b.sketch.svg", pageOf("B", {}));
    const std::string before = test::readFile(batch.libraryFolder / "a.sketch.svg");
    EXPECT_EQ(batch.library({"label", "a"}), Done);
    EXPECT_EQ(batch.out, "a.sketch.svg: no labels\n");
    EXPECT_FALSE(std::filesystem::exists(batch.libraryFolder / ".matwright"));
    EXPECT_EQ(batch.library({"label", "a", "2026/b", "--tag", "sea", "--tag", "blue day",
                             "--favourite", "--note", "small prints"}),
              Done);
    EXPECT_EQ(batch.out,
              "a.sketch.svg: tags blue day, sea; favourite; note \"small prints\"\n"
              "2026/b.sketch.svg: tags blue day, sea; favourite; note \"small prints\"\n");
    EXPECT_EQ(batch.err, "");
    EXPECT_EQ(batch.library({"label", "a", "--untag", "sea", "--no-favourite", "--note", ""}),
              Done);
    EXPECT_EQ(batch.out, "a.sketch.svg: tags blue day\n");
    EXPECT_EQ(batch.library({"search", "--tag", "sea", "--favourites", "prints", "--json"}), Done);
    EXPECT_EQ(batch.paths(), (Words{"2026/b.sketch.svg"}));
    EXPECT_EQ(batch.answer()["sketches"][0]["ownNote"], "small prints");
    EXPECT_EQ(batch.library({"search", "--tag", "blue day"}), Done);
    EXPECT_TRUE(has(batch.out, "blue day, sea")) << batch.out;
    EXPECT_EQ(test::readFile(batch.libraryFolder / "a.sketch.svg"), before);
}

TEST(LibraryLabel, OfASketchThatIsNotThereChangesNoneOfThem) {
    LibraryRun batch;
    batch.keep("a.sketch.svg", pageOf("A", {}));
    EXPECT_EQ(batch.library({"label", "a", "none", "--favourite"}), InputRefused);
    EXPECT_EQ(batch.out, "");
    EXPECT_EQ(batch.library({"label", "a"}), Done);
    EXPECT_EQ(batch.out, "a.sketch.svg: no labels\n");
    EXPECT_EQ(batch.library({"label", "a", "--tag", "\xff"}), WrongUse);
}

}  // namespace
}  // namespace matwright::app
