// SPDX-License-Identifier: MIT
#include "core/sheets/cut_steps.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/sheets/cut_planner.h"
#include "tests/core/sheets/random_job.h"

namespace matwright::test {
namespace {

constexpr Scale scale = Scale::SixteenthInch;

CutPlan planOf(const CutJob& job) {
    return planCuts(job, {200'000, std::chrono::hours(1)}).value().plan;
}

// The sizes of all pieces on the table after the steps, by the piece they are said to be.
std::vector<std::pair<int, Size>> piecesCut(const CutPlan& plan, const CutJob& job) {
    std::vector<std::pair<int, Size>> cut;
    for (const SheetSteps& steps : stepsOf(plan, scale)) {
        const SheetPlan& sheet = plan.sheets[static_cast<std::size_t>(steps.sheet)];
        const Size size = job.sheets[static_cast<std::size_t>(sheet.sheet)].size;
        const auto off = carriedOut(steps, size, job.rules.kerf, SettingUsed::Exact);
        EXPECT_TRUE(off) << off.error().text();
        for (const CutOff& part : off.value_or(std::vector<CutOff>{})) {
            const CutPart& planned = sheet.parts[static_cast<std::size_t>(part.part)];
            if (planned.use == CutPart::Use::Piece) {
                cut.emplace_back(planned.piece, planned.turned ? part.size.turned() : part.size);
            }
        }
    }
    return cut;
}

TEST(CutSteps, CarriedOutGiveExactlyThePieces) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        RandomJobOptions options;
        options.kinds = 3 + static_cast<int>(seed % 8);
        options.margins = seed % 3 == 0;
        options.kerf = seed % 2 == 0 ? Length() : Length::inches(0, 1, 32);
        const CutJob job = randomJob(seed, options);
        const CutPlan plan = planOf(job);
        std::vector<int> counts(job.pieces.size(), 0);
        for (const auto& [piece, size] : piecesCut(plan, job)) {
            ++counts[static_cast<std::size_t>(piece)];
            EXPECT_EQ(size, job.pieces[static_cast<std::size_t>(piece)].size) << "seed " << seed;
        }
        for (std::size_t i = 0; i < counts.size(); ++i) {
            EXPECT_EQ(counts[i] + plan.uncut[i], job.pieces[i].count) << "seed " << seed;
        }
    }
}

TEST(CutSteps, OneSettingServesManyCuts) {
    CutJob job;
    job.pieces = {{inchSize(4, 3), 12, false, 0}};
    job.sheets = {{inchSize(12, 12), std::nullopt, 1, {}, 0}};
    const auto steps = stepsOf(planOf(job), scale);
    ASSERT_EQ(steps.size(), 1U);
    const auto count = [&](bool CutStep::* what) {
        return std::ranges::count(steps[0].steps, true, what);
    };
    EXPECT_EQ(steps[0].steps.size(), 11U);
    EXPECT_LE(count(&CutStep::set), 4);
    EXPECT_LE(count(&CutStep::turn), 2);
}

TEST(CutSteps, SayWhatIsNotOnTheScale) {
    CutJob job;
    job.pieces = {{{Length::inches(3, 9, 32), Length::inches(12)}, 1, false, 0}};
    job.sheets = {{inchSize(12, 12), std::nullopt, 1, {}, 0}};
    const CutPlan plan = planOf(job);
    const auto steps = stepsOf(plan, scale);
    ASSERT_EQ(steps[0].steps.size(), 1U);
    const CutStep& step = steps[0].steps[0];
    EXPECT_EQ(step.setting, Length::inches(3, 9, 32));
    EXPECT_EQ(step.shown, Length::inches(3, 5, 16));
    EXPECT_EQ(step.roundedBy(), Length::inches(0, 1, 32));
    const auto shown = carriedOut(steps[0], inchSize(12, 12), Length(), SettingUsed::Shown);
    ASSERT_TRUE(shown);
    EXPECT_EQ((*shown)[0].size.width, Length::inches(3, 5, 16));
}

// Three of 2 5/32 in from 6 15/32 in: the trimmer shows 2 3/16 in for the first, and for each cut
// of one from the rest; the last has the errors of all of them.
TEST(CutSteps, TheLastPieceHasTheErrorsOfAllCutsBefore) {
    const Length side = Length::inches(2, 5, 32);
    SheetPlan sheet{0, std::vector<CutPart>(5)};
    const auto place = [&](std::size_t part, std::int64_t from, std::int64_t to) {
        sheet.parts[part].area = {{side * from, side * to}, {Length(), Length::inches(4)}};
    };
    place(0, 0, 3);
    place(1, 0, 1);
    place(2, 1, 3);
    place(3, 1, 2);
    place(4, 2, 3);
    for (const std::size_t cut : {0U, 2U}) {
        CutPart& part = sheet.parts[cut];
        part.use = CutPart::Use::Cut;
        part.first = static_cast<int>(cut) + 1;
        part.second = static_cast<int>(cut) + 2;
        part.at = part.area.left() + side;
    }
    for (const std::size_t piece : {1U, 3U, 4U}) {
        sheet.parts[piece].use = CutPart::Use::Piece;
        sheet.parts[piece].piece = static_cast<int>(piece);
    }
    const SheetSteps steps = stepsOf({{sheet}, {}}, scale).front();
    const Length step = Length::inches(0, 1, 32);
    const std::map<int, OffSize> wanted{{1, {step, {}}}, {3, {step, {}}}, {4, {-(step * 2), {}}}};
    EXPECT_EQ(offSizes(steps, sheet), wanted);
    EXPECT_EQ(offText("C", wanted.at(4)), "C comes out 1/16 in too short from left to right.");
    EXPECT_EQ(offText("D", {step, -step}),
              "D comes out 1/32 in too long from left to right and 1/32 in too short from top to "
              "bottom.");
    EXPECT_EQ(offText("E", {{}, Length::inches(0, 1, 80)}),
              "E comes out a hair (0.0125 in) too long from top to bottom.");
}

// As the table has it when the shown settings are carried out with the true kerf, which offSizes()
// is not told; nothing where every setting is on the scale.
TEST(CutSteps, OffSizesOfRandomPlansAreWhatTheTableShows) {
    std::size_t differing = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        RandomJobOptions options;
        options.margins = seed % 3 == 0;
        options.kerf = seed % 2 == 0 ? Length() : Length::inches(0, 1, 64);
        const CutJob job = randomJob(seed, options);
        const CutPlan plan = planOf(job);
        for (const SheetSteps& steps : stepsOf(plan, Scale::WholeMillimetre)) {
            const SheetPlan& sheet = plan.sheets[static_cast<std::size_t>(steps.sheet)];
            const Size size = job.sheets[static_cast<std::size_t>(sheet.sheet)].size;
            std::map<int, OffSize> off = offSizes(steps, sheet);
            differing += off.size();
            const auto table = carriedOut(steps, size, job.rules.kerf, SettingUsed::Shown);
            ASSERT_TRUE(table) << table.error().text() << " seed " << seed;
            for (const CutOff& part : *table) {
                const CutPart& planned = sheet.parts[static_cast<std::size_t>(part.part)];
                if (planned.use == CutPart::Use::Piece) {
                    const OffSize by = off[part.part];
                    EXPECT_EQ(planned.area.size().width + by.width, part.size.width) << seed;
                    EXPECT_EQ(planned.area.size().height + by.height, part.size.height) << seed;
                }
            }
            SheetSteps exact = steps;
            for (CutStep& step : exact.steps) {
                step.shown = step.setting;
            }
            EXPECT_TRUE(offSizes(exact, sheet).empty()) << "seed " << seed;
        }
    }
    EXPECT_GT(differing, 0U);
}

TEST(CutSteps, WhatRoundingTakesAwayAltogetherIsLost) {
    SheetPlan sheet{0, std::vector<CutPart>(3)};
    const Length thin = Length::inches(0, 1, 64);
    const Interval high{Length(), Length::inches(4)};
    sheet.parts[0].area = {{Length(), Length::inches(4)}, high};
    sheet.parts[0].use = CutPart::Use::Cut;
    sheet.parts[0].at = thin;
    sheet.parts[0].first = 1;
    sheet.parts[0].second = 2;
    sheet.parts[1].area = {{Length(), thin}, high};
    sheet.parts[2].area = {{thin, Length::inches(4)}, high};
    sheet.parts[1].use = sheet.parts[2].use = CutPart::Use::Piece;
    const SheetSteps steps = stepsOf({{sheet}, {}}, scale).front();
    const std::map<int, OffSize> wanted{{1, {{}, {}, true}}, {2, {thin, {}}}};
    EXPECT_EQ(offSizes(steps, sheet), wanted);
    EXPECT_NE(offText("A", wanted.at(1)).find("does not come out"), std::string::npos);
}

TEST(CutSteps, SetTheTrimmerToThePiecesOwnMeasures) {
    CutJob job;
    job.pieces = {{{Length::inches(3, 1, 4), Length::inches(5)}, 3, false, 0},
                  {{Length::inches(2), Length::inches(4)}, 2, false, 0}};
    job.sheets = {{inchSize(12, 12), std::nullopt, 1, {}, 0}};
    for (const SheetSteps& steps : stepsOf(planOf(job), scale)) {
        for (const CutStep& step : steps.steps) {
            const bool isAPieces =
                step.setting == Length::inches(3, 1, 4) || step.setting == Length::inches(5) ||
                step.setting == Length::inches(2) || step.setting == Length::inches(4);
            EXPECT_TRUE(isAPieces) << lengthText(step.setting, scale);
        }
    }
}

TEST(CutSteps, TheSimulationRefusesWhatHandsCannotDo) {
    const auto run = [](CutStep step) {
        return carriedOut({0, {step}}, inchSize(10, 10), Length::inches(1), SettingUsed::Exact);
    };
    const CutStep good{0, 1, 2, CutDirection::Upright, Length::inches(4), Length::inches(4)};
    ASSERT_TRUE(run(good));
    EXPECT_EQ((*run(good))[1].size, inchSize(5, 10));
    CutStep bad = good;
    bad.part = 3;
    EXPECT_FALSE(run(bad));
    bad = good;
    bad.setting = Length::inches(10);
    EXPECT_FALSE(run(bad));
    bad = good;
    bad.setting = Length::inches(9);  // the blade takes the rest, so there is no second part
    EXPECT_FALSE(run(bad));
    bad.second = -1;
    EXPECT_TRUE(run(bad));
    bad = good;
    bad.second = 1;
    EXPECT_FALSE(run(bad));
}

}  // namespace
}  // namespace matwright::test
