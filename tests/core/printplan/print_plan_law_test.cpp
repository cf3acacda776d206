// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cstdio>

#include "tests/core/printplan/made_plans.h"

namespace matwright {

namespace {

PrintPlanLimits quick() {
    PrintPlanLimits limits;
    limits.cuts = {2'000'000, std::chrono::milliseconds(60'000)};
    limits.roomSteps = 20'000;
    return limits;
}

TEST(PrintPlanLaws, EveryPlanOf240RandomInputsIsSoundAndTheSameAgain) {
    constexpr unsigned seed = 42;
    test::Random random(seed);
    std::size_t sheets = 0;
    std::size_t prints = 0;
    std::size_t taken = 0;
    std::size_t left = 0;
    for (int i = 0; i < 240; ++i) {
        const PlanInput input = test::randomInput(random);
        const PrintPlan plan = test::soundPlan(input, quick());
        ASSERT_FALSE(testing::Test::HasFailure()) << "seed " << seed << ", input " << i;
        if (i % 10 == 0) {
            EXPECT_EQ(plan, test::soundPlan(input, quick())) << "seed " << seed << ", input " << i;
        }
        sheets += plan.sheets.size();
        prints += plan.prints.size();
        taken += plan.taken.size();
        left += plan.leftOut.size();
        for (const LeftOutPrint& one : plan.leftOut) {
            EXPECT_GT(one.sentence.size(), 30U);
        }
    }
    std::puts(fmt::format("240 plans (seed {}): {} prints on {} sheets, {} taken, {} left out",
                          seed, prints, sheets, taken, left)
                  .c_str());
    EXPECT_GT(taken, 20U);
    EXPECT_GT(left, 20U);
}

TEST(PrintPlanLaws, WhatIsSaidToFitFitsWhenItIsMade) {
    constexpr unsigned seed = 77;
    test::Random random(seed);
    int looked = 0;
    for (int i = 0; i < 40; ++i) {
        PlanInput input = test::randomInput(random);
        input.wishes.clear();
        input.ahead.clear();
        const PrintPlan plan = test::soundPlan(input, quick());
        if (plan.sheets.empty() || plan.sheets.front().room.empty()) {
            continue;
        }
        const RoomFor room = plan.sheets.front().room.back();
        const PlanPage more = test::madePage(
            "More", std::vector<Size>(static_cast<std::size_t>(room.count), room.size), 80);
        PlanInput with = input;
        for (const Print& print : printsOf(more.making, {})) {
            with.ahead.push_back({more.making.work.photos.at(print.photo), print, "favourite"});
        }
        const PrintPlan again = test::soundPlan(with, quick());
        EXPECT_EQ(again.sheets.size(), plan.sheets.size());
        const std::size_t missing = again.leftOut.size() - plan.leftOut.size();
        EXPECT_EQ(missing, 0U) << "seed " << seed << ", input " << i << ": " << roomText(room);
        ++looked;
    }
    EXPECT_GT(looked, 10);
}

TEST(PrintPlanFaults, AreFoundInASpoiledPlan) {
    const PlanInput input = test::inputOf(
        {test::madePage("A page", {test::inches(3, 4), test::inches(3, 4), test::inches(4, 6)})});
    const PrintPlan plan = test::soundPlan(input);
    const auto faults = [&](const std::function<void(PrintPlan&)>& spoil) {
        PrintPlan spoiled = plan;
        spoil(spoiled);
        return faultsOf(spoiled, input).size();
    };
    EXPECT_EQ(faults([](PrintPlan&) {}), 0U);
    EXPECT_GT(faults([](PrintPlan& p) { p.sheets.pop_back(); }), 0U);
    EXPECT_GT(faults([](PrintPlan& p) { p.sheets.push_back(p.sheets.front()); }), 0U);
    EXPECT_GT(faults([](PrintPlan& p) {
                  p.sheets.front().gang.places.front().at.x += Length::fromTicks(1);
              }),
              0U);
    EXPECT_GT(faults([](PrintPlan& p) { p.sheets.front().paper = {99}; }), 0U);
    EXPECT_GT(faults([](PrintPlan& p) { p.prints.front().print.crop.centreX += 1; }), 0U);
    EXPECT_GT(faults([](PrintPlan& p) { p.prints.front().printer = PrinterId{3}; }), 0U);
    EXPECT_GT(faults([](PrintPlan& p) { p.leftOut.push_back({0, "x"}); }), 0U);
    EXPECT_GT(faults([](PrintPlan& p) { p.prints.front().ahead = 0; }), 0U);
    EXPECT_GT(faults([](PrintPlan& p) { p.taken.push_back({0, p.prints[0].print, {1}}); }), 0U);
}

}  // namespace

}  // namespace matwright
