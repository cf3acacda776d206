// SPDX-License-Identifier: MIT
#pragma once

#include "core/printplan/print_plan.h"

namespace matwright {

// What the pages of an input need, before any sheet is thought of.
struct CollectedPrints {
    std::vector<PlannedPrint> prints;  // to be printed, the pages' in their order; none ahead
    std::vector<TakenPrint> taken;
    std::vector<TherePrint> there;
    std::vector<AlikePrint> alike;
};

// A print on hand goes to one page only, the first that needs it.
CollectedPrints collectedPrints(const PlanInput& input);

}  // namespace matwright
