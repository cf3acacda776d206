// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <memory>
#include <optional>

#include "app/printplan/plan_asks.h"
#include "app/printplan/plan_draft.h"
#include "app/printplan/plan_run.h"
#include "app/printplan/plan_work.h"
#include "core/printers/printing_store.h"

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
    PrintPlanWindow(const Making& making, const QString& suggestedName, SettingsStore& settings,
                    PhotoService* service, QWidget* parent = nullptr);
    PrintPlanWindow(const Making& making, QString suggestedName, SettingsStore& settings,
                    PhotoService* service, PlanAsks asks, QWidget* parent);
    ~PrintPlanWindow() override;

    // What the window shows, for tests.
    bool isPlanning() const { return m_run->isRunning(); }
    bool isWorking() const { return m_work->isRunning(); }
    QString bound() const;
    QString result() const;
    QString problem() const;
    const ReadyPlan* plan() const { return m_ready.get(); }
    PlanCards& cards() { return *m_cards; }
    PlanPagesPanel& pages() { return *m_pages; }
    PlanPrintsPanel& prints() { return *m_prints; }

  public slots:
    void savePdfs();
    void savePictures();
    // On this printer.
    void print(matwright::PrinterId printer);
    // They are printed: recorded in the person's store.
    void record();
    void undoRecord();
    void showPrinters();

  protected:
    void closeEvent(QCloseEvent* event) override;
    void reject() override;

  private:
    QWidget* makeSide();
    void buildFoot();
    void listen();
    void loadStore();
    // The draft has changed: shown, and planned anew.
    void replan();
    void showPlan(const ReadyPlan& ready);
    void showState();
    QString emptySentence() const;
    void choosePrinter();
    std::optional<std::filesystem::path> chosenFolder(const QString& title);
    void begin(const PlanWork::Work& work, const QString& where);
    void showProgress(int done, int total);
    void showOutcome(const WorkOutcome& outcome);

    const QString m_suggestedName;
    SettingsStore& m_settings;
    PlanAsks m_asks;
    std::optional<PrintingStore> m_store;
    PlanDraft m_draft;
    std::vector<Printer> m_printers;
    std::vector<PrintOnHand> m_onHand;
    std::set<ContentKey> m_printedPhotos;
    std::shared_ptr<const ReadyPlan> m_ready;
    QString m_storeProblem;  // printers and prints are not known then
    QString m_folder;
    QString m_where;
    std::string m_once;  // names the latest plan's act of printing
    bool m_isRecorded = false;
    std::optional<std::int64_t> m_recorded;  // the change that recorded it
    PlanPagesPanel* m_pages;
    PlanPrintsPanel* m_prints;
    PlanCards* m_cards;
    QLabel* m_bound;
    WindowFoot* m_foot;
    QPushButton* m_openFolder;
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
