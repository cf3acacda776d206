// SPDX-License-Identifier: MIT
#include "core/printplan/printed.h"

#include <gtest/gtest.h>

#include "core/printplan/stored_input.h"
#include "tests/core/printplan/made_plans.h"
#include "tests/support/temporary_folder.h"

namespace matwright {

namespace {

using test::inches;
constexpr const char* day = "2026-07-14";

class PrintedPlan : public testing::Test {
  protected:
    PrintedPlan() : m_store(*PrintingStore::open(m_folder.path() / printingStoreName)) {
        m_input = test::inputOf({test::madePage("Harbour", {inches(3, 4)})}, *m_store.printers());
        m_input.printers.resize(1);
        const PlanPage more = test::madePage("Waiting", {inches(3, 4)}, 30);
        m_print = printsOf(more.making, {}).front();
        m_photo = more.making.work.photos.begin()->second;
        m_waiting = more;
        m_input.ahead = {{m_photo, m_print, "Waiting"}};
    }
    test::TemporaryFolder m_folder;
    PrintingStore m_store;
    PlanInput m_input;
    PlanPage m_waiting;
    Print m_print;
    Photo m_photo;
};

TEST_F(PrintedPlan, PutsPrintsAheadOnHandAndTheOthersWhereTheyBelong) {
    const PrintPlan plan = test::soundPlan(m_input);
    ASSERT_TRUE(*recordPrinted(m_store, plan, m_input, day, "first"));
    const auto onHand = *m_store.prints(PrintState::OnHand);
    ASSERT_EQ(onHand.size(), 1U);
    EXPECT_EQ(onHand[0].look, lookOf(m_print, m_photo));
    const auto used = *m_store.prints(PrintState::Used);
    ASSERT_EQ(used.size(), 1U);
    EXPECT_EQ(used[0].page, "Harbour");
    EXPECT_FALSE(*recordPrinted(m_store, plan, m_input, day, "first"));
    EXPECT_EQ(m_store.changes()->size(), 1U);
}

TEST_F(PrintedPlan, OnlyTheSheetsThatWerePrintedCount) {
    m_input.pages = {test::madePage("Harbour", {inches(4, 6), inches(4, 6)})};
    m_input.ahead.clear();
    const PrintPlan plan = test::soundPlan(m_input);
    ASSERT_EQ(plan.sheets.size(), 2U);
    const PrintingDone first = printingDone(plan, m_input, PrintedPart{{0}, false}, day);
    const PrintingDone second = printingDone(plan, m_input, PrintedPart{{1}, true}, day);
    ASSERT_EQ(first.made.size(), 1U);
    ASSERT_EQ(second.made.size(), 1U);
    EXPECT_NE(first.made[0].look, second.made[0].look);
    EXPECT_EQ(first.papersUsed.size(), 1U);
    EXPECT_EQ(first.papersUsed.begin()->second, 1);
}

TEST_F(PrintedPlan, KnowsForTheNextPlanWhatIsUsedAndOnHand) {
    ASSERT_TRUE(recordPrinted(m_store, test::soundPlan(m_input), m_input, day));
    const auto known = storedInput(m_store);
    ASSERT_TRUE(known);
    EXPECT_EQ(known->printers, *m_store.printers());
    EXPECT_EQ(known->onHand.size(), 1U);
    ASSERT_EQ(known->used.size(), 1U);
    EXPECT_EQ(known->used[0].page, "Harbour");
    EXPECT_EQ(known->usedSizes, std::vector<Size>{inches(3, 4)});
    EXPECT_EQ(known->printedPhotos.size(), 2U);
}

TEST_F(PrintedPlan, AheadIsTakenByThePageThatWaitedForIt) {
    ASSERT_TRUE(recordPrinted(m_store, test::soundPlan(m_input), m_input, day));
    PlanInput next = test::inputOf({m_waiting}, *m_store.printers());
    next.onHand = *m_store.prints(PrintState::OnHand);
    const PrintPlan plan = test::soundPlan(next);
    EXPECT_TRUE(plan.sheets.empty());
    ASSERT_EQ(plan.taken.size(), 1U);
    ASSERT_TRUE(*recordPrinted(m_store, plan, next, day));
    EXPECT_TRUE(m_store.prints(PrintState::OnHand)->empty());
    EXPECT_EQ(m_store.prints(PrintState::Used)->size(), 2U);
    ASSERT_TRUE(m_store.undo());
    EXPECT_EQ(m_store.prints(PrintState::OnHand)->size(), 1U);
    EXPECT_TRUE(m_store.faults().empty());
}

TEST_F(PrintedPlan, IsRecordedAlthoughAPrintOnHandIsGoneByNow) {
    const auto& [id, page] = std::pair(0, m_input.pages[0]);
    const Print wanted = printsOf(page.making, {}).front();
    const auto onHand = m_store.addOnHand(
        {lookOf(wanted, page.making.work.photos.at(wanted.photo)), "x.jpg", ""}, day);
    ASSERT_TRUE(onHand);
    m_input.pages.push_back(test::madePage("Beach", {inches(3, 4)}, 60));
    m_input.onHand = *m_store.prints(PrintState::OnHand);
    const PrintPlan plan = test::soundPlan(m_input);
    ASSERT_EQ(plan.taken.size(), 1U);
    ASSERT_TRUE(m_store.take(*onHand, "Another page", day));
    EXPECT_EQ(recordPrinted(m_store, plan, m_input, day, "act").error().code, ErrorCode::NotFound);
    std::vector<PrintOnHandId> gone;
    ASSERT_TRUE(*recordPrinted(m_store, plan, m_input, day, "act", &gone));
    EXPECT_EQ(gone, std::vector{*onHand});
    EXPECT_EQ(m_store.prints()->size(), 1U + plan.prints.size());
    EXPECT_TRUE(m_store.faults().empty());
}

TEST_F(PrintedPlan, IsRecordedWhateverItsPhotosFilesAreCalled) {
    for (auto& [id, photo] : m_input.pages[0].making.work.photos) {
        photo.path = "/pictures/two\nlines.jpg";
    }
    // 2 bytes a letter, from an odd place on: the cut would go through a letter.
    m_input.ahead[0].photo.path = "x";
    for (int i = 0; i < 600; ++i) {
        m_input.ahead[0].photo.path += "\u00e9";
    }
    ASSERT_TRUE(*recordPrinted(m_store, test::soundPlan(m_input), m_input, day));
    const auto prints = *m_store.prints();
    ASSERT_EQ(prints.size(), 2U);
    EXPECT_EQ(prints[0].photoName, "two lines.jpg");
    EXPECT_EQ(prints[1].photoName.size(), 999U);
}

TEST_F(PrintedPlan, KeepsWhatIsSeenBeyondTheTrim) {
    m_input.pages[0].making.sketch.pieces.begin()->second.printSize = inches(4, 6);
    m_input.bleed = Length::inches(0, 1, 8);
    ASSERT_TRUE(*recordPrinted(m_store, test::soundPlan(m_input), m_input, day));
    EXPECT_EQ(m_store.prints(PrintState::Used)->front().look.bleed, m_input.bleed);
}

}  // namespace

}  // namespace matwright
