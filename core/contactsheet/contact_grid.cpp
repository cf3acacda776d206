// SPDX-License-Identifier: MIT
#include <algorithm>

#include "core/contactsheet/contact_sheet.h"
#include "core/contactsheet/words.h"

namespace matwright {

std::size_t ContactGrid::perSheet() const {
    return static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows);
}

Rect ContactGrid::cell(std::size_t index) const {
    const auto column = static_cast<std::int64_t>(index) % columns;
    const auto row = static_cast<std::int64_t>(index) / columns;
    return first.moved({across * column, down * row});
}

ContactGrid contactGrid(const ContactSheetOptions& options) {
    const Rect inside = Rect::at({}, options.sheet).expanded(-options.margin);
    ContactGrid grid;
    grid.columns = std::clamp(options.columns, 1, 10);
    const Length width =
        (inside.size().width - cellGap * (grid.columns - 1)).scaledRounded(1, grid.columns);
    const Length room = inside.size().height - headingRoom;
    const Length words = wordsRoom(grid.columns);
    const Length height = std::min(width, room - words) + words;
    grid.first = Rect::at({inside.left(), inside.top() + headingRoom}, {width, height});
    grid.across = width + cellGap;
    grid.rows = std::max(1, static_cast<int>(ratio(room + cellGap, height + cellGap)));
    // What is left over goes between the rows.
    grid.down = Length::fromTicks((room + cellGap).ticks() / grid.rows);
    return grid;
}

std::size_t contactSheetCount(const ContactSheetOptions& options, std::size_t sketches) {
    const std::size_t perSheet = contactGrid(options).perSheet();
    return std::max<std::size_t>(1, (sketches + perSheet - 1) / perSheet);
}

}  // namespace matwright
