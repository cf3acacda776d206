// SPDX-License-Identifier: MIT
#include "core/sheets/search/loadout_scale.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace matwright::sheets {

namespace {

constexpr double tiny = 1e-9;

}  // namespace

LoadoutScale::LoadoutScale(const std::vector<SelectionList>& lists, const Counts& asked,
                           std::span<const int> loadout)
    : m_lists(lists) {
    for (std::size_t k = 0; k < mostCountedKinds; ++k) {
        if (asked[k] > 0) {
            m_kinds.push_back(k);
            m_asked.push_back(asked[k]);
        }
    }
    for (std::size_t s = 0; s < loadout.size(); ++s) {
        if (loadout[s] > 0) {
            m_stocks.push_back(s);
            m_count.push_back(loadout[s]);
        }
    }
    m_n = m_kinds.size() + m_stocks.size();
}

// To begin with each kind alone, as many on a sheet as a selection has; of the stocks, the one
// with the most sheets too few sets the scale.
void LoadoutScale::start() {
    m_basis.assign(m_n * m_n, 0);
    std::vector<double> load(m_stocks.size(), 0);
    for (std::size_t row = 0; row < m_kinds.size(); ++row) {
        std::int16_t most = 0;
        std::size_t at = 0;
        for (std::size_t i = 0; i < m_stocks.size(); ++i) {
            for (const Counts& counts : m_lists[m_stocks[i]]) {
                if (counts[m_kinds[row]] > most) {
                    most = counts[m_kinds[row]];
                    at = i;
                }
            }
        }
        m_basis[row * m_n + row] = most;
        m_basis[row * m_n + m_kinds.size() + at] = -1;
        load[at] += m_asked[row] / most;
    }
    std::size_t tightest = 0;
    for (std::size_t i = 0; i < m_stocks.size(); ++i) {
        if (load[i] / m_count[i] > load[tightest] / m_count[tightest]) {
            tightest = i;
        }
    }
    for (std::size_t i = 0; i < m_stocks.size(); ++i) {
        const std::size_t row = m_kinds.size() + i;
        if (i != tightest) {
            m_basis[row * m_n + row] = -1;
        }
    }
    m_scaleRow = m_kinds.size() + tightest;
    std::ranges::copy(
        m_count, m_basis.begin() + static_cast<std::ptrdiff_t>(m_scaleRow * m_n + m_kinds.size()));
    invert();
}

// Gauss and Jordan, with the largest pivot of each column.
void LoadoutScale::invert() {
    m_inverse.assign(m_n * m_n, 0);
    std::vector<double> matrix(m_n * m_n);
    for (std::size_t i = 0; i < m_n; ++i) {
        inverse(i, i) = 1;
        for (std::size_t k = 0; k < m_n; ++k) {
            matrix[i * m_n + k] = m_basis[k * m_n + i];
        }
    }
    for (std::size_t c = 0; c < m_n; ++c) {
        std::size_t pivot = c;
        for (std::size_t r = c; r < m_n; ++r) {
            pivot = std::abs(matrix[r * m_n + c]) > std::abs(matrix[pivot * m_n + c]) ? r : pivot;
        }
        for (std::size_t k = 0; k < m_n; ++k) {
            std::swap(matrix[c * m_n + k], matrix[pivot * m_n + k]);
            std::swap(inverse(c, k), inverse(pivot, k));
        }
        const double by = 1 / matrix[c * m_n + c];
        for (std::size_t k = 0; k < m_n; ++k) {
            matrix[c * m_n + k] *= by;
            inverse(c, k) *= by;
        }
        for (std::size_t r = 0; r < m_n; ++r) {
            const double times = r == c ? 0 : matrix[r * m_n + c];
            for (std::size_t k = 0; k < m_n && times != 0; ++k) {
                matrix[r * m_n + k] -= times * matrix[c * m_n + k];
                inverse(r, k) -= times * inverse(c, k);
            }
        }
    }
    m_amount.assign(m_n, 0);
    for (std::size_t i = 0; i < m_n; ++i) {
        for (std::size_t k = 0; k < m_kinds.size(); ++k) {
            m_amount[i] += inverse(i, k) * m_asked[k];
        }
    }
}

void LoadoutScale::run(int steps, Work& work) {
    if (m_inverse.empty()) {
        start();
    }
    while (steps-- > 0 && !work.over() && step(work)) {
    }
}

double LoadoutScale::dearest() const {
    double dearest = tiny;
    for (std::size_t k = 0; k < m_kinds.size(); ++k) {
        dearest = std::max(dearest, inverse(m_scaleRow, k));
    }
    return dearest;
}

std::vector<double> LoadoutScale::prices() const {
    const double dearestOfAll = dearest();
    std::vector<double> prices(mostCountedKinds, 0);
    for (std::size_t k = 0; k < m_kinds.size(); ++k) {
        prices[m_kinds[k]] = std::max(inverse(m_scaleRow, k), 0.0) / dearestOfAll;
    }
    return prices;
}

SmallWeights LoadoutScale::smallPrices() const {
    SmallWeights weights{};
    std::ranges::transform(prices(), weights.begin(), [](double price) {
        return static_cast<std::int16_t>(std::floor(price * heaviest));
    });
    return weights;
}

// The selection whose price is most above what its sheet costs.
LoadoutScale::Column LoadoutScale::bestColumn(Work& work) const {
    const SmallWeights weights = smallPrices();
    const double largest = dearest();
    Column best{0, nullptr};
    double most = 1e-6;
    for (std::size_t i = 0; i < m_stocks.size(); ++i) {
        const SelectionList& list = m_lists[m_stocks[i]];
        const Counts* first = nullptr;
        std::int32_t weight = 0;
        for (const Counts& counts : list) {
            if (const std::int32_t w = weightOf(counts, weights); w > weight) {
                weight = w;
                first = &counts;
            }
        }
        work.spend(list.size() / 32);
        const double gain = weight * largest / heaviest - inverse(m_scaleRow, m_kinds.size() + i);
        if (first && gain > most) {
            most = gain;
            best = {i, first};
        }
    }
    return best;
}

// False once no column makes the scale smaller.
bool LoadoutScale::step(Work& work) {
    std::vector<double> column(m_n, 0);
    for (std::size_t row = 0; row < m_n; ++row) {
        // A row that asks for more than it should: less of it may be had for nothing.
        if (inverse(m_scaleRow, row) < -1e-7) {
            column[row] = -1;
            return enter(column);
        }
    }
    const Column best = bestColumn(work);
    if (!best.counts) {
        return false;
    }
    for (std::size_t k = 0; k < m_kinds.size(); ++k) {
        column[k] = (*best.counts)[m_kinds[k]];
    }
    column[m_kinds.size() + best.stock] = -1;
    return enter(column);
}

bool LoadoutScale::enter(const std::vector<double>& column) {
    std::vector<double> by(m_n, 0);
    for (std::size_t i = 0; i < m_n; ++i) {
        for (std::size_t k = 0; k < m_n; ++k) {
            by[i] += inverse(i, k) * column[k];
        }
    }
    std::size_t leaving = m_n;
    for (std::size_t i = 0; i < m_n; ++i) {
        if (by[i] <= tiny || i == m_scaleRow) {
            continue;
        }
        if (leaving == m_n || m_amount[i] * by[leaving] < m_amount[leaving] * by[i]) {
            leaving = i;
        }
    }
    if (leaving == m_n) {
        return false;
    }
    for (std::size_t k = 0; k < m_n; ++k) {
        inverse(leaving, k) /= by[leaving];
    }
    m_amount[leaving] /= by[leaving];
    for (std::size_t i = 0; i < m_n; ++i) {
        if (i != leaving && by[i] != 0) {
            for (std::size_t k = 0; k < m_n; ++k) {
                inverse(i, k) -= by[i] * inverse(leaving, k);
            }
            m_amount[i] = std::max(0.0, m_amount[i] - by[i] * m_amount[leaving]);
        }
    }
    return true;
}

}  // namespace matwright::sheets
