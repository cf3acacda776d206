// SPDX-License-Identifier: MIT
#include "app/printplan/plan_draft.h"

#include <gtest/gtest.h>

#include <utility>

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

PlanInput knowing(std::vector<Printer> printers) {
    PlanInput known;
    known.printers = std::move(printers);
    return known;
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
    const PlanInput input = draft.input(knowing(printers));
    ASSERT_EQ(input.pages.size(), 1U);
    EXPECT_EQ(input.waiting.size(), 1U);
    ASSERT_EQ(input.wishes.size(), 1U);
    EXPECT_EQ(input.wishes[0].page, 0U);
    EXPECT_EQ(draft.pageOf(0), 1U);
}

TEST(PlanDraft, PassesOverWishesForPrintersThatAreGone) {
    PlanDraft draft{{pageCalled("a")}, {}, {}};
    draft.wish(0, PieceId{1}, {PrinterId{99}, std::nullopt});
    EXPECT_TRUE(draft.input(knowing(printersWithIds())).wishes.empty());
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

TEST(PlanDraft, APageIsCalledAfterItsFile) {
    EXPECT_EQ(planNameOf(QStringLiteral("/pages/Harbour day.page.svg")), "Harbour day");
}

// What another page of that name had before is no answer for one that was never saved.
TEST(PlanDraft, PrintsOfEarlierUnsavedPagesAreNotThoseOfThisOne) {
    PlanDraft draft{{pageCalled("Untitled"), pageCalled("Harbour")}, {}, {}};
    draft.pages[1].file = QStringLiteral("/pages/Harbour.page.svg");
    PlanInput known;
    for (const auto& [id, page] : {std::pair{1, "Untitled"}, {2, "Harbour"}, {3, "Untitled"}}) {
        known.used.push_back({{id}, {}, "", PrintState::Used, page, "2026-07-01"});
    }
    const PlanInput input = draft.input(known, PrintOnHandId{2});
    ASSERT_EQ(input.used.size(), 2U);
    EXPECT_EQ(input.used[0].page, "Harbour");
    EXPECT_EQ(input.used[1].id, PrintOnHandId{3});
}

}  // namespace
}  // namespace matwright::app
