// SPDX-License-Identifier: MIT
#include "app/printplan/printers_window.h"

#include <QApplication>
#include <QComboBox>
#include <QFocusEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <fstream>

#include "app/panels/length_field.h"
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
    // What a test sheet of the first paper measured.
    Correction measureFirst() {
        const Correction correction =
            correctionOf({Length::inches(3), Length::inches(5)},
                         {Length::inches(3, 3, 50), Length::inches(5, 1, 20)}, "2026-07-01")
                .value();
        PrintingStore kept = store();
        EXPECT_TRUE(kept.keep(kept.printers()->front().papers.front().id, true, correction));
        return correction;
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

// What is typed counts before the question is shown; its own window would take the focus away.
TEST_F(PrintersWindowTest, ANameThatIsBeingTypedIsTakenBeforeAnythingElse) {
    open();
    const std::string gone = window->printers()[0].name;
    window->printerName().setFocus();
    window->printerName().selectAll();
    QTest::keyClicks(&window->printerName(), "The blue one");
    whileAsked = [this] {  // as when its field loses the focus
        QFocusEvent out(QEvent::FocusOut, Qt::ActiveWindowFocusReason);
        QApplication::sendEvent(&window->printerName(), &out);
        window->printerName().setText("Another");
        QApplication::sendEvent(&window->printerName(), &out);
    };
    window->removePrinter();
    ASSERT_EQ(questions.size(), 1);
    EXPECT_TRUE(questions[0].contains("The blue one")) << questions[0].toStdString();
    EXPECT_TRUE(window->problem().isEmpty()) << window->problem().toStdString();
    EXPECT_EQ(window->printers().size(), 2U);
    whileAsked = nullptr;
    window->printerName().setFocus();
    window->printerName().selectAll();
    QTest::keyClicks(&window->printerName(), "The red one");
    window->addPrinter();
    ASSERT_EQ(window->printers().size(), 3U);
    EXPECT_EQ(window->printers()[0].name, "The red one");
    EXPECT_EQ(window->printerName().text(), "New printer");
}

TEST_F(PrintersWindowTest, ATypedNameThatIsRefusedStopsWhatWasPressed) {
    open();
    window->printerName().setFocus();
    window->printerName().selectAll();
    QTest::keyClicks(&window->printerName(), QString::fromStdString(window->printers()[1].name));
    window->addPrinter();
    EXPECT_EQ(window->printers().size(), 3U);
    EXPECT_TRUE(window->problem().contains("already")) << window->problem().toStdString();
}

TEST_F(PrintersWindowTest, ClosingTakesWhatIsBeingTyped) {
    open();
    window->printerName().setFocus();
    window->printerName().selectAll();
    QTest::keyClicks(&window->printerName(), "The blue one");
    window->reject();
    EXPECT_EQ(store().printers()->front().name, "The blue one");
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

TEST_F(PrintersWindowTest, AMeasuredPaperIsTurnedWithItsMeasure) {
    const Correction measured = measureFirst();
    open();
    window->paperPanel().turn();
    EXPECT_TRUE(questions.isEmpty());
    const PrinterPaper turned = store().printers()->front().papers.front();
    EXPECT_EQ(turned.size, (Size{Length::inches(6), Length::inches(4)}));
    ASSERT_TRUE(turned.correction());
    EXPECT_EQ(turned.correction()->across, measured.down);
    EXPECT_EQ(turned.correction()->down, measured.across);
}

TEST_F(PrintersWindowTest, AnotherSizeForgetsTheMeasureOnlyAfterAQuestion) {
    const Correction measured = measureFirst();
    open();
    agrees = false;
    type(*window->paperPanel().width().lineEdit(), "5");
    EXPECT_EQ(questions.size(), 1);
    EXPECT_EQ(store().printers()->front().papers.front().correction(), measured);
    EXPECT_EQ(window->paperPanel().width().value(), Length::inches(4));
    agrees = true;
    type(*window->paperPanel().width().lineEdit(), "5");
    const PrinterPaper after = store().printers()->front().papers.front();
    EXPECT_EQ(after.size.width, Length::inches(5));
    EXPECT_FALSE(after.correction());
    EXPECT_TRUE(window->news().contains("test sheet again")) << window->news().toStdString();
}

// 5 x 6 is no size of the catalogue, and 5 x 7 is the name of another paper here.
TEST_F(PrintersWindowTest, APaperThatIsCalledAfterItsSizeGoesOnBeingSo) {
    open();
    type(*window->paperPanel().width().lineEdit(), "5");
    EXPECT_EQ(window->printers()[0].papers[0].name, "5 × 6 in");
    type(*window->paperPanel().height().lineEdit(), "7");
    EXPECT_EQ(window->printers()[0].papers[0].name, "5 × 7 in 2");
    EXPECT_TRUE(window->problem().isEmpty()) << window->problem().toStdString();
}

TEST_F(PrintersWindowTest, StepsOfAFieldAreKeptOnceWhenTheyRest) {
    measureFirst();
    open();
    QLineEdit* field = window->paperPanel().width().lineEdit();
    field->setFocus();
    for (int i = 0; i < 8; ++i) {
        QTest::keyClick(field, Qt::Key_Up);
    }
    EXPECT_EQ(window->printers()[0].papers[0].size.width, Length::inches(4));
    EXPECT_TRUE(questions.isEmpty());
    for (int i = 0; i < 8; ++i) {
        QTest::keyClick(field, Qt::Key_Down);
    }
    QTest::qWait(500);
    EXPECT_TRUE(questions.isEmpty());  // back where it was, nothing has happened
    QTest::keyClick(field, Qt::Key_Up);
    window->printerName().setFocus();
    EXPECT_EQ(questions.size(), 1);
    EXPECT_GT(store().printers()->front().papers[0].size.width, Length::inches(4));
}

TEST_F(PrintersWindowTest, AnotherSystemPrinterOfAMeasuredOneIsRemarkedOn) {
    measureFirst();
    queues = {"Attic"};
    open();
    window->queue().setFocus();
    QTest::keyClick(&window->queue(), Qt::Key_Down);
    EXPECT_TRUE(window->news().contains("test sheet")) << window->news().toStdString();
}

TEST_F(PrintersWindowTest, EveryLetterLeadsToOnePlace) {
    open();
    QMap<QChar, QStringList> letters;
    const auto note = [&](const QString& text) {
        const qsizetype place = text.indexOf(u'&');
        if (place >= 0 && place + 1 < text.size()) {
            letters[text[place + 1].toUpper()] << text;
        }
    };
    for (const QLabel* label : window->findChildren<QLabel*>()) {
        note(label->text());
    }
    for (const QAbstractButton* button : window->findChildren<QAbstractButton*>()) {
        note(button->text());
    }
    EXPECT_GT(letters.size(), 15);
    for (const QStringList& texts : letters) {
        EXPECT_EQ(texts.size(), 1) << texts.join(" | ").toStdString();
    }
}

TEST_F(PrintersWindowTest, SaysWhyNothingCanBeKept) {
    asks.store = folder() / "settings.ini" / "printing.sqlite";
    std::ofstream(folder() / "settings.ini") << "[general]\n";
    open();
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_EQ(window->printerList().count(), 0);
    EXPECT_FALSE(buttonNamed("Add a printer")->isEnabled());
}

}  // namespace
}  // namespace matwright::app
