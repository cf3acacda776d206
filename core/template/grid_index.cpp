// SPDX-License-Identifier: MIT
#include "core/template/grid_index.h"

namespace matwright {

namespace {

// Fine enough that a cell of a full page holds a handful of lines.
constexpr std::int64_t mostCellsPerSide = 64;

}  // namespace

GridIndex::GridIndex(Size sheet)
    : m_step(std::max(Length::inches(0, 1, 4),
                      std::max(sheet.width, sheet.height).scaledRounded(1, mostCellsPerSide))),
      m_columns(sheet.width.ticks() / m_step.ticks() + 1),
      m_rows(sheet.height.ticks() / m_step.ticks() + 1),
      m_cells(static_cast<std::size_t>(m_columns * m_rows)) {}

GridIndex::Range GridIndex::range(Interval along, std::int64_t count) const {
    const auto cellOf = [&](Length at) {
        return std::clamp<std::int64_t>(at.ticks() / m_step.ticks(), 0, count - 1);
    };
    return {cellOf(along.low), cellOf(along.high)};
}

void GridIndex::insert(const Rect& box, std::uint32_t number) {
    const Range rows = range(box.y, m_rows);
    const Range columns = range(box.x, m_columns);
    for (std::int64_t row = rows.first; row <= rows.last; ++row) {
        for (std::int64_t column = columns.first; column <= columns.last; ++column) {
            m_cells[static_cast<std::size_t>(row * m_columns + column)].push_back(number);
        }
    }
}

}  // namespace matwright
