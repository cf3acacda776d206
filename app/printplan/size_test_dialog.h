// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>

#include "app/printplan/plan_asks.h"
#include "core/printers/printing_store.h"
#include "core/printers/test_sheet.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;

namespace matwright::app {

class LengthField;
class Section;
class SettingsStore;
class TintedLabel;
class WindowFoot;

// How true to size a printer is: a sheet is printed, measured with a ruler, and what it shows is
// kept. The store and the settings outlive the dialog.
class SizeTestDialog final : public QDialog {
    Q_OBJECT

  public:
    SizeTestDialog(PrintingStore& store, SettingsStore& settings, PlanAsks asks, PrinterId printer,
                   PrinterPaperId paper, QWidget* parent = nullptr);

    // What the dialog says, for tests.
    QString result() const;
    QString news() const;
    QString problem() const;
    LengthField& across() { return *m_across; }
    LengthField& down() { return *m_down; }
    QComboBox& printer() { return *m_printer; }
    QComboBox& paper() { return *m_paper; }

  public slots:
    void print();
    void savePdf();
    void keep();
    void removeCorrection();

  private:
    QWidget* makeSteps();
    QWidget* makeChoice();
    QWidget* makeSheetStep();
    QWidget* makeRulerStep();
    void showPapers();
    void showTest();
    void load();
    Borders borders() const;
    const Printer& chosenPrinter() const;
    const PrinterPaper* chosenPaper() const;
    TestSheet sheet() const;
    QString suggestedFile() const;
    void keepCorrection(const std::optional<Correction>& correction);
    void complain(const Error& error);

    PrintingStore& m_store;
    SettingsStore& m_settings;
    PlanAsks m_asks;
    std::vector<Printer> m_printers;
    QComboBox* m_printer;
    QComboBox* m_paper;
    QLabel* m_picture;
    TintedLabel* m_how;
    QCheckBox* m_asCheck;
    Section* m_ruler;
    LengthField* m_across;
    LengthField* m_down;
    TintedLabel* m_wished;
    QLabel* m_state;
    WindowFoot* m_foot;
    QPushButton* m_print;
    QPushButton* m_save;
    QPushButton* m_keep;
    QPushButton* m_remove;
};

}  // namespace matwright::app
