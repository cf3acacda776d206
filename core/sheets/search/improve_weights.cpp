// SPDX-License-Identifier: MIT
#include <algorithm>

#include "core/sheets/search/cut_table.h"
#include "core/sheets/search/weights.h"

namespace matwright::sheets {

namespace {

constexpr std::int64_t mostStepWork = 4'000'000;
constexpr double priceScale = 1e9;

// One step: the pattern that the present weights make best, on the stock they suit best.
class PriceStep {
  public:
    PriceStep(const Reduced& reduced, std::vector<double> start)
        : m_reduced(reduced), m_price(std::move(start)) {
        for (const Kind& kind : reduced.kinds) {
            m_counts.push_back(kind.count);
        }
    }

    // False where the tables would be too large.
    bool run(double step, Work& work) {
        const double largest = *std::ranges::max_element(m_price);
        Weights weights;
        for (const double price : m_price) {
            weights.ofKind.push_back(static_cast<std::int64_t>(price / largest * priceScale));
        }
        double worst = 0;
        std::vector<int> pattern;
        for (const Stock& stock : m_reduced.stocks) {
            const auto table = CutTable::made(m_reduced, stock, weights.ofKind, true, mostStepWork);
            if (!table) {
                return false;
            }
            work.spend(table->widths().size() * table->heights().size() *
                       (table->widths().size() + table->heights().size()) / 64);
            weights.capacity.push_back(table->best());
            const double load =
                static_cast<double>(table->best()) / static_cast<double>(stock.area());
            if (load > worst) {
                worst = load;
                pattern = table->bestCounts();
            }
        }
        const double worth = static_cast<double>(weights.total(m_counts)) / worst;
        if (worth > m_worth) {
            m_worth = worth;
            m_best = std::move(weights);
        }
        const int most = *std::ranges::max_element(pattern);
        for (std::size_t i = 0; i < m_price.size(); ++i) {
            m_price[i] *= 1 - step * pattern[i] / std::max(most, 1);
        }
        return true;
    }

    const Weights& best() const { return m_best; }
    double worth() const { return m_worth; }

  private:
    const Reduced& m_reduced;
    std::vector<double> m_price;
    std::vector<int> m_counts;
    Weights m_best;
    double m_worth = 0;
};

}  // namespace

void improveWeights(const Reduced& reduced, std::vector<Weights>& found, int rounds, Work& work) {
    if (found.empty() || reduced.kinds.size() < 2) {
        return;
    }
    const std::vector<Weights> starts(
        found.begin(), found.begin() + std::min<std::ptrdiff_t>(2, std::ssize(found)));
    for (const Weights& start : starts) {
        std::vector<double> price(start.ofKind.begin(), start.ofKind.end());
        const double least = *std::ranges::max_element(price) * 1e-3;
        for (double& p : price) {
            p = std::max(p, least);
        }
        PriceStep steps(reduced, std::move(price));
        for (int round = 0; round < rounds && !work.over(); ++round) {
            if (!steps.run(0.3 / (1 + 0.1 * round), work)) {
                break;
            }
        }
        if (!steps.best().ofKind.empty()) {
            found.push_back(steps.best());
        }
    }
}

}  // namespace matwright::sheets
