// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <set>
#include <vector>

#include "app/printplan/plan_run.h"
#include "core/printplan/printed.h"

namespace matwright::app {

// Which sheets of which plans went to a printer, and which of them stand in the store as printed:
// every sheet is recorded once, and what was not printed is not recorded. A regular value; plans
// are told apart by where they lie.
class SentSheets {
  public:
    using Plan = std::shared_ptr<const ReadyPlan>;
    struct Part {
        Plan plan;
        PrintedPart part;
        friend bool operator==(const Part&, const Part&) = default;
    };

    // They went to a printer. Sheets of other plans that hold one of the same prints and were not
    // recorded are forgotten: they did not come out well.
    void add(const Plan& plan, const std::vector<std::size_t>& sheets);
    // What “They are printed” stands for while `shown` (may be null) is in the window: the sheets
    // that were sent and are not recorded. Where there are none, what is not recorded of `shown`,
    // because its files may have been printed elsewhere.
    std::vector<Part> toRecord(const Plan& shown) const;
    void markRecorded(const std::vector<Part>& parts);

    // Sheets that were sent and are not recorded.
    std::size_t waiting() const;
    // Sheets of this plan that were neither sent nor recorded.
    std::size_t left(const Plan& plan) const;
    bool hasRecorded(const Plan& plan) const;

    friend bool operator==(const SentSheets&, const SentSheets&) = default;

  private:
    struct Entry {
        Plan plan;
        std::set<std::size_t> sent;
        std::set<std::size_t> recorded;
        bool isTakenRecorded = false;
        std::set<std::size_t> waiting() const;
        friend bool operator==(const Entry&, const Entry&) = default;
    };
    Entry* find(const Plan& plan);
    const Entry* find(const Plan& plan) const;
    Entry& of(const Plan& plan);

    std::vector<Entry> m_entries;
};

// Everything that has changed when these parts have been printed, as one act.
PrintingDone printingDone(const std::vector<SentSheets::Part>& parts, const std::string& when);

// The prints of these parts that are kept on hand.
std::vector<AheadPrint> aheadOf(const std::vector<SentSheets::Part>& parts);

}  // namespace matwright::app
