// SPDX-License-Identifier: MIT
#pragma once

#include "core/printplan/group_plan.h"

namespace matwright {

// Upright sizes to look for room for, best first: those in use from the largest, then the rest of
// the catalogue's from the largest.
std::vector<Size> sizesToLookFor(const PlanInput& input, const std::vector<PlannedPrint>& prints);

// See PrintSheet::room; what was found until `stop` is asked for.
std::vector<RoomFor> roomOn(const DraftSheet& sheet, const std::vector<PlannedPrint>& prints,
                            const std::vector<PrintPaperKind>& kinds,
                            const std::vector<Size>& sizes, std::uint64_t steps,
                            const std::stop_token& stop = {});

}  // namespace matwright
