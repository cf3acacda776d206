// SPDX-License-Identifier: MIT
#include "core/sheets/search/loadout.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/sheets/search/indexes.h"

namespace matwright::sheets {

namespace {

constexpr int mostLoadouts = 20'000;
constexpr std::int64_t noCost = std::numeric_limits<std::int64_t>::max();

}  // namespace

std::int64_t costOf(const Loadout& loadout, const Reduced& reduced) {
    std::int64_t cost = 0;
    for (std::size_t s = 0; s < loadout.size(); ++s) {
        cost += loadout[s] * reduced.stocks[s].price;
    }
    return cost;
}

LoadoutCover::LoadoutCover(const Reduced& reduced, const std::vector<Weights>& weights,
                           std::span<const int> counts)
    : m_reduced(reduced) {
    for (const Weights& w : weights) {
        m_needs.push_back({w.total(counts), &w});
    }
}

bool LoadoutCover::passes(const Loadout& loadout) const {
    return std::ranges::all_of(m_needs, [&](const Need& need) {
        std::int64_t sum = 0;
        for (std::size_t s = 0; s < loadout.size(); ++s) {
            sum += loadout[s] * need.weights->capacity[s];
        }
        return sum >= need.total;
    });
}

// Goes through loadouts stock by stock, the dearest first.
class LoadoutCover::Branching {
  public:
    Branching(const LoadoutCover& cover)
        : m_cover(cover),
          m_now(cover.m_reduced.stocks.size(), 0),
          m_order(indexesBelow(m_now.size())) {
        std::ranges::stable_sort(m_order, std::greater{},
                                 [&](std::size_t s) { return stock(s).price; });
    }

    std::int64_t leastCost() {
        lookForLeast(0, 0);
        return m_tried > mostLoadouts ? noCost : m_least;
    }

    bool collect(std::int64_t cost, std::vector<Loadout>& found) {
        lookForLargest(0, cost, found);
        return m_tried <= mostLoadouts;
    }

  private:
    const Stock& stock(std::size_t s) const { return m_cover.m_reduced.stocks[s]; }

    bool restPasses(std::size_t depth) {
        Loadout all = m_now;
        for (std::size_t d = depth; d < m_order.size(); ++d) {
            all[m_order[d]] = stock(m_order[d]).count;
        }
        return m_cover.passes(all);
    }

    void lookForLeast(std::size_t depth, std::int64_t cost) {
        if (cost >= m_least || ++m_tried > mostLoadouts || !restPasses(depth)) {
            return;
        }
        if (m_cover.passes(m_now)) {
            m_least = cost;
            return;
        }
        if (depth == m_order.size()) {
            return;
        }
        const std::size_t s = m_order[depth];
        for (int n = 0; n <= stock(s).count; ++n) {
            m_now[s] = n;
            lookForLeast(depth + 1, cost + n * stock(s).price);
        }
        m_now[s] = 0;
    }

    void lookForLargest(std::size_t depth, std::int64_t budget, std::vector<Loadout>& found) {
        if (++m_tried > mostLoadouts || !restPasses(depth)) {
            return;
        }
        if (depth == m_order.size()) {
            if (isLargest(budget)) {
                found.push_back(m_now);
            }
            return;
        }
        const std::size_t s = m_order[depth];
        for (int n = 0; n <= stock(s).count && n * stock(s).price <= budget; ++n) {
            m_now[s] = n;
            lookForLargest(depth + 1, budget - n * stock(s).price, found);
        }
        m_now[s] = 0;
    }

    bool isLargest(std::int64_t budget) const {
        for (std::size_t s = 0; s < m_now.size(); ++s) {
            if (m_now[s] < stock(s).count && stock(s).price <= budget) {
                return false;
            }
        }
        return true;
    }

    const LoadoutCover& m_cover;
    Loadout m_now;
    std::vector<std::size_t> m_order;
    std::int64_t m_least = noCost;
    int m_tried = 0;
};

std::optional<std::int64_t> LoadoutCover::leastCost() const {
    Loadout all;
    for (const Stock& stock : m_reduced.stocks) {
        all.push_back(stock.count);
    }
    if (!passes(all)) {
        return std::nullopt;
    }
    const std::int64_t least = Branching(*this).leastCost();
    return least == noCost ? fractionalCost() : least;
}

std::int64_t LoadoutCover::fractionalCost() const {
    double most = 0;
    for (const Need& need : m_needs) {
        std::vector<std::size_t> order = indexesBelow(m_reduced.stocks.size());
        std::ranges::stable_sort(order, std::less{}, [&](std::size_t s) {
            return static_cast<double>(m_reduced.stocks[s].price) /
                   (static_cast<double>(need.weights->capacity[s]) + 1e-9);
        });
        auto left = static_cast<double>(need.total);
        double cost = 0;
        for (const std::size_t s : order) {
            const auto capacity = static_cast<double>(need.weights->capacity[s]);
            const double taken = capacity <= 0
                                     ? 0
                                     : std::clamp(left / capacity, 0.0,
                                                  static_cast<double>(m_reduced.stocks[s].count));
            cost += taken * static_cast<double>(m_reduced.stocks[s].price);
            left -= taken * capacity;
        }
        most = std::max(most, cost);
    }
    // A hair less, so that rounding in the fractions cannot lift it over the next whole number.
    return static_cast<std::int64_t>(std::ceil(most * (1 - 1e-9) - 1e-6));
}

std::optional<std::vector<Loadout>> LoadoutCover::largestWithin(std::int64_t cost) const {
    std::vector<Loadout> found;
    if (cost < 0) {
        return found;
    }
    if (!Branching(*this).collect(cost, found)) {
        return std::nullopt;
    }
    std::ranges::stable_sort(found, std::less{},
                             [&](const Loadout& l) { return costOf(l, m_reduced); });
    return found;
}

}  // namespace matwright::sheets
