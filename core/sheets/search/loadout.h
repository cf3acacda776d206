// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/sheets/search/reduced.h"
#include "core/sheets/search/weights.h"

namespace matwright::sheets {

// How many sheets of each stock.
using Loadout = std::vector<int>;

std::int64_t costOf(const Loadout& loadout, const Reduced& reduced);

// Which loadouts could be enough, as far as the weights can tell. Whatever holds the pieces passes.
class LoadoutCover {
  public:
    LoadoutCover(const Reduced& reduced, const std::vector<Weights>& weights,
                 std::span<const int> counts);

    bool passes(const Loadout& loadout) const;

    // The least cost of a loadout that passes, found by branching over the stocks; where there are
    // too many loadouts a weaker bound, from fractions of sheets. Never above the true least cost.
    // Nothing where even all sheets at hand do not pass.
    std::optional<std::int64_t> leastCost() const;

    // Those of at most this cost that pass and to which no further sheet could be added at that
    // cost: if none of them holds the pieces, no loadout of that cost does. Cheapest first. Nothing
    // where there are too many to list.
    std::optional<std::vector<Loadout>> largestWithin(std::int64_t cost) const;

  private:
    struct Need {
        std::int64_t total;
        const Weights* weights;
    };
    class Branching;

    std::int64_t fractionalCost() const;

    const Reduced& m_reduced;
    std::vector<Need> m_needs;
};

}  // namespace matwright::sheets
