// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>
#include <vector>

#include "core/measure/rect.h"

namespace matwright {

// Finds things by place: the sheet in square cells, each with the numbers of the things whose box
// touches it. What sticks out of the sheet is kept in the cells along the edge.
class GridIndex {
  public:
    explicit GridIndex(Size sheet);

    void insert(const Rect& box, std::uint32_t number);

    // Calls visit(number) for everything in the cells that `box` touches, some more than once,
    // until it returns true; then gives true.
    template <typename Visit>
    bool any(const Rect& box, Visit visit) const {
        const Range rows = range(box.y, m_rows);
        const Range columns = range(box.x, m_columns);
        for (std::int64_t row = rows.first; row <= rows.last; ++row) {
            for (std::int64_t column = columns.first; column <= columns.last; ++column) {
                if (std::ranges::any_of(cell(row, column), visit)) {
                    return true;
                }
            }
        }
        return false;
    }

  private:
    struct Range {
        std::int64_t first;
        std::int64_t last;
    };
    Range range(Interval along, std::int64_t count) const;
    const std::vector<std::uint32_t>& cell(std::int64_t row, std::int64_t column) const {
        return m_cells[static_cast<std::size_t>(row * m_columns + column)];
    }

    Length m_step;
    std::int64_t m_columns;
    std::int64_t m_rows;
    std::vector<std::vector<std::uint32_t>> m_cells;
};

}  // namespace matwright
