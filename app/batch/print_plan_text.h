// SPDX-License-Identifier: MIT
#pragma once

#include "app/batch/json_values.h"
#include "core/printplan/print_offers.h"

namespace matwright::app {

// A plan with what it was made from, and what may fill its room.
struct PlannedPrints {
    PlanInput input;
    PrintPlan plan;
    std::vector<std::vector<PrintOffer>> offers;  // by sheet
};

// How lengths of a sheet are shown: in millimetres where its paper is sold so.
Scale scaleFor(Size paper);

// Every sheet with its prints and steps, what is taken from prints on hand, left out and offered.
std::string planText(const PlannedPrints& prints);

// {"bound", "provedCheapest", "sheets": [{"printer", "paper", "size", "prints": [{"page" or null,
// "slot", "name", "photo", "size", "left", "top", "turned", "ppi"}], "steps": [sentences], "room":
// [{"size", "count", "text"}], "offers": [{"photo", "why", "size", "ppi", "warning"}]}], "taken":
// [{"page", "name", "print"}], "there": the same, "alike": [{"name", "print"}], "leftOut":
// [{"name", "why"}]}
Json planJson(const PlannedPrints& prints);

}  // namespace matwright::app
