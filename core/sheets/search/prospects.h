// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "core/sheets/search/loadout.h"
#include "core/sheets/search/value_bounds.h"
#include "core/sheets/search/weights.h"

namespace matwright::sheets {

// Which groups of pieces are of use where only certain loadouts come into question. What a
// loadout's sheets can take more than all pieces weigh is the most that one sheet may take less
// than it could; a group whose weight and all that can be cut around it (ValueBounds) falls short
// of that is on no sheet of a plan. With areas for weights that is a limit to waste; with the
// weights that ask for most it is a narrower one.
class Prospects {
  public:
    // Of the areas and the few of the weights that leave the loadouts least; weights no better
    // than others are passed over.
    Prospects(const Reduced& reduced, const std::vector<Weights>& weights,
              std::span<const int> counts, std::span<const Loadout> loadouts, Work& work);

    std::size_t measures() const { return m_measures.size(); }
    std::int64_t weightOf(std::size_t measure, std::size_t kind) const {
        return m_measures[measure].ofKind[kind];
    }
    // Whether a box that holds pieces of these weights, one by measure, can be part of a plan.
    bool keeps(std::span<const std::int64_t> weights, std::int32_t w, std::int32_t h) const;
    // Whether no sheet at all takes so much.
    bool isTooMuch(std::span<const std::int64_t> weights) const;

  private:
    struct OnStock {
        ValueBounds bounds;
        std::int64_t least = 0;  // that a sheet of it has to take
    };
    struct Measure {
        std::vector<std::int64_t> ofKind;
        std::vector<OnStock> onStocks;  // as m_stocks
    };

    bool add(const Reduced& reduced, const Weights& weights, std::span<const int> counts,
             std::span<const Loadout> loadouts, Work& work);

    std::vector<std::size_t> m_used;  // stocks that are in a loadout
    std::vector<Stock> m_stocks;
    std::vector<Measure> m_measures;
};

}  // namespace matwright::sheets
