// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <functional>
#include <optional>

#include "app/printplan/plan_asks.h"
#include "core/printers/printing_store.h"

class QComboBox;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace matwright::app {

class PaperPanel;
class Section;
class SettingsStore;
class TintedLabel;
class WindowFoot;

// The printers a person has and the papers they take. Every change is kept at once.
class PrintersWindow final : public QDialog {
    Q_OBJECT

  public:
    PrintersWindow(SettingsStore& settings, QWidget* parent = nullptr);
    PrintersWindow(SettingsStore& settings, PlanAsks asks, QWidget* parent);
    ~PrintersWindow() override;

    // What the window shows, for tests.
    const std::vector<Printer>& printers() const { return m_printers; }
    QString news() const;
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

  protected:
    void done(int result) override;

  private:
    QWidget* makePrinters();
    QWidget* makeSide();
    void buildFoot();
    void addPrinterFields();
    void addPapers();
    void takePaper(const PrinterPaper& paper);
    void takeQueue();
    // Takes what is still being typed; false where that was refused, which is said.
    bool takeTyped();
    void load(PrinterId printer = {}, int paper = 0);
    void showPrinter();
    void showPaper();
    void showQueues();
    const Printer* current() const;
    bool change(const Printer& after, int paper);
    // True where something was changed.
    bool edit(const std::function<void(Printer&)>& edited);

    SettingsStore& m_settings;
    PlanAsks m_asks;
    std::optional<PrintingStore> m_store;
    std::vector<Printer> m_printers;
    QStringList m_queueNames;
    bool m_showing = false;
    bool m_isAsking = false;
    bool m_wasRefused = false;
    QListWidget* m_list;
    Section* m_printer;
    QLineEdit* m_name;
    QComboBox* m_kind;
    QComboBox* m_queue;
    QListWidget* m_papers;
    PaperPanel* m_paperPanel;
    QWidget* m_side = nullptr;
    QPushButton* m_addPrinter = nullptr;
    QPushButton* m_removePaper = nullptr;
    QPushButton* m_removePrinter = nullptr;
    WindowFoot* m_foot;
    TintedLabel* m_corrected;
    QPushButton* m_test;
};

}  // namespace matwright::app
