// SPDX-License-Identifier: MIT
#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QPushButton>
#include <algorithm>

#include "app/cutting/cutting_side.h"
#include "app/cutting/cutting_window.h"
#include "app/cutting/page_papers.h"
#include "app/cutting/plan_output.h"
#include "app/cutting/plan_panel.h"
#include "app/files/paths.h"
#include "app/panels/window_foot.h"
#include "app/printing/print_run.h"
#include "app/settings/settings.h"
#include "core/pagefile/page_file.h"

namespace matwright::app {

void CuttingWindow::addPages() {
    const QStringList paths = m_asks.openSeveral(
        this, tr("Plan these pages together"), tr("Pages and sketches (*.page.svg *.sketch.svg)"));
    QStringList problems;
    for (const QString& path : paths) {
        if (isThere(path)) {
            problems << tr("%1 is in this plan already and was not added again.")
                            .arg(documentNameOf(path));
            continue;
        }
        Result<LoadedPage> page = loadPage(*m_asks.out.files, toPath(path));
        if (!page) {
            problems << shownText(page.error());
            continue;
        }
        for (const std::string& warning : page->warnings) {
            problems << tr("%1: %2").arg(documentNameOf(path), QString::fromStdString(warning));
        }
        m_otherPages.push_back({otherName(page->making.sketch, path).toStdString(),
                                page->making.sketch, paperColours(page->making.work)});
        m_otherFiles << QFileInfo(path).canonicalFilePath();
    }
    if (paths.isEmpty()) {
        return;
    }
    problems.isEmpty() ? say(tr("The papers of added pages are chosen where those pages are open."))
                       : complain(problems.join(u'\n'));
    refresh();
}

// As the companion says it; with the file's name where another page has the same.
QString CuttingWindow::otherName(const Sketch& sketch, const QString& path) const {
    const QString name = QString::fromStdString(sketch.name);
    const bool isTaken = std::ranges::any_of(
        m_pages, [&](const PaperPage& page) { return page.name == name.toStdString(); });
    return name.isEmpty() || isTaken ? documentNameOf(path) : name;
}

bool CuttingWindow::isThere(const QString& page) const {
    const QString file = QFileInfo(page).canonicalFilePath();
    const auto isOpen = [&](DocumentKind kind) {
        return !m_suggestedName.isEmpty() &&
               QFileInfo(withSuffix(m_suggestedName, kind)).canonicalFilePath() == file;
    };
    return m_otherFiles.contains(file) || isOpen(kindOfPath(page));
}

void CuttingWindow::onlyThisPage() {
    m_side->table().finishTyping();
    m_otherPages.clear();
    m_otherFiles.clear();
    refresh();
}

void CuttingWindow::changed(const Result<void>& outcome) {
    if (outcome) {
        say({});
    } else {
        refresh();  // puts the fields back
        complain(shownText(outcome.error()));
    }
}

QString CuttingWindow::pagesName() const {
    return m_otherPages.empty() ? pageName()
                                : tr("%1 and %2 more")
                                      .arg(pageName())
                                      .arg(static_cast<qulonglong>(m_otherPages.size()));
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

void CuttingWindow::say(const QString& sentence) {
    m_said = sentence;
    m_complaint.clear();
    showSaid();
}

void CuttingWindow::complain(const QString& sentence) {
    m_said.clear();
    m_complaint = sentence;
    showSaid();
}

void CuttingWindow::showSaid() {
    QStringList problems{m_trouble, m_complaint, m_planProblem};
    problems.removeAll(QString());
    const QString problem = problems.join(u'\n');
    if (m_said != m_notice->news() || problem != m_notice->problem()) {
        m_notice->say(m_said, problem);
    }
}

QString CuttingWindow::problem() const {
    return m_notice->problem();
}

QString CuttingWindow::news() const {
    return m_notice->news();
}

}  // namespace matwright::app
