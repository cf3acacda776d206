// SPDX-License-Identifier: MIT
#include "core/template/tile_label.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "core/template/pen.h"
#include "core/template/tile_parts.h"

namespace matwright {

namespace {

using tile::line;
using tile::pad;
using tile::white;

constexpr Colour shownTile = {190, 190, 190};
constexpr Length mapSide = Length::millimetres(14);
constexpr Length textHeight = Length::points(6);
constexpr Length shortRuler = Length::inches(1);
constexpr Length longRuler = Length::millimetres(50);
constexpr Length rulerHeight = Length::hundredthMillimetres(250);
constexpr Length rulerWords = Length::millimetres(10);  // room for its length in words

void append(std::vector<DrawingItem>& to, std::vector<DrawingItem> items) {
    std::ranges::move(items, std::back_inserter(to));
}

// A line between the middles of two ticks, its length in words behind it.
std::vector<DrawingItem> ruler(Point at, Length length, const std::string& words) {
    const Point end{at.x + length, at.y};
    const Length middle = at.y + rulerHeight.halfRoundedDown();
    std::vector<DrawingItem> items{
        PathItem{{line(at, {at.x, at.y + rulerHeight}), line(end, {end.x, end.y + rulerHeight}),
                  line({at.x, middle}, {end.x, middle})},
                 pen::checkSquare(),
                 std::nullopt}};
    const TextBlock text{{words}, textHeight, false, false, false, pen::ink};
    append(items, itemsAt(text, end + Point{pad, Length()}));
    return items;
}

}  // namespace

TileLabel::TileLabel(const Drawing& drawing, const TilePlan& plan, const Tile& tile)
    : m_drawing(drawing),
      m_plan(plan),
      m_tile(tile),
      m_words{{fmt::format("Tile {} of {}", tile.name(), plan.tiles.size()),
               shortened(drawing.title, 36), "Print at actual size (100 %)"},
              textHeight,
              true,
              false,
              false,
              pen::ink},
      m_wordRoom(roomOf(m_words)) {
    // Of a double page each page is as large on the map as a single one.
    const Length longest = std::max(plan.page.width, plan.page.height);
    m_map = {mapSide.scaledRounded(ratio(drawing.size.width, longest)),
             mapSide.scaledRounded(ratio(drawing.size.height, longest))};
}

// The words and the short ruler, beside the map.
Length TileLabel::headHeight() const {
    return std::max(m_wordRoom.height + pad + rulerHeight, m_map.height);
}

Size TileLabel::room() const {
    const Length head = m_map.width + pad + std::max(m_wordRoom.width, shortRuler + rulerWords);
    return {std::max(head, longRuler + rulerWords) + 2 * pad, headHeight() + rulerHeight + 3 * pad};
}

std::vector<DrawingItem> TileLabel::itemsAt(Point at) const {
    std::vector<DrawingItem> items{
        PathItem{{rectPath(Rect::at(at, room()))}, pen::dimension(), white}};
    const Point map = at + Point{pad, pad};
    const Point words = map + Point{m_map.width + pad, Length()};
    append(items, this->map(map));
    append(items, matwright::itemsAt(m_words, words));
    append(items, ruler({words.x, map.y + headHeight() - rulerHeight}, shortRuler, "1 in"));
    append(items, ruler({map.x, map.y + headHeight() + pad}, longRuler, "50 mm"));
    return items;
}

std::vector<DrawingItem> TileLabel::map(Point at) const {
    const double scale = ratio(m_map.width, m_drawing.size.width);
    const auto small = [&](const Rect& r) {
        return rectPath(
            {{at.x + r.left().scaledRounded(scale), at.x + r.right().scaledRounded(scale)},
             {at.y + r.top().scaledRounded(scale), at.y + r.bottom().scaledRounded(scale)}});
    };
    std::vector<Path> all;
    all.reserve(m_plan.tiles.size());
    for (const Tile& tile : m_plan.tiles) {
        all.push_back(small(tile.window));
    }
    return {PathItem{{small(m_tile.window)}, std::nullopt, shownTile},
            PathItem{std::move(all), pen::dimension(), std::nullopt}};
}

}  // namespace matwright
