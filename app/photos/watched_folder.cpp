// SPDX-License-Identifier: MIT
#include "app/photos/watched_folder.h"

#include <QDir>
#include <QFileInfo>
#include <utility>

#include "core/photo/photo_endings.h"

namespace matwright::app {

WatchedFolder::WatchedFolder(QObject* parent) : QObject(parent) {
    m_thread.setMaxThreadCount(1);
    m_rest.setSingleShot(true);
    m_rest.setInterval(std::chrono::milliseconds(1'500));
    connect(&m_rest, &QTimer::timeout, this, &WatchedFolder::look);
    connect(&m_watcher, &QFileSystemWatcher::directoryChanged, this, [this] { m_rest.start(); });
}

WatchedFolder::~WatchedFolder() {
    m_thread.waitForDone();
}

void WatchedFolder::watch(const QString& folder) {
    if (folder == m_folder) {
        return;
    }
    if (!m_watcher.directories().isEmpty()) {
        m_watcher.removePaths(m_watcher.directories());
    }
    ++m_round;
    m_folder = folder;
    m_known.clear();
    m_growing.clear();
    m_isFirstLook = true;
    m_rest.stop();
    if (!folder.isEmpty()) {
        m_watcher.addPath(folder);
        look();
    }
}

void WatchedFolder::look() {
    if (m_folder.isEmpty()) {
        return;
    }
    m_thread.start([this, folder = m_folder, round = m_round] {
        Names names;
        for (const QFileInfo& file : QDir(folder).entryInfoList(QDir::Files | QDir::Readable)) {
            if (isNamedAsPhoto(file.filePath().toStdString())) {
                names.emplace(file.filePath(), file.size());
            }
        }
        QMetaObject::invokeMethod(
            this, [this, round, names] { take(round, names); }, Qt::QueuedConnection);
    });
}

void WatchedFolder::take(int round, const Names& names) {
    if (round != m_round) {
        return;  // of a folder that is not watched any more
    }
    if (std::exchange(m_isFirstLook, false)) {
        m_known = names;
        return;
    }
    QStringList rested;
    Names growing;
    for (const auto& [path, bytes] : names) {
        if (m_known.contains(path)) {
            continue;
        }
        const auto before = m_growing.find(path);
        if (bytes > 0 && before != m_growing.end() && before->second == bytes) {
            rested << path;
            m_known.emplace(path, bytes);
        } else {
            growing.emplace(path, bytes);
        }
    }
    m_growing = std::move(growing);
    if (!m_growing.empty()) {
        m_rest.start();
    }
    if (!rested.isEmpty()) {
        emit arrived(rested);
    }
}

}  // namespace matwright::app
