// SPDX-License-Identifier: MIT
#include "core/sheets/search/paper_search.h"

#include <algorithm>
#include <utility>

#include "core/sheets/search/indexes.h"

namespace matwright::sheets {

PaperSearch::PaperSearch(Reduced reduced) : m_reduced(std::move(reduced)), m_tree(m_reduced) {
    for (const Kind& kind : m_reduced.kinds) {
        m_counts.push_back(kind.count);
    }
}

std::int64_t PaperSearch::cost() const {
    std::int64_t cost = 0;
    for (const FilledSheet& sheet : m_filled) {
        cost += m_reduced.stocks[static_cast<std::size_t>(sheet.stock)].price;
    }
    return cost;
}

bool PaperSearch::isComplete() const {
    return std::ranges::all_of(m_missing, [](int n) { return n == 0; });
}

void PaperSearch::begin(Work& work) {
    m_weights = dualFeasibleWeights(m_reduced, work);
    m_packer = std::make_unique<SheetPacker>(m_reduced, m_weights);
    m_cover = std::make_unique<LoadoutCover>(m_reduced, m_weights, m_counts);
    refreshCandidates();
    m_mayBeExact = !ExactCover::isTooLarge(m_reduced);
    m_splits = m_mayBeExact ? ExactCover::splits(m_reduced) : 0;
}

// Weights for the loadouts in question, the cheapest first; what shows one to be too small may show
// others as well.
void PaperSearch::sharpen(Work& work) {
    constexpr std::uint64_t stepsEach = 20'000'000;
    constexpr int most = 4;
    m_isSharp = true;
    std::vector<Loadout> sharp;
    for (int n = 0; n < most && !m_proved && !work.over(); ++n) {
        const auto next = std::ranges::find_if(m_candidates, [&](const Loadout& loadout) {
            return std::ranges::find(sharp, loadout) == sharp.end();
        });
        if (next == m_candidates.end()) {
            break;
        }
        sharp.push_back(*next);
        const std::size_t before = m_weights.size();
        sharpenWeights(m_reduced, sharp.back(), m_weights, stepsEach, work);
        if (m_weights.size() == before) {
            improveWeights(m_reduced, m_weights, 40, work);
            n = most;
        }
        m_cover = std::make_unique<LoadoutCover>(m_reduced, m_weights, m_counts);
        refreshCandidates();
    }
}

// Several orders of the sheets at hand: cheapest for their area first, and large ones first.
void PaperSearch::layFirst(Work& work) {
    m_missing = m_counts;
    std::vector<std::size_t> order = indexesBelow(m_reduced.stocks.size());
    const auto stock = [&](std::size_t s) -> const Stock& { return m_reduced.stocks[s]; };
    for (const bool byPrice : {true, false}) {
        std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
            const auto pa = static_cast<double>(stock(a).price);
            const auto pb = static_cast<double>(stock(b).price);
            const auto areaA = static_cast<double>(stock(a).area());
            const auto areaB = static_cast<double>(stock(b).area());
            return byPrice && pa * areaB != pb * areaA ? pa * areaB < pb * areaA : areaA > areaB;
        });
        std::vector<int> sheets;
        for (const std::size_t s : order) {
            sheets.insert(sheets.end(), static_cast<std::size_t>(stock(s).count),
                          static_cast<int>(s));
        }
        tryOrder(sheets, work);
    }
}

void PaperSearch::tryOrder(const std::vector<int>& sheets, Work& work) {
    for (const bool level : {false, true}) {
        for (const Guide guide : {Guide::LeastWaste, Guide::LeastWasteLarge}) {
            // The first plan does not wait for the clock: without it there is no plan at all.
            Work own(10'000'000, Work::Clock::time_point::max());
            const TreeSearch::Task task{m_counts, sheets, guide, level, 1, 200'000, true};
            TreeSearchResult result = m_tree.run(task, own);
            work.spend(own.spent());
            std::vector<FilledSheet> filled;
            std::vector<int> missing = m_counts;
            for (std::size_t i = 0; i < sheets.size(); ++i) {
                if (result.layouts[i].empty()) {
                    continue;
                }
                const auto held = contents(result.layouts[i], m_counts.size());
                for (std::size_t k = 0; k < held.size(); ++k) {
                    missing[k] -= held[k];
                }
                filled.push_back({sheets[i], std::move(result.layouts[i])});
            }
            take(std::move(filled), missing);
        }
    }
}

// Keeps the plan if it is better: less area missing, then cheaper, then fewer sheets.
void PaperSearch::take(std::vector<FilledSheet> filled, const std::vector<int>& missing) {
    const auto areaOf = [&](const std::vector<int>& counts) {
        std::int64_t area = 0;
        for (std::size_t k = 0; k < counts.size(); ++k) {
            area += counts[k] * m_reduced.kinds[k].area();
        }
        return area;
    };
    const std::int64_t areaNow = areaOf(m_missing);
    const std::int64_t areaThen = areaOf(missing);
    const std::int64_t costNow = cost();
    std::vector<FilledSheet> before = std::exchange(m_filled, std::move(filled));
    cheapenSheets();
    const bool better =
        areaThen < areaNow ||
        (areaThen == areaNow &&
         (cost() < costNow || (cost() == costNow && m_filled.size() < before.size())));
    if (better || before.empty()) {
        m_missing = missing;
    } else {
        m_filled = std::move(before);
    }
}

// A sheet's layout may do on a cheaper sheet that is still at hand.
void PaperSearch::cheapenSheets() {
    std::vector<int> left;
    left.reserve(m_reduced.stocks.size());
    for (const Stock& stock : m_reduced.stocks) {
        left.push_back(stock.count);
    }
    for (const FilledSheet& sheet : m_filled) {
        --left[static_cast<std::size_t>(sheet.stock)];
    }
    for (FilledSheet& sheet : m_filled) {
        const Group& whole = sheet.layout.back();
        auto now = static_cast<std::size_t>(sheet.stock);
        for (std::size_t s = 0; s < left.size(); ++s) {
            const Stock& other = m_reduced.stocks[s];
            if (left[s] > 0 && whole.w <= other.w && whole.h <= other.h &&
                other.price < m_reduced.stocks[now].price) {
                ++left[now];
                --left[s];
                now = s;
            }
        }
        sheet.stock = static_cast<int>(now);
    }
}

void PaperSearch::refreshCandidates() {
    m_next = 0;
    m_candidates.clear();
    if (!isComplete()) {
        // Not even enough sheets were found: all of them are the only candidate.
        Loadout all;
        for (const Stock& stock : m_reduced.stocks) {
            all.push_back(stock.count);
        }
        m_proved = !m_cover->passes(all);
        m_candidates.push_back(std::move(all));
        return;
    }
    m_bound = std::max(m_bound, m_cover->leastCost().value_or(0));
    const auto candidates = m_cover->largestWithin(cost() - 1);
    m_proved = m_bound >= cost() || (candidates && candidates->empty());
    m_allCandidates = candidates.has_value();
    m_candidates = candidates ? *candidates : nearbyLoadouts();
    if (m_proved) {
        m_bound = cost();
    }
}

// Where there are too many loadouts to list: one sheet fewer, and all that cost nothing.
std::vector<Loadout> PaperSearch::nearbyLoadouts() const {
    Loadout now(m_reduced.stocks.size(), 0);
    for (const FilledSheet& sheet : m_filled) {
        ++now[static_cast<std::size_t>(sheet.stock)];
    }
    for (std::size_t s = 0; s < now.size(); ++s) {
        now[s] = m_reduced.stocks[s].price == 0 ? m_reduced.stocks[s].count : now[s];
    }
    std::vector<Loadout> nearby;
    for (std::size_t s = 0; s < now.size(); ++s) {
        if (now[s] > 0 && m_reduced.stocks[s].price > 0) {
            Loadout fewer = now;
            --fewer[s];
            if (m_cover->passes(fewer)) {
                nearby.push_back(std::move(fewer));
            }
        }
    }
    return nearby;
}

}  // namespace matwright::sheets
