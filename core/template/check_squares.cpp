// SPDX-License-Identifier: MIT
#include "core/template/check_squares.h"

#include "core/template/free_place.h"
#include "core/template/pen.h"
#include "core/template/template.h"

namespace matwright {

namespace {

constexpr Length large = Length::millimetres(50);
constexpr Length squareAir = Length::hundredthMillimetres(150);
constexpr Length small = Length::inches(1);

std::optional<Point> findPlace(const Scene& scene, const Occupancy& occupancy, Length side) {
    for (const Freedom freedom : {Freedom::BarePaper, Freedom::NoLines, Freedom::NothingElse}) {
        const Length room = side + 2 * squareAir;
        if (const auto at =
                placeOnSheet(scene, occupancy, {room, room}, freedom, Corner::BottomRight)) {
            return *at + Point{squareAir, squareAir};
        }
    }
    return std::nullopt;
}

void addSquare(Layer& layer, Point at, Length side) {
    layer.items.emplace_back(
        PathItem{{rectPath(Rect::at(at, {side, side}))}, pen::checkSquare(), std::nullopt});
}

constexpr std::size_t smallItems = 2;  // the 1 in square and its text

// Centred on (middle, top).
void addText(Layer& layer, const std::vector<std::string>& lines, std::int64_t points,
             Length middle, Length top) {
    const TextBlock block{lines, Length::points(points), true, true, false, pen::ink};
    const Point at{middle - roomOf(block).width.halfRoundedDown(), top};
    std::ranges::move(itemsAt(block, at), std::back_inserter(layer.items));
}

void addSmallSquare(Layer& layer, Point at) {
    addSquare(layer, at, small);
    addText(layer, {"1 in"}, 9, at.x + small.halfRoundedDown(), at.y + Length::millimetres(10));
}

}  // namespace

CheckSquares checkSquares(const Scene& scene, Occupancy& occupancy) {
    CheckSquares out{{layerCheckSquares, "Check squares", {}}, false};
    Layer& layer = out.layer;
    if (const auto at = findPlace(scene, occupancy, large)) {
        addSquare(layer, *at, large);
        const Length inset = (large - small).halfRoundedDown();
        addSmallSquare(layer, *at + Point{inset, Length::millimetres(6)});
        addText(layer, {"50 mm", "Both squares must measure true."}, 7,
                at->x + large.halfRoundedDown(), at->y + Length::millimetres(36));
        occupancy.addBox(Rect::at(*at, {large, large}), Occupancy::Mark);
    } else if (const auto room = findPlace(scene, occupancy, small)) {
        addSmallSquare(layer, *room);
        occupancy.addBox(Rect::at(*room, {small, small}), Occupancy::Mark);
    }
    const Length least = large + 2 * squareAir + 4 * textClearance;
    out.complete = layer.items.size() > smallItems || !scene.sheet().contains({least, least});
    return out;
}

}  // namespace matwright
