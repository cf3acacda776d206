// SPDX-License-Identifier: MIT
#include "core/printplan/print_plan.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/printplan/made_plans.h"

namespace matwright {

namespace {

using test::inches;
using test::inputOf;
using test::keptPrinters;
using test::madePage;
using test::soundPlan;

// One printer with one paper.
std::vector<Printer> onlyPaper(Size size, std::optional<int> atHand = std::nullopt) {
    std::vector<Printer> printers = keptPrinters();
    printers.resize(1);
    printers[0].papers.resize(1);
    printers[0].papers[0].size = size;
    printers[0].papers[0].atHand = atHand;
    return printers;
}

TEST(APrintPlan, PutsTwo3x4OnOne4x6WithoutABorderBetweenThem) {
    // Common practice, no source: two 3x4 fill a 4x6 exactly.
    const PlanInput input =
        inputOf({madePage("A page", {inches(3, 4), inches(3, 4)})}, onlyPaper(inches(4, 6)));
    const PrintPlan plan = soundPlan(input);
    ASSERT_EQ(plan.sheets.size(), 1U);
    EXPECT_TRUE(plan.provedCheapest);
    EXPECT_EQ(plan.bound, "1 sheet, proved fewest");
    const PrintSheet& sheet = plan.sheets.front();
    ASSERT_EQ(sheet.gang.places.size(), 2U);
    // On an upright 4x6 both lie turned, one under the other.
    EXPECT_TRUE(sheet.gang.places[0].turned);
    EXPECT_TRUE(sheet.gang.places[1].turned);
    EXPECT_EQ(sheet.gang.places[0].at, Point{});
    EXPECT_EQ(sheet.gang.places[1].at, (Point{{}, Length::inches(3)}));
    EXPECT_TRUE(sheet.room.empty());
    const SheetSteps steps = stepsOf(sheet, Scale::SixteenthInch);
    ASSERT_EQ(steps.steps.size(), 1U);
    EXPECT_EQ(steps.steps.front().setting, Length::inches(3));
}

TEST(APrintPlan, PutsPrintsOfSeveralPagesOnOneSheet) {
    const PlanInput input =
        inputOf({madePage("One", {inches(3, 4)}), madePage("Two", {inches(3, 4)}, 20)},
                onlyPaper(inches(4, 6)));
    const PrintPlan plan = soundPlan(input);
    ASSERT_EQ(plan.sheets.size(), 1U);
    EXPECT_EQ(plan.prints[0].page, 0U);
    EXPECT_EQ(plan.prints[1].page, 1U);
    EXPECT_NE(plan.prints[0].photo.content, plan.prints[1].photo.content);
}

TEST(APrintPlan, TakesTheCheaperPaper) {
    // Of the starting printers two 3x4 cost 30 on the small printer's 4x6 and more on any other.
    const PrintPlan plan = soundPlan(inputOf({madePage("A page", {inches(3, 4), inches(3, 4)})}));
    ASSERT_EQ(plan.sheets.size(), 1U);
    EXPECT_EQ(plan.sheets[0].printer, PrinterId{1});
    EXPECT_EQ(plan.sheets[0].paper, PrinterPaperId{11});
}

TEST(APrintPlan, KeepsClearOfMargins) {
    std::vector<Printer> printers = onlyPaper(inches(4, 6));
    printers[0].papers[0].borderless = false;
    const PrintPlan plan =
        soundPlan(inputOf({madePage("A page", {inches(3, 4), inches(4, 6)})}, printers));
    ASSERT_EQ(plan.sheets.size(), 1U);
    ASSERT_EQ(plan.leftOut.size(), 1U);
    EXPECT_EQ(plan.prints[plan.leftOut[0].print].print.paper, inches(4, 6));
    EXPECT_NE(plan.leftOut[0].sentence.find("No paper takes a print of 4 × 6 in"),
              std::string::npos);
    EXPECT_GE(plan.sheets[0].gang.places[0].at.x, Length::inches(0, 1, 8));
}

TEST(APrintPlan, TakesWhatIsOnHandAndOnlyTellsOfAnotherCrop) {
    const PlanPage page = madePage("A page", {inches(3, 4), inches(4, 6), inches(3, 4)});
    PlanInput input = inputOf({page});
    input.onHand = {test::onHandFor(page, 0, 7), test::onHandFor(page, 1, 8),
                    test::onHandFor(page, 0, 9)};
    input.onHand[1].look.crop.centreX += 1;
    input.onHand[2].state = PrintState::Used;
    const PrintPlan plan = soundPlan(input);
    ASSERT_EQ(plan.taken.size(), 1U);
    EXPECT_EQ(plan.taken[0].onHand, PrintOnHandId{7});
    EXPECT_EQ(plan.prints.size(), 2U);
    ASSERT_EQ(plan.alike.size(), 1U);
    EXPECT_EQ(plan.alike[0].onHand, PrintOnHandId{8});
    EXPECT_EQ(plan.prints[plan.alike[0].print].print.paper, inches(4, 6));
}

TEST(APrintPlan, GivesAPrintOnHandToOnePageOnly) {
    const PlanPage page = madePage("One", {inches(3, 4)});
    PlanInput input = inputOf({page, {"Two", page.making}});
    input.onHand = {test::onHandFor(page, 0, 7)};
    const PrintPlan plan = soundPlan(input);
    ASSERT_EQ(plan.taken.size(), 1U);
    EXPECT_EQ(plan.taken[0].page, 0U);
    EXPECT_EQ(plan.prints.size(), 1U);
}

TEST(APrintPlan, DoesNotPrintAgainWhatItsPageHasAlready) {
    const PlanPage page = madePage("Harbour", {inches(3, 4), inches(4, 6)});
    PlanInput input = inputOf({page, {"Other", page.making}});
    input.used = {test::onHandFor(page, 0, 7)};
    input.used[0].state = PrintState::Used;
    input.used[0].page = "Harbour";
    const PrintPlan plan = soundPlan(input);
    ASSERT_EQ(plan.there.size(), 1U);
    EXPECT_EQ(plan.there[0].page, 0U);
    EXPECT_EQ(plan.there[0].used, PrintOnHandId{7});
    EXPECT_EQ(plan.prints.size(), 3U);
}

TEST(APrintPlan, KeepsWishesAndFillsTheRoomBesideThem) {
    const PlanPage page = madePage("A page", {inches(3, 4), inches(3, 4)});
    PlanInput input = inputOf({page});
    const PieceId first = page.making.sketch.order.front();
    // Dearer than the small printer's, but then the other print needs no sheet of its own.
    input.wishes = {{0, first, {3}, PrinterPaperId{14}}};
    const PrintPlan plan = soundPlan(input);
    ASSERT_EQ(plan.sheets.size(), 1U);
    EXPECT_EQ(plan.sheets[0].paper, PrinterPaperId{14});
    EXPECT_FALSE(plan.provedCheapest);
    EXPECT_NE(plan.bound.find("where they are wished"), std::string::npos) << plan.bound;
}

TEST(APrintPlan, NamesPrintsThatFitNowhereWithWhatToDo) {
    const PlanPage page = madePage("A page", {inches(8, 10), inches(3, 4)});
    std::vector<Printer> small = keptPrinters();
    small.resize(1);
    PrintPlan plan = soundPlan(inputOf({page}, small));
    ASSERT_EQ(plan.leftOut.size(), 1U);
    EXPECT_NE(plan.leftOut[0].sentence.find("8 × 10 in"), std::string::npos);
    EXPECT_EQ(plan.bound, "1 sheet, proved cheapest");

    PlanInput wished = inputOf({page});
    wished.wishes = {{0, page.making.sketch.order.front(), {1}, std::nullopt}};
    plan = soundPlan(wished);
    ASSERT_EQ(plan.leftOut.size(), 1U);
    EXPECT_NE(plan.leftOut[0].sentence.find("(Small printer)"), std::string::npos)
        << plan.leftOut[0].sentence;

    plan = soundPlan(inputOf({page}, {}));
    EXPECT_EQ(plan.leftOut.size(), 2U);
    EXPECT_EQ(plan.bound, "nothing to print");
}

TEST(APrintPlan, UsesNoMorePapersThanAreAtHand) {
    const PlanPage page = madePage("A page", {inches(4, 6), inches(4, 6), inches(4, 6)});
    const PrintPlan plan = soundPlan(inputOf({page}, onlyPaper(inches(4, 6), 2)));
    EXPECT_EQ(plan.sheets.size(), 2U);
    ASSERT_EQ(plan.leftOut.size(), 1U);
    EXPECT_NE(plan.leftOut[0].sentence.find("no paper left"), std::string::npos);
}

TEST(APrintPlan, TellsOfTheRoomBesideALonelyPrint) {
    const PrintPlan plan =
        soundPlan(inputOf({madePage("A page", {inches(3, 4)})}, onlyPaper(inches(4, 6))));
    ASSERT_EQ(plan.sheets.size(), 1U);
    ASSERT_FALSE(plan.sheets[0].room.empty());
    EXPECT_EQ(plan.sheets[0].room.front(), (RoomFor{inches(3, 4), 1}));
    EXPECT_EQ(roomText(plan.sheets[0].room.front()), "room for one more 3 × 4 in");
    // 3 x 4 in hold two 2x2 in a row, not four: the rest is 1 in wide.
    const auto small = std::ranges::find(plan.sheets[0].room, inches(2, 2), &RoomFor::size);
    ASSERT_NE(small, plan.sheets[0].room.end());
    EXPECT_EQ(roomText(*small), "room for 2 more 2 × 2 in");
}

TEST(APrintPlan, PutsPrintsAheadIntoTheRoomAndNeverOnASheetOfTheirOwn) {
    PlanInput input = inputOf({madePage("A page", {inches(3, 4)})}, onlyPaper(inches(4, 6)));
    const PlanPage more = madePage("More", {inches(3, 4), inches(3, 4)}, 30);
    for (const Print& print : printsOf(more.making, {})) {
        input.ahead.push_back({more.making.work.photos.at(print.photo), print, "favourite"});
    }
    const PrintPlan plan = soundPlan(input);
    EXPECT_EQ(plan.sheets.size(), 1U);
    EXPECT_EQ(plan.sheets[0].gang.places.size(), 2U);
    ASSERT_EQ(plan.leftOut.size(), 1U);
    EXPECT_EQ(plan.prints[plan.leftOut[0].print].ahead, 1U);
}

TEST(APrintPlan, RefusesWhatIsNotSound) {
    PlanInput input = inputOf({madePage("A page", {inches(3, 4)})});
    input.wishes = {{5, {1}, {1}, std::nullopt}};
    EXPECT_FALSE(planPrints(input));
    input.wishes.clear();
    input.printers[0].papers[0].price = -1;
    EXPECT_FALSE(planPrints(input));
    input = inputOf({madePage("", {inches(3, 4)})});
    EXPECT_FALSE(planPrints(input));
}

TEST(APrintPlan, OfNothingIsEmpty) {
    const PrintPlan plan = soundPlan(inputOf({madePage("A page", {})}));
    EXPECT_TRUE(plan.sheets.empty());
    EXPECT_EQ(plan.bound, "nothing to print");
}

TEST(APrintPlan, StopsWhenItIsAskedToWithAWholePlan) {
    std::stop_source source;
    source.request_stop();
    const PlanInput input = inputOf({madePage("A page", std::vector<Size>(12, inches(3, 4)))});
    const Result<PrintPlan> plan = planPrints(input, {}, source.get_token());
    ASSERT_TRUE(plan);
    EXPECT_TRUE(plan->cancelled);
    EXPECT_TRUE(faultsOf(*plan, input).empty());
}

}  // namespace

}  // namespace matwright
