// SPDX-License-Identifier: MIT
#pragma once

#include <QFutureWatcher>
#include <QObject>
#include <QStringList>
#include <functional>
#include <stop_token>
#include <vector>

namespace matwright::app {

// Sheets that were handed to a printer.
struct SentJob {
    QString queue;                    // the system's printer; empty where it was a file
    QString sentence;                 // "Sent to “Attic”."
    std::vector<std::size_t> sheets;  // indexes of the plan's
};

// What became of files or jobs that were made.
struct WorkOutcome {
    QStringList done;           // names of files
    std::vector<SentJob> sent;  // in the order they were sent
    QStringList problems;       // whole sentences
    bool wasCancelled = false;
};

// One longer piece of work in the background, with progress and a way to stop it. Belongs to the
// window's thread.
class PlanWork final : public QObject {
    Q_OBJECT

  public:
    using Progress = std::function<void(int done, int total)>;
    using Work = std::function<WorkOutcome(const std::stop_token& stop, const Progress& progress)>;

    explicit PlanWork(QObject* parent = nullptr);
    // Gives up, and waits.
    ~PlanWork() override;

    // Precondition: nothing is running. The work runs on another thread.
    void start(Work work);
    void cancel() { m_stop.request_stop(); }
    bool isRunning() const { return m_isRunning; }

  signals:
    void progressed(int done, int total);
    void finished(const matwright::app::WorkOutcome& outcome);

  private:
    bool m_isRunning = false;  // until its end was told
    std::stop_source m_stop;
    QFutureWatcher<WorkOutcome> m_watcher;
};

}  // namespace matwright::app
