// SPDX-License-Identifier: MIT
#include "app/printplan/sent_sheets.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace matwright::app {

namespace {

// A print and the page it is for; empty for one that is kept on hand.
using Printed = std::pair<std::string, PrintLook>;

std::vector<Printed> printedOn(const ReadyPlan& ready, std::size_t sheet) {
    std::vector<Printed> prints;
    for (const Gang::Place& place : ready.plan.sheets[sheet].gang.places) {
        const PlannedPrint& print = ready.plan.prints[place.print];
        prints.emplace_back(print.page ? ready.input.pages[*print.page].name : std::string(),
                            lookOf(print.print, print.photo, ready.input.bleed));
    }
    return prints;
}

bool haveOneInCommon(const std::vector<Printed>& some, const std::vector<Printed>& others) {
    return std::ranges::any_of(some, [&](const Printed& print) {
        return std::ranges::find(others, print) != others.end();
    });
}

}  // namespace

std::set<std::size_t> SentSheets::Entry::waiting() const {
    std::set<std::size_t> sheets;
    std::ranges::set_difference(sent, recorded, std::inserter(sheets, sheets.end()));
    return sheets;
}

SentSheets::Entry* SentSheets::find(const Plan& plan) {
    const auto found = std::ranges::find(m_entries, plan, &Entry::plan);
    return found == m_entries.end() ? nullptr : &*found;
}

const SentSheets::Entry* SentSheets::find(const Plan& plan) const {
    const auto found = std::ranges::find(m_entries, plan, &Entry::plan);
    return found == m_entries.end() ? nullptr : &*found;
}

SentSheets::Entry& SentSheets::of(const Plan& plan) {
    if (Entry* entry = find(plan)) {
        return *entry;
    }
    return m_entries.emplace_back(Entry{plan, {}, {}});
}

void SentSheets::add(const Plan& plan, const std::vector<std::size_t>& sheets) {
    std::vector<Printed> prints;
    for (const std::size_t sheet : sheets) {
        std::ranges::move(printedOn(*plan, sheet), std::back_inserter(prints));
    }
    for (Entry& other : m_entries) {
        for (const std::size_t sheet :
             other.plan == plan ? std::set<std::size_t>() : other.waiting()) {
            if (haveOneInCommon(printedOn(*other.plan, sheet), prints)) {
                other.sent.erase(sheet);
            }
        }
    }
    of(plan).sent.insert(sheets.begin(), sheets.end());
}

std::vector<SentSheets::Part> SentSheets::toRecord(const Plan& shown) const {
    std::vector<Part> parts;
    for (const Entry& entry : m_entries) {
        if (std::set<std::size_t> sheets = entry.waiting(); !sheets.empty()) {
            parts.push_back({entry.plan, {std::move(sheets), !entry.isTakenRecorded}});
        }
    }
    if (!parts.empty() || !shown) {
        return parts;
    }
    const Entry* entry = find(shown);
    PrintedPart rest{{}, !entry || !entry->isTakenRecorded};
    for (std::size_t sheet = 0; sheet < shown->plan.sheets.size(); ++sheet) {
        if (!entry || !entry->recorded.contains(sheet)) {
            rest.sheets.insert(sheet);
        }
    }
    if (!rest.sheets.empty() || (rest.withTaken && !shown->plan.taken.empty())) {
        parts.push_back({shown, std::move(rest)});
    }
    return parts;
}

void SentSheets::markRecorded(const std::vector<Part>& parts) {
    for (const Part& part : parts) {
        Entry& entry = of(part.plan);
        entry.recorded.insert(part.part.sheets.begin(), part.part.sheets.end());
        entry.isTakenRecorded = entry.isTakenRecorded || part.part.withTaken;
    }
}

std::size_t SentSheets::waiting() const {
    std::size_t count = 0;
    for (const Entry& entry : m_entries) {
        count += entry.waiting().size();
    }
    return count;
}

std::size_t SentSheets::left(const Plan& plan) const {
    const Entry* entry = find(plan);
    std::size_t count = 0;
    for (std::size_t sheet = 0; sheet < plan->plan.sheets.size(); ++sheet) {
        const bool isDone =
            entry && (entry->sent.contains(sheet) || entry->recorded.contains(sheet));
        count += isDone ? 0U : 1U;
    }
    return count;
}

bool SentSheets::hasRecorded(const Plan& plan) const {
    const Entry* entry = find(plan);
    return entry && (!entry->recorded.empty() || entry->isTakenRecorded);
}

PrintingDone printingDone(const std::vector<SentSheets::Part>& parts, const std::string& when) {
    PrintingDone all;
    all.when = when;
    for (const SentSheets::Part& part : parts) {
        PrintingDone done =
            matwright::printingDone(part.plan->plan, part.plan->input, part.part, when);
        std::ranges::move(done.made, std::back_inserter(all.made));
        all.taken.merge(done.taken);
        for (const auto& [paper, count] : done.papersUsed) {
            all.papersUsed[paper] += count;
        }
    }
    return all;
}

std::vector<AheadPrint> aheadOf(const std::vector<SentSheets::Part>& parts) {
    std::vector<AheadPrint> prints;
    for (const SentSheets::Part& part : parts) {
        const ReadyPlan& ready = *part.plan;
        for (const std::size_t sheet : part.part.sheets) {
            for (const Gang::Place& place : ready.plan.sheets[sheet].gang.places) {
                if (const auto ahead = ready.plan.prints[place.print].ahead) {
                    prints.push_back(ready.input.ahead[*ahead]);
                }
            }
        }
    }
    return prints;
}

}  // namespace matwright::app
