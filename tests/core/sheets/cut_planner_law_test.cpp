// SPDX-License-Identifier: MIT
// What holds for every plan, on seeded random jobs.
#include <gtest/gtest.h>

#include <numeric>

#include "core/sheets/cut_planner.h"
#include "core/sheets/plan_check.h"
#include "tests/core/sheets/random_job.h"

namespace matwright::test {
namespace {

// The clock has no say here.
constexpr CutLimits limits{150'000, std::chrono::hours(1)};

CutAnswer planned(const CutJob& job, const CutLimits& within = limits) {
    auto answer = planCuts(job, within);
    EXPECT_TRUE(answer);
    return answer ? *answer : CutAnswer{};
}

std::vector<RandomJobOptions> allOptions() {
    std::vector<RandomJobOptions> all;
    for (const CutStages stages : {CutStages::Any, CutStages::AtMostThree}) {
        for (const Length kerf : {Length(), Length::inches(0, 1, 32), Length::inches(0, 1, 8)}) {
            for (const bool stock : {false, true}) {
                all.push_back({6, 2, stock, stock, kerf, stages});
            }
        }
    }
    all.push_back({14, 3, false, true, Length(), CutStages::Any});
    all.push_back({14, 3, true, false, Length(), CutStages::AtMostThree});
    return all;
}

TEST(CutPlannerLaw, EveryPlanPassesTheCheckerAndItsBound) {
    std::uint64_t seed = 1;
    for (const RandomJobOptions& options : allOptions()) {
        for (int n = 0; n < 6; ++n, ++seed) {
            const CutJob job = randomJob(seed, options);
            const CutAnswer answer = planned(job);
            EXPECT_EQ(faultsOf(answer.plan, job), std::vector<std::string>{}) << "seed " << seed;
            EXPECT_EQ(answer.cost, costOf(answer.plan, job)) << "seed " << seed;
            const int uncut =
                std::accumulate(answer.plan.uncut.begin(), answer.plan.uncut.end(), 0);
            if (uncut == 0) {
                EXPECT_LE(answer.costBound, answer.cost) << "seed " << seed;
            }
            EXPECT_EQ(answer.provedCheapest && uncut == 0,
                      answer.provedCheapest && answer.costBound == answer.cost)
                << "seed " << seed;
        }
    }
}

TEST(CutPlannerLaw, TheSameJobGivesTheSameAnswer) {
    for (std::uint64_t seed = 200; seed < 212; ++seed) {
        const CutJob job = randomJob(seed, {12, 3, false, false, Length(), CutStages::Any});
        const CutAnswer first = planned(job);
        const CutAnswer second = planned(job);
        EXPECT_EQ(first.plan, second.plan) << "seed " << seed;
        EXPECT_EQ(first.steps, second.steps) << "seed " << seed;
        EXPECT_FALSE(first.endedByClock);
    }
}

// As long as the clock ends nothing, it has no say: a plan that both limits let be proved is one
// plan, and so is one that both let the steps run out for.
TEST(CutPlannerLaw, MoreTimeThanIsNeededChangesNothing) {
    int proved = 0;
    int endedBySteps = 0;
    for (std::uint64_t seed = 220; seed < 236; ++seed) {
        const bool hard = seed % 4 == 0;
        const CutJob job =
            randomJob(seed, {hard ? 40 : 8, 2, false, true, Length(),
                             seed % 2 == 0 ? CutStages::Any : CutStages::AtMostThree});
        const CutAnswer soon = planned(job, {limits.steps, std::chrono::minutes(10)});
        const CutAnswer late = planned(job, {limits.steps, std::chrono::hours(5)});
        EXPECT_FALSE(soon.endedByClock);
        EXPECT_EQ(soon.plan, late.plan) << "seed " << seed;
        EXPECT_EQ(soon.costBound, late.costBound) << "seed " << seed;
        EXPECT_EQ(soon.steps, late.steps) << "seed " << seed;
        proved += soon.provedCheapest;
        endedBySteps += !soon.provedCheapest;
    }
    EXPECT_GT(proved, 3);
    EXPECT_GT(endedBySteps, 1);
}

// Asking again in the same program finds nothing left behind by other jobs.
TEST(CutPlannerLaw, WhatWasPlannedBeforeDoesNotMatter) {
    const CutJob job = randomJob(240, {30, 2, false, false, Length(), CutStages::Any});
    const CutAnswer first = planned(job);
    for (std::uint64_t seed = 241; seed < 244; ++seed) {
        planned(randomJob(seed, {10, 2, true, false, Length(), CutStages::AtMostThree}));
    }
    EXPECT_EQ(planned(job).plan, first.plan);
}

// Of two proved answers the one with more freedom cannot be dearer.
void expectNotDearer(const CutAnswer& freer, const CutAnswer& stricter, std::uint64_t seed) {
    if (freer.provedCheapest && stricter.provedCheapest) {
        EXPECT_LE(freer.cost, stricter.cost) << "seed " << seed;
    }
    EXPECT_LE(freer.costBound, stricter.cost) << "seed " << seed;
}

TEST(CutPlannerLaw, TurningAFinerBladeAndMoreStagesAreNeverDearer) {
    for (std::uint64_t seed = 300; seed < 320; ++seed) {
        CutJob job = randomJob(seed, {5, 2, false, false, Length(), CutStages::AtMostThree});
        for (CutPiece& piece : job.pieces) {
            piece.mayTurn = false;
        }
        const CutAnswer fixed = planned(job);
        CutJob any = job;
        any.rules.stages = CutStages::Any;
        expectNotDearer(planned(any), fixed, seed);
        CutJob turnable = job;
        for (CutPiece& piece : turnable.pieces) {
            piece.mayTurn = true;
        }
        expectNotDearer(planned(turnable), fixed, seed);
        CutJob thick = job;
        thick.rules.kerf = Length::inches(0, 1, 16);
        const CutAnswer thicker = planned(thick);
        if (std::accumulate(thicker.plan.uncut.begin(), thicker.plan.uncut.end(), 0) == 0) {
            expectNotDearer(fixed, thicker, seed);
        }
    }
}

TEST(CutPlannerLaw, PapersAreKeptApart) {
    CutJob job;
    job.pieces = {{inchSize(3, 3), 1, true, 0}, {inchSize(3, 3), 1, true, 7}};
    job.sheets = {{inchSize(12, 12), std::nullopt, 1, {}, 0},
                  {inchSize(12, 12), std::nullopt, 1, {}, 7}};
    const CutAnswer answer = planned(job);
    EXPECT_EQ(answer.plan.sheets.size(), 2U);
    EXPECT_TRUE(answer.provedCheapest);
    EXPECT_TRUE(faultsOf(answer.plan, job).empty());
}

TEST(CutPlannerLaw, WhatFitsNowhereAndWhatIsNotAtHandIsNamed) {
    CutJob job;
    job.pieces = {{inchSize(13, 1), 2, true, 0}, {inchSize(12, 12), 3, true, 0}};
    job.sheets = {{inchSize(12, 12), 2, 1, {}, 0}};
    const CutAnswer answer = planned(job);
    EXPECT_EQ(answer.plan.uncut, (std::vector<int>{2, 1}));
    EXPECT_EQ(answer.plan.sheets.size(), 2U);
    EXPECT_FALSE(answer.provedCheapest);
    EXPECT_TRUE(faultsOf(answer.plan, job).empty());
}

TEST(CutPlannerLaw, AScrapThatSavesASheetIsTaken) {
    CutJob job;
    job.pieces = {{inchSize(12, 12), 1, true, 0}, {inchSize(3, 4), 1, true, 0}};
    job.sheets = {{inchSize(12, 12), std::nullopt, 100, {}, 0}, {inchSize(4, 5), 1, 1, {}, 0}};
    EXPECT_EQ(planned(job).cost, 101);
    job.pieces[0].size = inchSize(9, 12);
    EXPECT_EQ(planned(job).cost, 100);
}

TEST(CutPlannerLaw, TheLeftoverIsInOnePiece) {
    CutJob job;
    job.pieces = {{inchSize(4, 6), 3, true, 0}};
    job.sheets = {{inchSize(12, 12), std::nullopt, 1, {}, 0}};
    const CutAnswer answer = planned(job);
    const auto leftover = largestLeftover(answer.plan, job);
    EXPECT_EQ(leftover.area.size().width.ticks() * leftover.area.size().height.ticks(),
              inchSize(12, 6).width.ticks() * inchSize(12, 6).height.ticks());
    EXPECT_EQ(cutsOf(answer.plan), 3);
    EXPECT_EQ(settingsOf(answer.plan), 2);
}

TEST(CutPlannerLaw, NothingToCutIsAnEmptyPlan) {
    const CutAnswer answer = planned({});
    EXPECT_TRUE(answer.plan.sheets.empty());
    EXPECT_TRUE(answer.provedCheapest);
}

TEST(CutPlannerLaw, AStopEndsWithAPlan) {
    std::stop_source source;
    source.request_stop();
    const CutJob job = randomJob(5, {14, 3, false, false, Length(), CutStages::Any});
    const auto answer = planCuts(job, limits, source.get_token());
    ASSERT_TRUE(answer);
    EXPECT_TRUE(faultsOf(answer->plan, job).empty());
    EXPECT_TRUE(answer->cancelled || answer->provedCheapest);
    EXPECT_EQ(std::accumulate(answer->plan.uncut.begin(), answer->plan.uncut.end(), 0), 0);
}

TEST(CutPlannerLaw, ProgressTellsOfBetterPlansOnly) {
    const CutJob job = randomJob(9, {14, 3, false, false, Length(), CutStages::Any});
    std::vector<CutProgress> told;
    ASSERT_TRUE(planCuts(job, limits, {}, [&](const CutProgress& p) { told.push_back(p); }));
    ASSERT_FALSE(told.empty());
    for (std::size_t i = 1; i < told.size(); ++i) {
        EXPECT_LE(told[i].cost, told[i - 1].cost);
        EXPECT_GE(told[i].costBound, told[i - 1].costBound);
    }
}

TEST(CutPlannerLaw, ManyPiecesAreStillPlanned) {
    const CutJob job = randomJob(3, {60, 12, false, false, Length(), CutStages::Any});
    const CutAnswer answer = planned(job);
    EXPECT_TRUE(faultsOf(answer.plan, job).empty());
}

}  // namespace
}  // namespace matwright::test
