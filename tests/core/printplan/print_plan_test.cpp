// SPDX-License-Identifier: MIT
#include "core/printplan/print_plan.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/papers/paper_on_hand.h"
#include "core/printplan/sheet_packing.h"
#include "core/printplan/sheet_room.h"
#include "tests/core/printplan/made_plans.h"

namespace matwright {

namespace {

using test::inches;
using test::inputOf;
using test::keptPrinters;
using test::madePage;
using test::soundPlan;

// Craft papers and photo papers have rules of their own under names of their own.
static_assert(smallestPaperSide != smallestPhotoPaperSide);
static_assert(!std::is_same_v<PaperKind, PrintPaperKind>);

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

TEST(APrintPlan, PutsPrintsOfANarrowAndAWideWishOnOneSheet) {
    const PlanPage page = madePage("A page", {inches(3, 4), inches(3, 4)});
    PlanInput input = inputOf({page});
    input.wishes = {{0, page.making.sketch.order[0], {1}, PrinterPaperId{11}},
                    {0, page.making.sketch.order[1], {1}, std::nullopt}};
    PrintPlan plan = soundPlan(input);
    EXPECT_EQ(plan.sheets.size(), 1U);
    EXPECT_EQ(plan.sheets[0].paper, PrinterPaperId{11});
    // What is wished on another printer does not come out there.
    input.wishes[1].printer = {3};
    plan = soundPlan(input);
    EXPECT_EQ(plan.sheets.size(), 2U);
}

TEST(APrintPlan, CountsThePapersOfEveryWishOnce) {
    // Two groups want the last sheets of one paper; what one uses is gone for the other.
    const PlanPage page =
        madePage("A page", {inches(4, 6), inches(3, 4), inches(3, 4), inches(3, 4), inches(3, 4)});
    PlanInput input = inputOf({page}, onlyPaper(inches(4, 6), 2));
    const auto& slots = page.making.sketch.order;
    input.wishes = {{0, slots[1], {1}, PrinterPaperId{11}}, {0, slots[0], {1}, std::nullopt}};
    const PrintPlan plan = soundPlan(input);
    EXPECT_EQ(plan.sheets.size(), 2U);
    EXPECT_EQ(plan.leftOut.size(), 2U);
}

TEST(APrintPlan, ClaimsThatNoPaperIsLeftOnlyWhereThatIsCertain) {
    // Both are smaller than the one 4x6, but do not fit on it together: 2.5 + 3 > 4 and 5 + 3 > 6.
    const Size narrow{Length::inches(2, 1, 2), Length::inches(5)};
    const PlanInput input =
        inputOf({madePage("A page", {narrow, inches(3, 3)})}, onlyPaper(inches(4, 6), 1));
    PrintPlan plan = soundPlan(input);
    ASSERT_EQ(plan.leftOut.size(), 1U);
    EXPECT_NE(plan.leftOut[0].sentence.find("no paper left"), std::string::npos)
        << plan.leftOut[0].sentence;
    PrintPlanLimits none;
    none.cuts.time = std::chrono::milliseconds(0);
    plan = soundPlan(input, none);
    ASSERT_EQ(plan.leftOut.size(), 1U);
    EXPECT_EQ(plan.leftOut[0].sentence.find("no paper left"), std::string::npos);
    EXPECT_NE(plan.leftOut[0].sentence.find("No room was found"), std::string::npos);
    EXPECT_NE(plan.leftOut[0].sentence.find("Look longer"), std::string::npos);
}

TEST(APrintPlan, NamesPrintsThatFitNowhereWithWhatToDo) {
    const PlanPage page = madePage("A page", {inches(8, 10), inches(3, 4)});
    std::vector<Printer> small = keptPrinters();
    small.resize(1);
    PrintPlan plan = soundPlan(inputOf({page}, small));
    ASSERT_EQ(plan.leftOut.size(), 1U);
    EXPECT_NE(plan.leftOut[0].sentence.find("8 × 10 in"), std::string::npos);
    EXPECT_EQ(plan.bound, "1 sheet, proved cheapest, 1 print not printed");

    PlanInput wished = inputOf({page});
    wished.wishes = {{0, page.making.sketch.order.front(), {1}, std::nullopt}};
    plan = soundPlan(wished);
    ASSERT_EQ(plan.leftOut.size(), 1U);
    EXPECT_NE(plan.leftOut[0].sentence.find("(Small printer)"), std::string::npos)
        << plan.leftOut[0].sentence;

    plan = soundPlan(inputOf({page}, {}));
    EXPECT_EQ(plan.leftOut.size(), 2U);
    EXPECT_EQ(plan.bound, "no sheets, 2 prints not printed");
    EXPECT_FALSE(plan.provedCheapest);
}

TEST(APrintPlan, UsesNoMorePapersThanAreAtHand) {
    const PlanPage page = madePage("A page", {inches(4, 6), inches(4, 6), inches(4, 6)});
    const PrintPlan plan = soundPlan(inputOf({page}, onlyPaper(inches(4, 6), 2)));
    EXPECT_EQ(plan.sheets.size(), 2U);
    ASSERT_EQ(plan.leftOut.size(), 1U);
    EXPECT_NE(plan.leftOut[0].sentence.find("no paper left"), std::string::npos);
    EXPECT_EQ(plan.bound, "2 sheets, 1 print not printed");
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

TEST(APrintPlan, RefusesWhatCouldNotBeRecordedAfterwards) {
    for (const std::string& name : {std::string("Two\nlines"), std::string(1001, 'x')}) {
        const auto plan = planPrints(inputOf({madePage(name, {inches(3, 4)})}));
        ASSERT_FALSE(plan);
        EXPECT_EQ(plan.error().code, ErrorCode::BadText);
    }
    EXPECT_TRUE(planPrints(inputOf({madePage(std::string(1000, 'x'), {inches(3, 4)})})));
    PlanInput input = inputOf({madePage("A page", {inches(3, 4)})});
    const PlanPage more = madePage("More", {inches(3, 4)}, 30);
    input.ahead = {
        {more.making.work.photos.begin()->second, printsOf(more.making, {}).front(), "favourite"}};
    input.ahead[0].print.crop.zoom = 0;
    const auto plan = planPrints(input);
    ASSERT_FALSE(plan);
    EXPECT_EQ(plan.error().code, ErrorCode::OutOfRange);
}

TEST(APrintPlan, TakesWhatIsOnHandOnlyWithTheSamePictureBeyondTheTrim) {
    // A 2x3 slot printed on 4x6: there is room for a bleed, which changes neither paper nor trim.
    PlanPage page = madePage("A page", {inches(2, 3)});
    page.making.sketch.pieces.begin()->second.printSize = inches(4, 6);
    PlanInput input = inputOf({page});
    input.onHand = {test::onHandFor(page, 0, 7)};
    EXPECT_EQ(soundPlan(input).taken.size(), 1U);
    input.bleed = Length::inches(0, 1, 8);
    PrintPlan plan = soundPlan(input);
    EXPECT_EQ(plan.taken.size(), 0U);
    EXPECT_EQ(plan.alike.size(), 1U);
    EXPECT_EQ(plan.bleed, input.bleed);
    input.onHand[0].look.bleed = input.bleed;
    EXPECT_EQ(soundPlan(input).taken.size(), 1U);
    // Where the paper ends at the trim, or a border is white beyond it, no bleed is seen.
    Print print = printsOf(page.making, {}).front();
    const Photo& photo = page.making.work.photos.begin()->second;
    EXPECT_EQ(lookOf(print, photo, Length::inches(9)).bleed, Length::inches(1, 1, 2));
    print.border = Length::inches(0, 1, 8);
    EXPECT_EQ(lookOf(print, photo, input.bleed).bleed, Length());
    print.border = {};
    print.trim = Rect::at({}, print.paper);
    EXPECT_EQ(lookOf(print, photo, input.bleed).bleed, Length());
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

TEST(APrintPlan, LooksForNoRoomOnceItIsAskedToStop) {
    const PlanInput input = inputOf({madePage("A page", {inches(3, 4)})}, onlyPaper(inches(4, 6)));
    const std::vector<PrintPaperKind> kinds = paperKinds(input.printers);
    const PrintPlan plan = soundPlan(input);
    const std::vector<PlannedPrint> prints(2, plan.prints.front());
    DraftSheet sheet{0, plan.sheets.front().cuts, {0}};
    constexpr std::uint64_t steps = 100'000;
    const std::vector<Size> sizes{inches(3, 4)};
    std::stop_source source;
    EXPECT_EQ(roomOn(sheet, prints, kinds, sizes, steps, source.get_token()).size(), 1U);
    EXPECT_TRUE(packed(kinds[0].sheet, sizes, steps, source.get_token()));
    source.request_stop();
    EXPECT_TRUE(roomOn(sheet, prints, kinds, sizes, steps, source.get_token()).empty());
    EXPECT_FALSE(packed(kinds[0].sheet, sizes, steps, source.get_token()));
    EXPECT_FALSE(addTo(sheet, 1, prints, kinds, steps, source.get_token()));
    EXPECT_TRUE(addTo(sheet, 1, prints, kinds, steps));
}

TEST(APrintPlan, IsStoppedWithoutAClaimAboutRoomItDidNotLookFor) {
    PlanInput input = inputOf({madePage("A page", {inches(3, 4)})}, onlyPaper(inches(4, 6)));
    const PlanPage more = madePage("More", {inches(3, 4)}, 30);
    input.ahead = {
        {more.making.work.photos.begin()->second, printsOf(more.making, {}).front(), "favourite"}};
    std::stop_source source;
    source.request_stop();
    const Result<PrintPlan> plan = planPrints(input, {}, source.get_token());
    ASSERT_TRUE(plan);
    ASSERT_EQ(plan->leftOut.size(), 1U);
    EXPECT_NE(plan->leftOut[0].sentence.find("was stopped"), std::string::npos);
    EXPECT_TRUE(faultsOf(*plan, input).empty());
}

}  // namespace

}  // namespace matwright
