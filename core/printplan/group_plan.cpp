// SPDX-License-Identifier: MIT
#include "core/printplan/group_plan.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>
#include <ranges>
#include <tuple>
#include <utility>

#include "core/printplan/sheet_packing.h"
#include "core/sheets/cut_area.h"

namespace matwright {

namespace {

using Indexes = std::vector<std::size_t>;

// What a group of prints may come out on; both 0: anywhere. Narrow wishes come first.
struct WishKey {
    std::int64_t paper = 0;
    std::int64_t printer = 0;
    friend auto operator<=>(const WishKey&, const WishKey&) = default;
};

WishKey wishOf(const PlannedPrint& print) {
    return {print.paper ? print.paper->value : 0, print.printer ? print.printer->value : 0};
}

Size uprightSize(Size size) {
    return size.isUpright() ? size : size.turned();
}

std::string countedSheets(std::size_t count) {
    return fmt::format("{} sheet{}", count, count == 1 ? "" : "s");
}

// So that some pieces cannot be cut, however long one looks.
bool isMoreThanAllPaper(const CutJob& job) {
    long double left = 0;  // many large papers are more than 64 bits hold
    for (const CutSheet& sheet : job.sheets) {
        if (!sheet.atHand) {
            return false;
        }
        const Size usable = usableArea(sheet, job.rules.kerf).size();
        left += usable.isPositive() ? static_cast<long double>(areaOf(usable)) * *sheet.atHand : 0;
    }
    for (const CutPiece& piece : job.pieces) {
        left -= static_cast<long double>(areaOf(piece.size)) * piece.count;
    }
    return left < 0;
}

std::int64_t priceOf(const std::vector<DraftSheet>& sheets,
                     const std::vector<PrintPaperKind>& kinds) {
    return std::accumulate(sheets.begin(), sheets.end(), std::int64_t{0},
                           [&](std::int64_t sum, const DraftSheet& sheet) {
                               return sum + kinds[sheet.kind].sheet.price;
                           });
}

// A part names its print; the print's own way up decides whether it lies turned.
void name(CutPart& part, std::size_t print, Size size) {
    part.piece = static_cast<int>(print);
    part.turned = part.area.size() != size;
}

class Drafting {
  public:
    Drafting(const std::vector<PlannedPrint>& prints, const std::vector<PrintPaperKind>& kinds,
             const PrintPlanLimits& limits, const std::stop_token& stop)
        : m_prints(prints), m_kinds(kinds), m_limits(limits), m_stop(stop) {
        for (const PrintPaperKind& kind : kinds) {
            m_left.push_back(kind.sheet.atHand);
        }
    }

    Result<Draft> run(const Indexes& those) {
        std::map<WishKey, Indexes> groups;
        for (const std::size_t index : those) {
            groups[wishOf(m_prints[index])].push_back(index);
        }
        m_share = std::max(1, 2 * static_cast<int>(groups.size()) - 1);
        // Papers before printers: what may only come out on one paper has the first choice of it.
        for (const auto& group : std::views::reverse(groups)) {
            if (auto planned = planBeside(group.second); !planned) {
                return std::unexpected(planned.error());
            }
        }
        tellBound(groups.size());
        return std::move(m_draft);
    }

  private:
    Result<void> planGroup(const Indexes& group, Draft& draft) {
        if (group.empty()) {
            return {};
        }
        const Indexes allowed = kindsFor(m_prints[group.front()]);
        const CutJob job = jobOf(group, allowed);
        CutLimits limits = m_limits.cuts;
        limits.time /= m_share;
        const Result<CutAnswer> answer = planCuts(job, limits, m_stop);
        if (!answer) {
            return std::unexpected(answer.error());
        }
        const bool isWhole = std::ranges::all_of(answer->plan.uncut, [](int n) { return n == 0; });
        m_bound = isWhole ? boundText(*answer, job) : countedSheets(answer->plan.sheets.size());
        draft.provedCheapest = answer->provedCheapest;
        draft.cancelled = draft.cancelled || answer->cancelled;
        take(*answer, group, allowed, draft);
        return {};
    }

    Indexes kindsFor(const PlannedPrint& print) const {
        Indexes allowed;
        for (std::size_t kind = 0; kind < m_kinds.size(); ++kind) {
            if (isWishedOn(print, m_kinds[kind])) {
                allowed.push_back(kind);
            }
        }
        return allowed;
    }

    // Prints of one size are one piece, in the order they are first met.
    CutJob jobOf(const Indexes& group, const Indexes& allowed) const {
        CutJob job;
        job.rules.usefulSide = usefulPrintSide;
        for (const std::size_t index : group) {
            const Size size = uprightSize(m_prints[index].print.paper);
            const auto found = std::ranges::find(job.pieces, size, &CutPiece::size);
            if (found == job.pieces.end()) {
                job.pieces.push_back({size, 1, true, 0});
            } else {
                ++found->count;
            }
        }
        for (const std::size_t kind : allowed) {
            job.sheets.push_back(m_kinds[kind].sheet);
            job.sheets.back().atHand = m_left[kind];
        }
        return job;
    }

    void take(const CutAnswer& answer, const Indexes& group, const Indexes& allowed, Draft& draft) {
        const CutJob job = jobOf(group, allowed);
        std::vector<Indexes> waiting(job.pieces.size());
        for (const std::size_t index : group) {
            const Size size = uprightSize(m_prints[index].print.paper);
            const auto piece = std::ranges::find(job.pieces, size, &CutPiece::size);
            waiting[static_cast<std::size_t>(piece - job.pieces.begin())].push_back(index);
        }
        for (Indexes& one : waiting) {
            std::ranges::reverse(one);
        }
        for (const SheetPlan& plan : answer.plan.sheets) {
            draft.sheets.push_back(
                named(plan, allowed[static_cast<std::size_t>(plan.sheet)], waiting));
            std::optional<int>& left = m_left[draft.sheets.back().kind];
            left = left ? std::optional(*left - 1) : left;
        }
        Indexes& left = isNoneLeft(answer, job) ? draft.uncut : draft.notFound;
        for (const Indexes& rest : waiting) {
            left.insert(left.end(), rest.rbegin(), rest.rend());
        }
    }

    // Whether it is certain that all papers are needed for what is on them.
    bool isNoneLeft(const CutAnswer& answer, const CutJob& job) const {
        const bool endedEarly = answer.endedByClock || answer.cancelled ||
                                answer.steps >= m_limits.cuts.steps - m_limits.cuts.steps / 8;
        return !endedEarly || isMoreThanAllPaper(job);
    }

    DraftSheet named(const SheetPlan& plan, std::size_t kind, std::vector<Indexes>& waiting) const {
        DraftSheet sheet{kind, plan, {}};
        sheet.cuts.sheet = static_cast<int>(kind);
        for (CutPart& part : sheet.cuts.parts) {
            if (part.use != CutPart::Use::Piece) {
                continue;
            }
            Indexes& rest = waiting[static_cast<std::size_t>(part.piece)];
            const std::size_t print = rest.back();
            rest.pop_back();
            sheet.prints.push_back(print);
            name(part, print, m_prints[print].print.paper);
        }
        return sheet;
    }

    // Two plans: as if the sheets there are were full, and with their room filled first.
    Result<void> planBeside(const Indexes& group) {
        const std::vector<std::optional<int>> left = m_left;
        Draft beside = m_draft;
        const Indexes rest = filled(beside, group);
        if (auto planned = planGroup(group, m_draft); !planned || rest.size() == group.size()) {
            return planned;
        }
        std::vector<std::optional<int>> leftApart = std::exchange(m_left, left);
        if (auto planned = planGroup(rest, beside); !planned) {
            return planned;
        }
        const auto rank = [this](const Draft& draft) {
            return std::tuple(draft.uncut.size() + draft.notFound.size(),
                              priceOf(draft.sheets, m_kinds), draft.sheets.size());
        };
        if (rank(beside) < rank(m_draft)) {
            m_draft = std::move(beside);
        } else {
            m_left = std::move(leftApart);
        }
        return {};
    }

    // Largest first into the room of the draft's sheets they may come out on; what is left.
    Indexes filled(Draft& draft, Indexes group) const {
        std::ranges::stable_sort(group, std::greater(), [this](std::size_t index) {
            return areaOf(m_prints[index].print.paper);
        });
        Indexes rest;
        for (const std::size_t index : group) {
            const bool laid = std::ranges::any_of(draft.sheets, [&](DraftSheet& sheet) {
                return isWishedOn(m_prints[index], m_kinds[sheet.kind]) &&
                       addTo(sheet, index, m_prints, m_kinds, m_limits.roomSteps, m_stop);
            });
            if (!laid) {
                rest.push_back(index);
            }
        }
        std::ranges::sort(rest);
        return rest;
    }

    void tellBound(std::size_t groups) {
        if (groups <= 1) {
            m_draft.bound = m_bound;
            return;
        }
        m_draft.provedCheapest = false;
        m_draft.bound = countedSheets(m_draft.sheets.size()) +
                        ", with prints where they are wished; not proved cheapest";
    }

    const std::vector<PlannedPrint>& m_prints;
    const std::vector<PrintPaperKind>& m_kinds;
    const PrintPlanLimits& m_limits;
    const std::stop_token& m_stop;
    std::vector<std::optional<int>> m_left;
    int m_share = 1;
    std::string m_bound;
    Draft m_draft;
};

}  // namespace

Result<Draft> draftSheets(const std::vector<PlannedPrint>& prints,
                          const std::vector<std::size_t>& those,
                          const std::vector<PrintPaperKind>& kinds, const PrintPlanLimits& limits,
                          const std::stop_token& stop) {
    return Drafting(prints, kinds, limits, stop).run(those);
}

bool addTo(DraftSheet& sheet, std::size_t print, const std::vector<PlannedPrint>& prints,
           const std::vector<PrintPaperKind>& kinds, std::uint64_t steps,
           const std::stop_token& stop) {
    if (stop.stop_requested()) {
        return false;
    }
    std::vector<std::size_t> all = sheet.prints;
    all.push_back(print);
    std::vector<Size> sizes;
    sizes.reserve(all.size());
    for (const std::size_t one : all) {
        sizes.push_back(prints[one].print.paper);
    }
    std::optional<SheetPlan> plan = packed(kinds[sheet.kind].sheet, sizes, steps, stop);
    if (!plan) {
        return false;
    }
    plan->sheet = static_cast<int>(sheet.kind);
    for (CutPart& part : plan->parts) {
        if (part.use == CutPart::Use::Piece) {
            const auto local = static_cast<std::size_t>(part.piece);
            name(part, all[local], sizes[local]);
        }
    }
    sheet.cuts = *std::move(plan);
    sheet.prints = std::move(all);
    return true;
}

}  // namespace matwright
