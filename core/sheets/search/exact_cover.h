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
    // `loadouts`: all that come into question. What they have more than the pieces limits what is
    // worth trying.
    ExactCover(const Reduced& reduced, const std::vector<Weights>& weights,
               std::span<const Loadout> loadouts, Work& work);

    static bool isTooLarge(const Reduced& reduced);
    // About how many selections' splits the table looks at, if nothing could be left out.
    static double splits(const Reduced& reduced);

    using Outcome = LoadoutTrial::Outcome;
    // Found: on one of these loadouts. Impossible: on none. NotYet after about so many steps;
    // called again, it goes on. Each has to be within one of those it was made for.
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
    Prospects m_prospects;
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
