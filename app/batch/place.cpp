// SPDX-License-Identifier: MIT
#include "app/batch/place.h"

namespace matwright::app {

Place placeOf(const Piece& piece, const std::vector<Rect>& pages) {
    const Rect bounds = trimBounds(piece);
    std::size_t page = 0;
    while (page + 1 < pages.size() && pages[page + 1].left() <= bounds.left()) {
        ++page;
    }
    return {page, bounds.left() - pages[page].left(), bounds.top() - pages[page].top()};
}

}  // namespace matwright::app
