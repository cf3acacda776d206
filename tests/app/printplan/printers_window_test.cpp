// SPDX-License-Identifier: MIT
#include "app/printplan/printers_window.h"

#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <fstream>

#include "app/printplan/paper_panel.h"
#include "tests/app/printplan/plan_fixture.h"

namespace matwright::app {
namespace {

class PrintersWindowTest : public PlanFixture {
  protected:
    void open() {
        window = std::make_unique<PrintersWindow>(settings, asks, nullptr);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        QTest::qWait(1);
    }
    void type(QLineEdit& field, const QString& text) {
        field.setFocus();
        field.selectAll();
        QTest::keyClicks(&field, text);
        QTest::keyClick(&field, Qt::Key_Return);
    }
    QPushButton* buttonNamed(const QString& name) {
        for (QPushButton* button : window->findChildren<QPushButton*>()) {
            if (button->accessibleName() == name) {
                return button;
            }
        }
        return nullptr;
    }
    std::unique_ptr<PrintersWindow> window;
};

TEST_F(PrintersWindowTest, ANewPersonBeginsWithSuggestions) {
    open();
    EXPECT_EQ(window->printerList().count(), 3);
    EXPECT_EQ(window->paperList().count(), 2);
}

TEST_F(PrintersWindowTest, WhatIsTypedIsKeptForTheNextTime) {
    open();
    type(window->printerName(), "The blue one");
    type(window->paperPanel().name(), "Glossy 4x6");
    window.reset();
    const auto printers = store().printers();
    ASSERT_TRUE(printers);
    EXPECT_EQ(printers->front().name, "The blue one");
    EXPECT_EQ(printers->front().papers.front().name, "Glossy 4x6");
}

TEST_F(PrintersWindowTest, ANameThatIsTakenIsRefusedWithASentence) {
    open();
    type(window->paperPanel().name(),
         QString::fromStdString(window->printers().front().papers[1].name));
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_NE(window->printers().front().papers[0].name, window->printers().front().papers[1].name);
}

TEST_F(PrintersWindowTest, PapersComeAndGo) {
    open();
    QTest::mouseClick(buttonNamed("Add a paper to this printer"), Qt::LeftButton);
    EXPECT_EQ(window->paperList().count(), 3);
    EXPECT_EQ(window->paperList().currentRow(), 2);
    QTest::mouseClick(buttonNamed("Remove this paper"), Qt::LeftButton);
    EXPECT_EQ(window->paperList().count(), 2);
    EXPECT_EQ(questions.size(), 1);
}

TEST_F(PrintersWindowTest, RemovingAPrinterIsAskedBefore) {
    agrees = false;
    open();
    QTest::mouseClick(buttonNamed("Remove this printer"), Qt::LeftButton);
    EXPECT_EQ(window->printerList().count(), 3);
    agrees = true;
    QTest::mouseClick(buttonNamed("Remove this printer"), Qt::LeftButton);
    EXPECT_EQ(window->printerList().count(), 2);
}

TEST_F(PrintersWindowTest, OffersThePrintersTheSystemHas) {
    queues = {"Attic", "Kitchen"};
    open();
    ASSERT_EQ(window->queue().count(), 3);
    window->queue().setFocus();
    QTest::keyClick(&window->queue(), Qt::Key_Down);
    QTest::keyClick(&window->queue(), Qt::Key_Down);
    window.reset();
    EXPECT_EQ(store().printers()->front().queue, "Kitchen");
}

TEST_F(PrintersWindowTest, ASystemPrinterThatIsGoneIsStillNamed) {
    {
        PrintingStore kept = store();
        const Printer before = kept.printers()->front();
        Printer after = before;
        after.queue = "Attic";
        ASSERT_TRUE(kept.change(before, after));
    }
    open();
    EXPECT_EQ(window->queue().currentText(), "Attic (not there now)");
}

TEST_F(PrintersWindowTest, SaysWhyNothingCanBeKept) {
    asks.store = folder() / "settings.ini" / "printing.sqlite";
    std::ofstream(folder() / "settings.ini") << "[general]\n";
    open();
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_EQ(window->printerList().count(), 0);
}

}  // namespace
}  // namespace matwright::app
