// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/cutpicture/planned_sheet.h"

namespace matwright {

struct PlanPagesOptions {
    Size paper = {Length::inches(8, 1, 2), Length::inches(11)};  // Letter, or A4; 4 in or more
    Length margin = Length::inches(0, 1, 2);                     // most printers leave 1/4 in blank
    std::string title;                                           // "Cutting plan for Beach"
    std::vector<std::string> summary;  // lines under the title: what to buy, what is not cut, …
};

// The plan on paper: title, summary and the caution about blades once; then for each sheet its
// heading, its picture, its pieces and the steps, each with a small picture and a sentence. Steps
// are never parted from their picture, a heading never stands alone at the foot of a page, and a
// sheet that goes on says so. At least one page. Texts too long for a line are broken between
// words.
std::vector<Drawing> planPages(std::span<const PlannedSheet> sheets,
                               const PlanPagesOptions& options);

}  // namespace matwright
