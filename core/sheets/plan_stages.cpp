// SPDX-License-Identifier: MIT
#include <algorithm>
#include <optional>

#include "core/sheets/plan_check.h"

namespace matwright {

namespace {

// The counted stages of a part, and the direction of its topmost counted cut.
struct Depth {
    int stages = 0;
    std::optional<CutDirection> direction;
};

class StageCount {
  public:
    StageCount(const SheetPlan& plan, const CutJob& job)
        : m_plan(plan),
          m_usable(usableArea(job.sheets[static_cast<std::size_t>(plan.sheet)], job.rules.kerf)),
          m_kerf(job.rules.kerf) {}

    Depth of(int index) const {
        if (index < 0 || part(index).use != CutPart::Use::Cut) {
            return {};
        }
        const CutPart& cut = part(index);
        if (takesOffMargin(cut)) {
            const Depth first = of(cut.first);
            return first.stages > 0 ? first : of(cut.second);
        }
        if (trimsOnePiece(cut)) {
            return {};
        }
        return {std::max(below(cut.first, cut.direction), below(cut.second, cut.direction)),
                cut.direction};
    }

  private:
    const CutPart& part(int index) const { return m_plan.parts[static_cast<std::size_t>(index)]; }

    int below(int index, CutDirection direction) const {
        const Depth depth = of(index);
        return depth.direction == direction ? depth.stages : depth.stages + 1;
    }

    bool takesOffMargin(const CutPart& cut) const {
        const Interval usable = cut.direction == CutDirection::Upright ? m_usable.x : m_usable.y;
        return cut.at + m_kerf <= usable.low || cut.at >= usable.high;
    }

    bool isPiece(int index) const { return index >= 0 && part(index).use == CutPart::Use::Piece; }
    bool isWaste(int index) const { return index < 0 || part(index).use == CutPart::Use::Leftover; }

    bool trimsOnePiece(const CutPart& cut) const {
        return (isPiece(cut.first) && isWaste(cut.second)) ||
               (isPiece(cut.second) && isWaste(cut.first));
    }

    const SheetPlan& m_plan;
    Rect m_usable;
    Length m_kerf;
};

}  // namespace

int stagesOf(const SheetPlan& plan, const CutJob& job) {
    return StageCount(plan, job).of(0).stages;
}

}  // namespace matwright
