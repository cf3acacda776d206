// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <QElapsedTimer>
#include <QTimer>
#include <filesystem>
#include <optional>

#include "app/cutting/cutting_asks.h"
#include "app/cutting/cutting_run.h"
#include "app/editing/session.h"
#include "core/papers/papers_store.h"

class QComboBox;
class QHBoxLayout;
class QLabel;
class QProgressBar;
class QPushButton;

namespace matwright::app {

class CuttingSide;
class PlanPanel;
class SettingsStore;
class TintedLabel;

// What is cut from which craft paper, sheet by sheet and cut by cut. Papers and switches chosen
// here are edits of the session; the plan is looked for anew by itself whenever the page, the
// papers on hand or an option changes. "Cut it" takes the sheets off the list of papers.
class CuttingWindow final : public QDialog {
    Q_OBJECT

  public:
    // `file` is the list of papers on hand. `session` and `settings` outlive the window.
    CuttingWindow(Session& session, QString suggestedName, SettingsStore& settings,
                  std::filesystem::path file, CuttingAsks asks, QWidget* parent = nullptr);
    ~CuttingWindow() override;

    // For tests.
    CuttingSide& side() { return *m_side; }
    PlanPanel& panel() { return *m_panel; }
    bool isLooking() const { return m_soon.isActive() || m_run->isRunning(); }
    QString problem() const;
    QString news() const;

  public slots:
    void addPages();
    void onlyThisPage();
    void savePdf();
    void saveSvg();
    void print();
    void cutIt();
    void putBack();
    void showPapers();

  protected:
    bool event(QEvent* event) override;

  private:
    QWidget* makeFoot();
    QWidget* makeNotice();
    QPushButton* addButton(QHBoxLayout* row, const QString& text, void (CuttingWindow::*pressed)());
    void listen();
    void addKeys();
    // Everything from the session and the list of papers, then a new plan.
    void refresh();
    void readPapers();
    void lookAgain();
    void startLooking();
    void showFound(const FoundPlan& found);
    void showEnd();
    void showButtons();
    void showElapsed();
    void changed(const Result<void>& outcome);
    void say(const QString& sentence);
    void complain(const QString& sentence);
    QString instead() const;
    QString pageName() const;
    QString planTitle() const;
    // Asks for a name with this suffix and writes there.
    void save(const QString& title, const QString& part, const QString& suffix,
              const QString& filter, std::string_view bytes);
    const PaperPlan* plan() const { return m_plan && m_plan->has_value() ? &**m_plan : nullptr; }

    Session& m_session;
    const QString m_suggestedName;
    SettingsStore& m_settings;
    const std::filesystem::path m_file;
    CuttingAsks m_asks;
    Result<PapersStore> m_store;
    std::int64_t m_version = -1;
    std::vector<PaperOnHand> m_onHand;
    std::vector<PaperPage> m_otherPages;
    std::vector<PaperPage> m_pages;  // the open one first
    std::vector<PaperPiece> m_pieces;
    FoundPlan m_plan;                    // of m_pages and m_onHand, unless isLooking()
    std::vector<PaperOnHand> m_planned;  // the papers the search began with
    bool m_isCurrent = false;            // m_plan is of what is chosen now
    std::optional<std::int64_t> m_cut;   // the change of the list that cut this plan
    QTimer m_soon;
    QTimer m_tick;
    QElapsedTimer m_since;
    CuttingRun* m_run;
    CuttingSide* m_side;
    PlanPanel* m_panel;
    TintedLabel* m_problem;
    QLabel* m_news;
    QProgressBar* m_progress;
    QPushButton* m_stop;
    QPushButton* m_putBack;
    QComboBox* m_paper;
    QPushButton* m_savePdf = nullptr;
    QPushButton* m_saveSvg = nullptr;
    QPushButton* m_print = nullptr;
    QPushButton* m_cutIt;
};

}  // namespace matwright::app
