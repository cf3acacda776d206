// SPDX-License-Identifier: MIT
#include "core/papers/papers_store.h"

#include <optional>

#include "tests/core/papers/papers_store_fixture.h"

namespace matwright {
namespace {

using test::kraft;
using test::scrap;

// Whether it was done now; false where it had been done before.
bool isDone(const Result<std::optional<std::int64_t>>& cut) {
    EXPECT_TRUE(cut) << (cut ? "" : cut.error().sentence);
    return cut && *cut;
}

class PapersStoreCutTest : public test::PapersStoreFixture {};

TEST_F(PapersStoreCutTest, CuttingTakesSheetsOffAndPutsScrapsBack) {
    PapersStore store = open();
    const PaperOnHand rest = scrap(kraft(1), {Length::inches(12), Length::inches(3)});
    ASSERT_TRUE(store.add(std::vector{kraft(2), rest}, "Add papers"));
    const auto before = listOf(store);
    PapersCut cut{
        "Cut papers", {{before[0].id, 2, before[0]}, {before[1].id, 1, before[1]}}, {}, {}};
    const PaperOnHand left = scrap(kraft(1), {Length::inches(4), Length::inches(3)});
    cut.putBack = {left, left};
    ASSERT_TRUE(store.cut(cut));
    const auto after = listOf(store);
    ASSERT_EQ(after.size(), 2U);
    EXPECT_EQ(after[0].count, 0);
    EXPECT_EQ(after[0].kind, PaperKind::WholeSheet);
    EXPECT_EQ(after[1].size, left.size);
    EXPECT_EQ(after[1].count, 2);
}

TEST_F(PapersStoreCutTest, APlanThatTakesMoreThanThereIsChangesNothing) {
    PapersStore store = open();
    ASSERT_TRUE(store.add(std::vector{kraft(2), kraft(1, {Length::inches(8), Length::inches(8)})},
                          "Add papers"));
    const auto before = listOf(store);
    const PapersCut cut{
        "Cut papers", {{before[0].id, 1, before[0]}, {before[1].id, 2, before[1]}}, {}, {}};
    const auto refused = store.cut(cut);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::BadEdit);
    EXPECT_EQ(listOf(store), before);
    const PapersCut::Taken one{before[0].id, 1, before[0]};
    EXPECT_FALSE(store.cut({"Cut papers", {one, one}, {}, {}}));
    PaperOnHand gone = before[0];
    gone.id = {999};
    EXPECT_FALSE(store.cut({"Cut papers", {{gone.id, 1, gone}}, {}, {}}));
    EXPECT_FALSE(store.cut({"Cut papers", {{before[0].id, 1}}, {}, {}}));
    EXPECT_EQ(listOf(store), before);
}

TEST_F(PapersStoreCutTest, ACutToldAgainChangesNothingUntilItIsTakenBack) {
    PapersStore store = open();
    PapersStore other = open();
    ASSERT_TRUE(store.add(kraft(5)));
    const PaperOnHand seen = listOf(store).front();
    PapersCut cut{"Cut papers", {{seen.id, 2, seen}}, {}, {}};
    cut.pieces.push_back({"mat", "kraft", {Length::inches(2), Length::inches(3)}, 1});
    cut.once = "plan 1";
    EXPECT_TRUE(isDone(store.cut(cut)));
    const std::int64_t last = *store.version();
    EXPECT_FALSE(isDone(store.cut(cut)));
    EXPECT_FALSE(isDone(other.cut(cut)));
    EXPECT_EQ(listOf(store).front().count, 3);
    EXPECT_EQ(store.cutPieces()->size(), 1U);
    EXPECT_EQ(*store.version(), last);
    ASSERT_TRUE(*store.undo());
    ASSERT_TRUE(*store.redo());
    EXPECT_FALSE(isDone(store.cut(cut)));
    ASSERT_TRUE(*store.undo());
    EXPECT_TRUE(isDone(other.cut(cut)));
    EXPECT_EQ(listOf(store).front().count, 3);
    cut.once = "plan 2";
    EXPECT_TRUE(isDone(store.cut(cut)));
    cut.once = std::string(maxCutNameBytes + 1, 'x');
    EXPECT_FALSE(store.cut(cut));
    EXPECT_EQ(listOf(store).front().count, 1);
}

TEST_F(PapersStoreCutTest, TheLastCutOfANameIsFoundWithItsDay) {
    PapersStore store = open();
    ASSERT_TRUE(store.add(kraft(5)));
    const PaperOnHand seen = listOf(store).front();
    EXPECT_EQ(*store.lastCut("plan"), std::nullopt);
    EXPECT_EQ(*store.lastCut(""), std::nullopt);
    for (const char* name : {"plan", "plan after 2", "planet", ""}) {
        PapersCut cut{std::string("Cut ") + name, {{seen.id, 1, seen}}, {}, {}, name};
        ASSERT_TRUE(isDone(store.cut(cut))) << name;
    }
    const auto last = store.lastCut("plan");
    ASSERT_TRUE(last && *last);
    EXPECT_EQ((*last)->label, "Cut plan after 2");
    EXPECT_EQ((*last)->when.size(), 19U);
    EXPECT_EQ((*store.lastCut("planet"))->label, "Cut planet");
}

TEST_F(PapersStoreCutTest, ACutToldAgainAfterManyChangesIsStillKnown) {
    PapersStore store = open();
    ASSERT_TRUE(store.add(kraft(5)));
    const PaperOnHand seen = listOf(store).front();
    PapersCut cut{"Cut papers", {{seen.id, 1, seen}}, {}, {}};
    cut.once = "plan 1";
    ASSERT_TRUE(store.cut(cut));
    for (int i = 0; i < keptPapersChanges + 1; ++i) {
        const PaperOnHand before = listOf(store).front();
        PaperOnHand changed = before;
        changed.count = 10 + i;
        ASSERT_TRUE(store.change(before, changed));
    }
    EXPECT_FALSE(isDone(store.cut(cut)));
}

TEST_F(PapersStoreCutTest, ACutOfAPaperThatWasChangedMeanwhileIsRefused) {
    PapersStore store = open();
    ASSERT_TRUE(store.add(kraft(5)));
    const PaperOnHand seen = listOf(store).front();
    PaperOnHand changed = seen;
    changed.count = 4;
    ASSERT_TRUE(store.change(seen, changed));
    EXPECT_TRUE(store.cut({"Cut papers", {{seen.id, 1, seen}}, {}, {}}));
    PaperOnHand counted = changed;
    counted.count = 3;
    for (const bool isName : {true, false}) {
        PaperOnHand other = counted;
        isName ? void(other.name = "plum") : void(other.size.width = Length::inches(8));
        ASSERT_TRUE(store.change(counted, other));
        const auto refused = store.cut({"Cut papers", {{seen.id, 1, seen}}, {}, {}});
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().code, ErrorCode::BadEdit);
        EXPECT_NE(refused.error().sentence.find("plan anew"), std::string::npos);
        EXPECT_EQ(listOf(store), std::vector{other});
        ASSERT_TRUE(store.change(other, counted));
    }
}

}  // namespace
}  // namespace matwright
