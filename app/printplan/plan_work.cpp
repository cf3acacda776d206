// SPDX-License-Identifier: MIT
#include "app/printplan/plan_work.h"

#include <QtConcurrent/QtConcurrentRun>
#include <utility>

namespace matwright::app {

PlanWork::PlanWork(QObject* parent) : QObject(parent) {
    connect(&m_watcher, &QFutureWatcherBase::finished, this, [this] {
        m_isRunning = false;
        WorkOutcome outcome = m_watcher.result();
        outcome.wasCancelled = m_stop.stop_requested();
        emit finished(outcome);
    });
}

PlanWork::~PlanWork() {
    cancel();
    m_watcher.waitForFinished();
}

void PlanWork::start(Work work) {
    m_isRunning = true;
    m_stop = {};
    // The signal is queued to the window's thread, and dropped where this is gone.
    const Progress progress = [this](int done, int total) {
        QMetaObject::invokeMethod(
            this, [this, done, total] { emit progressed(done, total); }, Qt::QueuedConnection);
    };
    m_watcher.setFuture(QtConcurrent::run([work = std::move(work), stop = m_stop.get_token(),
                                           progress] { return work(stop, progress); }));
}

}  // namespace matwright::app
