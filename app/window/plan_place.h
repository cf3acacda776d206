// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QMenu>
#include <QObject>

#include "app/panels/paper_names.h"
#include "app/photos/photo_access.h"
#include "app/window/workplace.h"

class QDialog;

namespace matwright::app {

class CuttingPart;
class PrintPlanPart;

// The Plan menu: which prints go on which photo paper, what is cut from which craft paper, and what
// lies at home. Opens the parts "print-plan" and "cutting" on first use.
class PlanPlace final : public QObject {
    Q_OBJECT

  public:
    // `suggestedName` gives a path without a suffix, `pageFile` the open page's own file or
    // nothing. All outlive this.
    PlanPlace(Workplace workplace, PhotoAccess& access, QString partsFolder,
              std::function<QString()> suggestedName, std::function<QString()> pageFile,
              QWidget* window);

    void addTo(QMenu& menu) const;
    // The papers on hand, for the fields where a paper is named.
    KnownPapers knownPapers() const;

    QAction* const printPlan;
    QAction* const cuttingPlan;
    QAction* const papers;
    QAction* const printers;
    QAction* const printsOnHand;

  private:
    PrintPlanPart* printPlanPart();
    CuttingPart* cuttingPart();
    void updateEnabled();
    void showPrintPlan();
    void showCuttingPlan();
    void showPapers();
    void showPrinters();
    void showPrintsOnHand();

    Workplace m_workplace;
    PhotoAccess& m_access;
    const QString m_partsFolder;
    std::function<QString()> m_suggestedName;
    std::function<QString()> m_pageFile;
    QWidget* m_window;
};

}  // namespace matwright::app
