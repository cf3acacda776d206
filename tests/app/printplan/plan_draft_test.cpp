// SPDX-License-Identifier: MIT
#include "app/printplan/plan_draft.h"

#include <gtest/gtest.h>

namespace matwright::app {
namespace {

DraftPage pageCalled(const std::string& name, bool isPrinted = true) {
    return {{name, {blankSketch(), {}}}, {}, isPrinted};
}

std::vector<Printer> printersWithIds() {
    std::vector<Printer> printers = startingPrinters(Unit::Inch);
    std::int64_t id = 0;
    for (Printer& printer : printers) {
        printer.id = PrinterId{++id};
        for (PrinterPaper& paper : printer.papers) {
            paper.id = PrinterPaperId{++id};
        }
    }
    return printers;
}

TEST(PlanDraft, KeepsWishesWithTheirPagesWhenAnotherGoes) {
    const auto printers = printersWithIds();
    PlanDraft draft{{pageCalled("a"), pageCalled("b")}, {}, {}};
    draft.wish(0, PieceId{1}, {printers[0].id, std::nullopt});
    draft.wish(1, PieceId{2}, {printers[1].id, printers[1].papers[0].id});
    draft.removePage(0);
    ASSERT_EQ(draft.wishes.size(), 1U);
    EXPECT_EQ(draft.wished(0, PieceId{2}).paper, printers[1].papers[0].id);
}

TEST(PlanDraft, WishesAreThoseOfThePrintedPagesOnly) {
    const auto printers = printersWithIds();
    PlanDraft draft{{pageCalled("waits", false), pageCalled("printed")}, {}, {}};
    draft.wish(0, PieceId{1}, {printers[0].id, std::nullopt});
    draft.wish(1, PieceId{1}, {printers[0].id, std::nullopt});
    const PlanInput input = draft.input(printers);
    ASSERT_EQ(input.pages.size(), 1U);
    EXPECT_EQ(input.waiting.size(), 1U);
    ASSERT_EQ(input.wishes.size(), 1U);
    EXPECT_EQ(input.wishes[0].page, 0U);
    EXPECT_EQ(draft.pageOf(0), 1U);
}

TEST(PlanDraft, PassesOverWishesForPrintersThatAreGone) {
    PlanDraft draft{{pageCalled("a")}, {}, {}};
    draft.wish(0, PieceId{1}, {PrinterId{99}, std::nullopt});
    EXPECT_TRUE(draft.input(printersWithIds()).wishes.empty());
}

TEST(PlanDraft, AnywhereIsNoWish) {
    PlanDraft draft{{pageCalled("a")}, {}, {}};
    draft.wish(0, PieceId{1}, {PrinterId{1}, std::nullopt});
    draft.wish(0, PieceId{1}, {});
    EXPECT_TRUE(draft.wishes.empty());
}

TEST(PlanDraft, GivesPagesOfOneNameDifferentNames) {
    const PlanDraft draft{{pageCalled("Harbour"), pageCalled("Harbour 2")}, {}, {}};
    EXPECT_EQ(draft.freeName("Harbour"), "Harbour 3");
    EXPECT_EQ(draft.freeName("Hill"), "Hill");
}

}  // namespace
}  // namespace matwright::app
