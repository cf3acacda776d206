// SPDX-License-Identifier: MIT
#include "core/paperplan/paper_plan.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "core/paperplan/plan_key.h"
#include "tests/core/paperplan/plan_laws.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

// Whether it was done now; false where it had been done before.
bool isDone(const Result<std::optional<std::int64_t>>& cut) {
    EXPECT_TRUE(cut) << (cut ? "" : cut.error().sentence);
    return cut && *cut;
}

void removeLast(Sketch& sketch) {
    sketch.pieces.erase(sketch.order.back());
    sketch.order.pop_back();
}

constexpr Length in(std::int64_t whole) {
    return Length::inches(whole);
}

Piece blockOf(Size size, const std::string& paper) {
    Piece piece;
    piece.kind = PieceKind::Block;
    piece.size = size;
    piece.paper = paper;
    return piece;
}

Piece photoOn(Size size, const std::string& paper, bool gutted) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.size = size;
    piece.printSize = size;
    piece.mats = {{Length::inches(0, 1, 4), {}, paper, gutted}};
    return piece;
}

PaperPage pageWith(std::vector<Piece> pieces) {
    PaperPage page{"Holiday", blankSketch()};
    for (Piece& piece : pieces) {
        const PieceId id = nextId(page.sketch);
        page.sketch.order.push_back(id);
        page.sketch.pieces.emplace(id, std::move(piece));
    }
    return page;
}

PaperOnHand sheetOf(std::int64_t id, const std::string& name, Size size, int count = 1,
                    PaperKind kind = PaperKind::WholeSheet) {
    PaperOnHand paper;
    paper.id = {id};
    paper.name = name;
    paper.size = size;
    paper.count = count;
    paper.kind = kind;
    return paper;
}

PaperPlan planOf(const PaperPage& page, const std::vector<PaperOnHand>& onHand,
                 PaperPlanOptions options = {}) {
    const auto plan = planPapers(std::span(&page, 1), onHand, options);
    EXPECT_TRUE(plan) << plan.error().text();
    EXPECT_EQ(test::brokenPlanLaws(*plan, std::span(&page, 1), onHand, options),
              std::vector<std::string>());
    return *plan;
}

PaperPlanOptions nothingToBuy() {
    PaperPlanOptions options;
    options.toBuy.clear();
    return options;
}

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

TEST(PaperPlan, WhatIsCutIsTakenOffAndLeftoversComeBack) {
    const test::TemporaryFolder folder;
    auto store = PapersStore::open(folder / "papers.sqlite");
    ASSERT_TRUE(store);
    PaperOnHand kraft = sheetOf(0, "kraft", {in(12), in(12)}, 2);
    kraft.thickness = "216 gsm";
    ASSERT_TRUE(store->add(kraft));
    const PaperPage page = pageWith({blockOf({in(12), in(7)}, "Kraft")});
    const auto onHand = *store->list();
    const auto plan = planOf(page, onHand);
    const PapersCut cut = papersCut(plan, onHand, "Cut papers for Holiday", cutName(plan.key));
    ASSERT_EQ(cut.taken.size(), 1U);
    EXPECT_EQ(cut.taken[0].planned, onHand[0]);
    EXPECT_TRUE(isDone(store->cut(cut)));
    EXPECT_FALSE(isDone(store->cut(cut)));
    const auto after = *store->list();
    ASSERT_EQ(after.size(), 2U);
    EXPECT_EQ(after[0].count, 1);
    EXPECT_EQ(after[1].kind, PaperKind::Scrap);
    EXPECT_EQ(after[1].size, (Size{in(12), in(5)}));
    EXPECT_EQ(after[1].thickness, "216 gsm");
    ASSERT_EQ(store->cutPieces()->size(), 1U);
    EXPECT_EQ(store->cutPieces()->front().size, (Size{in(12), in(7)}));
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

TEST(PaperPlan, ItsKeyTellsWhatIsCutAndNotFromWhat) {
    const PaperPage page =
        pageWith({blockOf({in(12), in(7)}, "Kraft"), blockOf({in(3), in(4)}, "dots")});
    const std::vector<PaperOnHand> onHand{sheetOf(1, "kraft", {in(12), in(12)}, 2)};
    const std::string key = planOf(page, {}).key;
    EXPECT_EQ(key.size(), 32U);
    EXPECT_EQ(planOf(page, onHand).key, key);
    EXPECT_EQ(planOf(page, onHand, nothingToBuy()).key, key);
    const PaperPage zoo = pageWith({blockOf({in(2), in(2)}, "dots")});
    const PaperPage both[] = {page, zoo};
    const PaperPage turned[] = {zoo, page};
    EXPECT_EQ(planPapers(both, {}, {})->key, planPapers(turned, {}, {})->key);
    EXPECT_NE(planPapers(both, {}, {})->key, key);
    for (int what = 0; what < 4; ++what) {
        PaperPage other = page;
        Piece& piece = other.sketch.pieces.begin()->second;
        what == 0   ? void(piece.paper = "plum")
        : what == 1 ? void(piece.size.width = in(11))
        : what == 2 ? void(other.sketch.name = "Another")
                    : removeLast(other.sketch);
        EXPECT_NE(planOf(other, {}).key, key) << what;
    }
}

TEST(PaperPlan, OfTwoWindowsThatCutTheSameOneTakesItOff) {
    const test::TemporaryFolder folder;
    auto first = PapersStore::open(folder / "papers.sqlite");
    auto second = PapersStore::open(folder / "papers.sqlite");
    ASSERT_TRUE(first->add(sheetOf(0, "kraft", {in(12), in(12)}, 5)));
    const PaperPage page = pageWith({blockOf({in(12), in(7)}, "kraft")});
    const auto cutOf = [&](PapersStore& store, const std::optional<PapersChange>& before) {
        const auto onHand = *store.list();
        const auto plan = planOf(page, onHand);
        return store.cut(papersCut(plan, onHand, "Cut papers", cutName(plan.key, before)));
    };
    EXPECT_TRUE(isDone(cutOf(*first, {})));
    EXPECT_FALSE(isDone(cutOf(*second, {})));
    EXPECT_EQ(second->list()->front().count, 4);
    const auto before = *second->lastCut(planOf(page, {}).key);
    ASSERT_TRUE(before);
    // Both want it once more, and both know of the first time only.
    EXPECT_TRUE(isDone(cutOf(*second, before)));
    EXPECT_FALSE(isDone(cutOf(*first, before)));
    const auto after = *first->lastCut(planOf(page, {}).key);
    ASSERT_TRUE(after);
    EXPECT_NE(after->number, before->number);
    ASSERT_TRUE(*first->undo());
    EXPECT_EQ(*first->lastCut(planOf(page, {}).key), before);
    ASSERT_TRUE(*first->undo());
    EXPECT_EQ(*first->lastCut(planOf(page, {}).key), std::nullopt);
    EXPECT_TRUE(isDone(cutOf(*first, {})));
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

TEST(PaperPlan, LeftoversOfABoughtSheetComeIntoTheList) {
    PaperPage page = pageWith({blockOf({in(12), in(7)}, "Plum")});
    page.colours = {{" plum", {90, 20, 80}}};
    const auto plan = planOf(page, {});
    const PapersCut cut = papersCut(plan, {}, "Cut papers");
    EXPECT_TRUE(cut.taken.empty());
    ASSERT_EQ(cut.putBack.size(), 1U);
    EXPECT_EQ(cut.putBack[0].name, "Plum");
    EXPECT_EQ(cut.putBack[0].colour, (Colour{90, 20, 80}));
    EXPECT_EQ(cut.putBack[0].size, (Size{in(12), in(5)}));
    EXPECT_FALSE(findFault(cut.putBack[0]));
}

TEST(PaperPlan, LeftoversOfABoughtSheetHaveAnUpWhereOnePaperOfThatNameHas) {
    std::vector<PaperOnHand> onHand{sheetOf(1, "dots", {in(3), in(3)}),
                                    sheetOf(2, "dots", {in(2), in(2)}, 1, PaperKind::Scrap)};
    onHand[1].pattern = PaperPattern::HasUp;
    const auto plan = planOf(pageWith({blockOf({in(12), in(7)}, "dots")}), onHand);
    const PapersCut cut = papersCut(plan, onHand, "Cut papers");
    ASSERT_EQ(cut.putBack.size(), 1U);
    EXPECT_EQ(cut.putBack[0].pattern, PaperPattern::HasUp);
}

TEST(PaperPlan, LeftoversOfAMiddleLookLikeTheSheetOfItsMat) {
    std::vector<PaperOnHand> onHand{sheetOf(1, "kraft", {in(2), in(2)}),
                                    sheetOf(2, "kraft", {in(12), in(12)})};
    onHand[1].thickness = "216 gsm";
    const auto plan = planOf(
        pageWith({photoOn({in(11), in(11)}, "kraft", true), blockOf({in(9), in(4)}, "kraft")}),
        onHand, nothingToBuy());
    ASSERT_EQ(plan.sheets.size(), 2U);
    ASSERT_TRUE(std::holds_alternative<FromMiddle>(plan.sheets[1].source));
    ASSERT_FALSE(plan.sheets[1].leftovers.empty());
    for (const PaperOnHand& scrap : papersCut(plan, onHand, "Cut papers").putBack) {
        EXPECT_EQ(scrap.thickness, "216 gsm");
    }
}

TEST(PaperPlan, LeftoversKeepALongNameWholeAndAreLeftOutWhereItIsTooLong) {
    const std::string fits(maxPaperNameBytes, 'a');
    auto plan = planOf(pageWith({blockOf({in(12), in(7)}, fits)}), {});
    PapersCut cut = papersCut(plan, {}, "Cut papers");
    ASSERT_EQ(cut.putBack.size(), 1U);
    EXPECT_EQ(cut.putBack[0].name, fits);
    EXPECT_EQ(plan.remarks.size(), 1U);
    plan = planOf(pageWith({blockOf({in(12), in(7)}, fits + 'a')}), {});
    cut = papersCut(plan, {}, "Cut papers");
    EXPECT_TRUE(cut.putBack.empty());
    ASSERT_EQ(plan.remarks.size(), 2U);
    EXPECT_NE(plan.remarks[1].find("too long for the list"), std::string::npos);
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
