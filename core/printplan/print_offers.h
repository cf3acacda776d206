// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/printplan/print_plan.h"

namespace matwright {

// A photo for the room that is left on a sheet.
struct PrintOffer {
    std::size_t sheet = 0;  // index of the plan's sheets
    AheadPrint print;
    double ppi = 0;
    std::string warning;  // from ppiText() below 200 ppi; else empty
    friend bool operator==(const PrintOffer&, const PrintOffer&) = default;
};

// Photos for the sheet's first room (the largest print that fits), best first: favourites of all
// pages that were never printed and are not in this plan, then prints that waiting pages need in
// just that size, with their own crop, then waiting pages' other photos. What no waiting page needs
// is cropped as crops begin (startingCrop), lying or upright as the photo is. A photo is offered
// once.
std::vector<PrintOffer> offersFor(const PrintPlan& plan, const PlanInput& input, std::size_t sheet);
// The same for a chosen size.
std::vector<PrintOffer> offersFor(const PrintPlan& plan, const PlanInput& input, std::size_t sheet,
                                  Size size);

// The input with that print made ahead; planning it again uses no more sheets than before.
PlanInput accepted(const PlanInput& input, const PrintOffer& offer);

}  // namespace matwright
