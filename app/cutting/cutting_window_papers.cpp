// SPDX-License-Identifier: MIT
#include <QDateTime>
#include <QLocale>
#include <QPushButton>

#include "app/cutting/cutting_side.h"
#include "app/cutting/cutting_window.h"
#include "app/cutting/papers_window.h"
#include "app/cutting/plan_output.h"
#include "app/cutting/plan_panel.h"
#include "app/files/paths.h"
#include "core/paperplan/plan_key.h"

namespace matwright::app {

namespace {

// "28 Nov 2026 03:10" in the person's own time and manner.
QString dayOf(const PapersChange& change) {
    QDateTime when = QDateTime::fromString(QString::fromStdString(change.when),
                                           QStringLiteral("yyyy-MM-dd HH:mm:ss"));
    when.setTimeSpec(Qt::UTC);
    return QLocale().toString(when.toLocalTime(), QLocale::ShortFormat);
}

QString takenOffSentence(const PapersChange& before) {
    return CuttingWindow::tr("The papers of this plan were taken off the list already, on %1 (%2).")
        .arg(dayOf(before), QString::fromStdString(before.label));
}

// Whether it may be gone in a moment.
bool mayPass(const Error& error) {
    return error.code == ErrorCode::ReadFailed || error.code == ErrorCode::WriteFailed;
}

}  // namespace

bool CuttingWindow::hasStore() {
    if (!m_store) {
        m_store = PapersStore::open(m_file, windowPatience);
    }
    return m_store.has_value();
}

void CuttingWindow::readPapers() {
    const Result<std::int64_t> version =
        hasStore() ? m_store->version() : std::unexpected(m_store.error());
    Result<std::vector<PaperOnHand>> papers =
        version ? m_store->list() : std::unexpected(version.error());
    if (papers) {
        m_version = *version;
        m_onHand = std::move(*papers);
        m_trouble.clear();
        return showSaid();
    }
    m_version = -1;
    m_trouble =
        tr("%1 Until then the plan may not know what is on hand.").arg(shownText(papers.error()));
    showSaid();
    if (mayPass(papers.error())) {
        m_later.start();
    }
}

void CuttingWindow::lookAtPapers() {
    if (m_version >= 0) {
        const Result<std::int64_t> version = m_store->version();
        if (!version || *version == m_version) {
            return;
        }
    }
    readPapers();
    if (m_version < 0) {
        return showButtons();
    }
    // What is being cut by its steps stays, unless its papers were put back.
    const auto stands = m_isCut ? m_store->lastCut(plan()->key) : std::nullopt;
    if (!m_isCut || (stands && !*stands)) {
        refresh();
    }
    showPutBack();
}

void CuttingWindow::showPutBack() {
    bool isLast = false;
    if (m_cut && m_store) {
        const auto last = m_store->undoable();
        isLast = last && *last && (*last)->number == m_cut->number;
    }
    m_putBack->setVisible(isLast);
    m_putBack->setToolTip(isLast ? tr("Takes back: %1").arg(QString::fromStdString(m_cut->label))
                                 : QString());
}

void CuttingWindow::tellWhetherCut() {
    if (!m_store || plan()->sheets.empty()) {
        return;
    }
    const auto before = m_store->lastCut(plan()->key);
    const QString told = before && *before ? takenOffSentence(**before) : QString();
    if (!told.isEmpty()) {
        m_cut = **before;
    }
    // A complaint stays until the next act; so does other news where this is none.
    const bool isNews = told != m_toldCut || m_said.isEmpty();
    if (m_complaint.isEmpty() && (told.isEmpty() ? m_said == m_toldCut : isNews)) {
        say(told);
    }
    m_toldCut = told;
    showPutBack();
}

void CuttingWindow::cutIt() {
    if (!plan() || m_isCut || !m_isCurrent || !hasStore()) {
        return;
    }
    m_run->cancel();  // what is shown is what is cut
    takeOff({});
}

void CuttingWindow::takeOff(const std::optional<PapersChange>& before) {
    const PapersCut cut =
        papersCut(*plan(), m_planned, tr("Cut papers for %1").arg(pagesName()).toStdString(),
                  cutName(plan()->key, before));
    const auto done = m_store->cut(cut);
    if (!done) {
        readPapers();
        refresh();
        return complain(shownText(done.error()));
    }
    if (!*done) {
        const auto last = m_store->lastCut(plan()->key);
        if (last && *last &&
            m_asks.cutAgain(this, takenOffSentence(**last) + u' ' +
                                      tr("Take them off once more, for a second copy?"))) {
            takeOff(*last);
        }
        return;
    }
    m_isCut = true;
    readPapers();
    m_cut = PapersChange{**done, cut.label, {}};
    showPutBack();
    m_putBack->setFocus();  // the button that goes grey would give it to a paper
    say(cutSentence(cut, *plan()) + u' ' + tr("Undo in Papers on hand takes it back, also later."));
    showButtons();
}

void CuttingWindow::putBack() {
    if (!m_cut || !hasStore()) {
        return;
    }
    const auto undone = m_store->undo(m_cut->number);
    if (!undone && undone.error().code != ErrorCode::NotFound) {
        return complain(shownText(undone.error()));
    }
    m_isCut = false;
    m_cut.reset();
    readPapers();
    refresh();
    showPutBack();
    if (!undone) {
        return complain(shownText(undone.error()));
    }
    say(tr("The papers are back on the list."));
}

void CuttingWindow::showPapers() {
    auto* papers = new PapersWindow(m_file, m_settings, m_asks, this);
    papers->setAttribute(Qt::WA_DeleteOnClose);
    connect(papers, &QDialog::finished, this, &CuttingWindow::lookAtPapers);
    papers->open();
}

}  // namespace matwright::app
