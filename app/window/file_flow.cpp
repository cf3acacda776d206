// SPDX-License-Identifier: MIT
#include "app/window/file_flow.h"

#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <utility>

#include "app/files/paths.h"
#include "app/files/recent_files.h"
#include "app/folders/personal_folders.h"

namespace matwright::app {

FileFlow::FileFlow(Workplace workplace, SketchDocument& document, Autosave& autosave,
                   QString recoveryFolder, QObject* parent)
    : QObject(parent),
      m_workplace(std::move(workplace)),
      m_document(document),
      m_autosave(autosave),
      m_recoveryFolder(std::move(recoveryFolder)) {}

void FileFlow::startNew() {
    const auto page = m_workplace.questions.newPage(m_workplace.settings.value().scale);
    if (!page || !mayLeave()) {
        return;
    }
    Sketch sketch = blankSketch();
    sketch.page = page->setup;
    m_document.startNew(std::move(sketch));
    m_workplace.settings.set(withScale(m_workplace.settings.value(), page->scale));
}

void FileFlow::chooseAndOpen() {
    if (!mayLeave()) {
        return;
    }
    if (const auto path = m_workplace.questions.fileToOpen(folderToStartIn())) {
        open(*path);
    }
}

bool FileFlow::open(const QString& path) {
    const auto opened = m_document.open(path);
    if (!opened) {
        if (opened.error().code == ErrorCode::NotFound) {
            forgetFile(m_workplace.settings, path);
        }
        m_workplace.questions.tell(kindOfPath(path) == DocumentKind::Page
                                       ? tr("This page could not be opened")
                                       : tr("This sketch could not be opened"),
                                   shownText(opened.error()));
        return false;
    }
    rememberFile(m_workplace.settings, m_document.path());
    if (!opened->isEmpty()) {
        m_workplace.questions.tell(m_document.kind() == DocumentKind::Page
                                       ? tr("Some parts of this page are not understood")
                                       : tr("Some parts of this sketch are not understood"),
                                   opened->join(u'\n'));
    }
    m_workplace.say(tr("Opened %1.").arg(m_document.shownName()));
    return true;
}

bool FileFlow::save() {
    return m_document.needsName() ? saveAs() : saveTo(m_document.path());
}

bool FileFlow::saveAs() {
    const QString suggestion = m_document.path().isEmpty()
                                   ? suggestionForNew()
                                   : withSuffix(m_document.path(), m_document.kind());
    const auto chosen = m_workplace.questions.fileToSave(suggestion);
    if (!chosen) {
        return false;
    }
    const QString path = withSuffix(*chosen, m_document.kind());
    const bool isAnotherName = path != *chosen;
    if (isAnotherName && QFileInfo::exists(path) && !m_workplace.questions.mayReplace(path)) {
        return false;
    }
    return saveTo(path);
}

bool FileFlow::saveTo(const QString& path) {
    finishTyping();
    const auto saved = m_document.saveAs(path);
    if (!saved) {
        m_workplace.questions.tell(m_document.kind() == DocumentKind::Page
                                       ? tr("The page could not be saved")
                                       : tr("The sketch could not be saved"),
                                   shownText(saved.error()) + u'\n' + whatIsLeft());
        return false;
    }
    rememberFile(m_workplace.settings, m_document.path());
    const QString said = QString::fromStdString(saved->said);
    if (saved->keptBoth) {
        m_workplace.questions.tell(tr("Both are kept"), said);
    }
    m_workplace.say(said.isEmpty() ? tr("Saved as %1.").arg(QFileInfo(m_document.path()).fileName())
                                   : said);
    return true;
}

QString FileFlow::suggestionForNew() const {
    const QString chosen = m_workplace.settings.value().libraryFolder;
    const QString library =
        chosen.isEmpty() ? QFile::decodeName(personalLibraryFolder().c_str()) : chosen;
    // Before there is a library, where the person works otherwise.
    const QString folder = QFileInfo(library).isDir() ? library : folderToStartIn();
    QString name = QString::fromStdString(m_workplace.session.sketch().name).simplified();
    name.replace(u'/', u'-');
    while (name.startsWith(u'.')) {  // such files are hidden
        name.remove(0, 1);
    }
    return folder + u'/' +
           withSuffix(name.isEmpty() ? tr("My page") : name.left(80), m_document.kind());
}

QString FileFlow::whatIsLeft() {
    if (m_workplace.session.isClean()) {
        return tr(
            "The work is still open and nothing in it is lost. Try another folder with "
            "Save as.");
    }
    return m_autosave.writeNow()
               ? tr("The work is still open and unsaved, and a recovery copy of it is kept. "
                    "Try another folder with Save as.")
               : tr("The work is still open and unsaved, but no recovery copy could be kept. "
                    "Leave this window open and try another folder with Save as.");
}

bool FileFlow::mayLeave() {
    finishTyping();
    if (m_workplace.session.isClean()) {
        return true;
    }
    switch (m_workplace.questions.unsavedWork(m_document.shownName())) {
        case Questions::UnsavedChoice::Save:
            return save();
        case Questions::UnsavedChoice::DontSave:
            return true;
        case Questions::UnsavedChoice::Cancel:
            return false;
    }
    return false;
}

bool FileFlow::mayClose() {
    if (!mayLeave()) {
        return false;
    }
    m_autosave.discard();
    return true;
}

bool FileFlow::offerRecoveredWork() {
    auto abandoned = findAbandonedWork(m_recoveryFolder);
    for (AbandonedWork& work : abandoned) {
        switch (m_workplace.questions.recoveredWork(work)) {
            case Questions::RecoveryChoice::Open:
                if (mayLeave() && openRecovered(std::move(work))) {
                    return true;
                }
                break;
            case Questions::RecoveryChoice::ThrowAway:
                throwAway(std::move(work));
                break;
            case Questions::RecoveryChoice::Later:
                break;
        }
    }
    return !abandoned.empty();
}

void FileFlow::lookForRecoveredWork() {
    if (!offerRecoveredWork()) {
        m_workplace.say(
            tr("There is no recovered work: no session ended before its work was saved."));
    }
}

bool FileFlow::openRecovered(AbandonedWork work) {
    const QString name = work.shownName();
    const auto opened = m_document.openRecovered(work.copyPath, work.originalPath);
    if (!opened) {
        m_workplace.questions.tell(tr("The recovered work could not be opened"),
                                   shownText(opened.error()));
        return false;
    }
    // The old copy goes only when this session has one of its own on the disk.
    if (m_autosave.writeNow()) {
        throwAway(std::move(work));
    }
    m_workplace.say(tr("This is the recovered work of %1. Save it to keep it.").arg(name));
    return true;
}

QString FileFlow::folderToStartIn() const {
    const QStringList& recent = m_workplace.settings.value().recentFiles;
    const QString last = m_document.path().isEmpty() ? recent.value(0) : m_document.path();
    return folderThatIsThere(
        last.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                       : QFileInfo(last).path());
}

}  // namespace matwright::app
