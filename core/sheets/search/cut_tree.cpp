// SPDX-License-Identifier: MIT
#include "core/sheets/search/cut_tree.h"

#include <algorithm>
#include <array>
#include <tuple>

#include "core/sheets/cut_area.h"
#include "core/sheets/plan_check.h"

namespace matwright::sheets {

namespace {

CutPart& partOf(SheetPlan& plan, int index) {
    return plan.parts[static_cast<std::size_t>(index)];
}

// The members of a chain of equal joints: rows in rows, stacks in stacks.
void collectChain(const Layout& layout, std::int32_t index, Group::Form form,
                  std::vector<std::int32_t>& members) {
    const Group& group = layout[static_cast<std::size_t>(index)];
    if (group.form != form) {
        members.push_back(index);
        return;
    }
    collectChain(layout, group.first, form, members);
    collectChain(layout, group.second, form, members);
}

}  // namespace

CutTrees::CutTrees(const CutJob& job, const Reduced& reduced)
    : m_job(job), m_reduced(reduced), m_handedOut(reduced.kinds.size(), 0) {}

Size CutTrees::realSize(const Group& group) const {
    return {Length::fromTicks((group.w - m_reduced.kerf) * m_reduced.unit),
            Length::fromTicks((group.h - m_reduced.kerf) * m_reduced.unit)};
}

SheetPlan CutTrees::sheetPlan(const FilledSheet& filled) {
    const bool limited = m_job.rules.stages == CutStages::AtMostThree;
    const auto rank = [&](const SheetPlan& plan) {
        const CutPlan alone{{plan}, {}};
        return std::tuple(limited && stagesOf(plan, m_job) > 3,
                          -areaOf(largestLeftover(alone, m_job).area.size()), cutsOf(plan),
                          settingsOf(plan));
    };
    SheetPlan best = planned(filled, Trim::WithinStages);
    for (const Trim trim : {Trim::LargestFirst, Trim::UprightFirst, Trim::LevelFirst}) {
        SheetPlan other = planned(filled, trim);
        if (rank(other) < rank(best)) {
            best = std::move(other);
        }
    }
    handOut(best);
    return best;
}

void CutTrees::handOut(SheetPlan& plan) {
    for (CutPart& part : plan.parts) {
        if (part.use == CutPart::Use::Piece) {
            const auto kind = static_cast<std::size_t>(part.piece);
            part.piece = m_reduced.kinds[kind].sources[m_handedOut[kind]++];
            part.turned =
                m_job.pieces[static_cast<std::size_t>(part.piece)].size != part.area.size();
        }
    }
}

SheetPlan CutTrees::planned(const FilledSheet& filled, Trim trim) const {
    const Stock& stock = m_reduced.stocks[static_cast<std::size_t>(filled.stock)];
    const CutSheet& sheet = m_job.sheets[static_cast<std::size_t>(stock.source)];
    SheetPlan plan;
    plan.sheet = stock.source;
    CutPart whole;
    whole.area = Rect::at({}, sheet.size);
    plan.parts.push_back(whole);
    if (!filled.layout.empty()) {
        const int inner = cutMargins(plan, usableArea(sheet, m_job.rules.kerf));
        place(plan, inner, filled.layout, static_cast<std::int32_t>(filled.layout.size()) - 1,
              trim);
    }
    return plan;
}

int CutTrees::cutMargins(SheetPlan& plan, const Rect& usable) const {
    const Length kerf = m_job.rules.kerf;
    const Rect sheet = plan.parts.front().area;
    int part = 0;
    if (usable.left() > sheet.left()) {
        part = cut(plan, part, CutDirection::Upright, usable.left() - kerf, false);
    }
    if (usable.right() < sheet.right()) {
        part = cut(plan, part, CutDirection::Upright, usable.right(), true);
    }
    if (usable.top() > sheet.top()) {
        part = cut(plan, part, CutDirection::Level, usable.top() - kerf, false);
    }
    if (usable.bottom() < sheet.bottom()) {
        part = cut(plan, part, CutDirection::Level, usable.bottom(), true);
    }
    return part;
}

int CutTrees::cut(SheetPlan& plan, int part, CutDirection direction, Length at,
                  bool keepFirst) const {
    const Rect area = partOf(plan, part).area;
    const bool upright = direction == CutDirection::Upright;
    const Interval whole = upright ? area.x : area.y;
    const Interval before{whole.low, at};
    const Interval behind{std::min(at + m_job.rules.kerf, whole.high), whole.high};
    std::array<int, 2> sides{-1, -1};
    for (std::size_t i = 0; i < 2; ++i) {
        const Interval& side = i == 0 ? before : behind;
        if (side.length().isPositive()) {
            CutPart child;
            child.area = area;
            (upright ? child.area.x : child.area.y) = side;
            sides[i] = static_cast<int>(plan.parts.size());
            plan.parts.push_back(child);
        }
    }
    CutPart& parent = partOf(plan, part);
    parent.use = CutPart::Use::Cut;
    parent.direction = direction;
    parent.at = at;
    parent.first = sides[0];
    parent.second = sides[1];
    return keepFirst ? sides[0] : sides[1];
}

void CutTrees::place(SheetPlan& plan, int part, const Layout& layout, std::int32_t index,
                     Trim trim) const {
    const Group& group = layout[static_cast<std::size_t>(index)];
    const Size size = realSize(group);
    const Rect area = partOf(plan, part).area;
    const Length beside = area.size().width - size.width;
    const Length below = area.size().height - size.height;
    const bool piece = group.form == Group::Form::Piece;
    // Across a row, a cut of its own would be a stage of its own.
    const bool within = trim == Trim::WithinStages && !piece;
    const bool mayUpright = beside.isPositive() && !(within && group.form == Group::Form::Stack);
    const bool mayLevel = below.isPositive() && !(within && group.form == Group::Form::Row);
    const bool goesOffLast = (group.form == Group::Form::Row && !mayLevel) ||
                             (group.form == Group::Form::Stack && !mayUpright);
    if (goesOffLast || (!mayUpright && !mayLevel)) {
        placeGroups(plan, part, layout, index, trim);
        return;
    }
    bool uprightFirst = areaOf({beside, area.size().height}) >= areaOf({area.size().width, below});
    if (trim == Trim::UprightFirst || trim == Trim::LevelFirst) {
        uprightFirst = trim == Trim::UprightFirst;
    }
    const bool upright = mayUpright && (uprightFirst || !mayLevel);
    const int kept = upright
                         ? cut(plan, part, CutDirection::Upright, area.left() + size.width, true)
                         : cut(plan, part, CutDirection::Level, area.top() + size.height, true);
    place(plan, kept, layout, index, trim);
}

void CutTrees::placeGroups(SheetPlan& plan, int part, const Layout& layout, std::int32_t index,
                           Trim trim) const {
    const Group& group = layout[static_cast<std::size_t>(index)];
    if (group.form == Group::Form::Piece) {
        CutPart& done = partOf(plan, part);
        done.use = CutPart::Use::Piece;
        done.piece = group.kind;
        return;
    }
    const bool row = group.form == Group::Form::Row;
    std::vector<std::int32_t> members;
    collectChain(layout, index, group.form, members);
    std::ranges::stable_sort(members, std::greater{}, [&](std::int32_t m) {
        const Group& member = layout[static_cast<std::size_t>(m)];
        return row ? std::pair(member.w, member.h) : std::pair(member.h, member.w);
    });
    for (const std::int32_t member : members) {
        const Size size = realSize(layout[static_cast<std::size_t>(member)]);
        const Rect area = partOf(plan, part).area;
        if (row ? area.size().width == size.width : area.size().height == size.height) {
            place(plan, part, layout, member, trim);  // the last one, and nothing is left over
            return;
        }
        const int rest =
            row ? cut(plan, part, CutDirection::Upright, area.left() + size.width, false)
                : cut(plan, part, CutDirection::Level, area.top() + size.height, false);
        place(plan, partOf(plan, part).first, layout, member, trim);
        part = rest;
    }
}

}  // namespace matwright::sheets
