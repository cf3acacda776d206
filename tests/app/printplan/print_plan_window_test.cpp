// SPDX-License-Identifier: MIT
#include "app/printplan/print_plan_window.h"

#include <QComboBox>
#include <QImage>
#include <QListWidget>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>
#include <fstream>

#include "app/printplan/plan_cards.h"
#include "app/printplan/plan_pages_panel.h"
#include "app/printplan/plan_prints_panel.h"
#include "core/pagefile/page_file.h"
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
        window = std::make_unique<PrintPlanWindow>(making, QStringLiteral("/pages/Harbour"),
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

TEST_F(PrintPlanWindowTest, CancelLeavesNoFile) {
    addPrint(1);
    open();
    window->savePdfs();
    QTest::keyClick(window.get(), Qt::Key_Escape);
    waitForWork();
    EXPECT_TRUE(window->isVisible());
    EXPECT_LE(files().size(), 1);
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

}  // namespace
}  // namespace matwright::app
