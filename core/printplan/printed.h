// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/printers/printing_store.h"
#include "core/printplan/print_plan.h"

namespace matwright {

// Some sheets of a plan.
struct PrintedPart {
    std::set<std::size_t> sheets;  // indexes of the plan's
    bool withTaken = true;         // the prints on hand that its pages take, too
    friend bool operator==(const PrintedPart&, const PrintedPart&) = default;
};
// What has changed when these sheets of a plan have been printed: the pages' prints are made and
// used, those ahead are on hand, prints taken from on hand are used, papers come off what is at
// hand. `once` as in PrintingDone.
PrintingDone printingDone(const PrintPlan& plan, const PlanInput& input, const PrintedPart& part,
                          const std::string& when, const std::string& once = "");

// The same for all sheets of the plan.
PrintingDone printingDone(const PrintPlan& plan, const PlanInput& input, const std::string& when,
                          const std::string& once = "");

// The same, kept in one transaction. The number of the change, for PrintingStore::undo(); nothing
// where `once` was recorded before. Where prints to be
// taken are not on hand any more: NotFound, and nothing is recorded; with `gone` they are told
// there and all the rest is recorded, because the sheets are printed. Their pages then lack these
// prints.
Result<std::optional<std::int64_t>> recordPrinted(PrintingStore& store, const PrintPlan& plan,
                                                  const PlanInput& input, const std::string& when,
                                                  const std::string& once = "",
                                                  std::vector<PrintOnHandId>* gone = nullptr);

}  // namespace matwright
