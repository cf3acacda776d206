// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/cutpicture/planned_sheet.h"
#include "core/printplan/print_plan.h"

namespace matwright {

// A sheet of prints as core/cutpicture draws it: numbered cut lines, the prints by name, the steps
// in order, and what room is left as a note. Its name says printer and paper: "Sheet 1: 4 × 6 in,
// without borders (Small printer)". Precondition: `sheet` is one of the plan's.
PlannedSheet drawnSheet(const PrintPlan& plan, const PlanInput& input, std::size_t sheet,
                        Scale scale);

// What the print is called on its sheet, in the picture and in the sentences: "A", "B", …; empty
// where it is not on that sheet.
std::string letterOn(const PrintSheet& sheet, std::size_t print);

// "beach: 2 Focal photo, for Harbour", "beach, on hand afterwards"
std::string printText(const PlannedPrint& print, const PlanInput& input);

}  // namespace matwright
