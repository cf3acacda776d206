// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "tests/core/cutpicture/planned_sheets.h"

namespace matwright {
namespace {

using test::Random;

TEST(CutWords, PiecesAreLettersAndPartsTheirRange) {
    const PlannedSheet sheet = test::smallSheet();
    const auto letters = partLetters(sheet.plan);
    EXPECT_EQ(letters[0], "A–C");
    for (std::size_t i = 0; i < letters.size(); ++i) {
        const CutPart& part = sheet.plan.parts[i];
        if (part.use == CutPart::Use::Piece) {
            EXPECT_EQ(letters[i].size(), 1U) << letters[i];
        }
        if (part.use == CutPart::Use::Leftover) {
            EXPECT_TRUE(letters[i].empty());
        }
    }
}

TEST(CutWords, EveryPieceOfRandomSheetsHasALetterOfItsOwn) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        Random random(seed);
        for (const PlannedSheet& sheet : test::plannedSheets(test::randomCutJob(random))) {
            const auto letters = partLetters(sheet.plan);
            std::set<std::string> seen;
            std::size_t pieces = 0;
            for (std::size_t i = 0; i < letters.size(); ++i) {
                if (sheet.plan.parts[i].use == CutPart::Use::Piece) {
                    ++pieces;
                    seen.insert(letters[i]);
                }
            }
            EXPECT_EQ(seen.size(), pieces) << "seed " << seed;
            EXPECT_EQ(pieceLines(sheet).size(), pieces);
        }
    }
}

TEST(CutWords, ThirtyPiecesGoOnAfterZ) {
    CutJob job;
    job.pieces = {{{Length::inches(2), Length::inches(2)}, 30, false, 0}};
    job.sheets = {{{Length::inches(12), Length::inches(12)}, std::nullopt, 1, {}, 0}};
    const auto lines = pieceLines(test::plannedSheets(job).front());
    ASSERT_EQ(lines.size(), 30U);
    EXPECT_TRUE(lines[25].starts_with("Z: "));
    EXPECT_TRUE(lines[26].starts_with("AA: "));
    EXPECT_TRUE(lines[29].starts_with("AD: "));
}

TEST(CutWords, AStepSaysWhereTheTrimmerIsSetAndWhatComesOff) {
    PlannedSheet sheet = test::smallSheet();
    sheet.plan.parts = {{{{Length(), Length::inches(12)}, {Length(), Length::inches(12)}},
                         CutPart::Use::Cut,
                         CutDirection::Level,
                         Length::inches(3),
                         1,
                         2,
                         -1,
                         false},
                        {{{Length(), Length::inches(12)}, {Length(), Length::inches(3)}},
                         CutPart::Use::Piece,
                         CutDirection::Upright,
                         {},
                         -1,
                         -1,
                         0,
                         false},
                        {{{Length(), Length::inches(12)}, {Length::inches(3), Length::inches(12)}},
                         CutPart::Use::Leftover,
                         CutDirection::Upright,
                         {},
                         -1,
                         -1,
                         -1,
                         false}};
    CutStep step{0, 1, 2, CutDirection::Level, Length::inches(3), Length::inches(3), true, true};
    sheet.steps.steps = {step};
    EXPECT_EQ(stepSentence(sheet, 0),
              "Lay the sheet with its top edge to the left. Set the trimmer to 3 in and cut the "
              "sheet: A and a leftover.");
    sheet.plan.parts[0].at = Length::inches(3, 1, 32);
    sheet.plan.parts[1].area.y.high = sheet.plan.parts[2].area.y.low = Length::inches(3, 1, 32);
    step.setting = Length::inches(3, 1, 32);
    step.shown = Length::inches(3, 1, 16);
    sheet.steps.steps = {step};
    EXPECT_EQ(stepSentence(sheet, 0),
              "Lay the sheet with its top edge to the left. Set the trimmer to ≈3 1/16 in and cut "
              "the sheet: A and a leftover. A comes out 1/32 in too long from top to bottom.");
}

// Strips of 6 and 2 1/2 in width, then cut across at 4 and 5 in: nobody has turned the second strip
// when its turn comes.
PlannedSheet twoStrips(Size size) {
    CutJob job;
    job.pieces = {{{Length::inches(6), Length::inches(4)}, 1, false, 0},
                  {{Length::inches(6), size.height - Length::inches(4)}, 1, false, 0},
                  {{size.width - Length::inches(6), Length::inches(5)}, 1, false, 0},
                  {{size.width - Length::inches(6), size.height - Length::inches(5)}, 1, false, 0}};
    job.sheets = {{size, std::nullopt, 1, {}, 0}};
    return test::plannedSheets(job).front();
}

TEST(CutWords, EveryStepSaysHowItsOwnPartLies) {
    const Size letter{Length::inches(8, 1, 2), Length::inches(11)};
    const std::vector<std::string> said = stepSentences(twoStrips(letter));
    ASSERT_EQ(said.size(), 3U);
    EXPECT_TRUE(
        said[0].starts_with("Lay the sheet 8 1/2 in wide and 11 in high. Set the trimmer "
                            "to "))
        << said[0];
    for (const std::size_t step : {1U, 2U}) {
        EXPECT_NE(said[step].find(", its top edge to the left: "), std::string::npos) << said[step];
    }
    for (const std::string& sentence : said) {
        EXPECT_EQ(sentence.find("Turn."), std::string::npos) << sentence;
    }
}

TEST(CutWords, ASheetIsLaidDownByItsPatternOrItsSides) {
    const Size square{Length::inches(12), Length::inches(12)};
    PlannedSheet sheet = twoStrips(square);
    EXPECT_TRUE(stepSentence(sheet, 0).starts_with("Set the trimmer to "))
        << stepSentence(sheet, 0);
    sheet.hasUp = true;
    EXPECT_TRUE(stepSentence(sheet, 0).starts_with("Lay the sheet with its pattern upright. Set "))
        << stepSentence(sheet, 0);
    sheet = twoStrips({Length::inches(8, 1, 2), Length::inches(11)});
    sheet.hasUp = true;
    EXPECT_TRUE(stepSentence(sheet, 0).starts_with(
        "Lay the sheet 8 1/2 in wide and 11 in high, its pattern upright. Set "))
        << stepSentence(sheet, 0);
}

// What the last cuts gave, all made one way, lies as they left it; all else is told anew.
TEST(CutWords, APartThatMayLieOtherwiseIsToldHowToLie) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        Random random(seed);
        for (const PlannedSheet& sheet : test::plannedSheets(test::randomCutJob(random))) {
            const std::vector<std::string> said = stepSentences(sheet);
            std::map<int, CutDirection> cameOff;
            for (std::size_t i = 0; i < said.size(); ++i) {
                const CutStep& step = sheet.steps.steps[i];
                const bool isLevel = step.direction == CutDirection::Level;
                const bool lies = i > 0 && cameOff.at(step.part) == step.direction &&
                                  sheet.steps.steps[i - 1].direction == step.direction;
                const char* const words =
                    isLevel ? "its top edge to the left" : "its left edge to the left";
                EXPECT_EQ(said[i].find(words) != std::string::npos, !lies && (i > 0 || isLevel))
                    << "seed " << seed << ": " << said[i];
                cameOff[step.first] = cameOff[step.second] = step.direction;
            }
        }
    }
}

TEST(CutWords, WhatOnlyLosesALeftoverKeepsItsName) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        Random random(seed);
        for (const PlannedSheet& sheet : test::plannedSheets(test::randomCutJob(random))) {
            for (const std::string& sentence : stepSentences(sheet)) {
                for (const std::string& letters : partLetters(sheet.plan)) {
                    std::size_t times = 0;
                    for (const char* const end : {":", ",", ".", " "}) {
                        const std::string name = "the part with " + letters + end;
                        times += !letters.empty() && sentence.find(name) != std::string::npos;
                    }
                    EXPECT_LE(times, 1U) << "seed " << seed << ": " << sentence;
                }
            }
        }
    }
    const Length quarter = Length::inches(0, 1, 4);
    const std::vector<std::string> said =
        stepSentences(test::plannedSheets({{{{Length::inches(3), Length::inches(5)}, 2, false, 0}},
                                           {{{Length::inches(12), Length::inches(12)},
                                             std::nullopt,
                                             1,
                                             {quarter, quarter, quarter, quarter},
                                             0}},
                                           {}})
                          .front());
    EXPECT_TRUE(std::ranges::any_of(said, [](const std::string& sentence) {
        return sentence.ends_with(": keep what is before the blade, the rest is a leftover.");
    })) << said.back();
}

// 5 in less 2 31/32 in are 2 1/32 in; with the trimmer at 3 in 2 in are left.
TEST(CutWords, WhatLiesBehindTheBladeHasTheOppositeError) {
    CutJob job;
    job.pieces = {{{Length::inches(2, 31, 32), Length::inches(12)}, 1, false, 0},
                  {{Length::inches(2, 1, 32), Length::inches(12)}, 1, false, 0}};
    job.sheets = {{{Length::inches(5), Length::inches(12)}, std::nullopt, 1, {}, 0}};
    const auto sheets = test::plannedSheets(job);
    ASSERT_EQ(sheets.size(), 1U);
    const PlannedSheet& sheet = sheets.front();
    ASSERT_EQ(sheet.steps.steps.size(), 1U);
    const bool isNarrowFirst = sheet.plan.parts[1].piece == 1;
    EXPECT_EQ(
        stepSentence(sheet, 0),
        fmt::format("Lay the sheet 5 in wide and 12 in high. Set the trimmer to ≈{} in and cut "
                    "the sheet: A and B. A comes out 1/32 in too long from left to right. B "
                    "comes out 1/32 in too short from left to right.",
                    isNarrowFirst ? "2 1/16" : "3"));
    PlannedSheet fine = sheet;
    fine.scale = Scale::ThirtySecondInch;
    fine.steps.steps[0].shown = fine.steps.steps[0].setting;
    EXPECT_EQ(stepSentence(fine, 0).find("comes out"), std::string::npos);
}

TEST(CutWords, AKnifeCutSaysWhereItIsAndHowToCut) {
    PlannedSheet sheet = test::smallSheet();
    const auto piece = std::ranges::find(sheet.plan.parts, CutPart::Use::Piece, &CutPart::use);
    const int part = static_cast<int>(piece - sheet.plan.parts.begin());
    const std::string letter = partLetters(sheet.plan)[static_cast<std::size_t>(part)];
    KnifeCut cut{part, piece->area.expanded(-Length::inches(0, 3, 4)), "it is sheet 2"};
    EXPECT_EQ(knifeSentence(sheet, cut), "With a knife cut the middle out of " + letter +
                                             ", 3/4 in inside its edges: it is sheet 2. " +
                                             knifeCaution);
    cut.area.y.high -= Length::inches(0, 1, 4);
    EXPECT_NE(knifeSentence(sheet, cut).find("1 in inside the bottom edge"), std::string::npos);
}

}  // namespace
}  // namespace matwright
