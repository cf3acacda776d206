// SPDX-License-Identifier: MIT
#pragma once

#include <QFileSystemWatcher>
#include <QObject>
#include <QStringList>
#include <QTimer>
#include <chrono>

namespace matwright::app {

// Notices that somebody else may have changed a folder of sketches. The system tells of changes on
// this computer's disks at once; folders of a network or a cloud drive may change without a word,
// so they are looked at now and then, and when the window comes to the front.
class FolderWatch final : public QObject {
    Q_OBJECT

  public:
    struct Pace {
        std::chrono::milliseconds quiet{300};  // changes so close together are one
        std::chrono::milliseconds lookAnyway{30'000};
    };

    explicit FolderWatch(QObject* parent = nullptr) : FolderWatch(Pace(), parent) {}
    explicit FolderWatch(Pace pace, QObject* parent = nullptr);

    // The folder and those below it; of very many the first are watched. Where some are watched
    // only from now on, mayHaveChanged() follows soon: they may have changed since they were looked
    // at. Looks at the disk, so a watch belongs on a thread that may wait.
    void watch(const QString& folder, const QStringList& foldersBelow);

  signals:
    void mayHaveChanged();

  private:
    QFileSystemWatcher m_watcher;
    QTimer m_quiet;
    QTimer m_anyway;
};

}  // namespace matwright::app
