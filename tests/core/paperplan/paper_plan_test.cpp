// SPDX-License-Identifier: MIT
#include "core/paperplan/paper_plan.h"

#include <fmt/format.h>

#include <algorithm>

#include "tests/core/paperplan/plan_parts.h"

namespace matwright {
namespace {

using namespace test;

TEST(PaperPlan, MatchesPapersByTheirWordsCaseAndSpacesAside) {
    const auto plan = planOf(pageWith({blockOf({in(3), in(4)}, " Kraft  CARDSTOCK")}),
                             {sheetOf(7, "kraft cardstock", {in(12), in(12)})}, nothingToBuy());
    ASSERT_EQ(plan.sheets.size(), 1U);
    EXPECT_EQ(plan.sheets[0].source, PaperSource(FromHand{{7}}));
    EXPECT_EQ(plan.sheets[0].planned.heading, "Sheet 1: kraft cardstock, 12 × 12 in");
    EXPECT_TRUE(plan.provedCheapest);
    EXPECT_EQ(plan.bound, "1 sheet, proved fewest");
}

TEST(PaperPlan, WhatNamesNoPaperIsListed) {
    const auto plan = planOf(pageWith({blockOf({in(3), in(4)}, "")}), {});
    EXPECT_TRUE(plan.sheets.empty());
    EXPECT_EQ(plan.needPaper, std::vector<std::size_t>{0});
    const auto lines = plan.summary();
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0], "Nothing can be cut yet.");
    EXPECT_TRUE(lines[1].starts_with("Needs a paper: "));
}

TEST(PaperPlan, WhatIsNotOnHandIsToBeBought) {
    const auto plan =
        planOf(pageWith({blockOf({in(7), in(12)}, "kraft"), blockOf({in(7), in(12)}, "kraft"),
                         blockOf({in(7), in(12)}, "kraft")}),
               {sheetOf(1, "kraft", {in(12), in(12)})});
    EXPECT_EQ(plan.toBuy, std::vector<std::string>{"2 sheets of kraft, 12 × 12 in"});
    EXPECT_EQ(plan.sheets.size(), 3U);
}

TEST(PaperPlan, WhatCannotBeCutIsNamedWithWhatToDo) {
    const auto nothing = planOf(pageWith({blockOf({in(3), in(4)}, "kraft")}), {}, nothingToBuy());
    ASSERT_EQ(nothing.notCut.size(), 1U);
    EXPECT_EQ(nothing.notCut[0].why,
              "There is no kraft on hand. Buy some, or choose another paper.");
    const auto tooLarge = planOf(pageWith({blockOf({in(13), in(2)}, "kraft")}),
                                 {sheetOf(1, "kraft", {in(12), in(12)})});
    ASSERT_EQ(tooLarge.notCut.size(), 1U);
    EXPECT_EQ(
        tooLarge.notCut[0].why,
        "With 13 × 2 in it fits on no sheet of kraft. Find a larger sheet, or cut it in parts.");
    const auto notEnough =
        planOf(pageWith({blockOf({in(7), in(12)}, "kraft"), blockOf({in(7), in(12)}, "kraft")}),
               {sheetOf(1, "kraft", {in(12), in(12)})}, nothingToBuy());
    ASSERT_EQ(notEnough.notCut.size(), 1U);
    EXPECT_EQ(notEnough.notCut[0].why,
              "No room was found for it on what is on hand. Buy some kraft, or choose another "
              "paper.");
}

TEST(PaperPlan, AScrapIsUsedWhereItSavesASheetAndLeftWhereItDoesNot) {
    const std::vector<PaperOnHand> onHand{sheetOf(1, "kraft", {in(12), in(12)}, 5),
                                          sheetOf(2, "kraft", {in(5), in(5)}, 1, PaperKind::Scrap)};
    const auto onScrap = planOf(pageWith({blockOf({in(4), in(5)}, "kraft")}), onHand);
    ASSERT_EQ(onScrap.sheets.size(), 1U);
    EXPECT_EQ(onScrap.sheets[0].source, PaperSource(FromHand{{2}}));
    EXPECT_EQ(onScrap.sheets[0].planned.heading, "Sheet 1: kraft, 5 × 5 in, a scrap");
    const auto onWhole = planOf(
        pageWith({blockOf({in(12), in(6)}, "kraft"), blockOf({in(4), in(5)}, "kraft")}), onHand);
    ASSERT_EQ(onWhole.sheets.size(), 1U);
    EXPECT_EQ(onWhole.sheets[0].source, PaperSource(FromHand{{1}}));
}

TEST(PaperPlan, APaperWithAnUpDirectionIsNeverTurned) {
    PaperOnHand dots = sheetOf(1, "dots", {in(12), in(6)});
    const PaperPage page = pageWith({blockOf({in(6), in(12)}, "dots")});
    EXPECT_EQ(planOf(page, {dots}, nothingToBuy()).sheets.size(), 1U);
    dots.pattern = PaperPattern::HasUp;
    EXPECT_EQ(planOf(page, {dots}, nothingToBuy()).notCut.size(), 1U);
    // Turned by a quarter on the page, it stands on the sheet as it stands there.
    PaperPage turned = page;
    turned.sketch.pieces.begin()->second.rotation = Angle::degrees(90);
    const auto plan = planOf(turned, {dots}, nothingToBuy());
    EXPECT_EQ(plan.sheets.size(), 1U);
    EXPECT_TRUE(plan.sheets[0].planned.hasUp);
}

// A mat of 11 1/2 in hides 10 in of paper: room for two mats of 4 1/2 x 6 1/2 in.
TEST(PaperPlan, AGuttedMatSavesASheet) {
    const std::vector<PaperOnHand> onHand{sheetOf(1, "kraft", {in(12), in(12)}, 5)};
    std::vector<Piece> pieces{photoOn({in(11), in(11)}, "kraft", false),
                              photoOn({in(4), in(6)}, "kraft", false),
                              photoOn({in(4), in(6)}, "kraft", false)};
    EXPECT_EQ(planOf(pageWith(pieces), onHand).sheets.size(), 2U);
    pieces[0].mats[0].gutted = true;
    const auto plan = planOf(pageWith(pieces), onHand);
    ASSERT_EQ(plan.sheets.size(), 2U);
    EXPECT_EQ(plan.sheets[0].source, PaperSource(FromHand{{1}}));
    EXPECT_EQ(plan.sheets[1].source, PaperSource(FromMiddle{0}));
    EXPECT_EQ(plan.sheets[1].planned.size, (Size{in(10), in(10)}));
    ASSERT_EQ(plan.sheets[0].planned.knifeCuts.size(), 1U);
    const std::string said =
        knifeSentence(plan.sheets[0].planned, plan.sheets[0].planned.knifeCuts[0]);
    EXPECT_NE(said.find("3/4 in inside its edges: it is sheet 2."), std::string::npos) << said;
    EXPECT_NE(said.find("away from your hand"), std::string::npos);
    EXPECT_TRUE(plan.provedCheapest);
    EXPECT_NE(plan.sheets[1].planned.heading.find("the middle of A on sheet 1"), std::string::npos);
}

TEST(PaperPlan, TheMiddleOfAMatThatIsNotCutDoesNotExist) {
    const std::vector<PaperOnHand> onHand{sheetOf(1, "kraft", {in(4), in(4)}, 1, PaperKind::Scrap)};
    const PaperPage page =
        pageWith({photoOn({in(11), in(11)}, "kraft", true), photoOn({in(8), in(8)}, "kraft", true),
                  blockOf({in(3), in(3)}, "kraft"), blockOf({in(5), in(5)}, "kraft")});
    const auto plan = planOf(page, onHand, nothingToBuy());
    EXPECT_EQ(plan.sheets.size(), 1U);
    EXPECT_EQ(plan.notCut.size(), 3U);
}

// Middles within middles: each mat is cut from the middle of the one before.
TEST(PaperPlan, MiddlesOfMiddlesComeInAnOrderThatCanBeDone) {
    const std::vector<PaperOnHand> onHand{sheetOf(1, "kraft", {in(12), in(12)})};
    const auto plan =
        planOf(pageWith({blockOf({in(3), in(3)}, "kraft"), photoOn({in(5), in(5)}, "kraft", true),
                         photoOn({in(8), in(8)}, "kraft", true),
                         photoOn({in(11), in(11)}, "kraft", true)}),
               onHand, nothingToBuy());
    EXPECT_TRUE(plan.notCut.empty());
    EXPECT_EQ(plan.sheets.size(), 4U);
}

TEST(PaperPlan, MatsOfOneSizeOfWhichOnlySomeAreGuttedAreToldApart) {
    const std::vector<PaperOnHand> onHand{sheetOf(1, "kraft", {in(12), in(12)}, 3)};
    const auto plan = planOf(
        pageWith({photoOn({in(11), in(11)}, "kraft", false),
                  photoOn({in(11), in(11)}, "kraft", true),
                  photoOn({in(11), in(11)}, "kraft", false), blockOf({in(9), in(9)}, "kraft")}),
        onHand, nothingToBuy());
    EXPECT_TRUE(plan.notCut.empty());
    EXPECT_EQ(plan.sheets.size(), 4U);
}

TEST(PaperPlan, WhatIsNotOnTheTrimmersScaleIsSaid) {
    const Length odd = Length::inches(3, 1, 32);
    const auto plan = planOf(pageWith({blockOf({odd, in(12)}, "kraft")}),
                             {sheetOf(1, "kraft", {in(12), in(12)})});
    const std::string said = stepSentence(plan.sheets[0].planned, 0);
    EXPECT_NE(said.find("1/32 in too"), std::string::npos) << said;
}

TEST(PaperPlan, AMiddleThatIsNotNeededIsToldToStayIn) {
    const PaperPage page =
        pageWith({blockOf({in(2), in(2)}, "kraft"), photoOn({in(4), in(6)}, "kraft", true)});
    const auto told = [](const PaperPlan& plan) {
        return std::ranges::count(plan.remarks,
                                  "The middle of mat under photo slot 4 × 6 in (no. 2) stays "
                                  "in: it would save no sheet.");
    };
    const auto roomy = planOf(page, {sheetOf(1, "kraft", {in(12), in(12)})});
    EXPECT_EQ(told(roomy), 1) << fmt::format("{}", fmt::join(roomy.remarks, "\n"));
    const Size justTheMat{Length::inches(4, 1, 2), Length::inches(6, 1, 2)};
    const auto needed = planOf(page, {sheetOf(1, "kraft", justTheMat)}, nothingToBuy());
    EXPECT_TRUE(needed.notCut.empty());
    EXPECT_EQ(told(needed), 0);
}

TEST(PaperPlan, TheSearchTellsItsSheetsAndHowManyThereAreAtLeast) {
    const CutJob bought{{}, {{{in(12), in(12)}, std::nullopt, 10'000, {}, 0}}, {}};
    EXPECT_EQ(paperProgress({3, 30'000, 20'000}, bought), (PaperProgress{3, 2}));
    EXPECT_EQ(paperProgress({3, 30'000, 20'001}, bought), (PaperProgress{3, 3}));
    // Two on hand and nothing bought: what is to be bought is dearer than the whole plan.
    const CutJob mixed{{},
                       {{{in(12), in(12)}, std::nullopt, 10'000, {}, 0},
                        {{in(12), in(12)}, 2, 100, {}, 0},
                        {{in(3), in(3)}, 4, 1, {}, 0}},
                       {}};
    EXPECT_EQ(paperProgress({2, 200, 200}, mixed), (PaperProgress{2, 2}));
    EXPECT_EQ(paperProgress({4, 10'201, 10'100}, mixed), (PaperProgress{4, 2}));
    EXPECT_EQ(paperProgress({4, 203, 202}, mixed), (PaperProgress{4, 4}));
    EXPECT_EQ(paperProgress({0, 0, 0}, mixed), (PaperProgress{0, 0}));
    std::vector<PaperProgress> told;
    const PaperPage page =
        pageWith({blockOf({in(12), in(7)}, "kraft"), blockOf({in(12), in(7)}, "kraft")});
    ASSERT_TRUE(planPapers(std::span(&page, 1), {}, {}, {},
                           [&](const PaperProgress& now) { told.push_back(now); }));
    ASSERT_FALSE(told.empty());
    EXPECT_EQ(told.back(), (PaperProgress{2, 2}));
}

TEST(PaperPlan, ASearchThatEndedEarlySaysToLookLonger) {
    std::stop_source stop;
    stop.request_stop();
    const PaperPage page =
        pageWith({blockOf({in(7), in(12)}, "kraft"), blockOf({in(7), in(12)}, "kraft")});
    const std::vector<PaperOnHand> onHand{sheetOf(1, "kraft", {in(12), in(12)})};
    const auto plan = planPapers(std::span(&page, 1), onHand, nothingToBuy(), stop.get_token());
    ASSERT_TRUE(plan);
    ASSERT_TRUE(plan->cancelled);
    ASSERT_FALSE(plan->notCut.empty());
    EXPECT_EQ(plan->notCut[0].why,
              "No room was found for it on what is on hand. Look longer, buy some kraft, or choose "
              "another paper.");
}

// Own sheets, scraps and bought ones have prices of different kinds.
TEST(PaperPlan, OfAPlanThatIsNotProvedNoShareOfMadeUpPricesIsSaid) {
    std::stop_source stop;
    stop.request_stop();
    std::vector<Piece> pieces;
    for (std::int64_t i = 0; i < 12; ++i) {
        pieces.push_back(blockOf({in(3 + i % 4), in(4 + i % 3)}, "kraft"));
    }
    const PaperPage page = pageWith(std::move(pieces));
    const std::vector<PaperOnHand> onHand{sheetOf(1, "kraft", {in(12), in(12)}),
                                          sheetOf(2, "kraft", {in(7), in(5)}, 3, PaperKind::Scrap)};
    const auto plan = planPapers(std::span(&page, 1), onHand, {}, stop.get_token());
    ASSERT_TRUE(plan);
    ASSERT_FALSE(plan->provedCheapest);
    ASSERT_TRUE(plan->notCut.empty());
    const auto bought = std::ranges::count(plan->sheets, PaperSource(ToBuy{}), &PaperSheet::source);
    EXPECT_EQ(plan->bound,
              fmt::format("{} sheets, {} to buy; not proved cheapest", plan->sheets.size(),
                          bought == 0 ? "none" : std::to_string(bought)));
}

TEST(PaperPlan, AStopRequestEndsWithAWholePlan) {
    std::stop_source stop;
    stop.request_stop();
    const PaperPage page =
        pageWith({blockOf({in(7), in(12)}, "kraft"), blockOf({in(7), in(3)}, "kraft")});
    const auto plan = planPapers(std::span(&page, 1), {}, {}, stop.get_token());
    ASSERT_TRUE(plan);
    EXPECT_TRUE(test::brokenPlanLaws(*plan, std::span(&page, 1), {}, {}).empty());
}

TEST(PaperPlan, FaultyWishesAreRefused) {
    const PaperPage page = pageWith({});
    PaperPlanOptions options;
    options.glueEdge = Length::fromTicks(-1);
    EXPECT_FALSE(planPapers(std::span(&page, 1), {}, options));
    options = {};
    options.toBuy = {{in(0), in(12)}};
    EXPECT_FALSE(planPapers(std::span(&page, 1), {}, options));
    const auto nothing = planPapers(std::span(&page, 1), {}, {});
    ASSERT_TRUE(nothing);
    EXPECT_EQ(nothing->summary(), std::vector<std::string>{"Nothing is to be cut."});
}

}  // namespace
}  // namespace matwright
