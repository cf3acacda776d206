// SPDX-License-Identifier: MIT
#include "core/sketch/sketch.h"

#include <algorithm>

namespace matwright {

Rect surface(const PageSetup& setup) {
    const Length width = setup.doublePage ? 2 * setup.size.width + setup.foldGap : setup.size.width;
    return Rect::at({}, {width, setup.size.height});
}

std::vector<Rect> pages(const PageSetup& setup) {
    std::vector<Rect> result{Rect::at({}, setup.size)};
    if (setup.doublePage) {
        result.push_back(Rect::at({setup.size.width + setup.foldGap, Length()}, setup.size));
    }
    return result;
}

std::size_t pageOf(const std::vector<Rect>& pages, Length left) {
    std::size_t page = 0;
    while (page + 1 < pages.size() && pages[page + 1].left() <= left) {
        ++page;
    }
    return page;
}

std::vector<Rect> insideMargins(const PageSetup& setup) {
    std::vector<Rect> result = pages(setup);
    for (Rect& page : result) {
        page.x = {page.left() + setup.margins.left, page.right() - setup.margins.right};
        page.y = {page.top() + setup.margins.top, page.bottom() - setup.margins.bottom};
    }
    return result;
}

PieceId nextId(const Sketch& sketch) {
    if (sketch.pieces.empty()) {
        return PieceId{1};
    }
    if (sketch.pieces.rbegin()->first < maxPieceId) {
        return PieceId{sketch.pieces.rbegin()->first.value + 1};
    }
    PieceId free{1};
    while (sketch.pieces.contains(free)) {
        ++free.value;
    }
    return free;
}

const Piece* find(const Sketch& sketch, PieceId id) {
    const auto it = sketch.pieces.find(id);
    return it == sketch.pieces.end() ? nullptr : &it->second;
}

std::size_t pieceNumber(const Sketch& sketch, PieceId id) {
    const auto it = std::ranges::find(sketch.order, id);
    return it == sketch.order.end() ? 0 : static_cast<std::size_t>(it - sketch.order.begin()) + 1;
}

Sketch blankSketch() {
    return {};
}

}  // namespace matwright
