// SPDX-License-Identifier: MIT
#include "app/printplan/plan_run.h"

#include <QtConcurrent/QtConcurrentRun>
#include <utility>

namespace matwright::app {

namespace {

Result<std::shared_ptr<const ReadyPlan>> readyPlanOf(PlanInput input, const std::stop_token& stop) {
    auto plan = planPrints(input, {}, stop);
    if (!plan) {
        return std::unexpected(plan.error());
    }
    ReadyPlan ready{std::move(input), std::move(*plan), {}};
    for (std::size_t i = 0; i < ready.plan.sheets.size(); ++i) {
        ready.offers.push_back(offersFor(ready.plan, ready.input, i));
    }
    return std::make_shared<const ReadyPlan>(std::move(ready));
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
    m_stopsNext = false;
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
    m_watcher.setFuture(
        QtConcurrent::run([input = std::move(input), stop = m_stop.get_token()]() mutable {
            return readyPlanOf(std::move(input), stop);
        }));
}

void PlanRun::stop() {
    m_stopsNext = m_next.has_value();
    m_stop.request_stop();
}

void PlanRun::finish() {
    if (m_next) {
        begin(*std::exchange(m_next, std::nullopt));
        if (std::exchange(m_stopsNext, false)) {
            m_stop.request_stop();
        }
        return;
    }
    m_isRunning = false;
    const Result<std::shared_ptr<const ReadyPlan>> result = m_watcher.result();
    if (result) {
        emit planned(*result);
    } else {
        emit failed(result.error());
    }
}

}  // namespace matwright::app
