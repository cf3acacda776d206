// SPDX-License-Identifier: MIT
#include "core/paperplan/paper_progress.h"

#include <algorithm>
#include <vector>

namespace matwright {

PaperProgress paperProgress(const CutProgress& progress, const CutJob& job) {
    std::vector<CutSheet> dearestFirst;
    std::ranges::copy_if(job.sheets, std::back_inserter(dearestFirst), [&](const CutSheet& sheet) {
        return 0 < sheet.price && sheet.price <= progress.cost;
    });
    std::ranges::sort(dearestFirst, std::greater(), &CutSheet::price);
    std::int64_t missing = progress.costBound;
    std::int64_t atLeast = 0;
    for (const CutSheet& sheet : dearestFirst) {
        if (missing <= 0) {
            break;
        }
        const std::int64_t needed = (missing + sheet.price - 1) / sheet.price;
        const std::int64_t taken = std::min<std::int64_t>(needed, sheet.atHand.value_or(needed));
        atLeast += taken;
        missing -= taken * sheet.price;
    }
    return {progress.sheets, std::min(static_cast<std::size_t>(atLeast), progress.sheets)};
}

}  // namespace matwright
