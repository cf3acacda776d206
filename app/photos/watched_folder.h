// SPDX-License-Identifier: MIT
#pragma once

#include <QFileSystemWatcher>
#include <QObject>
#include <QStringList>
#include <QThreadPool>
#include <QTimer>
#include <chrono>
#include <map>

namespace matwright::app {

// A folder that photos arrive in, such as the one a phone copies to. Files that come after watching
// began are told of once they have stopped growing; what lay there before is not. The folder itself
// only, nothing below it. Never blocks: names are read on a thread.
class WatchedFolder final : public QObject {
    Q_OBJECT

  public:
    explicit WatchedFolder(QObject* parent = nullptr);
    ~WatchedFolder() override;

    // Empty: watches nothing.
    void watch(const QString& folder);
    const QString& folder() const { return m_folder; }
    // How long a file has to rest; for tests.
    void setRest(std::chrono::milliseconds rest) { m_rest.setInterval(rest); }

  signals:
    void arrived(const QStringList& files);

  private:
    using Names = std::map<QString, qint64>;  // path and bytes
    void look();
    void take(int round, const Names& names);

    QFileSystemWatcher m_watcher;
    QTimer m_rest;
    QString m_folder;
    Names m_known;    // there at the beginning, or told of
    Names m_growing;  // seen once, told of when seen again with the same size
    bool m_isFirstLook = true;
    int m_round = 0;
    QThreadPool m_thread;  // last: ends before the rest
};

}  // namespace matwright::app
