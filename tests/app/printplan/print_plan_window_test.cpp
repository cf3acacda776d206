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
#include "app/printplan/queue_job.h"
#include "core/cutpicture/planned_sheet.h"
#include "core/pagefile/page_file.h"
#include "core/printers/store_tables.h"
#include "tests/app/printplan/print_plan_fixture.h"

namespace matwright::app {
namespace {

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
