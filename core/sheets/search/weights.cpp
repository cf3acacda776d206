// SPDX-License-Identifier: MIT
#include "core/sheets/search/weights.h"

#include <algorithm>

#include "core/sheets/search/cut_table.h"
#include "core/sheets/search/dual_feasible.h"

namespace matwright::sheets {

namespace {

constexpr std::int64_t mostTableWork = 4'000'000;
constexpr std::ptrdiff_t mostTables = 4;
constexpr std::size_t keptWeights = 12;

struct Candidate {
    double sheets;  // what they ask for of the stock they are seen from
    std::vector<std::int64_t> ofKind;
    std::int64_t capacity;
};

std::vector<std::int64_t> sidesFor(const Reduced& reduced, bool level) {
    std::vector<std::int64_t> sides;
    for (const Kind& kind : reduced.kinds) {
        sides.push_back(level ? kind.h : kind.w);
        if (kind.turn) {
            sides.push_back(level ? kind.w : kind.h);
        }
    }
    return sides;
}

std::int64_t weightOf(const Kind& kind, const Stock& stock, const DualFeasible& f,
                      const DualFeasible& g) {
    const bool asIs = kind.w <= stock.w && kind.h <= stock.h;
    const bool turned = kind.turn && kind.h <= stock.w && kind.w <= stock.h;
    const std::int64_t first = asIs ? f(kind.w) * g(kind.h) : 0;
    const std::int64_t second = turned ? f(kind.h) * g(kind.w) : 0;
    return asIs && turned ? std::min(first, second) : first + second;
}

// Every pair of functions, as far as it asks for more than the best so far by a share.
void addCandidates(const Reduced& reduced, const Stock& stock, std::vector<Candidate>& all,
                   Work& work) {
    const auto fs = dualFeasibleFor(stock.w, sidesFor(reduced, false));
    const auto gs = dualFeasibleFor(stock.h, sidesFor(reduced, true));
    for (const DualFeasible& f : fs) {
        for (const DualFeasible& g : gs) {
            if (f.capacity() <= 0 || g.capacity() <= 0 || !work.spend(reduced.kinds.size() / 8)) {
                continue;
            }
            Candidate candidate{0, {}, f.capacity() * g.capacity()};
            std::int64_t total = 0;
            for (const Kind& kind : reduced.kinds) {
                candidate.ofKind.push_back(weightOf(kind, stock, f, g));
                total += candidate.ofKind.back() * kind.count;
            }
            candidate.sheets = static_cast<double>(total) / static_cast<double>(candidate.capacity);
            if (all.size() < keptWeights || candidate.sheets > all.back().sheets) {
                const auto at = std::ranges::upper_bound(all, candidate.sheets, std::greater{},
                                                         &Candidate::sheets);
                all.insert(at, std::move(candidate));
                all.resize(std::min(all.size(), keptWeights));
            }
        }
    }
}

// Sides may be counted in ticks; products of four of them would not fit into 64 bits, so functions
// are only applied where the numbers stay small.
bool isSmallEnough(const Stock& stock) {
    constexpr std::int32_t mostSide = 100'000;
    return stock.w <= mostSide && stock.h <= mostSide;
}

}  // namespace

std::int64_t Weights::total(std::span<const int> counts) const {
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < ofKind.size(); ++i) {
        sum += ofKind[i] * counts[i];
    }
    return sum;
}

bool setCapacities(const Reduced& reduced, Weights& weights, Work& work) {
    std::vector<std::int64_t> capacity;
    for (const Stock& stock : reduced.stocks) {
        const auto table = CutTable::made(reduced, stock, weights.ofKind, true, mostTableWork);
        if (!table) {
            return false;
        }
        work.spend(table->widths().size() * table->heights().size() *
                   (table->widths().size() + table->heights().size()) / 64);
        capacity.push_back(table->best());
    }
    weights.capacity = std::move(capacity);
    return true;
}

std::vector<Weights> dualFeasibleWeights(const Reduced& reduced, Work& work) {
    std::vector<Weights> found(1);
    for (const Kind& kind : reduced.kinds) {
        found[0].ofKind.push_back(kind.area());
    }
    if (!setCapacities(reduced, found[0], work)) {
        for (const Stock& stock : reduced.stocks) {
            found[0].capacity.push_back(stock.area());
        }
    }
    for (std::size_t s = 0; s < reduced.stocks.size(); ++s) {
        std::vector<Candidate> candidates;
        if (isSmallEnough(reduced.stocks[s])) {
            addCandidates(reduced, reduced.stocks[s], candidates, work);
        }
        for (Candidate& candidate : candidates) {
            Weights weights{std::move(candidate.ofKind), {}};
            // Of one stock the functions' own capacity will do for the less promising ones.
            const bool needed =
                reduced.stocks.size() > 1 || &candidate - &candidates[0] < mostTables;
            if (needed && !work.over() && setCapacities(reduced, weights, work)) {
                weights.capacity[s] = std::min(weights.capacity[s], candidate.capacity);
                found.push_back(std::move(weights));
            } else if (reduced.stocks.size() == 1) {
                weights.capacity = {candidate.capacity};
                found.push_back(std::move(weights));
            }
        }
    }
    return found;
}

}  // namespace matwright::sheets
