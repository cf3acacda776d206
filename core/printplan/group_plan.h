// SPDX-License-Identifier: MIT
#pragma once

#include "core/printplan/paper_kinds.h"

namespace matwright {

// Prints laid on one sheet; the cuts' pieces are indexes of the plan's prints.
struct DraftSheet {
    std::size_t kind = 0;
    SheetPlan cuts;
    std::vector<std::size_t> prints;
};

struct Draft {
    std::vector<DraftSheet> sheets;
    std::vector<std::size_t> uncut;  // no paper is left for them
    std::string bound;
    bool provedCheapest = false;
    bool cancelled = false;
};

// Plans all `prints` that fit somewhere (whyOnNone() has no word about them) over the kinds: prints
// with a wish where they are wished, then the others, beside them where that is cheaper.
Result<Draft> draftSheets(const std::vector<PlannedPrint>& prints,
                          const std::vector<std::size_t>& those,
                          const std::vector<PrintPaperKind>& kinds, const PrintPlanLimits& limits,
                          const std::stop_token& stop);

// The print on that sheet too, if it has room; the sheet is laid anew then.
bool addTo(DraftSheet& sheet, std::size_t print, const std::vector<PlannedPrint>& prints,
           const std::vector<PrintPaperKind>& kinds, std::uint64_t steps);

}  // namespace matwright
