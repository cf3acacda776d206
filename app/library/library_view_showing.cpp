// SPDX-License-Identifier: MIT
// The library view: what it shows of the library's state.
#include <QApplication>
#include <QContextMenuEvent>
#include <QFileInfo>
#include <QKeyEvent>
#include <QLocale>
#include <QMenu>
#include <QScrollBar>
#include <algorithm>
#include <utility>

#include "app/files/paths.h"
#include "app/library/entry_words.h"
#include "app/library/filter_words.h"
#include "app/library/library_view.h"

namespace matwright::app {

void LibraryView::showLook(const IndexUpdate& update) {
    m_isKnown = true;
    m_progress->clear();
    m_thumbnails.forgetFailures();
    m_problemLines.clear();
    for (const LibraryProblem& problem : update.problems) {
        m_problemLines << asText(problem.text());
    }
    const auto count = m_problemLines.size();
    m_problems->setText(count == 1 ? tr("1 file could not be read")
                                   : tr("%1 files could not be read").arg(count));
    m_problems->setVisible(count > 0);
    m_actions->showProblems->setEnabled(count > 0);
    if (!update.indexTrouble.empty()) {
        m_host.say(asText(update.indexTrouble));
    }
    showFound();
}

void LibraryView::showFound() {
    const auto all = m_finder.holdings()->size();
    const auto found = m_finder.found().indices.size();
    const QLocale locale;
    const auto number = [&](std::size_t n) { return locale.toString(static_cast<qulonglong>(n)); };
    if (all == 0) {
        m_count->clear();
    } else if (found == all) {
        m_count->setText(all == 1 ? tr("1 sketch") : tr("%1 sketches").arg(number(all)));
    } else {
        m_count->setText(tr("%1 of %2 sketches").arg(number(found), number(all)));
    }
    m_order->setCurrentIndex(static_cast<int>(m_finder.query().order));
    if (m_finder.query() != m_shownQuery) {
        m_shownQuery = m_finder.query();
        m_wall->verticalScrollBar()->setValue(0);
    }
    QStringList tags;
    for (const std::string& tag : m_finder.holdings()->tags()) {
        tags << asText(tag);
    }
    m_details->setKnownTags(tags);
    showNotice();
}

void LibraryView::showNotice() {
    const bool isEmpty = m_finder.holdings()->size() == 0;
    if (!m_finder.found().indices.empty()) {
        m_stack->setCurrentWidget(m_wall);
        return;
    }
    m_stack->setCurrentWidget(m_notice);
    if (isEmpty && !m_isKnown) {
        m_notice->show(tr("Looking into the folder…"), {}, {});
    } else if (isEmpty && !QFileInfo::exists(m_folder)) {
        m_notice->show(
            tr("The library's folder is not there"),
            tr("%1\nIt may be on a drive that is not connected. As soon as it is back, "
               "the sketches show by themselves.")
                .arg(m_folder),
            {{tr("Look again"), [this] { m_actions->lookAgain->trigger(); }},
             {tr("Choose another folder…"), [this] { m_actions->chooseFolder->trigger(); }}});
    } else if (isEmpty) {
        m_notice->show(
            tr("No sketches here yet"),
            tr("Begin with the sketches that come with Matwright, or add your own. "
               "Files and folders can also be dragged here."),
            {{tr("Put in the starter sketches"), [this] { m_actions->putInStarters->trigger(); }},
             {tr("Add files…"), [this] { m_actions->addFiles->trigger(); }},
             {tr("Add a folder…"), [this] { m_actions->addFolder->trigger(); }}});
    } else if (const auto& loosen = m_finder.found().loosen) {
        const QString sketches =
            loosen->wouldFind == 1 ? tr("1 sketch") : tr("%1 sketches").arg(loosen->wouldFind);
        m_notice->show(tr("No sketch suits all of that"),
                       tr("Without %1 there would be %2.")
                           .arg(filterWords(loosen->filter, m_finder.query()), sketches),
                       {{tr("Leave that out: %1").arg(sketches), [this] { loosenFilter(); }},
                        {tr("Show all again"), [this] { m_finder.showAll(); }}});
    } else {
        m_notice->show(tr("No sketch suits all of that"),
                       tr("More than one thing would have to be left out."),
                       {{tr("Show all again"), [this] { m_finder.showAll(); }}});
    }
}

void LibraryView::loosenFilter() {
    if (const auto& loosen = m_finder.found().loosen) {
        m_finder.setQuery(without(m_finder.query(), loosen->filter));
    }
}

void LibraryView::showSelection() {
    std::vector<LibraryEntry> entries;
    const auto rows = m_wall->selectedRows();
    entries.reserve(rows.size());
    for (const int row : rows) {
        entries.push_back(m_model.entry(row));
    }
    const bool isOne = entries.size() == 1;
    m_actions->setSelected(static_cast<int>(entries.size()),
                           isOne && !entries.front().facts.doublePage);
    m_actions->showFamily->setEnabled(isOne && entries.front().family != 0);
    // Its buttons are about to go; the focus would wander into the filters.
    if (entries.empty() && m_details->isAncestorOf(QApplication::focusWidget())) {
        m_wall->setFocus();
    }
    m_details->show(entries);
    if (!isOne) {
        m_thumbnails.wantFirst({});
        return;
    }
    const ContentKey content = entries.front().content;
    const int side = m_details->pictureSidePixels(entries.front().facts);
    QImage picture = m_thumbnails.find(content, side);
    if (picture.isNull()) {
        picture = m_thumbnails.findAnySize(content);
        m_thumbnails.wantFirst(
            WantedThumbnail{content, (toPath(m_folder) / entries.front().path).string(), side});
    }
    m_details->setPicture(picture);
}

void LibraryView::tellNews(const QString& sentence, std::function<void()> undo) {
    m_news->setText(sentence);
    m_undoing = std::move(undo);
    m_undo->setVisible(static_cast<bool>(m_undoing));
}

void LibraryView::selectArrived(const std::vector<std::string>& sketches) {
    if (!sketches.empty()) {
        m_arrived = sketches;
    }
    const bool areThere =
        !m_arrived.empty() && std::ranges::all_of(m_arrived, [this](const std::string& path) {
            return m_finder.holdings()->indexOf(path).has_value();
        });
    if (areThere) {
        m_wall->select(m_arrived);
        m_arrived.clear();
    }
}

void LibraryView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        m_host.showPage();
        return;
    }
    QWidget::keyPressEvent(event);
}

void LibraryView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_wall->setFocus();
    if (m_indexing && m_isKnown) {
        m_indexing->refresh();
    }
}

void LibraryView::contextMenuEvent(QContextMenuEvent* event) {
    if (!m_wall->isVisible() ||
        !m_wall->rect().contains(m_wall->mapFromGlobal(event->globalPos()))) {
        return;
    }
    QMenu menu;
    menu.addActions(m_actions->forSelection());
    menu.exec(event->globalPos());
}

}  // namespace matwright::app
