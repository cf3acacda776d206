// SPDX-License-Identifier: MIT
#pragma once

#include <QComboBox>
#include <QListWidget>
#include <algorithm>
#include <memory>

#include "app/printplan/plan_pages_panel.h"
#include "app/printplan/plan_prints_panel.h"
#include "app/printplan/print_plan_window.h"
#include "tests/app/printplan/plan_fixture.h"

namespace matwright::app {

inline constexpr Size small{Length::inches(3), Length::inches(4)};

// The print plan of a page called Harbour, in a window of its own.
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

}  // namespace matwright::app
