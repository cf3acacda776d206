// SPDX-License-Identifier: MIT
#include <algorithm>
#include <optional>

#include "core/sheets/search/cut_table.h"
#include "core/sheets/search/loadout_scale.h"
#include "core/sheets/search/weights.h"

namespace matwright::sheets {

namespace {

constexpr std::int64_t mostPatternWork = 8'000'000;
constexpr double wholeScale = 1e8;

class Sharpening {
  public:
    Sharpening(const Reduced& reduced, std::span<const int> loadout)
        : m_reduced(reduced), m_loadout(loadout.begin(), loadout.end()) {
        for (std::size_t k = 0; k < reduced.kinds.size(); ++k) {
            m_counts.push_back(reduced.kinds[k].count);
            m_asked[k] = static_cast<std::int16_t>(reduced.kinds[k].count);
        }
        m_lists.resize(reduced.stocks.size());
    }

    static bool isTooLarge(const Reduced& reduced) {
        return reduced.kinds.size() > mostCountedKinds ||
               std::ranges::any_of(reduced.kinds,
                                   [](const Kind& k) { return k.count > mostCountedCopies; });
    }

    // False where a kind fits on none of the loadout's sheets.
    bool start() {
        for (std::size_t k = 0; k < m_counts.size(); ++k) {
            bool fits = false;
            for (std::size_t s = 0; s < m_lists.size() && !fits; ++s) {
                fits = m_loadout[s] > 0 && m_reduced.stocks[s].holds(m_reduced.kinds[k]);
                if (fits) {
                    m_lists[s].emplace_back();
                    m_lists[s].back()[k] = 1;
                }
            }
            if (!fits) {
                return false;
            }
        }
        m_scale.emplace(m_lists, m_asked, m_loadout);
        return true;
    }

    // False at the end: no pattern is worth more than it costs, or the tables would be too large.
    bool run(Work& work) {
        m_scale->run(200, work);
        Weights weights;
        for (const double price : m_scale->prices()) {
            weights.ofKind.push_back(static_cast<std::int64_t>(price * wholeScale));
        }
        weights.ofKind.resize(m_counts.size());
        weights.capacity.assign(m_lists.size(), 0);
        bool isNew = false;
        double room = 0;
        for (std::size_t s = 0; s < m_lists.size(); ++s) {
            if (m_loadout[s] == 0) {
                continue;
            }
            const auto table = CutTable::made(m_reduced, m_reduced.stocks[s], weights.ofKind, true,
                                              mostPatternWork);
            if (!table) {
                return false;
            }
            work.spend(table->widths().size() * table->heights().size() *
                       (table->widths().size() + table->heights().size()) / 64);
            weights.capacity[s] = table->best();
            room += static_cast<double>(m_loadout[s]) * static_cast<double>(table->best());
            isNew = addPattern(s, *table, weights) || isNew;
        }
        const double scale = static_cast<double>(weights.total(m_counts)) / room;
        if (scale > m_bestScale) {
            m_bestScale = scale;
            m_best = std::move(weights);
        }
        return isNew && !isTooSmall();
    }

    bool isTooSmall() const { return m_bestScale > 1; }
    Weights best() const { return m_best; }

  private:
    bool addPattern(std::size_t s, const CutTable& table, const Weights& weights) {
        std::int64_t known = 0;
        for (const Counts& counts : m_lists[s]) {
            std::int64_t sum = 0;
            for (std::size_t k = 0; k < m_counts.size(); ++k) {
                sum += counts[k] * weights.ofKind[k];
            }
            known = std::max(known, sum);
        }
        if (static_cast<double>(table.best()) <= static_cast<double>(known) * (1 + 1e-7)) {
            return false;
        }
        const std::vector<int> pattern = table.bestCounts();
        Counts& counts = m_lists[s].emplace_back();
        for (std::size_t k = 0; k < pattern.size(); ++k) {
            counts[k] = static_cast<std::int16_t>(pattern[k]);
        }
        return true;
    }

    const Reduced& m_reduced;
    std::vector<int> m_loadout;
    std::vector<int> m_counts;
    Counts m_asked{};
    std::vector<SelectionList> m_lists;
    std::optional<LoadoutScale> m_scale;
    Weights m_best;
    double m_bestScale = 0;
};

}  // namespace

bool sharpenWeights(const Reduced& reduced, std::span<const int> loadout,
                    std::vector<Weights>& found, std::uint64_t steps, Work& work) {
    if (Sharpening::isTooLarge(reduced)) {
        return false;
    }
    Sharpening sharpening(reduced, loadout);
    if (!sharpening.start()) {
        return true;
    }
    const std::uint64_t end = work.spent() + steps;
    while (work.spent() < end && !work.over() && sharpening.run(work)) {
    }
    Weights best = sharpening.best();
    // Capacities of the other stocks as well.
    if (!best.ofKind.empty() && setCapacities(reduced, best, work)) {
        found.push_back(std::move(best));
    }
    return sharpening.isTooSmall();
}

}  // namespace matwright::sheets
