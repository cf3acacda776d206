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
    std::vector<std::size_t> uncut;     // no paper is left for them
    std::vector<std::size_t> notFound;  // the search ended before there was room for them
    std::string bound;                  // of the sheets only
    bool provedCheapest = false;
    bool cancelled = false;
};

// Plans all `prints` that fit somewhere (whyOnNone() has no word about them) over the kinds: prints
// with a wish where they are wished, the narrowest first, then the others; each beside those before
// it, on kinds it may come out on, where that is cheaper.
Result<Draft> draftSheets(const std::vector<PlannedPrint>& prints,
                          const std::vector<std::size_t>& those,
                          const std::vector<PrintPaperKind>& kinds, const PrintPlanLimits& limits,
                          const std::stop_token& stop);

// The print on that sheet too, if it has room; the sheet is laid anew then. No room is looked for
// once `stop` is asked for.
bool addTo(DraftSheet& sheet, std::size_t print, const std::vector<PlannedPrint>& prints,
           const std::vector<PrintPaperKind>& kinds, std::uint64_t steps,
           const std::stop_token& stop = {});

}  // namespace matwright
