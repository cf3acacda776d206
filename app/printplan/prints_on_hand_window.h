// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <optional>

#include "app/printplan/plan_asks.h"
#include "core/printers/printing_store.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableWidget;

namespace matwright::app {

class PhotoService;
class SettingsStore;
class TintedLabel;

// Prints that were made ahead and what became of them. Every change is kept at once and can be
// undone, on another day too. `service` may be null; then no pictures are shown.
class PrintsOnHandWindow final : public QDialog {
    Q_OBJECT

  public:
    PrintsOnHandWindow(SettingsStore& settings, PhotoService* service, QWidget* parent = nullptr);
    PrintsOnHandWindow(SettingsStore& settings, PhotoService* service, PlanAsks asks,
                       QWidget* parent);

    // What the window shows, for tests.
    QTableWidget& list() { return *m_list; }
    QComboBox& shown() { return *m_shown; }
    QString summary() const;
    QString problem() const;

  public slots:
    void use();
    void putBack();
    void throwAway();
    void undo();

  private:
    QWidget* makeHead();
    QWidget* makeList();
    QWidget* makeFoot();
    void load();
    void fillRow(int row, const PrintOnHand& print);
    void showPictures();
    void showEnabled();
    // Does it to each chosen print, until one cannot be changed.
    void change(const std::function<Result<void>(PrintOnHandId)>& act);
    std::vector<PrintOnHand> chosen() const;
    void say(const QString& problem);

    SettingsStore& m_settings;
    PhotoService* m_service;
    PlanAsks m_asks;
    std::optional<PrintingStore> m_store;
    std::vector<PrintOnHand> m_prints;
    QLabel* m_summary;
    QComboBox* m_shown;
    QTableWidget* m_list;
    QLabel* m_empty;
    QLineEdit* m_page;
    TintedLabel* m_problem;
    QPushButton* m_use;
    QPushButton* m_back;
    QPushButton* m_waste;
    QPushButton* m_undo;
};

}  // namespace matwright::app
