// SPDX-License-Identifier: MIT
#pragma once

#include <QFutureWatcher>
#include <QObject>
#include <memory>
#include <optional>
#include <stop_token>

#include "core/printplan/print_offers.h"

namespace matwright::app {

// A plan, what it was made from, and what its sheets still have room for.
struct ReadyPlan {
    PlanInput input;
    PrintPlan plan;
    std::vector<std::vector<PrintOffer>> offers;  // a sheet
};

// Plans in the background. Another input while it runs gives up the plan that is being made and
// begins anew, so what is told is always of the latest. Belongs to the window's thread.
class PlanRun final : public QObject {
    Q_OBJECT

  public:
    explicit PlanRun(QObject* parent = nullptr);
    // Gives up, and waits for what is being made.
    ~PlanRun() override;

    void start(PlanInput input);
    // Ends with the best plan so far of the latest input.
    void stop();
    bool isRunning() const { return m_isRunning; }

  signals:
    void planned(const std::shared_ptr<const matwright::app::ReadyPlan>& ready);
    void failed(const matwright::Error& error);

  private:
    void begin(PlanInput input);
    void finish();

    bool m_isRunning = false;  // until its end was told
    std::optional<PlanInput> m_next;
    bool m_stopsNext = false;
    std::stop_source m_stop;
    QFutureWatcher<Result<std::shared_ptr<const ReadyPlan>>> m_watcher;
};

}  // namespace matwright::app
