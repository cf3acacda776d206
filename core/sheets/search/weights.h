// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "core/sheets/search/reduced.h"
#include "core/sheets/search/work.h"

namespace matwright::sheets {

// A way to weigh pieces such that no sheet can take more than its capacity, however it is cut.
// Everything that is proved about fewest or cheapest sheets follows from such weights.
struct Weights {
    std::vector<std::int64_t> ofKind;
    std::vector<std::int64_t> capacity;  // of each stock

    std::int64_t total(std::span<const int> counts) const;
};

// Pieces' areas, and products of dual feasible functions of the two sides (Fekete & Schepers 2001,
// u(k) and U(e); the function of Carlier, Clautiaux & Moukrim 2007 for pieces above and below a
// half; from memory), seen from each stock. A piece that may be turned weighs the less of its two
// ways. Capacities are tightened by the dynamic programme of CutTable. The best few, best first.
std::vector<Weights> dualFeasibleWeights(const Reduced& reduced, Work& work);

// Weights moved towards those of the linear programme over all patterns with unlimited copies
// (Gilmore & Gomory 1961), by multiplicative steps: what the best pattern holds gets cheaper
// (Plotkin, Shmoys & Tardos 1995; from memory). Every step's weights are valid, as the capacity is
// the pattern's exact value. Keeps the better ones in `found`.
void improveWeights(const Reduced& reduced, std::vector<Weights>& found, int rounds, Work& work);

// The weights that ask for most of one loadout: the same linear programme for these sheets alone,
// solved to its end (LoadoutScale), patterns made as they are asked for. Adds the best to `found`.
// True where they show that the loadout is too small. Ends early after about so many steps, and
// does nothing for too many kinds.
bool sharpenWeights(const Reduced& reduced, std::span<const int> loadout,
                    std::vector<Weights>& found, std::uint64_t steps, Work& work);

// The most of these weights each stock can take; nothing where the tables would be too large.
bool setCapacities(const Reduced& reduced, Weights& weights, Work& work);

}  // namespace matwright::sheets
