// SPDX-License-Identifier: MIT
#include "app/files/recovery.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QUuid>
#include <algorithm>
#include <utility>

#include "app/files/paths.h"
#include "core/pagefile/page_file.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {
namespace {

const QString lockSuffix = QStringLiteral(".lock");
const QString originSuffix = QStringLiteral(".from");

std::unique_ptr<QLockFile> lockOf(const QString& base) {
    auto lock = std::make_unique<QLockFile>(base + lockSuffix);
    // A dead owner on this computer is found by its process number at once. The age only matters
    // after the computer was renamed, and cannot take a running session's lock: the system holds
    // that one too.
    lock->setStaleLockTime(std::chrono::hours(1));
    return lock;
}

QString readOrigin(const QString& base) {
    QFile file(base + originSuffix);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

// The path of a copy without its suffix.
QString baseOf(const QString& copyPath) {
    return copyPath.chopped(suffixOf(kindOfPath(copyPath)).size());
}

QString copyOf(const QString& base, DocumentKind kind) {
    return base + suffixOf(kind);
}

bool hasCopy(const QString& base) {
    return QFile::exists(copyOf(base, DocumentKind::Sketch)) ||
           QFile::exists(copyOf(base, DocumentKind::Page));
}

SmallPictures picturesOf(const UnsavedWork& work) {
    return [&work](PieceId slot) {
        const auto found = work.pictures.find(slot);
        return found == work.pictures.end() ? std::string() : found->second;
    };
}

// Everything of the id but its lock, with what an interrupted write left under a hidden name.
void removeWork(const QString& base) {
    const QString id = QFileInfo(base).fileName();
    QDir dir(QFileInfo(base).path());
    for (const QString& name :
         dir.entryList({id + QStringLiteral(".*"), u'.' + id + QStringLiteral(".*")},
                       QDir::Files | QDir::Hidden)) {
        if (!name.endsWith(lockSuffix)) {
            dir.remove(name);
        }
    }
}

}  // namespace

QString standardRecoveryFolder() {
    QString state = qEnvironmentVariable("XDG_STATE_HOME");
    if (!QDir::isAbsolutePath(state)) {  // unset, or to be ignored by the XDG base directory rules
        state = QDir::homePath() + QStringLiteral("/.local/state");
    }
    return state + QStringLiteral("/matwright/recovery");
}

RecoveryPlace::RecoveryPlace(const QString& folder, FileStore& store)
    : m_base(folder + u'/' + QUuid::createUuid().toString(QUuid::WithoutBraces)), m_store(store) {
    QDir().mkpath(QFileInfo(m_base).path());
    m_lock = lockOf(m_base);
    if (!m_lock->tryLock(std::chrono::milliseconds(0))) {
        m_lock.reset();
    }
}

RecoveryPlace::~RecoveryPlace() = default;

Result<void> RecoveryPlace::write(const UnsavedWork& work) {
    if (!m_lock) {
        const QString sentence =
            QCoreApplication::translate("RecoveryPlace",
                                        "The recovery folder %1 cannot be written, so unsaved work "
                                        "is not kept safe; save often.")
                .arg(QFileInfo(m_base).path());
        return std::unexpected(Error{ErrorCode::WriteFailed, sentence.toStdString(), {}});
    }
    const bool isPage = !work.making.work.isEmpty();
    const auto bytes =
        isPage ? savablePageBytes(work.making, picturesOf(work)) : savableBytes(work.making.sketch);
    if (!bytes) {
        return std::unexpected(bytes.error());
    }
    const auto kind = isPage ? DocumentKind::Page : DocumentKind::Sketch;
    auto written = m_store.replace(toPath(m_base + originSuffix), work.originalPath.toStdString());
    if (written) {
        written = m_store.replace(toPath(copyOf(m_base, kind)), *bytes);
    }
    if (written) {  // the work as it was before its first photo, or after its last
        QFile::remove(copyOf(m_base, isPage ? DocumentKind::Sketch : DocumentKind::Page));
    }
    return written;
}

void RecoveryPlace::clear() {
    removeWork(m_base);
}

QString AbandonedWork::shownName() const {
    return originalPath.isEmpty() ? QCoreApplication::translate("AbandonedWork", "Untitled")
                                  : documentNameOf(originalPath);
}

std::vector<AbandonedWork> findAbandonedWork(const QString& folder) {
    std::vector<AbandonedWork> found;
    const QDir dir(folder);
    QStringList looked;
    // Of two copies of one session only the later one counts: it died before it could remove the
    // other.
    for (const QFileInfo& info : dir.entryInfoList(
             {u'*' + suffixOf(DocumentKind::Sketch), u'*' + suffixOf(DocumentKind::Page)},
             QDir::Files, QDir::Time)) {
        const QString base = baseOf(info.filePath());
        if (looked.contains(base)) {
            continue;
        }
        looked << base;
        auto lock = lockOf(base);
        if (lock->tryLock(std::chrono::milliseconds(0))) {
            found.push_back(
                {info.filePath(), readOrigin(base), info.lastModified(), std::move(lock)});
        }
    }
    for (const QFileInfo& info : dir.entryInfoList({u'*' + lockSuffix}, QDir::Files)) {
        const QString base = info.filePath().chopped(lockSuffix.size());
        if (!hasCopy(base) && lockOf(base)->tryLock(std::chrono::milliseconds(0))) {
            removeWork(base);
        }
    }
    std::ranges::sort(found, std::greater(), &AbandonedWork::changedAt);
    return found;
}

void throwAway(AbandonedWork work) {
    removeWork(baseOf(work.copyPath));
}

}  // namespace matwright::app
