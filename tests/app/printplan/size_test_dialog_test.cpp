// SPDX-License-Identifier: MIT
#include "app/printplan/size_test_dialog.h"

#include <QComboBox>
#include <QLineEdit>
#include <QTest>

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
    dialog->removeCorrection();
    EXPECT_FALSE(correction());
}

TEST_F(SizeTestDialogTest, SavesTheSheetAsAPdf) {
    fileName = out("test sheet");
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
