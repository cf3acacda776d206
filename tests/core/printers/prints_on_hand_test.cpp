// SPDX-License-Identifier: MIT
#include "core/printers/prints_on_hand.h"

#include <gtest/gtest.h>

#include <random>

#include "core/printers/printing_store.h"
#include "tests/core/printers/made_looks.h"
#include "tests/support/temporary_folder.h"

namespace matwright {

namespace {

constexpr const char* day = "2026-07-14";

class PrintsOnHandTest : public testing::Test {
  protected:
    PrintsOnHandTest() : m_store(*PrintingStore::open(m_folder.path() / printingStoreName)) {}

    PrintOnHandId add(int number) {
        const auto added = m_store.addOnHand(test::madePrint(number), day);
        EXPECT_TRUE(added);
        return added.value_or(PrintOnHandId{});
    }
    PrinterPaper firstPaper() { return m_store.printers()->front().papers.front(); }
    void setAtHand(std::optional<int> count) {
        const Printer before = m_store.printers()->front();
        Printer after = before;
        after.papers.front().atHand = count;
        ASSERT_TRUE(m_store.change(before, after));
    }
    void TearDown() override { EXPECT_EQ(m_store.faults(), std::vector<std::string>{}); }

    test::TemporaryFolder m_folder;
    PrintingStore m_store;
};

TEST_F(PrintsOnHandTest, AreTakenPutBackAndWasted) {
    const PrintOnHandId print = add(1);
    EXPECT_EQ(m_store.prints(PrintState::OnHand)->size(), 1U);
    ASSERT_TRUE(m_store.take(print, "Harbour", day));
    const PrintOnHand used = m_store.prints(PrintState::Used)->front();
    EXPECT_EQ(used.page, "Harbour");
    EXPECT_EQ(used.look, test::madeLook(1));
    EXPECT_EQ(used.photoName, "photo 1.jpg");
    const auto again = m_store.take(print, "Other", day);
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().code, ErrorCode::NotFound);
    EXPECT_NE(again.error().sentence.find("Harbour"), std::string::npos);
    ASSERT_TRUE(m_store.putBack(print, day));
    ASSERT_TRUE(m_store.waste(print, day));
    EXPECT_TRUE(m_store.prints(PrintState::OnHand)->empty());
    ASSERT_TRUE(m_store.putBack(print, day));
    EXPECT_FALSE(m_store.putBack(print, day));
}

TEST_F(PrintsOnHandTest, TellWhichPhotosWerePrinted) {
    add(1);
    const PrintOnHandId wasted = add(2);
    ASSERT_TRUE(m_store.waste(wasted, day));
    EXPECT_EQ(*m_store.printedPhotos(), (std::set{test::madeLook(1).photo}));
}

TEST_F(PrintsOnHandTest, OfOneActOfPrintingAreThereTogether) {
    setAtHand(10);
    const PrintOnHandId old = add(1);
    PrintingDone done{{test::madePrint(2, "Harbour"), test::madePrint(3)},
                      {{old, "Harbour"}},
                      {{firstPaper().id, 2}},
                      day,
                      "act 1"};
    EXPECT_TRUE(*m_store.record(done));
    EXPECT_EQ(m_store.prints(PrintState::Used)->size(), 2U);
    EXPECT_EQ(m_store.prints(PrintState::OnHand)->front().look, test::madeLook(3));
    EXPECT_EQ(firstPaper().atHand, 8);
    // Told again, nothing is counted twice.
    EXPECT_FALSE(*m_store.record(done));
    EXPECT_EQ(m_store.prints()->size(), 3U);
    EXPECT_EQ(firstPaper().atHand, 8);
    // Undone, the act may be told anew.
    EXPECT_TRUE(m_store.undo());
    EXPECT_EQ(m_store.prints()->size(), 1U);
    EXPECT_EQ(firstPaper().atHand, 10);
    EXPECT_TRUE(*m_store.record(done));
}

TEST_F(PrintsOnHandTest, AreNotChangedByAnActThatCannotBeWhole) {
    const PrintOnHandId print = add(1);
    ASSERT_TRUE(m_store.take(print, "Other", day));
    const auto before = *m_store.prints();
    EXPECT_FALSE(m_store.record({{test::madePrint(2)}, {{print, "Harbour"}}, {}, day, "once"}));
    EXPECT_FALSE(m_store.record({{test::madePrint(2)}, {{{999}, "Harbour"}}, {}, day, ""}));
    EXPECT_FALSE(m_store.record({{test::madePrint(2)}, {}, {}, "today", ""}));
    MadePrint unsound = test::madePrint(2);
    unsound.look.crop.zoom = 0;
    EXPECT_FALSE(m_store.record({{unsound}, {}, {}, day, ""}));
    EXPECT_EQ(*m_store.prints(), before);
}

TEST_F(PrintsOnHandTest, PapersNeverGoBelowNoneAndPlentyStaysPlenty) {
    setAtHand(1);
    ASSERT_TRUE(m_store.record({{test::madePrint(1)}, {}, {{firstPaper().id, 3}}, day, ""}));
    EXPECT_EQ(firstPaper().atHand, 0);
    ASSERT_TRUE(m_store.undo());
    EXPECT_EQ(firstPaper().atHand, 1);
    setAtHand(std::nullopt);
    ASSERT_TRUE(m_store.record({{test::madePrint(1)}, {}, {{firstPaper().id, 3}}, day, ""}));
    EXPECT_EQ(firstPaper().atHand, std::nullopt);
}

TEST_F(PrintsOnHandTest, ChangesAreTakenBackOneByOneAlsoByAnotherProgram) {
    // States after each of 60 random acts, then undone one by one.
    constexpr unsigned seed = 31;
    std::mt19937_64 random(seed);
    std::vector<std::vector<PrintOnHand>> states{*m_store.prints()};
    for (int i = 0; i < 60; ++i) {
        const auto all = *m_store.prints();
        const PrintOnHandId any = all.empty() ? PrintOnHandId{} : all[random() % all.size()].id;
        bool changed = false;
        switch (random() % 5) {
            case 0:
                changed = m_store.take(any, "A page", day).has_value();
                break;
            case 1:
                changed = m_store.putBack(any, day).has_value();
                break;
            case 2:
                changed = m_store.waste(any, day).has_value();
                break;
            default:
                changed =
                    m_store.record({{test::madePrint(i), test::madePrint(i, "P")}, {}, {}, day, ""})
                        .has_value();
        }
        if (changed) {
            states.push_back(*m_store.prints());
        }
    }
    PrintingStore other = *PrintingStore::open(m_folder.path() / printingStoreName);
    EXPECT_EQ(other.changes()->size(), states.size() - 1);
    while (states.size() > 1) {
        states.pop_back();
        ASSERT_TRUE(other.undo());
        ASSERT_EQ(*other.prints(), states.back()) << "seed " << seed;
    }
    EXPECT_EQ(other.undo().error().code, ErrorCode::NotFound);
}

TEST_F(PrintsOnHandTest, NoOthersChangeIsTakenBackInsteadOfTheOneThatIsMeant) {
    add(1);
    const std::int64_t mine = m_store.changes(1)->front().number;
    PrintingStore other = *PrintingStore::open(m_folder.path() / printingStoreName);
    ASSERT_TRUE(other.addOnHand(test::madePrint(2), day));
    const auto before = *m_store.prints();
    EXPECT_EQ(m_store.undo(mine).error().code, ErrorCode::NotFound);
    EXPECT_EQ(*m_store.prints(), before);
    ASSERT_TRUE(other.undo());
    EXPECT_EQ(m_store.undo(mine)->number, mine);
    EXPECT_EQ(m_store.undo(mine).error().code, ErrorCode::NotFound);
}

TEST_F(PrintsOnHandTest, PapersThatWereCountedAnewStayAsTheyWereCounted) {
    setAtHand(20);
    ASSERT_TRUE(m_store.record({{test::madePrint(1)}, {}, {{firstPaper().id, 10}}, day, ""}));
    setAtHand(12);
    ASSERT_TRUE(m_store.undo());
    EXPECT_TRUE(m_store.prints()->empty());
    EXPECT_EQ(firstPaper().atHand, 12);
    // Two acts, one after the other, come back whole.
    ASSERT_TRUE(m_store.record({{test::madePrint(1)}, {}, {{firstPaper().id, 5}}, day, ""}));
    ASSERT_TRUE(m_store.record({{test::madePrint(2)}, {}, {{firstPaper().id, 3}}, day, ""}));
    EXPECT_EQ(firstPaper().atHand, 4);
    ASSERT_TRUE(m_store.undo());
    ASSERT_TRUE(m_store.undo());
    EXPECT_EQ(firstPaper().atHand, 12);
    // However many are counted, the list can be read.
    ASSERT_TRUE(m_store.record({{test::madePrint(1)}, {}, {{firstPaper().id, 5}}, day, ""}));
    setAtHand(maxPapersAtHand);
    ASSERT_TRUE(m_store.undo());
    ASSERT_TRUE(m_store.printers());
    EXPECT_EQ(firstPaper().atHand, maxPapersAtHand);
}

TEST_F(PrintsOnHandTest, SeveralGoTogetherOrNotAtAllAndComeBackTogether) {
    const std::set prints{add(1), add(2), add(3)};
    const auto before = *m_store.prints();
    EXPECT_EQ(m_store.waste({*prints.begin(), PrintOnHandId{999}}, day).error().code,
              ErrorCode::NotFound);
    EXPECT_EQ(m_store.waste(std::set<PrintOnHandId>(), day).error().code, ErrorCode::NotFound);
    EXPECT_EQ(*m_store.prints(), before);
    const auto number = m_store.take(prints, "Harbour", day);
    ASSERT_TRUE(number);
    EXPECT_EQ(m_store.prints(PrintState::Used)->size(), 3U);
    EXPECT_EQ(m_store.changes(1)->front(),
              (PrintingChange{*number, "Took 3 prints for \"Harbour\"", day}));
    ASSERT_TRUE(m_store.undo(*number));
    EXPECT_EQ(*m_store.prints(), before);
    ASSERT_TRUE(m_store.waste(prints, day));
    EXPECT_EQ(m_store.changes(1)->front().what, "Threw 3 prints away");
    ASSERT_TRUE(m_store.putBack(prints, day));
    EXPECT_EQ(m_store.changes(1)->front().what, "Put 3 prints back");
}

TEST_F(PrintsOnHandTest, AnActTellsTheNumberOfItsOwnChange) {
    const auto number = m_store.record({{test::madePrint(1)}, {}, {}, day, "act"});
    PrintingStore other = *PrintingStore::open(m_folder.path() / printingStoreName);
    ASSERT_TRUE(other.addOnHand(test::madePrint(2), day));
    ASSERT_TRUE(number && *number);
    EXPECT_EQ(m_store.changes()->back().number, **number);
    EXPECT_EQ(m_store.undo(**number).error().code, ErrorCode::NotFound);
    EXPECT_EQ(*m_store.record({{test::madePrint(1)}, {}, {}, day, "act"}), std::nullopt);
}

TEST_F(PrintsOnHandTest, AreOnlyTakenByPagesWithAName) {
    const PrintOnHandId print = add(1);
    for (const std::string& page :
         {std::string(), std::string("Two\nlines"), std::string(maxPrintNameBytes + 1, 'x')}) {
        EXPECT_EQ(m_store.take(print, page, day).error().code, ErrorCode::BadText);
        EXPECT_EQ(m_store.record({{}, {{print, page}}, {}, day, ""}).error().code,
                  ErrorCode::BadText);
    }
    EXPECT_EQ(m_store.prints(PrintState::OnHand)->size(), 1U);
    EXPECT_TRUE(m_store.take(print, std::string(maxPrintNameBytes, 'x'), day));
}

TEST_F(PrintsOnHandTest, ThatAreGoneAreToldAndTheRestIsRecorded) {
    setAtHand(10);
    const PrintOnHandId there = add(1);
    const PrintOnHandId lost = add(2);
    const PrintingDone done{{test::madePrint(3, "Harbour")},
                            {{there, "Harbour"}, {lost, "Harbour"}, {{999}, "Harbour"}},
                            {{firstPaper().id, 1}},
                            day,
                            "act"};
    ASSERT_TRUE(m_store.take(lost, "Other", day));
    EXPECT_EQ(m_store.record(done).error().code, ErrorCode::NotFound);
    std::vector<PrintOnHandId> gone;
    ASSERT_TRUE(*m_store.record(done, &gone));
    EXPECT_EQ(gone, (std::vector<PrintOnHandId>{lost, {999}}));
    EXPECT_EQ(firstPaper().atHand, 9);
    EXPECT_EQ(m_store.changes(1)->front().what, "Printed 1 print, took 1 on hand");
    const auto used = *m_store.prints(PrintState::Used);
    ASSERT_EQ(used.size(), 3U);
    EXPECT_EQ(used[1].page, "Other");
    EXPECT_FALSE(*m_store.record(done, &gone));
    // Nothing is left of an act that only took what is gone.
    EXPECT_EQ(m_store.record({{}, {{lost, "Harbour"}}, {}, day, ""}, &gone).error().code,
              ErrorCode::NotFound);
    ASSERT_TRUE(m_store.undo());
    EXPECT_EQ(m_store.prints(PrintState::Used)->size(), 1U);
}

TEST_F(PrintsOnHandTest, OnlyTheLatestChangesAreKept) {
    const PrintOnHandId print = add(1);
    for (std::size_t i = 0; i < keptChanges; ++i) {
        ASSERT_TRUE(m_store.waste(print, day));
        ASSERT_TRUE(m_store.putBack(print, day));
    }
    EXPECT_EQ(m_store.changes()->size(), keptChanges);
    EXPECT_EQ(m_store.changes(3)->size(), 3U);
    EXPECT_EQ(m_store.changes()->front().what, "Put 1 print back");
}

}  // namespace

}  // namespace matwright
