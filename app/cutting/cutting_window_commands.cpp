// SPDX-License-Identifier: MIT
#include <QAccessible>
#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

#include "app/cutting/cutting_side.h"
#include "app/cutting/cutting_window.h"
#include "app/cutting/page_papers.h"
#include "app/cutting/papers_window.h"
#include "app/cutting/plan_output.h"
#include "app/cutting/plan_panel.h"
#include "app/files/paths.h"
#include "app/panels/tint.h"
#include "app/printing/print_run.h"
#include "app/settings/settings.h"
#include "core/pagefile/page_file.h"

namespace matwright::app {

void CuttingWindow::addPages() {
    const QStringList paths = m_asks.openSeveral(
        this, tr("Plan these pages together"), tr("Pages and sketches (*.page.svg *.sketch.svg)"));
    QStringList problems;
    for (const QString& path : paths) {
        Result<LoadedPage> page = loadPage(*m_asks.out.files, toPath(path));
        if (!page) {
            problems << shownText(page.error());
            continue;
        }
        m_otherPages.push_back({documentNameOf(path).toStdString(), page->making.sketch,
                                paperColours(page->making.work)});
    }
    if (paths.isEmpty()) {
        return;
    }
    m_news->clear();
    m_problem->hide();
    if (!problems.isEmpty()) {
        complain(problems.join(u'\n'));
    }
    refresh();
}

void CuttingWindow::onlyThisPage() {
    m_otherPages.clear();
    refresh();
}

void CuttingWindow::changed(const Result<void>& outcome) {
    if (outcome) {
        m_news->clear();
    } else {
        refresh();  // puts the fields back
        complain(shownText(outcome.error()));
    }
}

QString CuttingWindow::planTitle() const {
    return m_otherPages.empty()
               ? tr("Cutting plan for %1").arg(pageName())
               : tr("Cutting plan for %1 pages").arg(static_cast<qulonglong>(m_pages.size()));
}

void CuttingWindow::savePdf() {
    if (!plan()) {
        return;
    }
    const TemplateSheets sheets = planSheets(*plan(), planTitle(), m_side->choice().onA4);
    const Result<QByteArray> pdf = pdfBytes(sheets.pages, planTitle());
    if (!pdf) {
        return complain(shownText(pdf.error()));
    }
    save(tr("Save the cutting plan as PDF"), tr("cutting plan"), QStringLiteral(".pdf"),
         tr("PDF files (*.pdf)"), {pdf->constData(), static_cast<std::size_t>(pdf->size())});
}

void CuttingWindow::saveSvg() {
    const int sheet = m_panel->chosenSheet();
    if (!plan() || sheet < 0) {
        return;
    }
    save(tr("Save this sheet as SVG"), tr("sheet %1").arg(sheet + 1), QStringLiteral(".svg"),
         tr("SVG drawings (*.svg)"), sheetSvg(plan()->sheets[static_cast<std::size_t>(sheet)]));
}

void CuttingWindow::save(const QString& title, const QString& part, const QString& suffix,
                         const QString& filter, std::string_view bytes) {
    const QString base =
        m_suggestedName.isEmpty() ? QDir::home().filePath(tr("Page")) : m_suggestedName;
    QString name = m_asks.out.fileName(this, title, base + u' ' + part + suffix, filter);
    if (name.isEmpty()) {
        return;
    }
    if (!name.endsWith(suffix, Qt::CaseInsensitive)) {
        name += suffix;
        if (QFileInfo::exists(name) && !m_asks.out.replace(this, name)) {
            return;
        }
    }
    if (withSuffix(name, kindOfPath(name)) == name) {
        return complain(
            tr("A file of that name is a page or a sketch, which would be lost; give "
               "the drawing another name."));
    }
    const Result<void> written = m_asks.out.files->replace(toPath(name), bytes);
    if (!written) {
        return complain(shownText(written.error()));
    }
    say(tr("Saved %1.").arg(QFileInfo(name).fileName()));
}

void CuttingWindow::print() {
    if (!plan()) {
        return;
    }
    if (m_asks.out.printers().isEmpty()) {
        m_savePdf->setFocus();
        return complain(
            tr("No printer is set up on this computer. Save a PDF instead and print it "
               "elsewhere."));
    }
    const bool onA4 = m_side->choice().onA4;
    const PrintOutcome outcome = runPrint(this, m_asks.out, planSheets(*plan(), planTitle(), onA4),
                                          planPaper(onA4), planTitle());
    if (!outcome.problem.isEmpty()) {
        complain(outcome.problem);
    } else if (!outcome.news.isEmpty()) {
        say(outcome.news);
    }
}

void CuttingWindow::cutIt() {
    if (!plan() || !m_store || m_cut || !m_isCurrent) {
        return;
    }
    m_run->cancel();  // what is shown is what is cut
    const PapersCut cut =
        papersCut(*plan(), m_planned, tr("Cut papers for %1").arg(pageName()).toStdString());
    const auto done = m_store->cut(cut);
    readPapers();
    if (!done) {
        refresh();
        return complain(shownText(done.error()));
    }
    const auto change = m_store->undoable();
    m_cut = change && *change ? std::optional((*change)->number) : std::nullopt;
    m_putBack->setVisible(m_cut.has_value());
    say(cutSentence(cut));
    showButtons();
}

void CuttingWindow::putBack() {
    if (!m_store || !m_cut) {
        return;
    }
    const auto undone = m_store->undo(m_cut);
    readPapers();
    refresh();
    if (!undone) {
        return complain(shownText(undone.error()));
    }
    say(tr("The papers are back on the list."));
}

void CuttingWindow::showPapers() {
    auto* papers = new PapersWindow(m_file, m_settings, m_asks, this);
    papers->setAttribute(Qt::WA_DeleteOnClose);
    connect(papers, &QDialog::finished, this, [this] {
        if (m_store && m_store->version().value_or(-1) != m_version) {
            readPapers();
            refresh();
        }
    });
    papers->open();
}

void CuttingWindow::say(const QString& sentence) {
    m_problem->hide();
    m_news->setText(sentence);
    QAccessibleEvent alert(m_news, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void CuttingWindow::complain(const QString& sentence) {
    m_news->clear();
    m_problem->setText(sentence);
    m_problem->show();
    QAccessibleEvent alert(m_problem, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

QString CuttingWindow::problem() const {
    return m_problem->isHidden() ? QString() : m_problem->text();
}

QString CuttingWindow::news() const {
    return m_news->text();
}

}  // namespace matwright::app
