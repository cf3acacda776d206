// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/sheets/cut_plan.h"
#include "core/sheets/search/layout.h"

namespace matwright::sheets {

// Turns layouts into sheets with cuts in real lengths: the margins come off first, then what is
// left over across the groups, then group by group; what is left over behind them stays last, so
// that the trimmer is set to the pieces' own measures. Equal parts stand beside each other, so that
// one setting serves several cuts. Each piece of a kind goes to the next of the
// job's pieces that the kind stands for.
class CutTrees {
  public:
    CutTrees(const CutJob& job, const Reduced& reduced);

    SheetPlan sheetPlan(const FilledSheet& filled);

  private:
    // Where what is left over goes off first, if there is some both ways.
    enum class Trim { LargestFirst, UprightFirst, LevelFirst, WithinStages };

    SheetPlan planned(const FilledSheet& filled, Trim trim) const;
    void handOut(SheetPlan& plan);
    int cutMargins(SheetPlan& plan, const Rect& usable) const;
    void place(SheetPlan& plan, int part, const Layout& layout, std::int32_t group,
               Trim trim) const;
    void placeGroups(SheetPlan& plan, int part, const Layout& layout, std::int32_t group,
                     Trim trim) const;
    // Cuts the part at the place; gives the part before or behind, the other is left over.
    int cut(SheetPlan& plan, int part, CutDirection direction, Length at, bool keepFirst) const;
    Size realSize(const Group& group) const;

    const CutJob& m_job;
    const Reduced& m_reduced;
    std::vector<std::size_t> m_handedOut;  // copies of each kind so far
};

}  // namespace matwright::sheets
