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
class QProgressBar;
class QPushButton;

namespace matwright::app {

class CuttingSide;
class PlanPanel;
class SettingsStore;
class WindowFoot;

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
    // Enter presses the button that has the focus; no other, because one changes the stock.
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QWidget* makeFoot();
    QWidget* makeNotice();
    void listen();
    void addKeys();
    // Everything from the session and the list of papers, then a new plan.
    void refresh();
    bool hasStore();
    // The list of papers where it can be read; else what was read last stays, and is tried again.
    void readPapers();
    // After another window or program may have changed the list.
    void lookAtPapers();
    void takeOff(const std::optional<PapersChange>& before);
    // Says where the papers of this plan are off the list already.
    void tellWhetherCut();
    void showPutBack();
    bool isThere(const QString& page) const;
    QString otherName(const Sketch& sketch, const QString& path) const;
    void lookAgain();
    void startLooking();
    void showFound(const FoundPlan& found);
    void showEnd();
    void showButtons();
    void showElapsed();
    void changed(const Result<void>& outcome);
    // What the last act did, or what is wrong with it; the one takes the other away. Neither takes
    // away what is wrong with the list of papers or with the plan.
    void say(const QString& sentence);
    void complain(const QString& sentence);
    void showSaid();
    QString instead() const;
    QString pageName() const;
    // "Beach", "Beach and 2 more".
    QString pagesName() const;
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
    QStringList m_otherFiles;        // of them, without links
    std::vector<PaperPage> m_pages;  // the open one first
    std::vector<PaperPiece> m_pieces;
    FoundPlan m_plan;                    // of m_pages and m_onHand, unless isLooking()
    std::vector<PaperOnHand> m_planned;  // the papers the search began with
    bool m_isCurrent = false;            // m_plan is of what is chosen now
    bool m_isCut = false;                // m_plan was cut here, and is shown as it was cut
    std::optional<PapersChange> m_cut;   // the last cut that may be put back here
    QString m_toldCut;                   // what tellWhetherCut() said last
    QString m_trouble;                   // why the list of papers is not read
    QString m_planProblem;               // why there is no plan
    QString m_complaint;
    QString m_said;
    QTimer m_soon;
    QTimer m_tick;
    QTimer m_later;  // looks whether the list can be read by now
    QElapsedTimer m_since;
    CuttingRun* m_run;
    CuttingSide* m_side;
    PlanPanel* m_panel;
    WindowFoot* m_notice;
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
