// SPDX-License-Identifier: MIT
// What cutting a plan does to the papers on hand.
#include <algorithm>

#include "core/paperplan/plan_key.h"
#include "tests/core/paperplan/plan_parts.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using namespace test;

// Whether it was done now; false where it had been done before.
bool isDone(const Result<std::optional<std::int64_t>>& cut) {
    EXPECT_TRUE(cut) << (cut ? "" : cut.error().sentence);
    return cut && *cut;
}

void removeLast(Sketch& sketch) {
    sketch.pieces.erase(sketch.order.back());
    sketch.order.pop_back();
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

}  // namespace
}  // namespace matwright
