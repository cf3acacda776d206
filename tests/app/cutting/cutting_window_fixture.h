// SPDX-License-Identifier: MIT
#pragma once

#include <QListWidget>
#include <memory>

#include "app/cutting/cutting_side.h"
#include "app/cutting/cutting_window.h"
#include "app/cutting/plan_panel.h"
#include "tests/app/cutting/cutting_fixture.h"
#include "tests/app/cutting/cutting_page.h"

namespace matwright::app {

// The cutting plan of a small page and its papers, in a window of its own.
class CuttingWindowTest : public CuttingFixture {
  protected:
    CuttingWindowTest() { session.reset(pageToCut()); }
    void stock(std::vector<PaperOnHand> papers) { ASSERT_TRUE(store().add(papers, "Add")); }
    void open() {
        window = std::make_unique<CuttingWindow>(session, QString(), settings, file(), asks);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        waitForPlan();
    }
    void waitForPlan() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return !window->isLooking(); }, 60'000));
        QCoreApplication::processEvents();
    }
    PieceTable& table() { return window->side().table(); }
    int rowOf(PieceId piece) {
        const auto& lines = table().lines();
        for (std::size_t row = 0; row < lines.size(); ++row) {
            if (lines[row].isOwn && lines[row].piece.piece == piece) {
                return static_cast<int>(row);
            }
        }
        return -1;
    }
    int rowOfMat() { return rowOf(slotId); }
    int sheets() { return window->panel().sheets().count(); }
    int onHand(const std::string& name, PaperKind kind) {
        int count = 0;
        const auto papers = store().list();
        for (const PaperOnHand& paper : *papers) {
            count += paper.name == name && paper.kind == kind ? paper.count : 0;
        }
        return count;
    }

    Session session;
    std::unique_ptr<CuttingWindow> window;
};

}  // namespace matwright::app
