// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <QPointer>
#include <memory>
#include <optional>

#include "app/printplan/plan_asks.h"
#include "app/printplan/plan_draft.h"
#include "app/printplan/plan_run.h"
#include "app/printplan/plan_store.h"
#include "app/printplan/plan_work.h"
#include "app/printplan/sent_sheets.h"

class QLabel;
class QPushButton;

namespace matwright::app {

class PhotoService;
class PlanCards;
class PlanPagesPanel;
class PlanPrintsPanel;
class SettingsStore;
class WindowFoot;

// Which prints come out on which sheets of which printer, and the way from there to printed and cut
// prints. Plans on a worker, anew whenever something changes. Works on copies of the pages.
class PrintPlanWindow final : public QDialog {
    Q_OBJECT

  public:
    // `suggestedName` is a path without a suffix, `file` the page's own (empty where it has none).
    PrintPlanWindow(const Making& making, const QString& suggestedName, const QString& file,
                    SettingsStore& settings, PhotoService* service, QWidget* parent = nullptr);
    PrintPlanWindow(const Making& making, QString suggestedName, const QString& file,
                    SettingsStore& settings, PhotoService* service, PlanAsks asks, QWidget* parent);
    ~PrintPlanWindow() override;

    // What the window shows, for tests.
    bool isPlanning() const { return m_run->isRunning() || m_store->isReading(); }
    bool isWorking() const { return m_work->isRunning(); }
    QString bound() const;
    QString result() const;
    QString problem() const;
    const ReadyPlan* plan() const { return m_ready.get(); }
    bool canRecord() const;
    bool canUndo() const { return m_recorded.has_value(); }
    PlanCards& cards() { return *m_cards; }
    PlanPagesPanel& pages() { return *m_pages; }
    PlanPrintsPanel& prints() { return *m_prints; }

  public slots:
    void savePdfs();
    void savePictures();
    // How the sheets are cut.
    void saveCuts();
    // On this printer.
    void print(matwright::PrinterId printer);
    // They are printed: what was sent, else the whole plan, is recorded in the person's store.
    void record();
    void undoRecord();
    void showPrinters();

  protected:
    void reject() override;

  private:
    QWidget* makeSide();
    void buildFoot();
    void listen();
    void listenToPages();
    void takePages(const std::vector<DraftPage>& pages);
    void addPages(const std::vector<DraftPage>& pages, const QString& news, const QString& problem);
    // The draft has changed: shown, and planned anew. What is said stays until it is planned.
    void replan(const QString& news = {}, const QString& problem = {});
    void storeRead(bool differs);
    void showPlan(const std::shared_ptr<const ReadyPlan>& ready);
    void showFailure(const Error& error);
    void showState();
    void showButtons();
    void settleFocus(const QPointer<QWidget>& before);
    QString boundText() const;
    QString emptySentence() const;
    void choosePrinter();
    std::optional<std::filesystem::path> chosenFolder(const QString& title);
    void begin(const PlanWork::Work& work, const QString& where);
    // False, with a word, where the plan was made anew while something was asked.
    bool isStill(const SentSheets::Plan& ready);
    void showProgress(int done, int total);
    void showOutcome(const WorkOutcome& outcome);
    void showSaved(const WorkOutcome& outcome);
    void showSent(const WorkOutcome& outcome);
    QString recordedText(const std::vector<SentSheets::Part>& parts) const;
    QString goneText(const std::vector<PrintOnHandId>& gone) const;
    // False where the window is to stay.
    bool askBeforeClosing();

    const QString m_suggestedName;
    SettingsStore& m_settings;
    PlanAsks m_asks;
    PlanStore* m_store;
    PlanDraft m_draft;
    std::optional<PrintOnHandId> m_before;  // the latest print when the window was opened
    SentSheets::Plan m_ready;
    std::vector<DraftPage> m_arrived;  // pages that were read while something was made
    QString m_folder;
    QString m_where;
    QString m_news;     // said once it is planned
    QString m_warning;  // the same
    SentSheets m_sheets;
    SentSheets::Plan m_sending;
    std::vector<AheadPrint> m_madeAhead;  // recorded, and still in the draft
    // What takes back the latest record.
    struct Recorded {
        std::int64_t change = 0;
        SentSheets sheets;                  // before it
        std::vector<AheadPrint> madeAhead;  // before it
        std::vector<AheadPrint> ahead;      // made by it
    };
    std::optional<Recorded> m_recorded;
    bool m_hasSaved = false;  // files of its sheets, which may be printed elsewhere
    bool m_isStale = false;   // what is known of the store is older than the latest record
    bool m_isStopping = false;
    QPointer<QWidget> m_focus;  // gets the focus back when it can be used again
    PlanPagesPanel* m_pages;
    PlanPrintsPanel* m_prints;
    PlanCards* m_cards;
    QLabel* m_bound;
    WindowFoot* m_foot;
    QPushButton* m_printers = nullptr;
    QPushButton* m_openFolder;
    QPushButton* m_saveCuts;
    QPushButton* m_savePictures;
    QPushButton* m_savePdfs;
    QPushButton* m_print;
    QPushButton* m_record;
    QPushButton* m_undo;
    QPushButton* m_close;
    PlanRun* m_run;
    PlanWork* m_work;
};

}  // namespace matwright::app
