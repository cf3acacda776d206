// SPDX-License-Identifier: MIT
#include "core/sheets/cut_plan.h"

#include <algorithm>
#include <set>

#include "core/sheets/cut_area.h"

namespace matwright {

namespace {

Length placeOfCut(const CutPart& part) {
    return part.at - (part.direction == CutDirection::Upright ? part.area.left() : part.area.top());
}

}  // namespace

std::int64_t costOf(const CutPlan& plan, const CutJob& job) {
    std::int64_t cost = 0;
    for (const SheetPlan& sheet : plan.sheets) {
        cost += job.sheets[static_cast<std::size_t>(sheet.sheet)].price;
    }
    return cost;
}

LargestLeftover largestLeftover(const CutPlan& plan, const CutJob& job) {
    LargestLeftover largest;
    for (std::size_t s = 0; s < plan.sheets.size(); ++s) {
        const auto& kind = job.sheets[static_cast<std::size_t>(plan.sheets[s].sheet)];
        const Rect usable = usableArea(kind, job.rules.kerf);
        for (const CutPart& part : plan.sheets[s].parts) {
            const Size size = part.area.size();
            if (part.use == CutPart::Use::Leftover && usable.contains(part.area) &&
                std::min(size.width, size.height) >= job.rules.usefulSide &&
                areaOf(size) > areaOf(largest.area.size())) {
                largest = {static_cast<int>(s), part.area};
            }
        }
    }
    return largest;
}

int cutsOf(const SheetPlan& sheet) {
    return static_cast<int>(std::ranges::count(sheet.parts, CutPart::Use::Cut, &CutPart::use));
}

int cutsOf(const CutPlan& plan) {
    int cuts = 0;
    for (const SheetPlan& sheet : plan.sheets) {
        cuts += cutsOf(sheet);
    }
    return cuts;
}

int settingsOf(const SheetPlan& sheet) {
    std::set<Length> settings;
    for (const CutPart& part : sheet.parts) {
        if (part.use == CutPart::Use::Cut) {
            settings.insert(placeOfCut(part));
        }
    }
    return static_cast<int>(settings.size());
}

int settingsOf(const CutPlan& plan) {
    int settings = 0;
    for (const SheetPlan& sheet : plan.sheets) {
        settings += settingsOf(sheet);
    }
    return settings;
}

}  // namespace matwright
