// SPDX-License-Identifier: MIT
#include "core/papers/known_papers.h"

#include <gtest/gtest.h>

#include "core/papers/papers_csv.h"

namespace matwright {
namespace {

PaperOnHand sheet(std::int64_t id, const char* name, int count) {
    PaperOnHand paper;
    paper.id = {id};
    paper.name = name;
    paper.size = {Length::inches(12), Length::inches(12)};
    paper.count = count;
    return paper;
}

TEST(KnownPapers, AnExportedListIsKnownAsAWhole) {
    std::vector<PaperOnHand> list{sheet(1, "kraft", 6), sheet(2, "dots, blue", 0)};
    list[1].picture = "/pictures/dots.png";
    list[1].pictureWidth = Length::inches(12);
    list[1].pattern = PaperPattern::HasUp;
    const auto read = readPapersCsv(papersCsv(list));
    ASSERT_TRUE(read);
    EXPECT_EQ(knownPapers(*read, list), (KnownPapers{{}, 2, 0}));
}

TEST(KnownPapers, WhateverDiffersButIdCountAndCaseIsNew) {
    const std::vector<PaperOnHand> list{sheet(1, "kraft", 6)};
    for (int what = 0; what < 7; ++what) {
        PaperOnHand other = sheet(0, "kraft", 6);
        what == 0   ? void(other.name = "plum")
        : what == 1 ? void(other.size.width = Length::inches(11))
        : what == 2 ? void(other.kind = PaperKind::Scrap)
        : what == 3 ? void(other.sides = PaperSides::Two)
        : what == 4 ? void(other.pattern = PaperPattern::HasUp)
        : what == 5 ? void(other.thickness = "80 lb")
                    : void(other.colour = {1, 2, 3});
        EXPECT_EQ(knownPapers(std::span(&other, 1), list).fresh, std::vector{other}) << what;
    }
    const PaperOnHand folded = sheet(0, " KRAFT", 6);
    EXPECT_EQ(knownPapers(std::span(&folded, 1), list), (KnownPapers{{}, 1, 0}));
    const PaperOnHand fewer = sheet(0, "kraft", 2);
    EXPECT_EQ(knownPapers(std::span(&fewer, 1), list), (KnownPapers{{}, 1, 1}));
}

TEST(KnownPapers, AnEntryStandsForOnePaperAndForThatOfItsCountFirst) {
    const std::vector<PaperOnHand> list{sheet(1, "kraft", 2), sheet(2, "kraft", 5)};
    const std::vector<PaperOnHand> read{sheet(0, "kraft", 3), sheet(0, "kraft", 5),
                                        sheet(0, "kraft", 5)};
    EXPECT_EQ(knownPapers(read, list), (KnownPapers{{sheet(0, "kraft", 5)}, 2, 1}));
    EXPECT_EQ(knownPapers(read, {}), (KnownPapers{read, 0, 0}));
}

}  // namespace
}  // namespace matwright
