// SPDX-License-Identifier: MIT
#include "core/arrange/placing.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace matwright {

namespace {

// How the surroundings are seen in one attempt.
struct Attempt {
    bool allowForMats;
    bool papersAreFree;
};
constexpr Attempt attempts[] = {{true, false}, {false, false}, {true, true}, {false, true}};

Rect roomOf(const Piece& piece, const Attempt& attempt) {
    const bool bare = piece.kind == PieceKind::PhotoSlot && piece.mats.empty();
    return outermostBounds(piece).expanded(attempt.allowForMats && bare ? placingMat : Length());
}

// What the room of the new piece may not reach into, from left to right.
std::vector<Rect> obstaclesOf(const Sketch& sketch, const Attempt& attempt) {
    std::vector<Rect> obstacles;
    for (const auto& [id, piece] : sketch.pieces) {
        if (!(attempt.papersAreFree && isPaper(piece))) {
            obstacles.push_back(roomOf(piece, attempt).expanded(sketch.page.gutter));
        }
    }
    std::ranges::sort(obstacles, {}, &Rect::left);
    return obstacles;
}

// Where a row may begin: at the top of the area and below every obstacle.
std::vector<Length> rowTops(const std::vector<Rect>& obstacles, const Rect& area, Length height) {
    std::vector<Length> tops{area.top()};
    for (const Rect& obstacle : obstacles) {
        const Length top = obstacle.bottom();
        if (top > area.top() && top + height <= area.bottom()) {
            tops.push_back(top);
        }
    }
    std::ranges::sort(tops);
    tops.erase(std::ranges::unique(tops).begin(), tops.end());
    return tops;
}

// The first free left edge in the row; obstacles come sorted by their left edges.
std::optional<Length> freeLeft(const std::vector<Rect>& obstacles, Interval row, Interval area,
                               Length width) {
    Length left = area.low;
    for (const Rect& obstacle : obstacles) {
        if (obstacle.left() >= left + width) {
            break;
        }
        if (obstacle.y.interiorIntersects(row)) {
            left = std::max(left, obstacle.right());
        }
    }
    return left + width <= area.high ? std::optional(left) : std::nullopt;
}

std::optional<Point> freeSpot(const std::vector<Rect>& obstacles, const Rect& area, Size size) {
    if (!area.size().contains(size)) {
        return std::nullopt;
    }
    for (const Length top : rowTops(obstacles, area, size.height)) {
        if (const auto left = freeLeft(obstacles, {top, top + size.height}, area.x, size.width)) {
            return Point{*left, top};
        }
    }
    return std::nullopt;
}

}  // namespace

std::optional<Point> freePlace(const Sketch& sketch, const Piece& piece) {
    const std::vector<Rect> areas = insideMargins(sketch.page);
    for (const Attempt& attempt : attempts) {
        const Rect room = roomOf(piece, attempt);
        const std::vector<Rect> obstacles = obstaclesOf(sketch, attempt);
        for (const Rect& area : areas) {
            if (const auto spot = freeSpot(obstacles, area, room.size())) {
                return piece.place + (*spot - room.topLeft());
            }
        }
    }
    return std::nullopt;
}

Point middlePlace(const Sketch& sketch, const Piece& piece) {
    const Rect own = outermostBounds(piece);
    const Rect page = pages(sketch.page).front();
    return piece.place + (page.centreRoundedDown() - own.centreRoundedDown());
}

}  // namespace matwright
