// SPDX-License-Identifier: MIT
#include "app/library/folder_watch.h"

#include <QFileInfo>
#include <QGuiApplication>
#include <QSet>

namespace matwright::app {
namespace {

// The system's supply of watches is shared by all programs.
constexpr qsizetype mostFolders = 2'000;

}  // namespace

FolderWatch::FolderWatch(Pace pace, QObject* parent) : QObject(parent) {
    m_quiet.setSingleShot(true);
    m_quiet.setInterval(pace.quiet);
    m_anyway.setInterval(pace.lookAnyway);
    connect(&m_watcher, &QFileSystemWatcher::directoryChanged, this, [this] {
        // Not started anew by each change: a folder that never comes to rest is looked at too.
        if (!m_quiet.isActive()) {
            m_quiet.start();
        }
    });
    connect(&m_quiet, &QTimer::timeout, this, &FolderWatch::mayHaveChanged);
    connect(&m_anyway, &QTimer::timeout, this, &FolderWatch::mayHaveChanged);
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this,
            [this](Qt::ApplicationState state) {
                if (state == Qt::ApplicationActive && m_anyway.isActive()) {
                    m_quiet.start();
                }
            });
    m_anyway.start();
}

void FolderWatch::watch(const QString& folder, const QStringList& foldersBelow) {
    QStringList wanted{folder};
    wanted += foldersBelow.first(qMin(foldersBelow.size(), mostFolders));
    // While the folder is not there, the one above tells when it comes.
    if (!QFileInfo::exists(folder)) {
        wanted << QFileInfo(folder).path();
    }
    const QStringList watched = m_watcher.directories();
    const QSet<QString> before(watched.begin(), watched.end());
    const QSet<QString> after(wanted.begin(), wanted.end());
    const QSet<QString> gone = before - after;
    if (!gone.isEmpty()) {
        m_watcher.removePaths(gone.values());
    }
    const QSet<QString> come = after - before;
    if (!come.isEmpty() && m_watcher.addPaths(come.values()).size() < come.size()) {
        m_quiet.start();
    }
}

}  // namespace matwright::app
