// SPDX-License-Identifier: MIT
#include "app/printplan/print_plan_window.h"

#include <QComboBox>
#include <QImage>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QRegularExpression>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>
#include <algorithm>
#include <fstream>
#include <optional>

#include "app/printplan/plan_cards.h"
#include "app/printplan/plan_pages_panel.h"
#include "app/printplan/plan_prints_panel.h"
#include "app/printplan/queue_job.h"
#include "core/cutpicture/planned_sheet.h"
#include "core/pagefile/page_file.h"
#include "core/printers/store_tables.h"
#include "tests/app/printplan/plan_fixture.h"

namespace matwright::app {
namespace {

constexpr Size small{Length::inches(3), Length::inches(4)};

class PrintPlanWindowTest : public PlanFixture {
  protected:
    void addPrint(int scene) {
        const auto row = static_cast<std::int64_t>(making.sketch.pieces.size());
        put(addPhoto(scene, {900, 1200}), addSlot({Length::inches(3) * row, {}}, small));
    }
    void open() {
        openWindow();
        waitForPlan();
    }
    void openWindow() {
        window = std::make_unique<PrintPlanWindow>(making, QStringLiteral("/pages/Harbour"), file,
                                                   settings, nullptr, asks, nullptr);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }
    void waitForPlan() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return !window->isPlanning(); }, 60'000));
        ASSERT_TRUE(window->plan()) << window->problem().toStdString();
    }
    void waitForWork() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return !window->isWorking(); }, 60'000));
        QCoreApplication::processEvents();
    }
    PrinterId printerNamed(const std::string& name) {
        const auto printers = *store().printers();
        return std::ranges::find(printers, name, &Printer::name)->id;
    }
    void wish(int row, const QString& printer) {
        QComboBox* box = window->prints().wishBox(row);
        ASSERT_TRUE(box);
        box->setCurrentIndex(box->findText(printer));
        emit box->activated(box->currentIndex());
        waitForPlan();
    }
    // Two sheets of one paper.
    void addTwoSheets() {
        const Size whole{Length::inches(4), Length::inches(6)};
        put(addPhoto(1, {900, 1350}), addSlot({}, whole));
        put(addPhoto(2, {900, 1350}), addSlot({Length::inches(5), {}}, whole));
    }
    // By this program's own print dialog: into a file.
    void printAll() {
        queues = {"Attic"};
        window->print(window->plan()->plan.sheets.front().printer);
        waitForWork();
    }
    void recordAndReplan() {
        window->record();
        window->pages().list().item(0)->setCheckState(Qt::Unchecked);
        waitForPlan();
        window->pages().list().item(0)->setCheckState(Qt::Checked);
        waitForPlan();
    }
    QString file;  // of the page that is open
    std::unique_ptr<PrintPlanWindow> window;
};

TEST_F(PrintPlanWindowTest, TwoSmallPrintsShareOneSheet) {
    addPrint(1);
    addPrint(2);
    open();
    EXPECT_EQ(window->cards().count(), 1);
    EXPECT_EQ(window->plan()->plan.sheets.front().gang.places.size(), 2U);
    EXPECT_EQ(faultsOf(window->plan()->plan, window->plan()->input), std::vector<std::string>{});
    EXPECT_TRUE(window->bound().startsWith("1 sheet")) << window->bound().toStdString();
    EXPECT_EQ(window->prints().list().rowCount(), 2);
}

TEST_F(PrintPlanWindowTest, OnePrintLeavesRoomForAFavourite) {
    addPrint(1);
    const PhotoId favourite = addPhoto(3, {900, 1200});
    making.work.photos.at(favourite).favourite = true;
    open();
    ASSERT_EQ(window->cards().rooms(), QStringList{"Room for one more 3 × 4 in."});
    ASSERT_EQ(window->cards().offers().size(), 1);
    QTest::mouseClick(window->cards().offers().front(), Qt::LeftButton);
    waitForPlan();
    EXPECT_EQ(window->plan()->plan.sheets.front().gang.places.size(), 2U);
    EXPECT_EQ(window->prints().list().rowCount(), 2);
    EXPECT_TRUE(window->cards().offers().isEmpty());
}

TEST_F(PrintPlanWindowTest, AWishIsPlannedAnew) {
    addPrint(1);
    open();
    QComboBox* box = window->prints().wishBox(0);
    ASSERT_TRUE(box);
    const int shop = box->findText("Print shop");
    ASSERT_GT(shop, 0);
    box->setCurrentIndex(shop);
    emit box->activated(shop);
    waitForPlan();
    const PlanInput& input = window->plan()->input;
    EXPECT_EQ(find(input.printers, window->plan()->plan.sheets.front().printer)->name,
              "Print shop");
}

TEST_F(PrintPlanWindowTest, PrintsAheadComeToThePrintsOnHandOnceTheyArePrinted) {
    addPrint(1);
    making.work.photos.at(addPhoto(3, {900, 1200})).favourite = true;
    open();
    QTest::mouseClick(window->cards().offers().front(), Qt::LeftButton);
    waitForPlan();
    window->record();
    window->record();  // a second press changes nothing
    EXPECT_EQ(store().prints(PrintState::OnHand)->size(), 1U);
    EXPECT_EQ(store().prints(PrintState::Used)->size(), 1U);
    window->undoRecord();
    EXPECT_TRUE(store().prints()->empty());
    waitForPlan();
}

TEST_F(PrintPlanWindowTest, APrintOnHandIsTakenInsteadOfANewOne) {
    addPrint(1);
    const Print print = matwright::printsOf(making, {}).front();
    ASSERT_TRUE(store().addOnHand({lookOf(print, making.work.photos.at(print.photo)), "x.jpg", ""},
                                  "2026-07-01"));
    open();
    EXPECT_EQ(window->cards().count(), 0);
    EXPECT_TRUE(window->prints().list().item(0, 1)->text().contains("prints on hand"));
    window->record();
    EXPECT_TRUE(store().prints(PrintState::OnHand)->empty());
}

TEST_F(PrintPlanWindowTest, AnotherPageIsAddedByItsFile) {
    addPrint(1);
    DiskFileStore disk;
    const auto path = folder() / "Hill.page.svg";
    ASSERT_TRUE(savePage(disk, path, making));
    pageFiles = {QString::fromStdString(path)};
    open();
    window->pages().addFiles();
    ASSERT_TRUE(QTest::qWaitFor([this] { return window->pages().list().count() == 2; }, 30'000));
    waitForPlan();
    EXPECT_EQ(window->plan()->plan.prints.size(), 2U);
    // It waits now, and its photo is offered.
    window->pages().list().item(1)->setCheckState(Qt::Unchecked);
    waitForPlan();
    EXPECT_EQ(window->plan()->plan.prints.size(), 1U);
}

TEST_F(PrintPlanWindowTest, AFileThatIsNoPageIsRefusedWithASentence) {
    addPrint(1);
    pageFiles = {QString::fromStdString(folder() / "gone.page.svg")};
    open();
    window->pages().addFiles();
    EXPECT_TRUE(QTest::qWaitFor([this] { return !window->pages().problem().isEmpty(); }, 30'000));
}

TEST_F(PrintPlanWindowTest, SavesOnePdfAPrinterAndOnePictureASheet) {
    addPrint(1);
    addPrint(2);
    open();
    window->savePdfs();
    waitForWork();
    ASSERT_EQ(files().size(), 1) << window->problem().toStdString();
    EXPECT_TRUE(files().front().endsWith(".pdf"));
    QFile::remove(out(files().front()));
    window->savePictures();
    waitForWork();
    ASSERT_EQ(files().size(), 1) << window->problem().toStdString();
    const QImage sheet(out(files().front()));
    EXPECT_EQ(sheet.size(), QSize(1200, 1800));
    EXPECT_NEAR(sheet.dotsPerMeterX() * 0.0254, 300, 0.1);
}

TEST_F(PrintPlanWindowTest, CancelTellsHowFarItCame) {
    addTwoSheets();
    open();
    window->savePictures();
    QTest::keyClick(window.get(), Qt::Key_Escape);
    waitForWork();
    EXPECT_TRUE(window->isVisible());
    if (files().isEmpty()) {
        EXPECT_EQ(window->result(), "Cancelled; nothing was made.");
    } else {
        EXPECT_TRUE(window->result().contains(files().front())) << window->result().toStdString();
    }
    EXPECT_LT(files().size(), 2);
}

TEST_F(PrintPlanWindowTest, SaysWhatToDoWithoutAPrinter) {
    addPrint(1);
    open();
    window->print(window->plan()->plan.sheets.front().printer);
    EXPECT_TRUE(window->problem().contains("Save PDFs"));
    EXPECT_FALSE(window->isWorking());
}

TEST_F(PrintPlanWindowTest, PlansWithTheSuggestionsWhereNothingCanBeKept) {
    addPrint(1);
    std::ofstream(folder() / "file") << "x";
    asks.store = folder() / "file" / "printing.sqlite";
    open();
    EXPECT_EQ(window->cards().count(), 1);
    EXPECT_FALSE(window->problem().isEmpty());
}

TEST_F(PrintPlanWindowTest, APhotoThatIsGoneIsNamed) {
    addPrint(1);
    making.work.photos.begin()->second.path = (folder() / "gone.jpg").string();
    open();
    window->savePdfs();
    waitForWork();
    EXPECT_TRUE(files().isEmpty());
    EXPECT_FALSE(window->problem().isEmpty());
}

// ---- what is printed is recorded once

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

TEST_F(PrintPlanWindowTest, PagesThatArriveWhileADialogIsOpenChangeNothingUnderIt) {
    addTwoSheets();
    DiskFileStore disk;
    const auto path = folder() / "Hill.page.svg";
    ASSERT_TRUE(savePage(disk, path, making));
    pageFiles = {QString::fromStdString(path)};
    open();
    queues = {"Attic"};
    asks.print = [this](QWidget*, QPrinter& printer, int, const QString&) {
        printer.setOutputFileName(out("printed.pdf"));
        window->pages().addFiles();
        EXPECT_TRUE(
            QTest::qWaitFor([this] { return window->pages().list().count() == 2; }, 30'000));
        return true;
    };
    open();
    window->print(window->plan()->plan.sheets.front().printer);
    waitForPlan();
    EXPECT_FALSE(window->isWorking());
    EXPECT_TRUE(window->problem().contains("changed")) << window->problem().toStdString();
    EXPECT_TRUE(files().isEmpty());
}

TEST_F(PrintPlanWindowTest, ThePageThatIsOpenIsNotAddedASecondTime) {
    addPrint(1);
    DiskFileStore disk;
    const auto path = folder() / "Harbour.page.svg";
    ASSERT_TRUE(savePage(disk, path, making));
    file = QString::fromStdString(path);
    pageFiles = {file};
    open();
    window->pages().addFiles();
    EXPECT_TRUE(window->pages().problem().contains("in the plan already"));
    EXPECT_EQ(window->pages().list().count(), 1);
}

// ---- what is seen

TEST_F(PrintPlanWindowTest, SaysWhichLetterIsWhichPrintAndHowToCareForTheBlade) {
    addPrint(1);
    open();
    QStringList texts;
    for (const QLabel* label : window->cards().findChildren<QLabel*>()) {
        texts << label->text();
    }
    EXPECT_FALSE(texts.filter(QRegularExpression("^A: .*Harbour")).isEmpty())
        << texts.join('\n').toStdString();
    EXPECT_TRUE(texts.contains(QString::fromUtf8(bladeCaution)));
}

TEST_F(PrintPlanWindowTest, TheFocusComesBackToPrinting) {
    addPrint(1);
    open();
    const auto* button = qobject_cast<QPushButton*>(window->focusWidget());
    ASSERT_TRUE(button);
    EXPECT_EQ(button->text(), "&Print…");
}

TEST_F(PrintPlanWindowTest, WaitsForAnotherProgramWithoutStandingStill) {
    addPrint(1);
    ASSERT_TRUE(store().printers());
    auto other = openStore(asks.store, printingKind);
    ASSERT_TRUE(other);
    std::optional<StoreTransaction> held(std::in_place, *other);
    ASSERT_TRUE(held->hasBegun());
    openWindow();
    EXPECT_TRUE(window->isPlanning());
    EXPECT_EQ(window->bound(), "Looking at your printers and prints…");
    held.reset();
    waitForPlan();
    EXPECT_EQ(window->cards().count(), 1);
}

TEST_F(PrintPlanWindowTest, TheCuttingStepsCanBeTakenToTheTable) {
    addPrint(1);
    open();
    window->saveCuts();
    waitForWork();
    EXPECT_EQ(files(), QStringList{"Cutting the prints.pdf"}) << window->problem().toStdString();
}

TEST_F(PrintPlanWindowTest, APlanThatWasWorkedOnIsNotClosedUnasked) {
    addPrint(1);
    open();
    window->close();
    EXPECT_TRUE(questions.isEmpty()) << "there is nothing to lose";
    open();
    window->savePdfs();
    waitForWork();
    agrees = false;
    window->close();
    EXPECT_EQ(questions.size(), 1);
    EXPECT_TRUE(window->isVisible());
    window->record();
    window->close();
    EXPECT_EQ(questions.size(), 1);
    EXPECT_FALSE(window->isVisible());
}

// ---- without a store

TEST_F(PrintPlanWindowTest, SuggestedPrintersAreToldApart) {
    put(addPhoto(1, {1600, 2000}), addSlot({}, {Length::inches(8), Length::inches(10)}));
    std::ofstream(folder() / "file") << "x";
    asks.store = folder() / "file" / "printing.sqlite";
    open();
    ASSERT_EQ(window->cards().count(), 1);
    EXPECT_FALSE(window->cards().titles().front().contains("4 × 6"));
    window->savePdfs();
    waitForWork();
    EXPECT_EQ(files().size(), 1) << window->problem().toStdString();
}

}  // namespace
}  // namespace matwright::app
