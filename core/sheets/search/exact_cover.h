// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/sheets/search/layout.h"
#include "core/sheets/search/loadout_trial.h"
#include "core/sheets/search/shape_table.h"

namespace matwright::sheets {

// Whether a handful of pieces goes on certain sheets, proved: all selections that fit on some sheet
// (ShapeTable), then branching over those to which nothing could be added, a loadout after the
// other (LoadoutTrial).
class ExactCover {
  public:
    // More selections than this are not tried.
    static constexpr std::size_t mostStates = 4'500'000;

    // `mostWaste`: what the loadouts that come into question have more than the pieces, in square
    // units. No sheet can then have more waste than this.
    ExactCover(const Reduced& reduced, const std::vector<Weights>& weights, std::int64_t mostWaste);

    static bool isTooLarge(const Reduced& reduced);

    using Outcome = LoadoutTrial::Outcome;
    // Found: on one of these loadouts. Impossible: on none. NotYet after about so many steps;
    // called again, it goes on. No loadout may have more waste than mostWaste.
    Outcome run(std::span<const Loadout> loadouts, std::uint64_t steps, Work& work);
    bool isFilled() const { return !m_lists.empty(); }
    // Of the last run that found something.
    const std::vector<FilledSheet>& filled() const { return m_filled; }

  private:
    bool prepare(std::uint64_t steps, Work& work);
    Outcome tryLoadout(const Loadout& loadout, std::uint64_t end, Work& work);
    bool isKnownTooSmall(const Loadout& loadout) const;
    bool layOut(const std::vector<LoadoutTrial::Choice>& choices);

    const Reduced& m_reduced;
    std::int64_t m_mostWaste;
    ShapeTable m_table;
    std::vector<SelectionList> m_lists;  // of each stock, once the table is complete
    Counts m_asked{};
    SmallWeights m_areas{};
    std::optional<LoadoutTrial> m_trial;
    Loadout m_tried;  // what m_trial is about
    std::vector<Loadout> m_tooSmall;
    std::vector<FilledSheet> m_filled;
};

}  // namespace matwright::sheets
