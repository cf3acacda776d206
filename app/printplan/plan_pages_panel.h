// SPDX-License-Identifier: MIT
#pragma once

#include <QFutureWatcher>
#include <QStringList>
#include <QWidget>

#include "app/printplan/plan_asks.h"
#include "app/printplan/plan_draft.h"

class QListWidget;
class QPushButton;

namespace matwright::app {

class TintedLabel;

// The pages that are planned with: ticked ones are printed, the others wait.
class PlanPagesPanel final : public QWidget {
    Q_OBJECT

  public:
    // The asks outlive this.
    explicit PlanPagesPanel(const PlanAsks& asks, QWidget* parent = nullptr);
    ~PlanPagesPanel() override;

    // Where files are looked for first.
    void beginIn(const QString& folder) { m_begin = folder; }
    // Emits nothing.
    void show(const std::vector<DraftPage>& pages);
    QListWidget& list() { return *m_list; }
    QString problem() const;

  public slots:
    void addFiles();

  signals:
    void pagesRead(const std::vector<matwright::app::DraftPage>& pages);
    void printedChanged(int page, bool isPrinted);
    void removed(int page);

  private:
    struct Reading {
        std::vector<DraftPage> pages;
        QStringList problems;
    };
    static Reading read(const QStringList& files, const std::shared_ptr<FileStore>& store);
    void takeRead();
    void showEnabled();
    void tell(const QStringList& problems);

    const PlanAsks& m_asks;
    QFutureWatcher<Reading> m_reading;
    QString m_begin;
    QStringList m_files;  // of the pages, as the disk calls them
    QStringList m_told;   // about the files that were chosen last
    bool m_showing = false;
    QListWidget* m_list;
    QPushButton* m_add;
    QPushButton* m_remove;
    TintedLabel* m_problem;
};

}  // namespace matwright::app
