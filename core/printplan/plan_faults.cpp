// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "core/printplan/print_plan.h"
#include "core/sheets/plan_check.h"

namespace matwright {

namespace {

class Looking {
  public:
    Looking(const PrintPlan& plan, const PlanInput& input) : m_plan(plan), m_input(input) {}

    std::vector<std::string> run() {
        m_faults = matwright::faultsOf(cutPlanOf(m_plan), m_plan.job);
        for (std::size_t i = 0; i < m_plan.sheets.size(); ++i) {
            sheet(m_plan.sheets[i], i);
        }
        onceEach();
        pagesServed();
        papersAtHand();
        return std::move(m_faults);
    }

  private:
    template <typename... Parts>
    void fault(fmt::format_string<Parts...> format, Parts&&... parts) {
        m_faults.push_back(fmt::format(format, std::forward<Parts>(parts)...));
    }

    void sheet(const PrintSheet& sheet, std::size_t index) {
        const Printer* printer = find(m_input.printers, sheet.printer);
        const PrinterPaper* paper = printer != nullptr ? find(*printer, sheet.paper) : nullptr;
        if (paper == nullptr || paper->size != sheet.size || sheet.gang.sheet != sheet.size) {
            fault("Sheet {} is on no paper of the printers.", index + 1);
            return;
        }
        ++m_used[sheet.paper];
        const auto pieces =
            std::ranges::count(sheet.cuts.parts, CutPart::Use::Piece, &CutPart::use);
        if (pieces != std::ssize(sheet.gang.places) || pieces == 0) {
            fault("Sheet {} has {} pieces and {} prints.", index + 1, pieces,
                  sheet.gang.places.size());
        }
        for (const Gang::Place& place : sheet.gang.places) {
            ++m_laid[place.print];
            this->place(place, sheet, *paper, index);
        }
    }

    void place(const Gang::Place& place, const PrintSheet& sheet, const PrinterPaper& paper,
               std::size_t index) {
        if (place.print >= m_plan.prints.size()) {
            fault("Sheet {} has a print that is not there.", index + 1);
            return;
        }
        const PlannedPrint& print = m_plan.prints[place.print];
        const Rect area =
            Rect::at(place.at, place.turned ? print.print.paper.turned() : print.print.paper);
        const bool isPiece = std::ranges::any_of(sheet.cuts.parts, [&](const CutPart& part) {
            return part.use == CutPart::Use::Piece && part.area == area &&
                   part.piece == static_cast<int>(place.print);
        });
        const SheetMargin reach = paper.reach();
        const Rect reached{{reach.left, sheet.size.width - reach.right},
                           {reach.top, sheet.size.height - reach.bottom}};
        if (!isPiece || !reached.contains(area)) {
            fault("On sheet {} print {} lies where no piece is cut or printed.", index + 1,
                  place.print + 1);
        }
        if ((print.printer && *print.printer != sheet.printer) ||
            (print.paper && *print.paper != sheet.paper)) {
            fault("Print {} is not where it was wished.", place.print + 1);
        }
    }

    void onceEach() {
        for (const LeftOutPrint& left : m_plan.leftOut) {
            ++m_laid[left.print];
        }
        for (std::size_t i = 0; i < m_plan.prints.size(); ++i) {
            if (m_laid[i] != 1) {
                fault("Print {} is there {} times.", i + 1, m_laid[i]);
            }
            if (m_plan.prints[i].page.has_value() == m_plan.prints[i].ahead.has_value()) {
                fault("Print {} is for a page or ahead, not both or none.", i + 1);
            }
        }
    }

    // Every print of every page, by its slot and what it shows: planned or taken, as often.
    void pagesServed() {
        PrintOptions options;
        options.bleed = m_input.bleed;
        std::vector<std::pair<std::size_t, Print>> served;
        for (const PlannedPrint& print : m_plan.prints) {
            if (print.page) {
                served.emplace_back(*print.page, print.print);
            }
        }
        for (const TakenPrint& taken : m_plan.taken) {
            served.emplace_back(taken.page, taken.print);
            sameOnHand(taken);
        }
        for (const TherePrint& there : m_plan.there) {
            served.emplace_back(there.page, there.print);
            usedThere(there);
        }
        for (std::size_t page = 0; page < m_input.pages.size(); ++page) {
            for (Print& print : printsOf(m_input.pages[page].making, options)) {
                const auto found = std::ranges::find(served, std::pair(page, std::move(print)));
                if (found == served.end()) {
                    fault("A print of page {} is missing.", page + 1);
                } else {
                    served.erase(found);
                }
            }
        }
        if (!served.empty()) {
            fault("{} prints are of no page.", served.size());
        }
    }

    void sameOnHand(const TakenPrint& taken) {
        const auto found = std::ranges::find(m_input.onHand, taken.onHand, &PrintOnHand::id);
        const Making& making = m_input.pages[taken.page].making;
        if (found == m_input.onHand.end() || found->state != PrintState::OnHand ||
            found->look !=
                lookOf(taken.print, making.work.photos.at(taken.print.photo), m_input.bleed)) {
            fault("A print that is taken is not on hand.");
        }
        if (++m_taken[taken.onHand] > 1) {
            fault("One print on hand is taken twice.");
        }
    }

    void usedThere(const TherePrint& there) {
        const auto found = std::ranges::find(m_input.used, there.used, &PrintOnHand::id);
        const PlanPage& page = m_input.pages[there.page];
        if (found == m_input.used.end() || found->state != PrintState::Used ||
            found->page != page.name ||
            found->look !=
                lookOf(there.print, page.making.work.photos.at(there.print.photo), m_input.bleed)) {
            fault("A print that is said to be there is not used by its page.");
        }
        if (++m_taken[there.used] > 1) {
            fault("One print is there twice.");
        }
    }

    void papersAtHand() {
        for (const auto& [id, used] : m_used) {
            for (const Printer& printer : m_input.printers) {
                const PrinterPaper* paper = find(printer, id);
                if (paper != nullptr && paper->atHand && used > *paper->atHand) {
                    fault("{} of {} are used, {} are at hand.", used, paper->name, *paper->atHand);
                }
            }
        }
    }

    const PrintPlan& m_plan;
    const PlanInput& m_input;
    std::vector<std::string> m_faults;
    std::map<std::size_t, int> m_laid;
    std::map<PrinterPaperId, int> m_used;
    std::map<PrintOnHandId, int> m_taken;
};

}  // namespace

std::vector<std::string> faultsOf(const PrintPlan& plan, const PlanInput& input) {
    return Looking(plan, input).run();
}

}  // namespace matwright
