// SPDX-License-Identifier: MIT
#include "core/template/free_place.h"

#include <algorithm>
#include <cmath>

namespace matwright {

namespace {

constexpr Length finestStep = Length::inches(0, 1, 16);
constexpr Length searchReach = Length::inches(2);
constexpr double longestLeader = 2.5 * static_cast<double>(Length::ticksPerInch);

Vertex middleOf(const Rect& box) {
    return vertexAt(box.centreRoundedDown());
}

double squaredDistance(Vertex a, Vertex b) {
    return (a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y);
}

Vertex nearestIn(const Rect& box, Vertex to) {
    const Vertex low = vertexAt(box.topLeft());
    const Vertex high = vertexAt(box.bottomRight());
    return {std::clamp(to.x, low.x, high.x), std::clamp(to.y, low.y, high.y)};
}

// Low, low + step … and high itself; nothing when low > high.
std::vector<Length> steps(Length low, Length high, Length step) {
    std::vector<Length> out;
    for (Length at = low; at < high; at += step) {
        out.push_back(at);
    }
    if (low <= high) {
        out.push_back(high);
    }
    return out;
}

// Row by row.
std::vector<Point> everyPair(const std::vector<Length>& xs, const std::vector<Length>& ys) {
    std::vector<Point> out;
    out.reserve(xs.size() * ys.size());
    for (const Length y : ys) {
        for (const Length x : xs) {
            out.push_back({x, y});
        }
    }
    return out;
}

Length stepFor(Length span, std::int64_t most) {
    return std::max(finestStep, span.scaledRounded(1, most));
}

// The corners of a room of this size moved about inside `area`, row by row.
std::vector<Point> cornersWithin(const Rect& area, Size room, std::int64_t most) {
    const Length right = area.right() - room.width;
    const Length bottom = area.bottom() - room.height;
    return everyPair(steps(area.left(), right, stepFor(area.x.length(), most)),
                     steps(area.top(), bottom, stepFor(area.y.length(), most)));
}

void sortByDistance(std::vector<Point>& corners, Size room, Vertex from) {
    const auto distance = [&](Point at) {
        return squaredDistance(middleOf(Rect::at(at, room)), from);
    };
    std::ranges::stable_sort(corners, {}, distance);
}

bool isUprightRectangle(const Piece& piece) {
    return piece.rotation.isQuarterTurn() &&
           (std::holds_alternative<RectangleShape>(piece.shape) ||
            std::holds_alternative<RoundedRectangleShape>(piece.shape));
}

std::optional<Rect> common(const Rect& a, const Rect& b) {
    const Rect both{{std::max(a.left(), b.left()), std::min(a.right(), b.right())},
                    {std::max(a.top(), b.top()), std::min(a.bottom(), b.bottom())}};
    return both.x.low < both.x.high && both.y.low < both.y.high ? std::optional(both)
                                                                : std::nullopt;
}

// A spot of the piece that shows, as near its middle as there is one.
std::optional<Vertex> visibleSpot(const Scene& scene, const Occupancy& occupancy,
                                  const ScenePiece& piece) {
    const auto area = common(piece.trimBounds, occupancy.sheet());
    if (!area) {
        return std::nullopt;
    }
    const Size dot{textClearance, textClearance};
    std::vector<Point> corners = cornersWithin(*area, dot, 24);
    sortByDistance(corners, dot, middleOf(*area));
    for (const Point corner : corners) {
        const Rect box = Rect::at(corner, dot);
        if (ringContains(piece.trimRing, middleOf(box)) &&
            occupancy.isFree(box, Occupancy::Everything) &&
            scene.topmostAt(middleOf(box)) == &piece) {
            return middleOf(box);
        }
    }
    return std::nullopt;
}

std::optional<PlaceBeside> leaderPlace(const Scene& scene, const Occupancy& occupancy,
                                       const std::vector<Point>& corners, Size room, Vertex spot,
                                       bool onBarePaper) {
    for (const Point corner : corners) {
        const Rect box = Rect::at(corner, room);
        const Vertex from = nearestIn(box, spot);
        if (squaredDistance(from, spot) > longestLeader * longestLeader) {
            return std::nullopt;  // the corners come nearest first
        }
        if (occupancy.isFreeOnOnePart(box.expanded(textClearance), Occupancy::Everything) &&
            (!onBarePaper || scene.topmostAt(middleOf(box)) == nullptr) &&
            occupancy.isFree(from, spot, Occupancy::Mark)) {
            return PlaceBeside{corner, from, spot};
        }
    }
    return std::nullopt;
}

}  // namespace

bool showsSomewhere(const Scene& scene, const Occupancy& occupancy, const ScenePiece& piece) {
    return visibleSpot(scene, occupancy, piece).has_value();
}

std::optional<Point> placeInPiece(const Scene& scene, const Occupancy& occupancy,
                                  const ScenePiece& piece, const TextBlock& block) {
    const auto area = common(piece.trimBounds.expanded(-2 * textClearance), occupancy.sheet());
    const Size room = roomOf(block);
    if (!area || !area->size().contains(room)) {
        return std::nullopt;
    }
    std::vector<Point> corners = cornersWithin(*area, room, 18);
    if (!isUprightRectangle(*piece.piece)) {
        sortByDistance(corners, room, middleOf(*area));
    }
    for (const unsigned kinds :
         {Occupancy::Everything + 0U, Occupancy::Outline | Occupancy::Mark}) {
        for (const Point corner : corners) {
            const Rect box = Rect::at(corner, room);
            // No edge crosses the box, so its middle speaks for all of it.
            if (occupancy.isFreeOnOnePart(box.expanded(textClearance), kinds) &&
                ringContains(piece.trimRing, middleOf(box)) &&
                scene.topmostAt(middleOf(box)) == &piece) {
                return corner;
            }
        }
    }
    return std::nullopt;
}

std::optional<PlaceBeside> placeBeside(const Scene& scene, const Occupancy& occupancy,
                                       const ScenePiece& piece, Size room) {
    const auto spot = visibleSpot(scene, occupancy, piece);
    if (!spot) {
        return std::nullopt;
    }
    const Rect around{{piece.trimBounds.x.low - searchReach - room.width,
                       piece.trimBounds.x.high + searchReach + room.width},
                      {piece.trimBounds.y.low - searchReach - room.height,
                       piece.trimBounds.y.high + searchReach + room.height}};
    const auto area = common(around, occupancy.sheet().expanded(-2 * textClearance));
    if (!area) {
        return std::nullopt;
    }
    std::vector<Point> corners = cornersWithin(*area, room, 40);
    std::ranges::stable_sort(corners, {}, [&](Point at) {
        return squaredDistance(nearestIn(Rect::at(at, room), *spot), *spot);
    });
    if (const auto bare = leaderPlace(scene, occupancy, corners, room, *spot, true)) {
        return bare;
    }
    return leaderPlace(scene, occupancy, corners, room, *spot, false);
}

std::optional<Point> placeOnSheet(const Scene& scene, const Occupancy& occupancy, Size room,
                                  Freedom freedom, Corner corner) {
    const auto area = common(occupancy.sheet().expanded(-2 * textClearance), occupancy.sheet());
    if (!area || !area->size().contains(room)) {
        return std::nullopt;
    }
    const unsigned kinds = freedom == Freedom::NothingElse ? static_cast<unsigned>(Occupancy::Mark)
                                                           : Occupancy::Everything + 0U;
    const Length right = area->right() - room.width;
    const Length bottom = area->bottom() - room.height;
    std::vector<Length> ys = steps(area->top(), bottom, stepFor(area->y.length(), 64));
    std::vector<Length> xs = steps(area->left(), right, stepFor(area->x.length(), 64));
    std::ranges::reverse(ys);
    if (corner == Corner::BottomRight) {
        std::ranges::reverse(xs);
    }
    std::optional<Point> best;
    int leastCrowd = 0;
    for (const Point at : everyPair(xs, ys)) {
        const Rect box = Rect::at(at, room);
        if (!occupancy.isFreeOnOnePart(box.expanded(textClearance), kinds) ||
            (freedom == Freedom::BarePaper && scene.topmostAt(middleOf(box)) != nullptr)) {
            continue;
        }
        if (freedom != Freedom::NothingElse) {
            return at;
        }
        const int crowd = occupancy.crowd(box, Occupancy::Outline);
        if (!best || crowd < leastCrowd) {
            best = at;
            leastCrowd = crowd;
        }
    }
    return best;
}

}  // namespace matwright
