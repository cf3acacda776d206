// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <optional>

#include "app/printplan/plan_asks.h"
#include "core/printers/printing_store.h"

class QBoxLayout;
class QComboBox;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace matwright::app {

class PaperPanel;
class Section;
class SettingsStore;
class TintedLabel;

// The printers a person has and the papers they take. Every change is kept at once.
class PrintersWindow final : public QDialog {
    Q_OBJECT

  public:
    PrintersWindow(SettingsStore& settings, QWidget* parent = nullptr);
    PrintersWindow(SettingsStore& settings, PlanAsks asks, QWidget* parent);

    // What the window shows, for tests.
    const std::vector<Printer>& printers() const { return m_printers; }
    QString problem() const;
    QListWidget& printerList() { return *m_list; }
    QListWidget& paperList() { return *m_papers; }
    PaperPanel& paperPanel() { return *m_paperPanel; }
    QLineEdit& printerName() { return *m_name; }
    QComboBox& queue() { return *m_queue; }

  public slots:
    void addPrinter();
    void removePrinter();
    void addPaper();
    void removePaper();
    void testSize();

  private:
    QWidget* makePrinters();
    QWidget* makeSide();
    QWidget* makeFoot();
    void addPrinterFields();
    void addPapers();
    QPushButton* addButton(QBoxLayout* row, const QString& text, const QString& name,
                           void (PrintersWindow::*pressed)());
    void load(PrinterId printer = {}, int paper = 0);
    void showPrinter();
    void showPaper();
    void showQueues();
    const Printer* current() const;
    void change(const Printer& after, int paper);
    template <typename Change>
    void edit(Change edited);
    void say(const QString& problem);

    SettingsStore& m_settings;
    PlanAsks m_asks;
    std::optional<PrintingStore> m_store;
    std::vector<Printer> m_printers;
    QStringList m_queueNames;
    bool m_showing = false;
    QListWidget* m_list;
    Section* m_printer;
    QLineEdit* m_name;
    QComboBox* m_kind;
    QComboBox* m_queue;
    QListWidget* m_papers;
    PaperPanel* m_paperPanel;
    QWidget* m_side = nullptr;
    QPushButton* m_removePaper = nullptr;
    QPushButton* m_removePrinter = nullptr;
    TintedLabel* m_problem;
    TintedLabel* m_corrected;
    QPushButton* m_test;
};

}  // namespace matwright::app
