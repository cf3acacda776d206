// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <optional>
#include <set>

#include "app/printplan/plan_asks.h"
#include "core/printers/printing_store.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace matwright::app {

class PhotoService;
class PrintsOnHandModel;
class SettingsStore;
class WindowFoot;

// Prints that were made ahead and what became of them. Every change is kept at once and can be
// undone, on another day too. `service` may be null; then no pictures are shown.
class PrintsOnHandWindow final : public QDialog {
    Q_OBJECT

  public:
    PrintsOnHandWindow(SettingsStore& settings, PhotoService* service, QWidget* parent = nullptr);
    PrintsOnHandWindow(SettingsStore& settings, PhotoService* service, PlanAsks asks,
                       QWidget* parent);

    // What the window shows, for tests.
    QTableView& list() { return *m_list; }
    QComboBox& shown() { return *m_shown; }
    QString summary() const;
    QString news() const;
    QString problem() const;

  public slots:
    void use();
    void putBack();
    void throwAway();
    void undo();

  private:
    QWidget* makeHead();
    QWidget* makeList();
    QWidget* makeActs();
    void buildFoot();
    void load();
    void readPrints();
    void choose(const std::set<PrintOnHandId>& prints);
    void showUndo();
    void showEnabled();
    std::set<PrintOnHandId> chosen() const;
    // What was done to the chosen prints; `news` in words where it was.
    void tell(const Result<std::int64_t>& done, const QString& news);

    PlanAsks m_asks;
    std::optional<PrintingStore> m_store;
    std::optional<PrintingChange> m_undoable;
    std::set<std::int64_t> m_own;  // changes made in this window
    PrintsOnHandModel* m_prints;
    QLabel* m_summary;
    QComboBox* m_shown;
    QTableView* m_list;
    QLabel* m_empty;
    QLineEdit* m_page;
    WindowFoot* m_foot;
    QPushButton* m_use;
    QPushButton* m_back = nullptr;
    QPushButton* m_waste = nullptr;
    QPushButton* m_undo = nullptr;
};

}  // namespace matwright::app
