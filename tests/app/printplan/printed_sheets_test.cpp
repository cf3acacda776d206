// SPDX-License-Identifier: MIT
// Sheets of the print plan on their way to the printer, and what is recorded of them.
#include <QListWidget>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>
#include <algorithm>
#include <fstream>
#include <optional>

#include "app/printplan/plan_cards.h"
#include "app/printplan/queue_job.h"
#include "core/cutpicture/planned_sheet.h"
#include "core/pagefile/page_file.h"
#include "core/printers/store_tables.h"
#include "tests/app/printplan/print_plan_fixture.h"

namespace matwright::app {
namespace {

TEST_F(PrintPlanWindowTest, WhatWasPrintedIsNotPlannedAgain) {
    addPrint(1);
    open();
    recordAndReplan();
    EXPECT_EQ(window->cards().count(), 0);
    EXPECT_FALSE(window->canRecord());
    EXPECT_TRUE(window->prints().list().item(0, 1)->text().contains("printed before"));
    EXPECT_EQ(store().prints()->size(), 1U);
    window->record();
    EXPECT_EQ(store().prints()->size(), 1U);
}

TEST_F(PrintPlanWindowTest, WhatWasPrintedIsKnownTheNextDayToo) {
    file = "/pages/Harbour.page.svg";
    addPrint(1);
    open();
    window->record();
    open();
    EXPECT_EQ(window->cards().count(), 0);
    ASSERT_EQ(window->plan()->plan.there.size(), 1U);
    // To have it anew.
    ASSERT_TRUE(store().waste(window->plan()->plan.there.front().used, "2026-07-15"));
    open();
    EXPECT_EQ(window->cards().count(), 1);
}

TEST_F(PrintPlanWindowTest, AnotherPageThatWasNeverSavedHasNotItsPrints) {
    addPrint(1);
    open();
    window->record();
    open();
    EXPECT_EQ(window->cards().count(), 1);
}

TEST_F(PrintPlanWindowTest, PrintsAheadAreMadeOnce) {
    addPrint(1);
    making.work.photos.at(addPhoto(3, {900, 1200})).favourite = true;
    open();
    QTest::mouseClick(window->cards().offers().front(), Qt::LeftButton);
    waitForPlan();
    recordAndReplan();
    EXPECT_EQ(window->prints().list().rowCount(), 1);
    EXPECT_EQ(store().prints(PrintState::OnHand)->size(), 1U);
    // They come back to the plan with the rest.
    window->undoRecord();
    waitForPlan();
    EXPECT_EQ(window->prints().list().rowCount(), 2);
    EXPECT_EQ(window->cards().count(), 1);
    EXPECT_TRUE(store().prints()->empty());
    EXPECT_FALSE(window->canUndo());
}

TEST_F(PrintPlanWindowTest, OnlyWhatWasSentIsRecordedThenTheRest) {
    addPrint(1);
    addPrint(2);
    open();
    wish(0, "Small printer");
    wish(1, "Print shop");
    ASSERT_EQ(window->plan()->plan.sheets.size(), 2U);
    queues = {"Attic"};
    window->print(printerNamed("Small printer"));
    waitForWork();
    EXPECT_TRUE(window->result().contains("1 sheet is still to be printed."))
        << window->result().toStdString();
    window->record();
    EXPECT_EQ(store().prints(PrintState::Used)->size(), 1U);
    EXPECT_TRUE(window->canRecord());
    window->record();
    EXPECT_EQ(store().prints(PrintState::Used)->size(), 2U);
    EXPECT_FALSE(window->canRecord());
}

TEST_F(PrintPlanWindowTest, WhatWasSentIsRecordedThoughThePlanHasChanged) {
    addPrint(1);
    making.work.photos.at(addPhoto(3, {900, 1200})).favourite = true;
    open();
    printAll();
    QTest::mouseClick(window->cards().offers().front(), Qt::LeftButton);
    waitForPlan();
    window->record();
    waitForPlan();
    EXPECT_TRUE(store().prints(PrintState::OnHand)->empty()) << "it was never printed";
    EXPECT_EQ(store().prints(PrintState::Used)->size(), 1U);
}

// The first one did not come out well.
TEST_F(PrintPlanWindowTest, ASheetThatIsPrintedAgainAfterAChangeIsRecordedOnce) {
    addPrint(1);
    open();
    printAll();
    window->pages().list().item(0)->setCheckState(Qt::Unchecked);
    waitForPlan();
    window->pages().list().item(0)->setCheckState(Qt::Checked);
    waitForPlan();
    printAll();
    window->record();
    EXPECT_EQ(store().prints()->size(), 1U);
}

TEST_F(PrintPlanWindowTest, AsksBeforeClosingWhetherWhatWasSentIsPrinted) {
    addPrint(1);
    open();
    printAll();
    agrees = false;
    window->close();
    EXPECT_EQ(questions.size(), 1);
    EXPECT_TRUE(store().prints()->empty());
    open();
    printAll();
    agrees = true;
    window->close();
    EXPECT_EQ(store().prints()->size(), 1U);
    EXPECT_FALSE(window->isVisible());
}

TEST_F(PrintPlanWindowTest, UndoDoesNotTakeBackWhatAnotherProgramDidSince) {
    addPrint(1);
    open();
    window->record();
    ASSERT_TRUE(store().waste(store().prints()->front().id, "2026-07-15"));
    window->undoRecord();
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_EQ(store().prints(PrintState::Wasted)->size(), 1U);
    EXPECT_FALSE(window->canUndo());
}

// ---- printing that comes to nothing

TEST_F(PrintPlanWindowTest, ACancelledDialogIsToldAndNothingIsRecorded) {
    addPrint(1);
    open();
    queues = {"Attic"};
    asks.print = [](QWidget*, QPrinter&, int, const QString&) { return false; };
    open();
    window->print(window->plan()->plan.sheets.front().printer);
    EXPECT_EQ(window->result(), "Cancelled; nothing was printed.");
    EXPECT_FALSE(window->isWorking());
    EXPECT_TRUE(store().prints()->empty());
    window->close();
    EXPECT_TRUE(questions.isEmpty());
}

TEST_F(PrintPlanWindowTest, APrinterThatCannotBeStartedIsToldAndNothingCountsAsSent) {
    addPrint(1);
    asks.print = [this](QWidget*, QPrinter& printer, int, const QString&) {
        printer.setOutputFileName(out("no such folder/printed.pdf"));
        return true;
    };
    open();
    printAll();
    EXPECT_TRUE(window->problem().contains("could not be started"))
        << window->problem().toStdString();
    window->close();
    EXPECT_TRUE(questions.isEmpty());
    EXPECT_TRUE(store().prints()->empty());
}

// Otherwise the first sheet would come out again with the second, once that is mended.
TEST_F(PrintPlanWindowTest, NothingIsSentWhereOneOfTheSheetsCannotBeMade) {
    addTwoSheets();
    making.work.photos.rbegin()->second.path = (folder() / "gone.jpg").string();
    open();
    ASSERT_EQ(window->plan()->plan.sheets.size(), 2U);
    printAll();
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_TRUE(files().isEmpty());
}

TEST_F(PrintPlanWindowTest, SheetsForAPrintShopAreNotPrintedAtHome) {
    addPrint(1);
    open();
    wish(0, "Print shop");
    queues = {"Attic"};
    QTest::keyClick(window.get(), Qt::Key_Return);
    EXPECT_TRUE(dialogs.isEmpty());
    EXPECT_TRUE(window->problem().contains("print shop")) << window->problem().toStdString();
}

TEST(QueueDoubts, SheetsMadeForOnePrinterAreNotSentToAnotherUnasked) {
    EXPECT_TRUE(otherPrinterDoubt("Attic", "Kitchen").contains("Attic"));
    EXPECT_TRUE(otherPrinterDoubt("Attic", "Attic").isEmpty());
    EXPECT_TRUE(otherPrinterDoubt("", "Kitchen").isEmpty());
}

// ---- pages that come while something else goes on

}  // namespace
}  // namespace matwright::app
