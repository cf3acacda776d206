// SPDX-License-Identifier: MIT
#include "app/cutting/cutting_run.h"

#include <QtConcurrent/QtConcurrentRun>
#include <utility>

namespace matwright::app {

namespace {

constexpr std::chrono::milliseconds atOnce{40};

// A stopped search may have had to begin anew and be behind the quick one.
bool isWorse(const PaperPlan& plan, const PaperPlan& other) {
    const auto rank = [](const PaperPlan& one) {
        return std::pair(one.notCut.size(), costOf(one.plan, one.job));
    };
    return rank(plan) > rank(other);
}

}  // namespace

CuttingRun::CuttingRun(QObject* parent) : QObject(parent) {
    connect(&m_watcher, &QFutureWatcherBase::resultReadyAt, this, [this](int index) {
        if (!m_next) {
            emit found(m_watcher.resultAt(index));
        }
    });
    connect(&m_watcher, &QFutureWatcherBase::finished, this, [this] {
        if (m_next) {
            begin(*std::exchange(m_next, std::nullopt));
        } else {
            emit ended();
        }
    });
}

CuttingRun::~CuttingRun() {
    m_stop.request_stop();
    m_watcher.waitForFinished();
}

void CuttingRun::start(CuttingInput input) {
    if (m_watcher.isRunning()) {
        m_stop.request_stop();
        m_next = std::move(input);
        m_stopNext = false;
    } else {
        begin(input);
    }
}

void CuttingRun::begin(const CuttingInput& input) {
    m_stop = {};
    if (std::exchange(m_stopNext, false)) {
        m_stop.request_stop();
    }
    m_told = std::make_shared<Told>();
    m_watcher.setFuture(QtConcurrent::run(look, input, m_stop.get_token(), m_told));
}

void CuttingRun::look(QPromise<FoundPlan>& promise, const CuttingInput& input,
                      const std::stop_token& stop, const std::shared_ptr<Told>& told) {
    PaperPlanOptions quick = input.options;
    quick.limits.time = std::min(quick.limits.time, atOnce);
    const auto tell = [&](const PaperProgress& now) {
        const std::scoped_lock lock(told->mutex);
        told->progress = now;
    };
    auto first = std::make_shared<const Result<PaperPlan>>(
        planPapers(input.pages, input.onHand, quick, stop, tell));
    promise.addResult(first);
    if (!*first || (*first)->provedCheapest || stop.stop_requested()) {
        return;
    }
    Result<PaperPlan> better = planPapers(input.pages, input.onHand, input.options, stop, tell);
    if (better && isWorse(*better, **first)) {
        const bool cancelled = better->cancelled;
        better = *first;
        better->cancelled = cancelled;
    }
    promise.addResult(std::make_shared<const Result<PaperPlan>>(std::move(better)));
}

PaperProgress CuttingRun::progress() const {
    const std::scoped_lock lock(m_told->mutex);
    return m_told->progress;
}

void CuttingRun::cancel() {
    m_stop.request_stop();
    m_stopNext = m_next.has_value();
}

}  // namespace matwright::app
