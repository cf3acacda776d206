// SPDX-License-Identifier: MIT
#include "app/printplan/plan_run.h"

#include <QtConcurrent/QtConcurrentRun>
#include <utility>

namespace matwright::app {

namespace {

Result<ReadyPlan> readyPlanOf(PlanInput input, const std::stop_token& stop) {
    auto plan = planPrints(input, {}, stop);
    if (!plan) {
        return std::unexpected(plan.error());
    }
    ReadyPlan ready{std::move(input), std::move(*plan), {}};
    for (std::size_t i = 0; i < ready.plan.sheets.size(); ++i) {
        ready.offers.push_back(offersFor(ready.plan, ready.input, i));
    }
    return ready;
}

}  // namespace

PlanRun::PlanRun(QObject* parent) : QObject(parent) {
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &PlanRun::finish);
}

PlanRun::~PlanRun() {
    m_stop.request_stop();
    m_watcher.waitForFinished();
}

void PlanRun::start(PlanInput input) {
    if (m_isRunning) {
        m_next = std::move(input);
        m_stop.request_stop();
        return;
    }
    begin(std::move(input));
}

void PlanRun::begin(PlanInput input) {
    m_isRunning = true;
    m_stop = {};
    m_watcher.setFuture(QtConcurrent::run([input = std::move(input), stop = m_stop.get_token()] {
        return readyPlanOf(input, stop);
    }));
}

void PlanRun::stop() {
    m_stop.request_stop();
}

void PlanRun::finish() {
    if (m_next) {
        begin(*std::exchange(m_next, std::nullopt));
        return;
    }
    m_isRunning = false;
    const Result<ReadyPlan> result = m_watcher.result();
    if (result) {
        emit planned(*result);
    } else {
        emit failed(result.error());
    }
}

}  // namespace matwright::app
