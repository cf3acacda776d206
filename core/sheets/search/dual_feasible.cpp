// SPDX-License-Identifier: MIT
#include "core/sheets/search/dual_feasible.h"

#include <algorithm>
#include <set>

namespace matwright::sheets {

std::int64_t DualFeasible::capacity() const {
    switch (m_form) {
        case Form::Steps:
            return m_parameter * m_side;
        case Form::Halves:
            return 2 * (m_side / m_parameter);
        default:
            return m_side;
    }
}

std::int64_t DualFeasible::operator()(std::int64_t length) const {
    switch (m_form) {
        case Form::Identity:
            return length;
        case Form::Steps: {
            const std::int64_t scaled = (m_parameter + 1) * length;
            return scaled % m_side == 0 ? length * m_parameter : scaled / m_side * m_side;
        }
        case Form::Threshold:
            if (length > m_side - m_parameter) {
                return m_side;
            }
            return length < m_parameter ? 0 : length;
        case Form::Halves:
            if (2 * length > m_side) {
                return 2 * (m_side / m_parameter - (m_side - length) / m_parameter);
            }
            return 2 * length == m_side ? m_side / m_parameter : 2 * (length / m_parameter);
    }
    return length;
}

std::vector<DualFeasible> dualFeasibleFor(std::int64_t side,
                                          const std::vector<std::int64_t>& sides) {
    std::vector<DualFeasible> all{{DualFeasible::Form::Identity, side, 0}};
    for (const std::int64_t k : {1, 2, 3, 4, 5, 6}) {
        all.emplace_back(DualFeasible::Form::Steps, side, k);
    }
    std::set<std::int64_t> parameters;
    for (const std::int64_t s : sides) {
        for (const std::int64_t e : {s, s + 1, side - s, side - s + 1}) {
            if (e > 0 && 2 * e <= side) {
                parameters.insert(e);
            }
        }
    }
    // Enough of them, evenly chosen, where there are very many.
    constexpr std::size_t most = 60;
    const std::size_t step = parameters.size() / most + 1;
    std::size_t i = 0;
    for (const std::int64_t e : parameters) {
        if (i++ % step == 0) {
            all.emplace_back(DualFeasible::Form::Threshold, side, e);
            all.emplace_back(DualFeasible::Form::Halves, side, e);
        }
    }
    return all;
}

}  // namespace matwright::sheets
