// SPDX-License-Identifier: MIT
// What the cutting plan takes off the papers on hand, and what it says where it cannot.
#include <QApplication>

#include "core/pagefile/page_file.h"
#include "tests/app/cutting/cutting_window_fixture.h"
#include "tests/support/temporary_folder.h"

namespace matwright::app {
namespace {

TEST_F(CuttingWindowTest, CuttingTakesSheetsOffPutsScrapsBackAndCanBeTakenBack) {
    stock({paper("kraft", inches(12, 12), 2), paper("dots", inches(12, 12), 2)});
    open();
    press(*window, "Cut it: take off the papers");
    EXPECT_EQ(window->problem(), "");
    EXPECT_TRUE(window->news().contains("2 sheets are off the list"))
        << window->news().toStdString();
    EXPECT_EQ(onHand("kraft", PaperKind::WholeSheet), 1);
    EXPECT_GE(onHand("kraft", PaperKind::Scrap), 1);
    EXPECT_FALSE(button(*window, "Cut it: take off the papers")->isEnabled());
    press(*window, "Put the papers back");
    EXPECT_EQ(onHand("kraft", PaperKind::WholeSheet), 2);
    EXPECT_EQ(onHand("kraft", PaperKind::Scrap), 0);
    waitForPlan();
    EXPECT_TRUE(button(*window, "Cut it: take off the papers")->isEnabled());
}

TEST_F(CuttingWindowTest, WhatAnotherWindowTookOffIsNotTakenOffAgainUnlessThePersonWantsIt) {
    stock({paper("kraft", inches(12, 12), 5), paper("dots", inches(12, 12), 5)});
    open();
    CuttingWindow second(session, QString(), settings, file(), asks);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !second.isLooking(); }, 60'000));
    QCoreApplication::processEvents();
    press(*window, "Cut it: take off the papers");
    EXPECT_EQ(onHand("kraft", PaperKind::WholeSheet), 4);
    EXPECT_TRUE(asked.isEmpty());
    press(second, "Cut it: take off the papers");
    EXPECT_EQ(onHand("kraft", PaperKind::WholeSheet), 4);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_TRUE(asked.front().contains("off the list already")) << asked.front().toStdString();
    EXPECT_TRUE(asked.front().contains("Cut papers for Summer")) << asked.front().toStdString();
    cutAgain = true;
    press(second, "Cut it: take off the papers");
    EXPECT_EQ(onHand("kraft", PaperKind::WholeSheet), 3);
    EXPECT_FALSE(button(second, "Cut it: take off the papers")->isEnabled());
}

TEST_F(CuttingWindowTest, APlanThatWasCutIsKnownWhenItsWindowIsOpenedAgain) {
    stock({paper("kraft", inches(12, 12), 5), paper("dots", inches(12, 12), 5)});
    open();
    press(*window, "Cut it: take off the papers");
    window.reset();
    open();
    EXPECT_TRUE(window->news().contains("off the list already")) << window->news().toStdString();
    press(*window, "Put the papers back");
    EXPECT_EQ(onHand("kraft", PaperKind::WholeSheet), 5);
    waitForPlan();
    EXPECT_EQ(window->news(), "The papers are back on the list.");
    press(*window, "Cut it: take off the papers");
    EXPECT_TRUE(asked.isEmpty());
    EXPECT_EQ(onHand("kraft", PaperKind::WholeSheet), 4);
}

TEST_F(CuttingWindowTest, PapersCanBePutBackAfterThePageHasChanged) {
    stock({paper("kraft", inches(12, 12), 5), paper("dots", inches(12, 12), 5)});
    open();
    press(*window, "Cut it: take off the papers");
    EXPECT_TRUE(window->news().contains("Undo in Papers on hand")) << window->news().toStdString();
    press(*window, "Give to all");
    waitForPlan();
    EXPECT_TRUE(window->news().contains("Of the 3 pieces 2 were cut before"))
        << window->news().toStdString();
    EXPECT_TRUE(button(*window, "Put the papers back")->isVisible());
    press(*window, "Put the papers back");
    EXPECT_EQ(onHand("kraft", PaperKind::WholeSheet), 5);
    EXPECT_FALSE(button(*window, "Put the papers back")->isVisible());
}

TEST_F(CuttingWindowTest, PuttingBackIsNotOfferedAfterAnotherChangeOfTheList) {
    stock({paper("kraft", inches(12, 12), 5), paper("dots", inches(12, 12), 5)});
    open();
    press(*window, "Cut it: take off the papers");
    const int steps = window->panel().steps().count();
    ASSERT_TRUE(store().add(paper("plum", inches(12, 12))));
    QEvent front(QEvent::WindowActivate);
    QCoreApplication::sendEvent(window.get(), &front);
    EXPECT_FALSE(button(*window, "Put the papers back")->isVisible());
    EXPECT_FALSE(window->isLooking());  // the plan in hand stays
    EXPECT_EQ(window->panel().steps().count(), steps);
    ASSERT_TRUE(*store().undo());
    ASSERT_TRUE(*store().undo());
    QCoreApplication::sendEvent(window.get(), &front);
    waitForPlan();
    EXPECT_TRUE(button(*window, "Cut it: take off the papers")->isEnabled());
}

TEST_F(CuttingWindowTest, AListThatAnotherProgramHoldsIsASentenceAndReadLater) {
    stock({paper("kraft", inches(12, 12), 5), paper("dots", inches(12, 12), 5)});
    auto holding = std::make_unique<Holding>(file());
    open();
    EXPECT_TRUE(window->problem().contains("Another program is busy"))
        << window->problem().toStdString();
    EXPECT_TRUE(window->problem().contains("may not know what is on hand"));
    EXPECT_FALSE(button(*window, "Cut it: take off the papers")->isEnabled());
    holding.reset();
    ASSERT_TRUE(QTest::qWaitFor([this] { return window->problem().isEmpty(); }, 20'000));
    waitForPlan();
    EXPECT_FALSE(window->panel().words().contains("To buy"))
        << window->panel().words().toStdString();
    EXPECT_TRUE(button(*window, "Cut it: take off the papers")->isEnabled());
}

TEST_F(CuttingWindowTest, NothingIsCutWhereAnotherProgramWasQuicker) {
    stock({paper("kraft", inches(12, 12), 1), paper("dots", inches(12, 12), 2)});
    open();
    const auto papers = *store().list();
    for (const PaperOnHand& one : papers) {
        if (one.name == "kraft") {
            ASSERT_TRUE(store().remove(std::span(&one, 1)));
        }
    }
    press(*window, "Cut it: take off the papers");
    waitForPlan();
    EXPECT_TRUE(window->problem().contains("Nothing was changed"))
        << window->problem().toStdString();
    EXPECT_EQ(onHand("dots", PaperKind::WholeSheet), 2);
}

TEST_F(CuttingWindowTest, AListThatCannotBeReadStaysSaidBesideThePlan) {
    test::writeFile(file(), "this is no database, and long enough to be looked at as one, surely");
    open();
    EXPECT_TRUE(window->problem().contains("may not know what is on hand"))
        << window->problem().toStdString();
    EXPECT_FALSE(button(*window, "Cut it: take off the papers")->isEnabled());
}

}  // namespace
}  // namespace matwright::app
