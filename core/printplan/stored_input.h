// SPDX-License-Identifier: MIT
#pragma once

#include "core/printers/printing_store.h"
#include "core/printplan/plan_input.h"

namespace matwright {

// What the person's store says for a plan: all printers, prints on hand, prints that pages have
// already, photos that were printed before, and the sizes of those prints. Pages are the caller's.
Result<PlanInput> storedInput(PrintingStore& store);

}  // namespace matwright
