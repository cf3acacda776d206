// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <cstdint>
#include <functional>
#include <stop_token>
#include <string>

#include "core/sheets/cut_plan.h"

namespace matwright {

// How much is done for a plan. Steps count work, not time: whether one search ends by the step
// limit or because everything is proved, the same job and the same limit give the same answer on
// every machine. The clock only ends a search early; then the answer (which is always a whole plan)
// may depend on the machine, and CutAnswer::endedByClock says so.
struct CutLimits {
    std::uint64_t steps = 200'000'000;
    std::chrono::milliseconds time{1000};
};

struct CutProgress {
    std::size_t sheets = 0;
    std::int64_t cost = 0;
    std::int64_t costBound = 0;
};

struct CutAnswer {
    CutPlan plan;
    std::int64_t cost = 0;
    // No plan that cuts all these pieces costs less.
    std::int64_t costBound = 0;
    // Proved: cost == costBound and nothing is uncut that fits on a sheet. The leftover and the
    // number of cuts are good, not proved best.
    bool provedCheapest = false;
    std::uint64_t steps = 0;
    bool endedByClock = false;
    bool cancelled = false;
};

// Plans how the job's pieces are cut from its sheets. Goals in order: as few pieces uncut as can be
// (by area), cheapest sheets, the largest useful leftover in one piece, few cuts and settings.
// Every answer is a plan that passes faultsOf(); papers are planned on their own and stand in the
// plan in ascending order.
//
// A first plan is there at once and is made better until it is proved or a limit is reached; a stop
// request ends with the best plan so far and `cancelled`. `progress` is called from this thread
// whenever a better plan or bound is known; it may be empty. Safe to run off the window's thread:
// nothing is shared.
//
// Errors: what findFault() says about the job.
Result<CutAnswer> planCuts(const CutJob& job, const CutLimits& limits = {},
                           const std::stop_token& stop = {},
                           const std::function<void(const CutProgress&)>& progress = {});

// "2 sheets, proved fewest", "5 sheets, at least 4 are needed", "3 sheets, 1 piece not cut". Where
// sheets differ in price: "3 sheets, proved cheapest", or "at most 4 % above the cheapest".
std::string boundText(const CutAnswer& answer, const CutJob& job);

}  // namespace matwright
