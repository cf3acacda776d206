// SPDX-License-Identifier: MIT
#include "core/printplan/drawn_sheet.h"

#include <gtest/gtest.h>

#include "core/cutpicture/sheet_picture.h"
#include "tests/core/printplan/made_plans.h"

namespace matwright {

namespace {

using test::inches;

TEST(ADrawnSheet, HasNamesStepsAndARemarkOnTheRoom) {
    PlanInput input = test::inputOf({test::madePage("Harbour", {inches(3, 4), inches(2, 2)})});
    input.printers.resize(1);
    input.printers[0].papers.resize(1);
    const PrintPlan plan = test::soundPlan(input);
    ASSERT_EQ(plan.sheets.size(), 1U);
    const PlannedSheet drawn = drawnSheet(plan, input, 0, Scale::SixteenthInch);
    EXPECT_EQ(drawn.heading, "Sheet 1: 4 × 6 in, without borders (Small printer)");
    EXPECT_EQ(drawn.names.size(), 2U);
    EXPECT_NE(drawn.names.begin()->second.find("for Harbour"), std::string::npos);
    ASSERT_FALSE(drawn.notes.empty());
    EXPECT_EQ(drawn.notes.front(), "There is room for one more 2 × 2 in.");
    EXPECT_GE(drawn.steps.steps.size(), 3U);
    // The shared drawing takes it as it is: every step has its sentence.
    for (std::size_t i = 0; i < drawn.steps.steps.size(); ++i) {
        EXPECT_NE(stepSentence(drawn, i).find("cut"), std::string::npos);
    }
    const Drawing picture = sheetPicture(drawn, {Length::inches(4), Length::inches(4)});
    EXPECT_FALSE(picture.layers.empty());
}

}  // namespace

}  // namespace matwright
