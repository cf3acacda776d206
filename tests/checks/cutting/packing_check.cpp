// SPDX-License-Identifier: MIT
// Fewest sheets for the published bin packing classes, fixed and turnable. Prints a table:
// instance, best known, ours, bound, time. Ends with 1 where a plan is refused by the checker, a
// bound lies above a sheet count known to be possible, or the totals are not below those that an
// open solver reaches in 5 s an instance.
//
// packing_check [SECONDS AN INSTANCE, to begin with 1] [any|3] [part of an instance's name]
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "core/sheets/cut_planner.h"
#include "core/sheets/plan_check.h"
#include "tests/checks/cutting/cutting_data.h"
#include "tests/support/timed_bar.h"

namespace {

using namespace matwright;
using namespace matwright::test;

struct Totals {
    std::size_t ours = 0;
    int bound = 0;
    int bestKnown = 0;
    int openSolver3 = 0;
    int openSolverAny = 0;
    int proved = 0;
    int instances = 0;
    bool sound = true;
};

void run(const PackingInstance& instance, const CutLimits& limits, Totals& totals) {
    const auto start = std::chrono::steady_clock::now();
    const auto answer = planCuts(instance.job, limits);
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
    if (!answer) {
        std::printf("%s: %s\n", instance.name.c_str(), answer.error().text().c_str());
        totals.sound = false;
        return;
    }
    const auto faults = faultsOf(answer->plan, instance.job);
    const std::size_t ours = answer->plan.sheets.size();
    std::printf("%-20s %6d %6zu %6lld %8.3f%s\n", instance.name.c_str(), instance.bestKnown, ours,
                static_cast<long long>(answer->costBound), took.count(),
                answer->provedCheapest ? "  proved" : "");
    for (const std::string& fault : faults) {
        std::printf("  REFUSED %s\n", fault.c_str());
    }
    // The best known plans may need more than three stages.
    const bool threeStages = instance.job.rules.stages == CutStages::AtMostThree;
    const int enough = threeStages ? instance.openSolver3 : instance.bestKnown;
    if (answer->costBound > enough) {
        std::printf("  WRONG BOUND: %d sheets are known to be enough\n", enough);
    }
    totals.sound = totals.sound && faults.empty() && answer->costBound <= enough;
    totals.ours += ours;
    totals.bound += static_cast<int>(answer->costBound);
    totals.bestKnown += instance.bestKnown;
    totals.openSolver3 += instance.openSolver3;
    totals.openSolverAny += instance.openSolverAny;
    totals.proved += answer->provedCheapest;
    ++totals.instances;
}

}  // namespace

// What the check fails at, times the open solver's sheets: with the little time that a check has,
// and on a busy machine, a few sheets more are found than the bar allows. A plan that the checker
// refuses and a wrong bound always fail.
constexpr double guard = 1.02;

int main(int argc, char** argv) {
    if (timingsMeanNothing()) {
        return skippedBar;
    }
    const auto folder = cuttingData();
    if (!folder) {
        std::puts("SKIPPED: MATWRIGHT_CHECK_DATA names no folder with cutting instances");
        return skippedBar;
    }
    const double seconds = argc > 1 ? std::atof(argv[1]) : 1.0;
    const bool threeStages = argc > 2 && std::string(argv[2]) == "3";
    const std::string part = argc > 3 ? argv[3] : "";
    CutLimits limits;
    limits.time = std::chrono::milliseconds(static_cast<int>(seconds * 1000));
    limits.steps = static_cast<std::uint64_t>(1) << 62;
    bool met = true;
    bool isNear = true;
    for (const bool mayTurn : {false, true}) {
        std::printf("%s, %s, at most %g s an instance\n%-20s %6s %6s %6s %8s\n",
                    mayTurn ? "turnable" : "fixed", threeStages ? "three stages" : "any stages",
                    seconds, "instance", "best", "ours", "bound", "s");
        Totals totals;
        for (PackingInstance& instance : packingInstances(*folder, mayTurn)) {
            if (instance.name.find(part) != std::string::npos) {
                instance.job.rules.stages = threeStages ? CutStages::AtMostThree : CutStages::Any;
                run(instance, limits, totals);
            }
        }
        std::printf(
            "%s: %d instances, %zu sheets, bounds %d, proved %d; best known %d, open "
            "solver in 5 s: %d (three stages), %d (any)\n\n",
            mayTurn ? "turnable" : "fixed", totals.instances, totals.ours, totals.bound,
            totals.proved, totals.bestKnown, totals.openSolver3, totals.openSolverAny);
        met = met && totals.ours <= static_cast<std::size_t>(totals.openSolver3);
        isNear = isNear && totals.sound && guard * totals.openSolver3 >= double(totals.ours);
    }
    std::puts(met ? "bar met" : "bar NOT MET");
    return isNear ? 0 : 1;
}
