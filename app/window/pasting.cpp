// SPDX-License-Identifier: MIT
#include "app/window/pasting.h"

#include <algorithm>

namespace matwright::app {
namespace {

// Precondition: there is a piece.
Rect boundsOf(const Sketch& copy) {
    Rect bounds = outermostBounds(copy.pieces.begin()->second);
    for (const auto& [id, piece] : copy.pieces) {
        bounds = bounds.united(outermostBounds(piece));
    }
    return bounds;
}

// How far to move `inner` so that it lies inside `outer`; to its low end where it is too long.
Length wayInside(Interval inner, Interval outer) {
    if (inner.low < outer.low || inner.length() > outer.length()) {
        return outer.low - inner.low;
    }
    return inner.high > outer.high ? outer.high - inner.high : Length();
}

Point wayOntoPage(const Rect& bounds, const Rect& page) {
    return bounds.interiorIntersects(page)
               ? Point()
               : Point{wayInside(bounds.x, page.x), wayInside(bounds.y, page.y)};
}

bool hidesAnEqualPiece(const Sketch& sketch, const Sketch& copy, Point by) {
    return std::ranges::any_of(copy.pieces, [&](const auto& copied) {
        const Piece& piece = copied.second;
        return std::ranges::any_of(sketch.pieces, [&](const auto& entry) {
            const Piece& other = entry.second;
            return other.place == piece.place + by && other.size == piece.size &&
                   other.kind == piece.kind && other.rotation == piece.rotation;
        });
    });
}

// `low` moved by `way` inside the room between `from` and `to`, coming in again at the near end.
Length wrapped(Length low, Length way, Interval room) {
    const Length length = room.length();
    if (!length.isPositive()) {
        return low;
    }
    return room.low + Length::fromTicks((low + way - room.low).ticks() % length.ticks());
}

// The way from the first place to the `count`-th step of copies, which stay on the page.
Point stepsAside(const Rect& bounds, const Rect& page, std::int64_t count) {
    const Rect area = page.united(bounds);
    const auto along = [count](Interval own, Interval all, Length step) {
        const Interval room{all.low, all.high - own.length()};
        return wrapped(own.low, step * count, room) - own.low;
    };
    const Point by{along(bounds.x, area.x, copyOffset.x), along(bounds.y, area.y, copyOffset.y)};
    // As large as the page: there is no room to stay inside.
    return by == Point() ? Point{copyOffset.x * count, copyOffset.y * count} : by;
}

Point wayForCopies(const Sketch& sketch, const Sketch& copy) {
    const Rect page = surface(sketch.page);
    const Rect bounds = boundsOf(copy);
    const Point onPage = wayOntoPage(bounds, page);
    // One step more than there are pieces: each may lie on one of the places tried.
    const auto most = static_cast<std::int64_t>(sketch.pieces.size()) + 1;
    Point by = onPage;
    for (std::int64_t count = 1; count <= most && hidesAnEqualPiece(sketch, copy, by); ++count) {
        by = onPage + stepsAside(bounds.moved(onPage), page, count);
    }
    return by;
}

}  // namespace

Sketch placedForPaste(const Sketch& sketch, Sketch copy) {
    if (!copy.pieces.empty()) {
        const Point by = wayForCopies(sketch, copy);
        for (auto& [id, piece] : copy.pieces) {
            piece.place = piece.place + by;
        }
    }
    return copy;
}

}  // namespace matwright::app
