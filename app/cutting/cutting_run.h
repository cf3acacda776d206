// SPDX-License-Identifier: MIT
#pragma once

#include <QFutureWatcher>
#include <QObject>
#include <QPromise>
#include <memory>
#include <mutex>
#include <optional>
#include <stop_token>

#include "core/paperplan/paper_plan.h"

namespace matwright::app {

struct CuttingInput {
    std::vector<PaperPage> pages;
    std::vector<PaperOnHand> onHand;
    PaperPlanOptions options;
};
using FoundPlan = std::shared_ptr<const Result<PaperPlan>>;

// Looks for a cutting plan in the background: a quick one first, which is there at once, then, as
// long as that is not proved, a better one. Belongs to the window's thread.
class CuttingRun final : public QObject {
    Q_OBJECT

  public:
    explicit CuttingRun(QObject* parent = nullptr);
    // Gives up, and waits for the search to notice.
    ~CuttingRun() override;

    // Begins anew with this; what was looked for before is given up and never told of.
    void start(CuttingInput input);
    // Ends the search with the best plan so far.
    void cancel();
    // How far the search is that goes on, or went on last; all 0 before it has a plan.
    PaperProgress progress() const;
    bool isRunning() const { return m_watcher.isRunning() || m_next; }

  signals:
    // A plan for what start() was given last: at most two, the second at least as good.
    void found(const matwright::app::FoundPlan& plan);
    // Nothing more comes.
    void ended();

  private:
    // What the search tells from its own thread.
    struct Told {
        std::mutex mutex;
        PaperProgress progress;
    };
    void begin(const CuttingInput& input);
    static void look(QPromise<FoundPlan>& promise, const CuttingInput& input,
                     const std::stop_token& stop, const std::shared_ptr<Told>& told);

    QFutureWatcher<FoundPlan> m_watcher;
    std::stop_source m_stop;
    std::shared_ptr<Told> m_told = std::make_shared<Told>();
    std::optional<CuttingInput> m_next;
    bool m_stopNext = false;  // it was cancelled before it began
};

}  // namespace matwright::app
