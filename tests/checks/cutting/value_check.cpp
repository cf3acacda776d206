// SPDX-License-Identifier: MIT
// The most valuable cut of one sheet for the small published instances. Prints a table: instance,
// variant, published optimum, ours, bound, time. Ends with 1 where one is not proved equal to the
// published optimum, takes more than 10 s of processor time, or its plan is refused by the checker.
//
// value_check [part of an instance's name]
#include <algorithm>
#include <cstdio>
#include <ctime>

#include "core/sheets/most_valuable.h"
#include "core/sheets/plan_check.h"
#include "tests/checks/cutting/cutting_data.h"
#include "tests/support/timed_bar.h"

namespace {

using namespace matwright;
using namespace matwright::test;

bool run(const ValueInstance& instance) {
    ValueJob job{instance.sheet, {}, {}};
    for (const auto& piece : instance.pieces) {
        job.pieces.push_back({piece.size,
                              piece.copies == 0 ? std::nullopt : std::optional(piece.copies),
                              piece.value, instance.mayTurn});
    }
    CutLimits limits;
    // The bar is 10 s on one core; others may be using the machine.
    limits.time = std::chrono::seconds(40);
    limits.steps = static_cast<std::uint64_t>(1) << 62;
    const std::clock_t start = std::clock();
    const auto answer = mostValuableCut(job, limits);
    const double took = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    if (!answer) {
        std::printf("%s: %s\n", instance.name.c_str(), answer.error().text().c_str());
        return false;
    }
    const auto faults = faultsOf(answer->plan, cutJobOf(job, answer->counts));
    std::int64_t value = 0;
    for (std::size_t i = 0; i < answer->counts.size(); ++i) {
        value += answer->counts[i] * instance.pieces[i].value;
    }
    const bool met = answer->proved && value == answer->value && value == instance.published &&
                     faults.empty() && took <= 10;
    std::printf("%-8s %-20s %10lld %10lld %10lld %8.3f%s\n", instance.name.c_str(),
                instance.variant.c_str(), static_cast<long long>(instance.published),
                static_cast<long long>(answer->value), static_cast<long long>(answer->bound), took,
                met ? "" : "  NOT MET");
    for (const std::string& fault : faults) {
        std::printf("  REFUSED %s\n", fault.c_str());
    }
    return met;
}

}  // namespace

int main(int argc, char** argv) {
    if (timingsMeanNothing()) {
        return skippedBar;
    }
    const auto folder = cuttingData();
    if (!folder) {
        std::puts("SKIPPED: MATWRIGHT_CHECK_DATA names no folder with cutting instances");
        return skippedBar;
    }
    std::printf("%-8s %-20s %10s %10s %10s %8s\n", "instance", "variant", "published", "ours",
                "bound", "s");
    const std::string part = argc > 1 ? argv[1] : "";
    bool met = true;
    for (const ValueInstance& instance : valueInstances(*folder)) {
        if (instance.name.find(part) != std::string::npos) {
            met = run(instance) && met;
        }
    }
    std::puts(met ? "met" : "NOT MET");
    return met ? 0 : 1;
}
