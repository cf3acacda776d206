// SPDX-License-Identifier: MIT
#include "core/printplan/print_plan.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>

#include "core/printplan/collected_prints.h"
#include "core/printplan/group_plan.h"
#include "core/printplan/sheet_packing.h"
#include "core/printplan/sheet_room.h"
#include "core/sheets/cut_area.h"

namespace matwright {

namespace {

// What is printed has to be recorded afterwards: nothing is planned that the store would refuse.
std::optional<Error> recordFault(const PlanInput& input, const CollectedPrints& collected) {
    for (const PlanPage& page : input.pages) {
        if (std::optional<Error> fault = pageNameFault(page.name)) {
            return fault;
        }
    }
    const auto faultOf = [&](const Print& print, const Photo& photo) {
        return findFault(MadePrint{lookOf(print, photo, input.bleed), "", ""});
    };
    for (const PlannedPrint& print : collected.prints) {
        if (std::optional<Error> fault = faultOf(print.print, print.photo)) {
            fault->where = input.pages[*print.page].name;
            return fault;
        }
    }
    for (const AheadPrint& ahead : input.ahead) {
        if (std::optional<Error> fault = faultOf(ahead.print, ahead.photo)) {
            fault->where = ahead.why;
            return fault;
        }
    }
    return std::nullopt;
}

std::optional<Error> inputFault(const PlanInput& input, std::size_t prints) {
    for (const Printer& printer : input.printers) {
        if (std::optional<Error> fault = findFault(printer)) {
            return fault;
        }
    }
    for (const PlanPage& page : input.pages) {
        if (page.name.empty()) {
            return Error{ErrorCode::BadText,
                         "A page to be printed has no name; its prints could not be told from "
                         "those made ahead. Give it one.",
                         ""};
        }
    }
    for (const PrintWish& wish : input.wishes) {
        if (wish.page >= input.pages.size()) {
            return Error{ErrorCode::OutOfRange, "A printer is wished for a page that is not there.",
                         ""};
        }
    }
    if (prints + input.ahead.size() > static_cast<std::size_t>(maxPiecesOfJob)) {
        return Error{
            ErrorCode::OutOfRange,
            fmt::format("At most {} prints are planned at once. Plan fewer pages.", maxPiecesOfJob),
            ""};
    }
    return std::nullopt;
}

class Planning {
  public:
    Planning(const PlanInput& input, CollectedPrints collected, const PrintPlanLimits& limits,
             const std::stop_token& stop)
        : m_input(input), m_limits(limits), m_stop(stop), m_kinds(paperKinds(input.printers)) {
        m_plan.prints = std::move(collected.prints);
        m_plan.taken = std::move(collected.taken);
        m_plan.there = std::move(collected.there);
        m_plan.alike = std::move(collected.alike);
    }

    Result<PrintPlan> run() {
        Result<Draft> draft = draftSheets(m_plan.prints, printable(), m_kinds, m_limits, m_stop);
        if (!draft) {
            return std::unexpected(draft.error());
        }
        leaveOut(*draft);
        const std::vector<Size> sizes = sizesToLookFor(m_input, m_plan.prints);
        for (std::size_t index = 0; index < m_input.ahead.size(); ++index) {
            layAhead(index, draft->sheets);
        }
        std::ranges::stable_sort(draft->sheets, {}, &DraftSheet::kind);
        for (const DraftSheet& sheet : draft->sheets) {
            m_plan.sheets.push_back(finished(sheet, sizes));
        }
        m_plan.bound = boundOf(*draft);
        m_plan.bleed = m_input.bleed;
        m_plan.provedCheapest = draft->provedCheapest;
        m_plan.cancelled = draft->cancelled || m_stop.stop_requested();
        m_plan.job = job();
        std::ranges::sort(m_plan.leftOut, {}, &LeftOutPrint::print);
        return std::move(m_plan);
    }

  private:
    void leaveOut(const Draft& draft) {
        for (const std::size_t print : draft.uncut) {
            m_plan.leftOut.push_back(
                {print,
                 "There is no paper left for this print. Count what is at hand again, or let "
                 "it come out by another printer."});
        }
        for (const std::size_t print : draft.notFound) {
            m_plan.leftOut.push_back(
                {print,
                 "No room was found for this print before the search ended. Look longer, count "
                 "what is at hand again, or let it come out by another printer."});
        }
    }

    std::string boundOf(const Draft& draft) const {
        if (m_plan.prints.empty()) {
            return "nothing to print";
        }
        const std::string sheets = draft.sheets.empty() ? "no sheets" : draft.bound;
        const std::size_t left = m_plan.leftOut.size();
        return left == 0
                   ? sheets
                   : fmt::format("{}, {} print{} not printed", sheets, left, left == 1 ? "" : "s");
    }

    // Those that fit somewhere; the others are told why not.
    std::vector<std::size_t> printable() {
        std::vector<std::size_t> those;
        for (std::size_t i = 0; i < m_plan.prints.size(); ++i) {
            if (auto why = whyOnNone(m_plan.prints[i], m_kinds, m_input.printers)) {
                m_plan.leftOut.push_back({i, *std::move(why)});
            } else {
                those.push_back(i);
            }
        }
        return those;
    }

    std::int64_t freeArea(const DraftSheet& sheet) const {
        std::int64_t left = areaOf(m_kinds[sheet.kind].sheet.size);
        for (const std::size_t print : sheet.prints) {
            left -= areaOf(m_plan.prints[print].print.paper);
        }
        return left;
    }

    // Into the smallest room that holds it.
    void layAhead(std::size_t index, std::vector<DraftSheet>& sheets) {
        const AheadPrint& ahead = m_input.ahead[index];
        const std::size_t print = m_plan.prints.size();
        m_plan.prints.push_back({std::nullopt, index, ahead.print, ahead.photo, {}, {}});
        std::vector<DraftSheet*> order;
        order.reserve(sheets.size());
        for (DraftSheet& sheet : sheets) {
            order.push_back(&sheet);
        }
        std::ranges::stable_sort(order, {},
                                 [this](const DraftSheet* sheet) { return freeArea(*sheet); });
        for (DraftSheet* sheet : order) {
            if (addTo(*sheet, print, m_plan.prints, m_kinds, m_limits.roomSteps, m_stop)) {
                return;
            }
        }
        m_plan.leftOut.push_back(
            {print, m_stop.stop_requested()
                        ? "Planning was stopped before there was room for this print, so it is not "
                          "printed this time. Plan anew to have it looked for."
                        : "No sheet has room for this print any more, so it is not printed this "
                          "time. Take it out again, or offer it to another plan."});
    }

    PrintSheet finished(const DraftSheet& draft, const std::vector<Size>& sizes) const {
        const PrintPaperKind& kind = m_kinds[draft.kind];
        PrintSheet sheet{kind.printer,          kind.paper, kind.sheet.size, draft.cuts,
                         {kind.sheet.size, {}}, {},         kind.borderless};
        for (const CutPart& part : draft.cuts.parts) {
            if (part.use == CutPart::Use::Piece) {
                sheet.gang.places.push_back(
                    {static_cast<std::size_t>(part.piece), part.area.topLeft(), part.turned});
            }
        }
        if (!m_stop.stop_requested()) {
            sheet.room = roomOn(draft, m_plan.prints, m_kinds, sizes, m_limits.roomSteps, m_stop);
        }
        return sheet;
    }

    CutJob job() const {
        CutJob job;
        job.rules.usefulSide = usefulPrintSide;
        for (const PlannedPrint& print : m_plan.prints) {
            job.pieces.push_back({print.print.paper, 1, true, 0});
        }
        for (const PrintPaperKind& kind : m_kinds) {
            job.sheets.push_back(kind.sheet);
        }
        return job;
    }

    const PlanInput& m_input;
    const PrintPlanLimits& m_limits;
    const std::stop_token& m_stop;
    std::vector<PrintPaperKind> m_kinds;
    PrintPlan m_plan;
};

}  // namespace

Result<PrintPlan> planPrints(const PlanInput& input, const PrintPlanLimits& limits,
                             const std::stop_token& stop) {
    CollectedPrints collected = collectedPrints(input);
    if (std::optional<Error> fault = inputFault(input, collected.prints.size())) {
        return std::unexpected(*std::move(fault));
    }
    if (std::optional<Error> fault = recordFault(input, collected)) {
        return std::unexpected(*std::move(fault));
    }
    Result<PrintPlan> plan = Planning(input, std::move(collected), limits, stop).run();
    assert(!plan || faultsOf(*plan, input).empty());
    return plan;
}

CutPlan cutPlanOf(const PrintPlan& plan) {
    CutPlan cuts;
    cuts.uncut.assign(plan.prints.size(), 0);
    for (const PrintSheet& sheet : plan.sheets) {
        cuts.sheets.push_back(sheet.cuts);
    }
    for (const LeftOutPrint& left : plan.leftOut) {
        cuts.uncut[left.print] = 1;
    }
    return cuts;
}

}  // namespace matwright
