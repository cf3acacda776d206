// SPDX-License-Identifier: MIT
// The library view: what its commands do.
#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <algorithm>

#include "app/files/paths.h"
#include "app/folders/personal_folders.h"
#include "app/library/entry_words.h"
#include "app/library/library_view.h"
#include "app/starters/starters_folder.h"
#include "core/carry/turned_sketch.h"

namespace matwright::app {
namespace {

QStringList filesIn(const QString& folder) {
    QStringList paths;
    const QDir dir(folder);
    for (const QString& name : dir.entryList(QDir::Files | QDir::Dirs | QDir::NoDotAndDotDot)) {
        paths << dir.filePath(name);
    }
    return paths;
}

}  // namespace

LibraryPlaces standardLibraryPlaces() {
    const auto text = [](const std::filesystem::path& path) {
        return QFile::decodeName(path.c_str());
    };
    return {text(personalLibraryFolder()), text(personalCacheFolder()),
            text(startersFolder(toPath(QCoreApplication::applicationDirPath())))};
}

void LibraryView::connectCommands() {
    const auto on = [this](QAction* action, auto run) {
        connect(action, &QAction::triggered, this, run);
    };
    on(m_actions->startPage, [this] {
        startFrom(onlySelected(), [](const Sketch& sketch) { return std::optional(sketch); });
    });
    on(m_actions->open, [this] { openSelected(); });
    on(m_actions->makeCopy, [this] { m_work->makeCopy(onlySelected()); });
    on(m_actions->mirrorLeftRight, [this] { startTurned(WholeTurn::MirroredLeftRight); });
    on(m_actions->mirrorTopBottom, [this] { startTurned(WholeTurn::MirroredTopBottom); });
    on(m_actions->upsideDown, [this] { startTurned(WholeTurn::UpsideDown); });
    on(m_actions->quarterClockwise, [this] { startTurned(WholeTurn::QuarterClockwise); });
    on(m_actions->quarterCounterClockwise,
       [this] { startTurned(WholeTurn::QuarterCounterClockwise); });
    on(m_actions->carryOver, [this] {
        startFrom(onlySelected(), [this](const Sketch& sketch) {
            return m_asks.carriedOver(sketch, m_settings.value().trimmerStep);
        });
    });
    on(m_actions->showFamily, [this] { showFamilyOfSelected(); });
    on(m_actions->favourite, [this] { toggleFavourite(); });
    on(m_actions->tag, [this] { m_details->tags().typed().setFocus(Qt::ShortcutFocusReason); });
    on(m_actions->rename, [this] { renameSelected(); });
    on(m_actions->moveToFolder, [this] { moveSelected(); });
    on(m_actions->trash, [this] { m_work->moveToTrash(m_wall->selectedPaths()); });
    on(m_actions->exportZip, [this] { exportSelected(); });
    on(m_actions->contactSheet, [this] { makeContactSheet(); });
    on(m_actions->addFiles, [this] {
        const QStringList files = m_asks.filesToAdd();
        if (!files.isEmpty()) {
            m_work->import(files, m_finder.holdings());
        }
    });
    on(m_actions->addFolder, [this] {
        if (const auto folder = m_asks.folderToAdd()) {
            m_work->import({*folder}, m_finder.holdings());
        }
    });
    on(m_actions->putInStarters, [this] { putInStarters(); });
    m_actions->putInStarters->setEnabled(!m_places.startersFolder.isEmpty());
    on(m_actions->chooseFolder, [this] {
        if (const auto folder = m_asks.libraryFolder(m_folder)) {
            Settings settings = m_settings.value();
            settings.libraryFolder = *folder;
            m_settings.set(std::move(settings));
        }
    });
    on(m_actions->showProblems,
       [this] { m_asks.list(tr("Files that could not be read"), m_problemLines); });
    m_actions->showProblems->setEnabled(false);
    on(m_actions->lookAgain, [this] { m_indexing->refresh(); });
    on(m_actions->find, [this] { m_filters->beginTyping({}); });
}

std::string LibraryView::onlySelected() const {
    const auto paths = m_wall->selectedPaths();
    return paths.size() == 1 ? paths.front() : std::string();
}

QString LibraryView::fileOf(const std::string& sketch) const {
    return m_folder + u'/' + QFile::decodeName(sketch.c_str());
}

void LibraryView::startFrom(const std::string& sketch,
                            const std::function<std::optional<Sketch>(const Sketch&)>& make) {
    m_work->read(sketch, [this, sketch, make](const Sketch& read) {
        std::optional<Sketch> page = make(read);
        if (!page) {
            return;
        }
        const auto entry = m_finder.holdings()->indexOf(sketch);
        const QString name =
            entry ? asText(shownName(m_finder.holdings()->entry(*entry))) : asText(page->name);
        page->name = tr("%1, page").arg(name).toStdString();
        if (m_host.startPage(std::move(*page))) {
            m_work->countUse(sketch);
        }
    });
}

void LibraryView::startTurned(WholeTurn turn) {
    startFrom(onlySelected(), [this, turn](const Sketch& sketch) -> std::optional<Sketch> {
        auto made = turned(sketch, turn);
        if (!made) {
            m_asks.tell(tr("This sketch cannot be turned so"), shownText(made.error()));
            return {};
        }
        return std::move(*made);
    });
}

void LibraryView::openSelected() {
    m_host.openSketch(fileOf(onlySelected()));
}

void LibraryView::showFamilyOfSelected() {
    const auto entry = m_finder.holdings()->indexOf(onlySelected());
    if (!entry || m_finder.holdings()->family(*entry) == 0) {
        return;
    }
    Query query;
    query.order = m_finder.query().order;
    query.family = m_finder.holdings()->family(*entry);
    m_finder.setQuery(std::move(query));
    tellNews(tr("These are the same but for a mirror, a turn or tiny shifts."));
}

void LibraryView::toggleFavourite() {
    bool areAll = true;
    for (const int row : m_wall->selectedRows()) {
        areAll = areAll && m_model.entry(row).labels.favourite;
    }
    m_work->changeLabels(m_wall->selectedPaths(),
                         [on = !areAll](Labels& labels) { labels.favourite = on; }, {});
}

void LibraryView::renameSelected() {
    const std::string sketch = onlySelected();
    const auto entry = m_finder.holdings()->indexOf(sketch);
    if (!entry) {
        return;
    }
    const QString now = asText(shownName(m_finder.holdings()->entry(*entry)));
    if (const auto name = m_asks.newName(now); name && *name != now) {
        m_work->rename(sketch, *name);
    }
}

void LibraryView::moveSelected() {
    QStringList folders;
    for (const std::string& folder : m_finder.holdings()->folders()) {
        folders << asText(folder);
    }
    const auto folder = m_asks.folderToMoveTo(folders);
    if (!folder) {
        return;
    }
    LibraryWork::Moves moves;
    for (const std::string& sketch : m_wall->selectedPaths()) {
        if (asText(folderOf(sketch)) != *folder) {
            moves.push_back({sketch, folder->toStdString()});
        }
    }
    m_work->move(moves);
}

void LibraryView::tellMoved(const LibraryWork::Moves& back) {
    const QString into = shownPath(folderOf(back.front().sketch));
    const bool isOne = std::ranges::all_of(back, [&](const LibraryWork::Move& move) {
        return folderOf(move.sketch) == folderOf(back.front().sketch);
    });
    const QString place = !isOne           ? tr("their folders")
                          : into.isEmpty() ? tr("the library itself, in no sub-folder")
                                           : tr("the folder %1").arg(into);
    tellNews(back.size() == 1 ? tr("1 sketch is now in %1.").arg(place)
                              : tr("%1 sketches are now in %2.").arg(back.size()).arg(place),
             [this, back] { m_work->move(back); });
}

void LibraryView::exportSelected() {
    const auto sketches = m_wall->selectedPaths();
    if (const auto file = m_asks.zipFile(tr("Sketches.zip"))) {
        m_work->exportZip(sketches, *file);
    }
}

void LibraryView::makeContactSheet() {
    // Of what is selected, or else of all that is on the wall.
    auto sketches = m_wall->selectedPaths();
    if (sketches.size() < 2) {
        sketches.clear();
        for (int row = 0; row < m_model.rowCount(); ++row) {
            sketches.push_back(m_model.path(row));
        }
    }
    if (const auto file = m_asks.pdfFile(tr("Contact sheet.pdf"))) {
        m_work->makeContactSheet(sketches, tr("Sketches"), *file);
    }
}

void LibraryView::firstUse() {
    if (!m_places.startersFolder.isEmpty()) {
        putInStarters();
    }
}

void LibraryView::putInStarters() {
    m_work->importInto(tr("Starters"), filesIn(m_places.startersFolder), m_finder.holdings());
}

void LibraryView::tellImported(const ImportReport& report, const QString& into) {
    std::vector<std::string> taken;
    QStringList complaints;
    for (const ImportedFile& file : report.files) {
        if (file.outcome == ImportOutcome::Imported) {
            taken.push_back(file.sketch);
        }
        if (!file.said.empty()) {
            complaints << tr("%1: %2").arg(shownPath(file.source.filename().string()),
                                           asText(file.said));
        }
    }
    const int there = report.count(ImportOutcome::AlreadyThere);
    const auto others =
        static_cast<int>(report.files.size()) - static_cast<int>(taken.size()) - there;
    m_stop->hide();
    QStringList parts;
    if (report.cancelled) {
        parts << tr("Stopped early");
    }
    parts << (!into.isEmpty()
                  ? tr("%1 sketches were put into the folder %2").arg(taken.size()).arg(into)
              : taken.size() == 1 ? tr("1 sketch added")
                                  : tr("%1 sketches added").arg(taken.size()));
    if (there > 0) {
        parts << (there == 1 ? tr("1 was here already") : tr("%1 were here already").arg(there));
    }
    if (others > 0) {
        parts << tr("%1 could not be used").arg(others);
    }
    std::function<void()> undo;
    if (!taken.empty()) {
        undo = [this, taken] { m_work->moveToTrash(taken); };
    }
    tellNews(parts.join(QStringLiteral(", ")) + u'.', std::move(undo));
    if (others > 0) {
        m_asks.list(tr("What was not simply added"), complaints);
    }
}

}  // namespace matwright::app
