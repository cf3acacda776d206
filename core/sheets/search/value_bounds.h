// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "core/sheets/search/cut_table.h"
#include "core/sheets/search/work.h"

namespace matwright::sheets {

// Upper bounds for cuts with limited copies of one sheet: what a box can be worth, and what can
// still be cut around a box that lies in the sheet's corner.
//
// `inside` is the dynamic programme of Gilmore & Gomory, clipped in every box by the value that the
// copies there are could have by area alone (fractional knapsack); clipping a relaxation keeps it
// one. `around` is the recursion of Viswanathan & Bagchi (Oper. Res. 41, 1993), from memory.
class ValueBounds {
  public:
    // Nothing where there are too many places for cuts (more than 4,000 a side, or more additions
    // than mostWork).
    static std::optional<ValueBounds> made(const Reduced& reduced, const Stock& stock,
                                           const std::vector<std::int64_t>& values, Work& work,
                                           std::int64_t mostWork = 4'000'000'000);

    std::int64_t whole() const { return m_inside.back(); }
    // What can be added to a box w x h, both sums of sides.
    std::int64_t around(std::int32_t w, std::int32_t h) const {
        return m_around[indexOf(m_xIndex, m_xs, w) * m_ys.size() + indexOf(m_yIndex, m_ys, h)];
    }

    // The places of cuts, ascending from 0.
    const std::vector<std::int32_t>& widths() const { return m_xs; }
    const std::vector<std::int32_t>& heights() const { return m_ys; }

  private:
    ValueBounds() = default;
    void fillInside(const Reduced& reduced, const std::vector<std::int64_t>& values);
    void fillAround();
    std::int64_t byArea(const Reduced& reduced, const std::vector<std::int64_t>& values,
                        std::int32_t w, std::int32_t h) const;
    static std::vector<std::int32_t> denseIndex(const std::vector<std::int32_t>& points);
    static std::size_t indexOf(const std::vector<std::int32_t>& dense,
                               const std::vector<std::int32_t>& points, std::int32_t length) {
        return dense.empty() ? pointBelow(points, length)
                             : static_cast<std::size_t>(dense[static_cast<std::size_t>(length)]);
    }

    std::vector<std::int32_t> m_xs;
    std::vector<std::int32_t> m_ys;
    std::vector<std::int32_t> m_xIndex;  // by length, where lengths are few
    std::vector<std::int32_t> m_yIndex;
    std::vector<int> m_byDensity;  // kinds, the most valuable for their area first
    std::vector<std::int64_t> m_inside;
    std::vector<std::int64_t> m_around;
};

}  // namespace matwright::sheets
