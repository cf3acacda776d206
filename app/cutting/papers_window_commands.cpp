// SPDX-License-Identifier: MIT
#include <QFileInfo>
#include <QLineEdit>
#include <QTableView>
#include <algorithm>
#include <map>

#include "app/cutting/paper_dialog.h"
#include "app/cutting/papers_model.h"
#include "app/cutting/papers_window.h"
#include "app/files/paths.h"
#include "app/panels/paper_pictures.h"
#include "app/panels/window_foot.h"
#include "app/settings/settings.h"
#include "core/papers/known_papers.h"
#include "core/papers/papers_csv.h"

namespace matwright::app {

namespace {

constexpr std::size_t mostChosen = 200;  // of those that came at once

PaperOnHand newPaper() {
    PaperOnHand paper;
    paper.size = {Length::inches(12), Length::inches(12)};
    return paper;
}

QString csvWords() {
    return PapersWindow::tr("Tables (*.csv)");
}

}  // namespace

void PapersWindow::askToAdd() {
    PaperDialog dialog(tr("Add paper"), newPaper(), m_settings.value().scale, m_asks, *m_pictures,
                       this);
    if (dialog.exec() == QDialog::Accepted) {
        add(dialog.paper());
    }
}

void PapersWindow::add(const PaperOnHand& paper) {
    const Result<PaperId> id = m_store->add(paper);
    if (!id) {
        return complain(id.error());
    }
    m_search->clear();
    relist();
    choose(std::span(&*id, 1));
    say(tr("Added %1.").arg(QString::fromStdString(paper.name)));
}

void PapersWindow::askToChange() {
    const std::vector<PaperOnHand> papers = chosen();
    if (papers.size() != 1) {
        return;
    }
    PaperDialog dialog(tr("Change paper"), papers.front(), m_settings.value().scale, m_asks,
                       *m_pictures, this);
    if (dialog.exec() == QDialog::Accepted) {
        change(papers.front(), dialog.paper());
    }
}

void PapersWindow::change(const PaperOnHand& before, const PaperOnHand& after) {
    if (before == after) {
        return say(tr("Nothing was changed."));
    }
    const Result<void> changed = m_store->change(before, after);
    relist();
    if (!changed) {
        return complain(changed.error());
    }
    say(tr("Changed %1.").arg(QString::fromStdString(after.name)));
}

void PapersWindow::removeChosen() {
    const std::vector<PaperOnHand> papers = chosen();
    if (papers.empty() || !m_store) {
        return;
    }
    const int row = m_table->selectionModel()->selectedRows().front().row();
    const Result<void> removed = m_store->remove(papers);
    relist();
    if (removed && m_filter->rowCount() > 0) {
        const int next = std::min(row, m_filter->rowCount() - 1);
        const QModelIndex index = m_filter->mapToSource(m_filter->index(next, 0));
        choose(std::span(&m_model->papers()[static_cast<std::size_t>(index.row())].id, 1));
    }
    if (!removed) {
        return complain(removed.error());
    }
    say(papers.size() == 1
            ? tr("Took %1 off the list.").arg(QString::fromStdString(papers.front().name))
            : tr("Took %1 papers off the list.").arg(static_cast<qulonglong>(papers.size())));
}

void PapersWindow::importCsv() {
    const QString path = m_store ? m_asks.open(this, tr("Import papers"), csvWords()) : QString();
    if (path.isEmpty()) {
        return;
    }
    const QString file = QFileInfo(path).fileName();
    const Result<std::string> text = m_asks.out.files->read(toPath(path), maxPapersCsvBytes);
    if (!text) {
        return complain(text.error());
    }
    Result<std::vector<PaperOnHand>> papers = readPapersCsv(*text);
    if (!papers) {
        return complain({papers.error().code, papers.error().sentence, file.toStdString()});
    }
    if (papers->empty()) {
        return say(tr("There are no papers in %1.").arg(file));
    }
    const auto added = toImport(std::move(*papers), file);
    if (!added) {
        return;
    }
    const auto ids = m_store->add(*added, tr("Import %1").arg(file).toStdString());
    if (!ids) {
        return complain(ids.error());
    }
    m_search->clear();
    relist();
    choose(std::span(*ids).first(std::min(ids->size(), mostChosen)));
    say(ids->size() == 1 ? tr("Imported 1 paper from %1.").arg(file)
                         : tr("Imported %1 papers from %2.")
                               .arg(static_cast<qulonglong>(ids->size()))
                               .arg(file));
}

std::optional<std::vector<PaperOnHand>> PapersWindow::toImport(std::vector<PaperOnHand> papers,
                                                               const QString& file) {
    refresh();
    KnownPapers sorted = knownPapers(papers, m_model->papers());
    if (sorted.known == 0) {
        return papers;
    }
    const auto number = [](std::size_t count) { return QString::number(count); };
    QString sentence =
        sorted.fresh.empty()
            ? tr("Everything in %1 is on the list already (%2).").arg(file, number(sorted.known))
            : tr("Of the papers in %1 there are %2 on the list already and %3 new.")
                  .arg(file, number(sorted.known), number(sorted.fresh.size()));
    if (sorted.otherCount > 0) {
        sentence += u' ' + tr("The list has another number of sheets of %1 of them; that stays as "
                              "it is unless all are added.")
                               .arg(number(sorted.otherCount));
    }
    switch (m_asks.import(this, sentence, sorted.fresh.size(), papers.size())) {
        case ImportChoice::OnlyNew:
            return std::move(sorted.fresh);
        case ImportChoice::All:
            return papers;
        case ImportChoice::Nothing:
            break;
    }
    return std::nullopt;
}

void PapersWindow::exportCsv() {
    const QString path =
        m_asks.out.fileName(this, tr("Export papers"), tr("papers on hand.csv"), csvWords());
    if (!path.isEmpty()) {
        writeCsv(path);
    }
}

void PapersWindow::writeCsv(QString path) {
    if (!path.endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive)) {
        path += QStringLiteral(".csv");
        if (QFileInfo::exists(path) && !m_asks.out.replace(this, path)) {
            return;
        }
    }
    const Result<void> written =
        m_asks.out.files->replace(toPath(path), papersCsv(m_model->papers()));
    if (!written) {
        return complain(written.error());
    }
    say(tr("Saved %1.").arg(QFileInfo(path).fileName()));
}

void PapersWindow::undo() {
    if (!m_store || !m_undoable) {
        return;
    }
    const auto before = m_model->papers();
    const auto undone = m_store->undo(m_undoable->number);
    relist();
    chooseChanged(before);
    if (!undone) {
        return complain(undone.error());
    }
    if (*undone) {
        say(tr("Undone: %1.").arg(QString::fromStdString((*undone)->label)));
    }
}

void PapersWindow::redo() {
    if (!m_store || !m_redoable) {
        return;
    }
    const auto before = m_model->papers();
    const auto redone = m_store->redo(m_redoable->number);
    relist();
    chooseChanged(before);
    if (!redone) {
        return complain(redone.error());
    }
    if (*redone) {
        say(tr("Done again: %1.").arg(QString::fromStdString((*redone)->label)));
    }
}

void PapersWindow::chooseChanged(const std::vector<PaperOnHand>& before) {
    std::map<PaperId, const PaperOnHand*> known;
    for (const PaperOnHand& paper : before) {
        known.emplace(paper.id, &paper);
    }
    std::vector<PaperId> changed;
    for (const PaperOnHand& paper : m_model->papers()) {
        const auto earlier = known.find(paper.id);
        if (earlier == known.end() || *earlier->second != paper) {
            changed.push_back(paper.id);
        }
    }
    if (!changed.empty()) {
        choose(std::span(changed).first(std::min(changed.size(), mostChosen)));
    }
}

void PapersWindow::say(const QString& sentence) {
    m_foot->say(sentence);
}

void PapersWindow::complain(const Error& error) {
    m_foot->say({}, shownText(error));
}

QString PapersWindow::problem() const {
    return m_foot->problem();
}

QString PapersWindow::news() const {
    return m_foot->news();
}

}  // namespace matwright::app
