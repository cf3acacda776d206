// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/printplan/print_plan.h"
#include "tests/core/making/random_making.h"

namespace matwright::test {

// A page with a slot of each size, every slot with a photo of its own; photos are called by numbers
// from `firstPhoto`.
PlanPage madePage(const std::string& name, const std::vector<Size>& prints, int firstPhoto = 1);

// As a store would give them: the starting printers with ids from 1, papers from 11.
std::vector<Printer> keptPrinters(Unit unit = Unit::Inch);

PlanInput inputOf(std::vector<PlanPage> pages, std::vector<Printer> printers = keptPrinters());

// Pages, wishes, papers, prints on hand and ahead of all kinds, from the seed.
PlanInput randomInput(Random& random);

// Plans with quick limits; faults of the plan are failures of the test.
PrintPlan soundPlan(const PlanInput& input, const PrintPlanLimits& limits = {});

// The photo of a page's only, or n-th, placement, on hand as it is needed there.
PrintOnHand onHandFor(const PlanPage& page, std::size_t print, std::int64_t id);

}  // namespace matwright::test
