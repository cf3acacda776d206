// SPDX-License-Identifier: MIT
#include "core/sheets/cut_planner.h"

#include <algorithm>
#include <cassert>
#include <memory>

#include "core/sheets/plan_check.h"
#include "core/sheets/search/cut_tree.h"
#include "core/sheets/search/paper_search.h"
#include "core/sheets/search/reduced.h"

namespace matwright {

namespace {

using sheets::PaperSearch;
using sheets::Reduced;
using sheets::Work;

class Planning {
  public:
    Planning(const CutJob& job, const CutLimits& limits, const std::stop_token& stop,
             const std::function<void(const CutProgress&)>& progress)
        : m_job(job),
          m_progress(progress),
          m_papers(sheets::reducedByPaper(job, m_uncut)),
          // What is left of time and steps is for the leftover.
          m_work(limits.steps - limits.steps / 8, Work::Clock::now() + limits.time * 7 / 8, stop),
          m_after(limits.steps / 8, Work::Clock::now() + limits.time, stop) {}

    CutAnswer run() {
        for (const Reduced& paper : m_papers) {
            m_searches.push_back(std::make_unique<PaperSearch>(paper));
            m_searches.back()->layFirst(m_work);
        }
        tell();
        for (const auto& search : m_searches) {
            search->begin(m_work);
        }
        tell();
        search();
        for (const auto& search : m_searches) {
            search->gatherLeftover(m_after);
        }
        return answer();
    }

  private:
    // In turns with growing shares, so that a hard paper does not starve the others.
    void search() {
        std::uint64_t share = 20'000;
        const auto isOpen = [](const auto& search) { return !search->done(); };
        std::uint64_t before = 0;
        while (!m_work.over() && std::ranges::any_of(m_searches, isOpen)) {
            before = m_work.spent();
            for (const auto& search : m_searches) {
                search->goOn(share, m_work);
            }
            tell();
            share += share / 2;
            if (m_work.spent() == before) {
                return;
            }
        }
    }

    void tell() {
        CutProgress now;
        for (const auto& search : m_searches) {
            now.sheets += search->filled().size();
            now.cost += search->cost();
            now.costBound += search->bound();
        }
        const bool news = now.sheets != m_told.sheets || now.cost != m_told.cost ||
                          now.costBound != m_told.costBound;
        if (m_progress && news) {
            m_progress(now);
        }
        m_told = now;
    }

    CutAnswer answer() {
        CutAnswer answer;
        answer.plan.uncut = m_uncut;
        answer.provedCheapest = true;
        for (std::size_t i = 0; i < m_searches.size(); ++i) {
            const PaperSearch& search = *m_searches[i];
            sheets::CutTrees trees(m_job, m_papers[i]);
            for (const auto& sheet : search.filled()) {
                answer.plan.sheets.push_back(trees.sheetPlan(sheet));
            }
            addMissing(search, m_papers[i], answer.plan);
            answer.cost += search.cost();
            answer.costBound += search.bound();
            answer.provedCheapest = answer.provedCheapest && search.proved() && search.isComplete();
        }
        answer.steps = m_work.spent() + m_after.spent();
        answer.endedByClock = m_work.stoppedByClock() || m_after.stoppedByClock();
        answer.cancelled = m_work.cancelled() || m_after.cancelled();
        return answer;
    }

    // The last of a kind's copies are those that are not cut.
    static void addMissing(const PaperSearch& search, const Reduced& paper, CutPlan& plan) {
        for (std::size_t k = 0; k < paper.kinds.size(); ++k) {
            const auto& sources = paper.kinds[k].sources;
            for (int n = 0; n < search.missing()[k]; ++n) {
                ++plan.uncut[static_cast<std::size_t>(
                    sources[sources.size() - 1 - static_cast<std::size_t>(n)])];
            }
        }
    }

    const CutJob& m_job;
    const std::function<void(const CutProgress&)>& m_progress;
    std::vector<int> m_uncut;
    std::vector<Reduced> m_papers;
    Work m_work;
    Work m_after;
    std::vector<std::unique_ptr<PaperSearch>> m_searches;
    CutProgress m_told;
};

}  // namespace

Result<CutAnswer> planCuts(const CutJob& job, const CutLimits& limits, const std::stop_token& stop,
                           const std::function<void(const CutProgress&)>& progress) {
    if (auto fault = findFault(job)) {
        return std::unexpected(std::move(*fault));
    }
    CutAnswer answer = Planning(job, limits, stop, progress).run();
    assert(faultsOf(answer.plan, job).empty());
    return answer;
}

}  // namespace matwright
