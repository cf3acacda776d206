// SPDX-License-Identifier: MIT
#include "core/sheets/plan_check.h"

#include <algorithm>

#include <fmt/format.h>

namespace matwright {

namespace {

using Faults = std::vector<std::string>;

class SheetCheck {
  public:
    SheetCheck(const SheetPlan& plan, const CutJob& job, std::string name, Faults& faults)
        : m_plan(plan), m_job(job), m_name(std::move(name)), m_faults(faults) {}

    // How often each piece is cut from this sheet is added to `cut`.
    void run(std::vector<int>& cut) {
        if (m_plan.sheet < 0 || m_plan.sheet >= static_cast<int>(m_job.sheets.size())) {
            say("it is no sheet of the job");
            return;
        }
        m_sheet = &m_job.sheets[static_cast<std::size_t>(m_plan.sheet)];
        if (m_plan.parts.empty() || m_plan.parts.front().area != Rect::at({}, m_sheet->size)) {
            say("its first part is not the whole sheet");
            return;
        }
        checkParents();
        for (const CutPart& part : m_plan.parts) {
            checkPart(part, cut);
        }
        checkOverlaps();
    }

  private:
    void say(const std::string& what) { m_faults.push_back(m_name + ": " + what + "."); }

    void checkParents() {
        std::vector<int> parents(m_plan.parts.size(), 0);
        for (std::size_t i = 0; i < m_plan.parts.size(); ++i) {
            const CutPart& part = m_plan.parts[i];
            if (part.use != CutPart::Use::Cut) {
                continue;
            }
            for (const int child : {part.first, part.second}) {
                if (child == -1) {
                    continue;
                }
                if (child <= static_cast<int>(i) || child >= static_cast<int>(parents.size())) {
                    say("a cut names a part that is not there or stands before it");
                } else {
                    ++parents[static_cast<std::size_t>(child)];
                }
            }
        }
        for (std::size_t i = 1; i < parents.size(); ++i) {
            if (parents[i] != 1) {
                say(fmt::format("part {} comes from {} cuts instead of one", i, parents[i]));
            }
        }
    }

    void checkPart(const CutPart& part, std::vector<int>& cut) {
        if (part.use == CutPart::Use::Cut) {
            checkCut(part);
        } else if (part.use == CutPart::Use::Piece) {
            checkPiece(part, cut);
        }
        if (!part.area.size().isPositive()) {
            say("a part has no area");
        }
    }

    void checkCut(const CutPart& part) {
        const bool upright = part.direction == CutDirection::Upright;
        const Interval whole = upright ? part.area.x : part.area.y;
        if (part.at < whole.low || part.at >= whole.high ||
            part.at + m_job.rules.kerf <= whole.low) {
            say("a cut does not lie within its part");
            return;
        }
        checkSide(part, part.first, {whole.low, part.at});
        checkSide(part, part.second,
                  {std::min(part.at + m_job.rules.kerf, whole.high), whole.high});
    }

    void checkSide(const CutPart& part, int child, Interval left) {
        if (child == -1) {
            if (left.length().isPositive()) {
                say("what a cut leaves on one side is not accounted for");
            }
            return;
        }
        if (child < 0 || child >= static_cast<int>(m_plan.parts.size())) {
            return;
        }
        Rect expected = part.area;
        (part.direction == CutDirection::Upright ? expected.x : expected.y) = left;
        if (m_plan.parts[static_cast<std::size_t>(child)].area != expected) {
            say("a part is not what its cut leaves");
        }
    }

    void checkPiece(const CutPart& part, std::vector<int>& cut) {
        if (part.piece < 0 || part.piece >= static_cast<int>(m_job.pieces.size())) {
            say("a piece is cut that nobody asked for");
            return;
        }
        const CutPiece& piece = m_job.pieces[static_cast<std::size_t>(part.piece)];
        ++cut[static_cast<std::size_t>(part.piece)];
        const std::string who = fmt::format("piece {}", part.piece + 1);
        if (part.area.size() != (part.turned ? piece.size.turned() : piece.size)) {
            say(who + " does not come out at its size");
        }
        if (part.turned && !piece.mayTurn) {
            say(who + " is turned and may not be");
        }
        if (piece.paper != m_sheet->paper) {
            say(who + " is cut from another paper");
        }
        if (!clearOfMargin(part.area)) {
            say(who + " lies in the margin");
        }
    }

    bool clearOfMargin(const Rect& area) const {
        const SheetMargin& m = m_sheet->margin;
        return area.left() >= m.left && area.top() >= m.top &&
               area.right() <= m_sheet->size.width - m.right &&
               area.bottom() <= m_sheet->size.height - m.bottom;
    }

    // From the areas alone, so that a mistake in the tree's own rules cannot hide it.
    void checkOverlaps() {
        std::vector<Rect> pieces;
        for (const CutPart& part : m_plan.parts) {
            if (part.use == CutPart::Use::Piece) {
                pieces.push_back(part.area);
            }
        }
        const Rect sheet = Rect::at({}, m_sheet->size);
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            if (!sheet.contains(pieces[i])) {
                say("a piece leaves the sheet");
            }
            for (std::size_t k = i + 1; k < pieces.size(); ++k) {
                if (pieces[i].interiorIntersects(pieces[k])) {
                    say("two pieces overlap");
                }
            }
        }
    }

    const SheetPlan& m_plan;
    const CutJob& m_job;
    const CutSheet* m_sheet = nullptr;
    std::string m_name;
    Faults& m_faults;
};

void checkCounts(const CutPlan& plan, const CutJob& job, const std::vector<int>& cut,
                 Faults& faults) {
    if (plan.uncut.size() != job.pieces.size()) {
        faults.emplace_back("The list of uncut pieces is not as long as the job's pieces.");
        return;
    }
    for (std::size_t i = 0; i < job.pieces.size(); ++i) {
        if (plan.uncut[i] < 0 || cut[i] + plan.uncut[i] != job.pieces[i].count) {
            faults.push_back(
                fmt::format("Piece {} is cut {} times and left uncut {} times instead "
                            "of {} in all.",
                            i + 1, cut[i], plan.uncut[i], job.pieces[i].count));
        }
    }
}

void checkStock(const CutPlan& plan, const CutJob& job, Faults& faults) {
    for (std::size_t k = 0; k < job.sheets.size(); ++k) {
        const auto taken = std::ranges::count(plan.sheets, static_cast<int>(k), &SheetPlan::sheet);
        if (job.sheets[k].atHand && taken > *job.sheets[k].atHand) {
            faults.push_back(fmt::format("Of sheet {} {} are taken and {} are at hand.", k + 1,
                                         taken, *job.sheets[k].atHand));
        }
    }
}

}  // namespace

std::vector<std::string> faultsOf(const CutPlan& plan, const CutJob& job) {
    Faults faults;
    std::vector<int> cut(job.pieces.size(), 0);
    for (std::size_t i = 0; i < plan.sheets.size(); ++i) {
        SheetCheck(plan.sheets[i], job, fmt::format("Sheet {} of the plan", i + 1), faults)
            .run(cut);
    }
    checkCounts(plan, job, cut, faults);
    checkStock(plan, job, faults);
    if (faults.empty() && job.rules.stages == CutStages::AtMostThree) {
        for (std::size_t i = 0; i < plan.sheets.size(); ++i) {
            if (const int stages = stagesOf(plan.sheets[i], job); stages > 3) {
                faults.push_back(
                    fmt::format("Sheet {} of the plan needs {} stages.", i + 1, stages));
            }
        }
    }
    return faults;
}

}  // namespace matwright
