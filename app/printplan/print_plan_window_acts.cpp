// SPDX-License-Identifier: MIT
#include <QDir>
#include <QFileInfo>
#include <QMenu>
#include <QPrinter>
#include <QPushButton>

#include "app/panels/window_foot.h"
#include "app/printplan/plan_output.h"
#include "app/printplan/print_plan_window.h"
#include "app/printplan/printers_window.h"
#include "app/settings/settings.h"
#include "core/printplan/printed.h"

namespace matwright::app {

// Printers, prints on hand and what was printed; the suggestions where there is no store.
void PrintPlanWindow::loadStore() {
    const Unit unit = unitOf(m_settings.value().scale);
    if (!m_store) {
        auto store = PrintingStore::open(m_asks.store, unit);
        if (!store) {
            m_printers = startingPrinters(unit);
            m_storeProblem = QString::fromStdString(store.error().text());
            return;
        }
        m_store.emplace(std::move(*store));
    }
    auto printers = m_store->printers();
    auto prints = m_store->prints(PrintState::OnHand);
    auto photos = m_store->printedPhotos();
    if (!printers || !prints || !photos) {
        const Error& error = !printers ? printers.error()
                             : !prints ? prints.error()
                                       : photos.error();
        m_storeProblem = QString::fromStdString(error.text());
        return;
    }
    m_storeProblem.clear();
    m_printers = std::move(*printers);
    m_onHand = std::move(*prints);
    m_printedPhotos = std::move(*photos);
}

void PrintPlanWindow::showPrinters() {
    PrintersWindow window(m_settings, m_asks, this);
    window.exec();
    loadStore();
    replan();
}

std::optional<std::filesystem::path> PrintPlanWindow::chosenFolder(const QString& title) {
    const QString begin = m_folder.isEmpty() ? QFileInfo(m_suggestedName).absolutePath() : m_folder;
    const QString folder = m_asks.folder(this, title, begin);
    if (folder.isEmpty()) {
        return std::nullopt;
    }
    m_folder = folder;
    return folder.toStdString();
}

void PrintPlanWindow::begin(const PlanWork::Work& work, const QString& where) {
    m_where = where;
    m_foot->say({});
    showProgress(0, 0);
    m_work->start(work);
    showState();
}

void PrintPlanWindow::savePdfs() {
    if (!m_ready) {
        return;
    }
    if (const auto folder = chosenFolder(tr("Folder for the PDFs"))) {
        begin(savingPdfs(m_ready, m_asks.files, *folder), QDir::toNativeSeparators(m_folder));
    }
}

void PrintPlanWindow::savePictures() {
    if (!m_ready) {
        return;
    }
    if (const auto folder = chosenFolder(tr("Folder for the sheets"))) {
        begin(savingPictures(m_ready, m_asks.files, *folder), QDir::toNativeSeparators(m_folder));
    }
}

// One printer is printed on at once; of several one is chosen.
void PrintPlanWindow::choosePrinter() {
    if (!m_ready) {
        return;
    }
    std::vector<const Printer*> printers;
    for (const Printer& printer : m_ready->input.printers) {
        if (!jobsFor(m_ready->plan, printer.id).empty()) {
            printers.push_back(&printer);
        }
    }
    if (printers.size() == 1) {
        return print(printers.front()->id);
    }
    auto* menu = new QMenu(m_print);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    for (const Printer* printer : printers) {
        std::size_t sheets = 0;
        for (const SheetJob& job : jobsFor(m_ready->plan, printer->id)) {
            sheets += job.sheets.size();
        }
        const QString name = QString::fromStdString(printer->name);
        QAction* action = menu->addAction(sheets == 1 ? tr("%1: 1 sheet…").arg(name)
                                                      : tr("%1: %2 sheets…").arg(name).arg(sheets));
        connect(action, &QAction::triggered, this, [this, id = printer->id] { print(id); });
    }
    menu->popup(m_print->mapToGlobal(QPoint(0, -menu->sizeHint().height())));
}

// One job a paper: all that is asked comes first, then they are made one after another.
void PrintPlanWindow::print(PrinterId printer) {
    const Printer* chosen = m_ready ? matwright::find(m_ready->input.printers, printer) : nullptr;
    if (!chosen) {
        return;
    }
    auto jobs = std::make_shared<std::vector<ReadyJob>>();
    for (const SheetJob& job : jobsFor(m_ready->plan, printer)) {
        const PrinterPaper& paper = *matwright::find(*chosen, job.paper);
        const int pages = static_cast<int>(job.sheets.size());
        const QString name = QString::fromStdString(paper.name);
        QueueJob queue = askForJob(
            this, m_asks,
            {QString::fromStdString(chosen->queue), name, paper.size, paper.borderless, pages,
             pages == 1 ? tr("Print 1 sheet of %1").arg(name)
                        : tr("Print %1 sheets of %2").arg(pages).arg(name)});
        if (!queue.printer) {
            if (!queue.problem.isEmpty()) {
                m_foot->say({}, queue.problem);
            }
            return;
        }
        jobs->push_back({std::move(queue), job.sheets});
    }
    begin(printing(m_ready, std::move(jobs)), {});
}

void PrintPlanWindow::showProgress(int done, int total) {
    m_foot->showProgress(done, total,
                         total > 0 ? tr("%1 of %2 sheets made").arg(done).arg(total) : QString());
}

void PrintPlanWindow::showOutcome(const WorkOutcome& outcome) {
    const QString problems = outcome.problems.join(QLatin1Char('\n'));
    const QString done = outcome.done.join(QStringLiteral(", "));
    if (outcome.wasCancelled) {
        m_foot->say(done.isEmpty() ? tr("Cancelled; nothing was made.")
                                   : tr("Cancelled after: %1").arg(done),
                    problems);
    } else if (m_where.isEmpty()) {
        m_foot->say(
            outcome.done.join(QLatin1Char(' ')) +
                (done.isEmpty() ? QString()
                                : tr(" When all is well on paper, press “They are printed”.")),
            problems);
    } else {
        m_foot->say(outcome.done.size() == 1
                        ? tr("%1 is in %2.").arg(done, m_where)
                        : tr("%1 files are in %2.").arg(outcome.done.size()).arg(m_where),
                    problems);
        m_openFolder->setVisible(!outcome.done.isEmpty());
    }
    showState();
}

void PrintPlanWindow::record() {
    if (!m_ready || !m_store || m_isRecorded) {
        return;
    }
    std::vector<PrintOnHandId> gone;
    const auto recorded =
        recordPrinted(*m_store, m_ready->plan, m_ready->input, m_asks.today(), m_once, &gone);
    if (!recorded) {
        return m_foot->say({}, QString::fromStdString(recorded.error().text()));
    }
    m_isRecorded = true;
    m_recorded = *recorded;
    const auto ahead = m_draft.ahead.size();
    m_foot->say(ahead == 0   ? tr("Recorded as printed.")
                : ahead == 1 ? tr("Recorded as printed; 1 print is on hand now.")
                             : tr("Recorded as printed; %1 prints are on hand now.").arg(ahead));
    if (!gone.empty()) {
        m_foot->say(tr("Recorded as printed."),
                    tr("Prints that were to be taken from prints on hand are "
                       "gone meanwhile: %1. Plan again to "
                       "print them.")
                        .arg(gone.size()));
    }
    showState();
}

void PrintPlanWindow::undoRecord() {
    if (!m_store || !m_isRecorded) {
        return;
    }
    const auto undone = m_store->undo(m_recorded);
    if (!undone) {
        return m_foot->say({}, QString::fromStdString(undone.error().text()));
    }
    loadStore();
    replan();
}

}  // namespace matwright::app
