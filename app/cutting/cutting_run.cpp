// SPDX-License-Identifier: MIT
#include "app/cutting/cutting_run.h"

#include <QPromise>
#include <QtConcurrent/QtConcurrentRun>
#include <utility>

namespace matwright::app {

namespace {

constexpr std::chrono::milliseconds atOnce{40};

void lookForPlans(QPromise<FoundPlan>& promise, const CuttingInput& input,
                  const std::stop_token& stop) {
    PaperPlanOptions quick = input.options;
    quick.limits.time = std::min(quick.limits.time, atOnce);
    auto first = std::make_shared<const Result<PaperPlan>>(
        planPapers(input.pages, input.onHand, quick, stop));
    promise.addResult(first);
    if (!*first || (*first)->provedCheapest || stop.stop_requested()) {
        return;
    }
    promise.addResult(std::make_shared<const Result<PaperPlan>>(
        planPapers(input.pages, input.onHand, input.options, stop)));
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
    } else {
        begin(input);
    }
}

void CuttingRun::begin(const CuttingInput& input) {
    m_stop = {};
    m_watcher.setFuture(QtConcurrent::run(lookForPlans, input, m_stop.get_token()));
}

void CuttingRun::cancel() {
    m_stop.request_stop();
}

}  // namespace matwright::app
