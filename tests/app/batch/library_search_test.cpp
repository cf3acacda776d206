// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>

#include "core/sketchfile/sketch_file.h"
#include "tests/app/batch/library_run.h"

namespace matwright::app {
namespace {

using Words = std::vector<std::string>;

Sketch onDoublePage(Sketch sketch) {
    sketch.page.doublePage = true;
    return sketch;
}

Sketch onPage(Sketch sketch, int width, int height) {
    sketch.page.size = {Length::inches(width), Length::inches(height)};
    return sketch;
}

// Each of them differs from the others in what the filters look at.
struct Shelf : LibraryRun {
    Shelf() {
        keep("beach.sketch.svg",
             withPlaceFor(pageOf("Beach day", {spot(4, 6, 1, 1)}), PieceKind::Title));
        keep("2026/harbour.sketch.svg",
             withPlaceFor(pageOf("Harbour", {spot(6, 4, 1, 1), spot(6, 4, 1, 6)}),
                          PieceKind::Journaling));
        keep("2026/summer/overseas.sketch.svg",
             onDoublePage(
                 pageOf("Overseas", {spot(4, 6, 1, 1), spot(6, 4, 6, 1), spot(3, 3, 6, 6)})));
        keep("small.sketch.svg", onPage(pageOf("Small one", {spot(3, 3, 1, 1)}), 8, 8));
    }
    Words found(Words arguments) {
        arguments.insert(arguments.begin(), "search");
        arguments.emplace_back("--json");
        library(arguments);
        Words found = paths();
        std::ranges::sort(found);
        return found;
    }
};

const std::string beach = "beach.sketch.svg";
const std::string harbour = "2026/harbour.sketch.svg";
const std::string overseas = "2026/summer/overseas.sketch.svg";
const std::string small = "small.sketch.svg";

TEST(LibrarySearch, EveryFilterLeavesWhatItSays) {
    const struct {
        Words arguments;
        Words left;
    } rows[] = {
        {{}, {harbour, overseas, beach, small}},
        {{"beach"}, {beach}},
        {{"day", "BEA"}, {beach}},
        {{"seas"}, {overseas}},
        {{"seas", "--whole-words"}, {}},
        {{"overseas", "--whole-words"}, {overseas}},
        {{"summer"}, {overseas}},
        {{"--photos", "2"}, {harbour}},
        {{"--photos", "0"}, {}},
        {{"--photos-at-most", "1"}, {beach, small}},
        {{"--print", "4x6"}, {harbour, overseas, beach}},
        {{"--print", "6x4", "--print", "3x3"}, {overseas}},
        {{"--print", "10.16 x 15.24 cm"}, {harbour, overseas, beach}},
        {{"--page", "8x8"}, {small}},
        {{"--page", "8 x 8 in", "--page", "12x12"}, {harbour, overseas, beach, small}},
        {{"--page", "a4"}, {}},
        {{"--single-page"}, {harbour, beach, small}},
        {{"--double-page"}, {overseas}},
        {{"--some-upright"}, {overseas, beach}},
        {{"--some-lying"}, {harbour, overseas}},
        {{"--only-upright"}, {beach}},
        {{"--only-lying"}, {harbour}},
        {{"--room-for-title"}, {beach}},
        {{"--room-for-journaling"}, {harbour}},
        {{"--favourites"}, {}},
        {{"--tag", "sea"}, {}},
        {{"--in", "2026"}, {harbour, overseas}},
        {{"--in", "2026/"}, {harbour, overseas}},
        {{"--in", "2026/summer"}, {overseas}},
        {{"--in", "20"}, {}},
        {{"sea", "--double-page", "--photos", "3"}, {overseas}},
    };
    Shelf shelf;
    for (const auto& row : rows) {
        EXPECT_EQ(shelf.found(row.arguments), row.left)
            << testing::PrintToString(row.arguments) << shelf.err;
    }
}

TEST(LibrarySearch, AnswersOneAndNamesTheFilterToLeaveOut) {
    const struct {
        Words arguments;
        std::string sentence;
    } rows[] = {
        {{"--photos", "1", "--tag", "day out"},
         "No sketch was found. Without --tag 'day out' there would be 2 sketches."},
        {{"--double-page", "--photos-at-most", "2"},
         "No sketch was found. Without --double-page there would be 3 sketches."},
        {{"nothing", "--photos", "2"},
         "No sketch was found. Without the words \"nothing\" there would be 1 sketch."},
        {{"--page", "8x8", "--print", "6x4"},
         "No sketch was found. Without --page 8x8 there would be 3 sketches."},
        {{"--in", "2026", "--print", "2.5 x 3.5"},
         "No sketch was found. Without --print '2 1/2 in x 3 1/2 in' there would be 2 sketches."},
        {{"nothing", "--photos", "9", "--favourites"},
         "No sketch was found. Leaving out a single filter is not enough; start again with fewer. "
         "The library has 4 sketches."},
    };
    Shelf shelf;
    for (const auto& row : rows) {
        Words arguments = row.arguments;
        arguments.insert(arguments.begin(), "search");
        EXPECT_EQ(shelf.library(arguments), Findings);
        EXPECT_EQ(shelf.err, "matwright-batch: " + row.sentence + "\n");
        EXPECT_EQ(shelf.out, "");
    }
}

TEST(LibrarySearch, SaysInJsonWhatToLeaveOut) {
    Shelf shelf;
    EXPECT_EQ(shelf.library({"search", "--photos", "9", "--json"}), Findings);
    EXPECT_EQ(shelf.answer()["loosen"]["without"], "--photos 9");
    EXPECT_EQ(shelf.answer()["loosen"]["wouldFind"], 4);
    EXPECT_EQ(shelf.library({"search", "--photos", "2", "--json"}), Done);
    EXPECT_TRUE(shelf.answer()["loosen"].is_null());
}

TEST(LibrarySearch, AnEmptyLibraryIsNoFilterTooMany) {
    LibraryRun batch;
    EXPECT_EQ(batch.library({"search", "--photos", "2"}), Findings);
    EXPECT_EQ(batch.err,
              "matwright-batch: There is no sketch in this library yet. Bring some in with "
              "\"matwright-batch library import FILE\".\n");
}

TEST(LibrarySearch, CountsWhatEachChoiceWouldLeave) {
    Shelf shelf;
    EXPECT_EQ(shelf.library({"search", "--counts", "--print", "4x6"}), Done);
    const auto has = [&](const std::string& line) {
        return shelf.out.find(line + "\n") != std::string::npos;
    };
    EXPECT_TRUE(has("--photos 1                    1")) << shelf.out;
    EXPECT_TRUE(has("--photos-at-most 2            2")) << shelf.out;
    EXPECT_TRUE(has("--print 3x3                   1")) << shelf.out;
    EXPECT_TRUE(has("--in 2026/summer              1")) << shelf.out;
    EXPECT_EQ(shelf.out.find("--page 8x8"), std::string::npos) << shelf.out;
    EXPECT_EQ(shelf.library({"search", "--counts", "--json"}), Done);
    const nlohmann::json counts = shelf.answer()["counts"];
    EXPECT_EQ(counts["photos"].size(), 4U);
    EXPECT_EQ(counts["photos"][1]["exactly"], 2);
    EXPECT_EQ(counts["photos"][2]["atMost"], 3);
    EXPECT_EQ(counts["doublePage"], 1);
    EXPECT_EQ(counts["onlyLying"], 1);
    EXPECT_EQ(counts["roomForTitle"], 1);
    EXPECT_EQ(counts["wholeLibrary"], 4);
    EXPECT_EQ(shelf.answer()["sketches"].size(), 4U);
}

TEST(LibrarySearch, EveryCountIsWhatTypingItsChoiceFinds) {
    Shelf shelf;
    ASSERT_EQ(shelf.library({"search", "--counts"}), Done);
    std::istringstream lines(shelf.out);
    std::string line;
    std::getline(lines, line);  // the heading
    int choices = 0;
    while (std::getline(lines, line)) {
        std::istringstream words(line);
        Words arguments{std::istream_iterator<std::string>(words), {}};
        const std::size_t count = std::stoul(arguments.back());
        arguments.pop_back();
        if (arguments.front() == "without") {
            arguments.clear();
        }
        EXPECT_EQ(shelf.found(arguments).size(), count) << line;
        ++choices;
    }
    EXPECT_GE(choices, 20);
}

TEST(LibrarySearch, FindsTheFamilyOfASketch) {
    Shelf shelf;
    shelf.keep("other.sketch.svg", pageOf("The other way", {spot(4, 6, 7, 1)}));
    shelf.keep("one.sketch.svg", pageOf("One way", {spot(4, 6, 1, 1)}));
    EXPECT_EQ(shelf.found({"--family-of", "one"}), (Words{"one.sketch.svg", "other.sketch.svg"}));
    EXPECT_EQ(shelf.library({"families"}), Done);
    EXPECT_EQ(shelf.out,
              "Family  Name           Page        Photos  Path\n"
              "     1  One way        12 × 12 in       1  one.sketch.svg\n"
              "     1  The other way  12 × 12 in       1  other.sketch.svg\n");
    EXPECT_EQ(shelf.library({"families", "--json"}), Done);
    ASSERT_EQ(shelf.answer()["families"].size(), 1U);
    EXPECT_EQ(shelf.answer()["families"][0]["sketches"].size(), 2U);
    EXPECT_EQ(shelf.library({"search", "--family-of", "beach"}), Findings);
    EXPECT_EQ(shelf.err, "matwright-batch: No other sketch is like \"Beach day\".\n");
    EXPECT_EQ(shelf.library({"search", "--family-of", "peach"}), InputRefused);
    EXPECT_EQ(shelf.err.rfind("matwright-batch: peach: The library has no such sketch.", 0), 0U);
}

TEST(LibrarySearch, NamesOneSketchInAnyWay) {
    Shelf shelf;
    const std::filesystem::path file = shelf.libraryFolder / harbour;
    for (const std::string& named : {harbour, std::string("2026/harbour"), std::string("harbour"),
                                     std::string("harbour.sketch.svg"), std::string("Harbour"),
                                     file.string(), std::filesystem::relative(file).string()}) {
        EXPECT_EQ(shelf.library({"search", "--family-of", named}), Findings) << named;
        EXPECT_EQ(shelf.err, "matwright-batch: No other sketch is like \"Harbour\".\n");
    }
}

TEST(LibrarySearch, OfTwoSketchesOfOneNameThePathHasToBeSaid) {
    Shelf shelf;
    shelf.keep("other/beach.sketch.svg", pageOf("Beach day", {}));
    EXPECT_EQ(shelf.library({"search", "--family-of", "Beach day"}), InputRefused);
    EXPECT_EQ(shelf.err,
              "matwright-batch: Beach day: 2 sketches are called so; name one by its path, such as "
              "beach.sketch.svg.\n");
    // A path is never mistaken for a name.
    EXPECT_EQ(shelf.library({"search", "--family-of", "beach"}), Findings);
}

}  // namespace
}  // namespace matwright::app
