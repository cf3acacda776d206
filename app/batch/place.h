// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <vector>

#include "core/sketch/piece.h"

namespace matwright::app {

// Where a piece's trim line lies, as a template says it: measured from the left and top edge of the
// page its left end is on.
struct Place {
    std::size_t page = 0;  // 0 is the only or the left page, 1 the right one
    Length left;           // negative where it sticks out
    Length top;
    friend bool operator==(const Place&, const Place&) = default;
};

// `pages` from left to right, at least one (see pages() of a sketch).
Place placeOf(const Piece& piece, const std::vector<Rect>& pages);

}  // namespace matwright::app
