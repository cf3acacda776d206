// SPDX-License-Identifier: MIT
#include "app/batch/place.h"

#include "core/outline/outline.h"
#include "core/sketch/sketch.h"

namespace matwright::app {

Place placeOf(const Piece& piece, const std::vector<Rect>& pages) {
    const Rect bounds = boundsOf(trimOutline(piece));
    const std::size_t page = pageOf(pages, bounds.left());
    return {page, bounds.left() - pages[page].left(), bounds.top() - pages[page].top()};
}

}  // namespace matwright::app
