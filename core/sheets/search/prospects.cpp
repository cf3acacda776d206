// SPDX-License-Identifier: MIT
#include "core/sheets/search/prospects.h"

#include <algorithm>
#include <limits>

namespace matwright::sheets {

namespace {

constexpr std::size_t mostMeasures = 3;
constexpr std::int64_t mostBoundWork = 100'000'000;

// The share that a loadout can take more than the pieces weigh.
double spareOf(const Weights& weights, const Loadout& loadout, std::span<const int> counts) {
    double room = 0;
    for (std::size_t s = 0; s < loadout.size(); ++s) {
        room += loadout[s] * static_cast<double>(weights.capacity[s]);
    }
    return room / static_cast<double>(weights.total(counts)) - 1;
}

// Areas first, then what is best for a loadout.
std::vector<const Weights*> bestOf(const std::vector<Weights>& weights, std::span<const int> counts,
                                   std::span<const Loadout> loadouts) {
    std::vector<const Weights*> best{&weights.front()};
    for (const Loadout& loadout : loadouts) {
        const Weights* least = &*std::ranges::min_element(
            weights, {}, [&](const Weights& w) { return spareOf(w, loadout, counts); });
        if (best.size() < mostMeasures && std::ranges::find(best, least) == best.end()) {
            best.push_back(least);
        }
    }
    return best;
}

}  // namespace

Prospects::Prospects(const Reduced& reduced, const std::vector<Weights>& weights,
                     std::span<const int> counts, std::span<const Loadout> loadouts, Work& work) {
    for (std::size_t s = 0; s < reduced.stocks.size(); ++s) {
        if (std::ranges::any_of(loadouts, [&](const Loadout& l) { return l[s] > 0; })) {
            m_used.push_back(s);
            m_stocks.push_back(reduced.stocks[s]);
        }
    }
    for (const Weights* best : bestOf(weights, counts, loadouts)) {
        add(reduced, *best, counts, loadouts, work);
    }
}

bool Prospects::add(const Reduced& reduced, const Weights& weights, std::span<const int> counts,
                    std::span<const Loadout> loadouts, Work& work) {
    Measure measure{weights.ofKind, {}};
    std::int64_t total = 0;
    for (std::size_t k = 0; k < measure.ofKind.size(); ++k) {
        // Every kind has to count for its sides to be among the places of cuts.
        measure.ofKind[k] = std::max<std::int64_t>(measure.ofKind[k], 1);
        total += measure.ofKind[k] * counts[k];
    }
    for (const Stock& stock : m_stocks) {
        auto bounds = ValueBounds::made(reduced, stock, measure.ofKind, work, mostBoundWork);
        if (!bounds) {
            return false;
        }
        measure.onStocks.push_back({std::move(*bounds), std::numeric_limits<std::int64_t>::max()});
    }
    for (const Loadout& loadout : loadouts) {
        std::int64_t room = 0;
        for (std::size_t i = 0; i < m_used.size(); ++i) {
            room += loadout[m_used[i]] * measure.onStocks[i].bounds.whole();
        }
        for (std::size_t i = 0; i < m_used.size(); ++i) {
            OnStock& on = measure.onStocks[i];
            if (loadout[m_used[i]] > 0) {
                on.least = std::min(on.least, on.bounds.whole() - (room - total));
            }
        }
    }
    m_measures.push_back(std::move(measure));
    return true;
}

bool Prospects::keeps(std::span<const std::int64_t> weights, std::int32_t w, std::int32_t h) const {
    for (std::size_t i = 0; i < m_stocks.size(); ++i) {
        if (w > m_stocks[i].w || h > m_stocks[i].h) {
            continue;
        }
        bool kept = true;
        for (std::size_t m = 0; m < m_measures.size() && kept; ++m) {
            const OnStock& on = m_measures[m].onStocks[i];
            kept = weights[m] + on.bounds.around(w, h) >= on.least;
        }
        if (kept) {
            return true;
        }
    }
    return false;
}

bool Prospects::isTooMuch(std::span<const std::int64_t> weights) const {
    for (std::size_t i = 0; i < m_stocks.size(); ++i) {
        bool fits = true;
        for (std::size_t m = 0; m < m_measures.size() && fits; ++m) {
            fits = weights[m] <= m_measures[m].onStocks[i].bounds.whole();
        }
        if (fits) {
            return false;
        }
    }
    return true;
}

}  // namespace matwright::sheets
