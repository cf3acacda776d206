// SPDX-License-Identifier: MIT
#include "app/printplan/size_test_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <algorithm>

#include "app/panels/length_field.h"
#include "tests/app/printplan/plan_fixture.h"

namespace matwright::app {
namespace {

class SizeTestDialogTest : public PlanFixture {
  protected:
    void open() {
        kept.emplace(store());
        const Printer printer = kept->printers()->front();
        dialog = std::make_unique<SizeTestDialog>(*kept, settings, asks, printer.id,
                                                  printer.papers.front().id);
        dialog->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog.get()));
    }
    void type(LengthField& field, const QString& text) {
        field.lineEdit()->setFocus();
        field.lineEdit()->selectAll();
        QTest::keyClicks(field.lineEdit(), text);
    }
    std::optional<Correction> correction() {
        return kept->printers()->front().papers.front().correction();
    }
    std::optional<PrintingStore> kept;
    std::unique_ptr<SizeTestDialog> dialog;
};

// 3 in and 5 in are what a 4x6 has room for; 3.06 / 3 = 2 % too large.
TEST_F(SizeTestDialogTest, WhatTheRulerSaysIsKeptAndSaidInWords) {
    open();
    type(dialog->across(), "3.06");
    type(dialog->down(), "5.1");
    dialog->keep();
    ASSERT_TRUE(correction());
    EXPECT_NEAR(correction()->across.factor(), 3 / 3.06, 1e-6);
    EXPECT_NEAR(correction()->down.factor(), 5 / 5.1, 1e-6);
    EXPECT_EQ(correction()->date, "2026-07-14");
    EXPECT_TRUE(dialog->result().contains("2.0 %")) << dialog->result().toStdString();
}

TEST_F(SizeTestDialogTest, AMeasureThatCannotBeIsRefusedWithASentence) {
    open();
    type(dialog->across(), "6");
    dialog->keep();
    EXPECT_FALSE(correction());
    EXPECT_FALSE(dialog->problem().isEmpty());
}

TEST_F(SizeTestDialogTest, ACorrectionCanBeRemoved) {
    open();
    type(dialog->across(), "3.06");
    dialog->keep();
    ASSERT_TRUE(correction());
    agrees = false;
    dialog->removeCorrection();
    EXPECT_TRUE(correction());
    agrees = true;
    dialog->removeCorrection();
    EXPECT_FALSE(correction());
    EXPECT_EQ(questions.size(), 2);
}

TEST_F(SizeTestDialogTest, SuggestsAFileOfItsOwnForEachPaperAndInNoFolderThatIsNotThere) {
    {
        PrintingStore before = store();
        const Printer printer = before.printers()->front();
        Printer after = printer;
        after.name = "A/B";
        ASSERT_TRUE(before.change(printer, after));
    }
    open();
    dialog->savePdf();
    const QString first = suggested;
    EXPECT_EQ(QFileInfo(first).absolutePath(), QDir::homePath());
    EXPECT_TRUE(QFileInfo(first).fileName().contains("A-B")) << first.toStdString();
    EXPECT_TRUE(first.endsWith(".pdf"));
    dialog->paper().setCurrentIndex(1);
    dialog->savePdf();
    EXPECT_NE(suggested, first);
}

// The marks of a 4x6 are 3 and 5 in apart on paper, whatever is sent to have them so.
TEST_F(SizeTestDialogTest, ACheckSaysWhatIsToComeOut) {
    open();
    type(dialog->across(), "3.06");
    type(dialog->down(), "5.1");
    dialog->keep();
    EXPECT_TRUE(dialog->result().contains("3.06 in and 5.1 in")) << dialog->result().toStdString();
    auto* check = dialog->findChild<QCheckBox*>();
    ASSERT_TRUE(check && check->isVisible());
    check->click();
    const auto labels = dialog->findChildren<QLabel*>();
    EXPECT_TRUE(std::ranges::any_of(labels, [](const QLabel* label) {
        return label->text().contains(QStringLiteral("A and B should be 3 in apart"));
    }));
    EXPECT_TRUE(std::ranges::none_of(labels, [](const QLabel* label) {
        return label->text().contains(QStringLiteral("Type what"));
    }));
}

TEST_F(SizeTestDialogTest, NoButtonIsCutOffWhenStepsAndWordsAppear) {
    open();
    type(dialog->across(), "3.06");
    dialog->keep();
    QTest::qWait(50);
    for (const QPushButton* button : dialog->findChildren<QPushButton*>()) {
        if (button->isVisible()) {
            EXPECT_GE(button->height(), button->minimumHeight()) << button->text().toStdString();
            EXPECT_GE(button->height(), button->minimumSizeHint().height())
                << button->text().toStdString();
        }
    }
}

TEST_F(SizeTestDialogTest, NothingIsSentToAPrintShop) {
    open();
    dialog->printer().setCurrentIndex(2);
    const auto buttons = dialog->findChildren<QPushButton*>();
    EXPECT_TRUE(std::ranges::none_of(buttons, [](const QPushButton* button) {
        return button->isVisible() && button->text().contains(QStringLiteral("Print"));
    }));
    EXPECT_TRUE(std::ranges::any_of(buttons, [](const QPushButton* button) {
        return button->isVisible() && button->isEnabled() &&
               button->text().contains(QStringLiteral("Save"));
    }));
}

TEST_F(SizeTestDialogTest, SavesTheSheetAsAPdf) {
    fileName = out("test sheet.pdf");
    open();
    dialog->savePdf();
    EXPECT_EQ(files(), QStringList{"test sheet.pdf"});
    EXPECT_TRUE(dialog->problem().isEmpty());
}

TEST_F(SizeTestDialogTest, SaysWhatToDoWithoutAPrinter) {
    open();
    dialog->print();
    EXPECT_TRUE(dialog->problem().contains("Save PDFs"));
    EXPECT_TRUE(dialogs.isEmpty());
}

TEST_F(SizeTestDialogTest, AnotherPrinterShowsItsPapers) {
    open();
    dialog->printer().setCurrentIndex(1);
    EXPECT_EQ(dialog->paper().count(), 1);
}

}  // namespace
}  // namespace matwright::app
