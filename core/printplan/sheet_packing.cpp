// SPDX-License-Identifier: MIT
#include "core/printplan/sheet_packing.h"

#include <algorithm>

#include "core/sheets/cut_area.h"

namespace matwright {

namespace {

bool areaFits(const CutSheet& sheet, const std::vector<Size>& prints) {
    const Size usable = usableArea(sheet, {}).size();
    if (!usable.isPositive()) {
        return false;
    }
    std::int64_t left = areaOf(usable);
    for (const Size print : prints) {
        left -= areaOf(print);
        if (left < 0 || (!usable.contains(print) && !usable.contains(print.turned()))) {
            return false;
        }
    }
    return true;
}

}  // namespace

std::optional<SheetPlan> packed(const CutSheet& sheet, const std::vector<Size>& prints,
                                std::uint64_t steps, const std::stop_token& stop) {
    if (stop.stop_requested() || !areaFits(sheet, prints)) {
        return std::nullopt;
    }
    CutJob job;
    job.rules.usefulSide = usefulPrintSide;
    job.sheets = {sheet};
    job.sheets.front().atHand = 1;
    for (const Size print : prints) {
        job.pieces.push_back({print, 1, true, 0});
    }
    const Result<CutAnswer> answer = planCuts(job, {steps, std::chrono::milliseconds(1000)}, stop);
    const bool isWhole = answer && answer->plan.sheets.size() == 1 &&
                         std::ranges::all_of(answer->plan.uncut, [](int n) { return n == 0; });
    return isWhole ? std::optional(answer->plan.sheets.front()) : std::nullopt;
}

}  // namespace matwright
