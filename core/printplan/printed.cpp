// SPDX-License-Identifier: MIT
#include "core/printplan/printed.h"

#include <filesystem>

namespace matwright {

PrintingDone printingDone(const PrintPlan& plan, const PlanInput& input, const std::string& when,
                          const std::string& once) {
    PrintingDone done;
    done.when = when;
    done.once = once;
    for (const PrintSheet& sheet : plan.sheets) {
        ++done.papersUsed[sheet.paper];
        for (const Gang::Place& place : sheet.gang.places) {
            const PlannedPrint& print = plan.prints[place.print];
            done.made.push_back({lookOf(print.print, print.photo),
                                 std::filesystem::path(print.photo.path).filename().string(),
                                 print.page ? input.pages[*print.page].name : ""});
        }
    }
    for (const TakenPrint& taken : plan.taken) {
        done.taken.emplace(taken.onHand, input.pages[taken.page].name);
    }
    return done;
}

Result<bool> recordPrinted(PrintingStore& store, const PrintPlan& plan, const PlanInput& input,
                           const std::string& when, const std::string& once) {
    return store.record(printingDone(plan, input, when, once));
}

}  // namespace matwright
