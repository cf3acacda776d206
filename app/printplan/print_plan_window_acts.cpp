// SPDX-License-Identifier: MIT
#include <QDir>
#include <QFileInfo>
#include <QMenu>
#include <QPrinter>
#include <QPushButton>
#include <utility>

#include "app/panels/window_foot.h"
#include "app/printplan/plan_output.h"
#include "app/printplan/print_plan_window.h"
#include "app/printplan/printers_window.h"
#include "app/settings/settings.h"

namespace matwright::app {

void PrintPlanWindow::showPrinters() {
    PrintersWindow window(m_settings, m_asks, this);
    window.exec();
    m_store->read();
    showState();
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
    m_foot->showProgress(0, 0);
    m_work->start(work);
    showState();
}

// Pages that were added may have been read meanwhile.
bool PrintPlanWindow::isStill(const SentSheets::Plan& ready) {
    if (m_ready == ready) {
        return true;
    }
    const QString changed = tr("The plan has changed meanwhile. Look at it, then try again.");
    m_news.clear();
    m_warning = changed;
    m_foot->say({}, changed);
    return false;
}

void PrintPlanWindow::savePdfs() {
    const SentSheets::Plan ready = m_ready;
    const auto folder = ready ? chosenFolder(tr("Folder for the PDFs")) : std::nullopt;
    if (folder && isStill(ready)) {
        m_hasSaved = true;
        begin(savingPdfs(ready, m_asks.files, *folder), QDir::toNativeSeparators(m_folder));
    }
}

void PrintPlanWindow::savePictures() {
    const SentSheets::Plan ready = m_ready;
    const auto folder = ready ? chosenFolder(tr("Folder for the sheets")) : std::nullopt;
    if (folder && isStill(ready)) {
        m_hasSaved = true;
        begin(savingPictures(ready, m_asks.files, *folder), QDir::toNativeSeparators(m_folder));
    }
}

void PrintPlanWindow::saveCuts() {
    const SentSheets::Plan ready = m_ready;
    const auto folder = ready ? chosenFolder(tr("Folder for the cutting steps")) : std::nullopt;
    if (folder && isStill(ready)) {
        begin(savingCuts(ready, m_asks.files, *folder, m_settings.value().scale),
              QDir::toNativeSeparators(m_folder));
    }
}

// One printer is printed on at once; of several one is chosen.
void PrintPlanWindow::choosePrinter() {
    if (!m_ready) {
        return;
    }
    if (m_asks.queues().isEmpty()) {
        return m_foot->say({}, noPrinterText());
    }
    std::vector<const Printer*> printers;
    for (const Printer& printer : m_ready->input.printers) {
        if (printer.kind == PrinterKind::AtHome && !jobsFor(m_ready->plan, printer.id).empty()) {
            printers.push_back(&printer);
        }
    }
    if (printers.empty()) {
        return m_foot->say({}, tr("All these sheets are for a print shop. Press “Save PDFs…” or "
                                  "“Save pictures…” and take them there."));
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
    const SentSheets::Plan ready = m_ready;
    const Printer* chosen = ready ? matwright::find(ready->input.printers, printer) : nullptr;
    if (!chosen || isWorking()) {
        return;
    }
    auto jobs = std::make_shared<std::vector<ReadyJob>>();
    for (const SheetJob& job : jobsFor(ready->plan, printer)) {
        const PrinterPaper& paper = *matwright::find(*chosen, job.paper);
        const int pages = static_cast<int>(job.sheets.size());
        const QString name = QString::fromStdString(paper.name);
        QueueJob queue = askForJob(
            this, m_asks,
            {QString::fromStdString(chosen->queue), name, paper.size, paper.borderless, pages,
             pages == 1 ? tr("Print 1 sheet of %1").arg(name)
                        : tr("Print %1 sheets of %2").arg(pages).arg(name)});
        if (!queue.printer) {
            return m_foot->say(queue.news, queue.problem);
        }
        jobs->push_back({std::move(queue), job.sheets});
    }
    if (isStill(ready)) {
        m_sending = ready;
        begin(printing(ready, std::move(jobs)), {});
    }
}

void PrintPlanWindow::showProgress(int done, int total) {
    if (isWorking()) {
        m_foot->showProgress(
            done, total, total > 0 ? tr("%1 of %2 sheets made").arg(done).arg(total) : QString());
    }
}

void PrintPlanWindow::showOutcome(const WorkOutcome& outcome) {
    m_isStopping = false;
    if (m_sending) {
        showSent(outcome);
    } else {
        showSaved(outcome);
    }
    if (!m_arrived.empty()) {
        addPages(std::exchange(m_arrived, {}), m_foot->news(), m_foot->problem());
    }
    showState();
}

void PrintPlanWindow::showSaved(const WorkOutcome& outcome) {
    const QString done = outcome.done.join(QStringLiteral(", "));
    QString news;
    if (outcome.wasCancelled) {
        news = done.isEmpty() ? tr("Cancelled; nothing was made.")
                              : tr("Cancelled after: %1").arg(done);
    } else if (!done.isEmpty()) {
        news = outcome.done.size() == 1
                   ? tr("%1 is in %2.").arg(done, m_where)
                   : tr("%1 files are in %2.").arg(outcome.done.size()).arg(m_where);
    }
    m_foot->say(news, outcome.problems.join(QLatin1Char('\n')));
    m_openFolder->setVisible(!done.isEmpty());
}

// A queue that is gone takes sheets without a word; only those of the others are taken for sent.
void PrintPlanWindow::showSent(const WorkOutcome& outcome) {
    const SentSheets::Plan plan = std::exchange(m_sending, nullptr);
    const QStringList queues = m_asks.queues();
    QStringList news;
    QStringList problems = outcome.problems;
    for (const SentJob& job : outcome.sent) {
        if (!job.queue.isEmpty() && !queues.contains(job.queue)) {
            problems << tr("“%1” is not among the printers of this computer any more. Look whether "
                           "its sheets came out.")
                            .arg(job.queue);
        } else {
            news << job.sentence;
            m_sheets.add(plan, job.sheets);
        }
    }
    if (outcome.wasCancelled) {
        news.prepend(news.isEmpty() ? tr("Cancelled; nothing was printed.") : tr("Cancelled."));
    }
    if (m_sheets.waiting() > 0) {
        news << tr("When all is well on paper, press “They are printed”.");
    }
    if (const auto left = m_sheets.left(plan); left > 0 && !outcome.sent.empty()) {
        news << (left == 1 ? tr("1 sheet is still to be printed.")
                           : tr("%1 sheets are still to be printed.").arg(left));
    }
    m_foot->say(news.join(QLatin1Char(' ')), problems.join(QLatin1Char('\n')));
}

}  // namespace matwright::app
