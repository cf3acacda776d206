// SPDX-License-Identifier: MIT
#include "app/window/plan_place.h"

#include <QDialog>
#include <utility>

#include "app/cutting/cutting_part.h"
#include "app/files/paths.h"
#include "app/parts/parts.h"
#include "app/printplan/print_plan_part.h"
#include "app/window/new_action.h"

namespace matwright::app {

namespace {

void openAndForget(QDialog* dialog) {
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

}  // namespace

PlanPlace::PlanPlace(Workplace workplace, PhotoAccess& access, QString partsFolder,
                     std::function<QString()> suggestedName, std::function<QString()> pageFile,
                     QWidget* window)
    : QObject(window),
      printPlan(newAction(
          this,
          {tr("&Print plan…"), tr("Which prints go together on which photo paper, and how to cut"),
           QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_G), QString(), tr("Print plan…")},
          [this] { showPrintPlan(); })),
      cuttingPlan(newAction(
          this,
          {tr("&Cutting plan…"), tr("What is cut from which paper, step by step on the trimmer"),
           QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_U), QString(), tr("Cutting plan…")},
          [this] { showCuttingPlan(); })),
      papers(newAction(this,
                       {tr("P&apers on hand…"), tr("The sheets and scraps of paper you have"),
                        QKeySequence(), QString(), QString()},
                       [this] { showPapers(); })),
      printers(newAction(
          this,
          {tr("P&rinters and photo papers…"), tr("Your printers, their papers, and size tests"),
           QKeySequence(), QString(), QString()},
          [this] { showPrinters(); })),
      printsOnHand(newAction(this,
                             {tr("Prints on &hand…"), tr("Prints that were made ahead"),
                              QKeySequence(), QString(), QString()},
                             [this] { showPrintsOnHand(); })),
      m_workplace(std::move(workplace)),
      m_access(access),
      m_partsFolder(std::move(partsFolder)),
      m_suggestedName(std::move(suggestedName)),
      m_pageFile(std::move(pageFile)),
      m_window(window) {
    connect(&m_workplace.session, &Session::changed, this, &PlanPlace::updateEnabled);
    updateEnabled();
}

void PlanPlace::addTo(QMenu& menu) const {
    menu.addActions({printPlan, cuttingPlan});
    menu.addSeparator();
    menu.addActions({papers, printers, printsOnHand});
}

// Nothing is said where the part does not open: it is said to who wants its windows.
KnownPapers PlanPlace::knownPapers() const {
    const auto part = [folder = m_partsFolder]() -> CuttingPart* {
        return openPart<CuttingPart>(folder, QStringLiteral("cutting")).value_or(nullptr);
    };
    const auto names = [part] {
        CuttingPart* const opened = part();
        return opened ? opened->paperNames() : QStringList();
    };
    const auto look = [part](const QString& name) {
        CuttingPart* const opened = part();
        return opened ? opened->paperLook(name) : std::nullopt;
    };
    return {names, look};
}

void PlanPlace::updateEnabled() {
    printPlan->setEnabled(!m_workplace.session.work().placements.empty());
    cuttingPlan->setEnabled(!m_workplace.session.sketch().pieces.empty());
}

PrintPlanPart* PlanPlace::printPlanPart() {
    finishTyping();
    const auto opened = openPart<PrintPlanPart>(m_partsFolder, QStringLiteral("print-plan"));
    if (!opened) {
        m_workplace.questions.tell(tr("Prints cannot be planned"), shownText(opened.error()));
        return nullptr;
    }
    return *opened;
}

CuttingPart* PlanPlace::cuttingPart() {
    finishTyping();
    const auto opened = openPart<CuttingPart>(m_partsFolder, QStringLiteral("cutting"));
    if (!opened) {
        m_workplace.questions.tell(tr("Cuts cannot be planned"), shownText(opened.error()));
        return nullptr;
    }
    return *opened;
}

void PlanPlace::showPrintPlan() {
    if (PrintPlanPart* part = printPlanPart()) {
        openAndForget(part->makePrintPlanWindow(m_workplace.session.making(), m_suggestedName(),
                                                m_pageFile(), m_workplace.settings, m_access.open(),
                                                m_window));
    }
}

void PlanPlace::showCuttingPlan() {
    if (CuttingPart* part = cuttingPart()) {
        openAndForget(part->makeCuttingWindow(m_workplace.session, m_suggestedName(),
                                              m_workplace.settings, m_window));
    }
}

void PlanPlace::showPapers() {
    if (CuttingPart* part = cuttingPart()) {
        openAndForget(part->makePapersWindow(m_workplace.settings, m_window));
    }
}

void PlanPlace::showPrinters() {
    if (PrintPlanPart* part = printPlanPart()) {
        openAndForget(part->makePrintersWindow(m_workplace.settings, m_window));
    }
}

void PlanPlace::showPrintsOnHand() {
    if (PrintPlanPart* part = printPlanPart()) {
        openAndForget(
            part->makePrintsOnHandWindow(m_workplace.settings, m_access.open(), m_window));
    }
}

}  // namespace matwright::app
