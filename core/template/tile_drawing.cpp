// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "core/template/occupancy.h"
#include "core/template/pen.h"
#include "core/template/template.h"
#include "core/template/tile_label.h"
#include "core/template/tile_parts.h"
#include "core/template/tiling.h"

namespace matwright {

namespace {

using tile::crossArm;
using tile::line;
using tile::pad;
using tile::white;

// What a box over a text or a check square costs; a line goes on beside it and costs 1.
constexpr int lost = 20;

Vertex offsetOf(const TilePlan& plan, const Tile& tile) {
    return vertexAt(Point{plan.printerMargin, plan.printerMargin} - tile.window.topLeft());
}

DrawingItem movedItem(const DrawingItem& item, Vertex by) {
    DrawingItem out = item;
    if (auto* path = std::get_if<PathItem>(&out)) {
        for (Path& it : path->paths) {
            it = moved(std::move(it), by);
        }
    } else {
        auto& text = std::get<TextItem>(out);
        text.at = {text.at.x + by.x, text.at.y + by.y};
    }
    return out;
}

// A generous box around the item.
Rect reachOf(const DrawingItem& item) {
    if (const auto* text = std::get_if<TextItem>(&item)) {
        const Length along = textWidthBound(text->text, text->height, text->bold);
        const Point at{Length::roundedFromTicks(text->at.x), Length::roundedFromTicks(text->at.y)};
        const Length x = text->rotation.isZero() ? along : text->height;
        const Length y = text->rotation.isZero() ? text->height : along;
        return {{at.x - x, at.x + x}, {at.y - y, at.y + y}};
    }
    const auto& path = std::get<PathItem>(item);
    Rect box = boundsOf(path.paths.front());
    for (const Path& it : path.paths) {
        box = box.united(boundsOf(it));
    }
    return path.stroke ? box.expanded(path.stroke->width) : box;
}

Layer shownPart(const Layer& layer, const Rect& window, Vertex by) {
    Layer out{layer.id, layer.label, {}};
    for (const DrawingItem& item : layer.items) {
        const auto* path = std::get_if<PathItem>(&item);
        if ((path == nullptr || !path->paths.empty()) && reachOf(item).intersects(window)) {
            out.items.push_back(movedItem(item, by));
        }
    }
    return out;
}

// Squares cut by a seam measure nothing; every sheet has rulers of its own.
bool isShown(const Layer& layer, const Rect& window) {
    return layer.id != layerCheckSquares || std::ranges::all_of(layer.items, [&](const auto& item) {
               // The texts stand inside the squares.
               return std::holds_alternative<TextItem>(item) || window.contains(reachOf(item));
           });
}

int linesIn(const Rect& box, const PathItem& item) {
    if (!item.stroke) {
        return 0;
    }
    int found = 0;
    for (const Path& path : item.paths) {
        std::vector<Vertex> corners = flattened(path, Length::millimetres(1));
        if (path.closed) {
            corners.push_back(corners.front());
        }
        for (std::size_t i = 1; i < corners.size(); ++i) {
            found += lineMeetsBox(corners[i - 1], corners[i], box) ? 1 : 0;
        }
    }
    return found;
}

class TileMarks {
  public:
    TileMarks(const Drawing& drawing, const TilePlan& plan, const Tile& tile)
        : m_drawing(drawing),
          m_plan(plan),
          m_tile(tile),
          m_window(tile.window.moved(Point{plan.printerMargin, plan.printerMargin} -
                                     tile.window.topLeft())) {}

    // Covers what crosses the window's edge: the sheet with the window left open.
    Layer frame() const {
        const Rect sheet = Rect::at({}, m_plan.sheet);
        return {"frame",
                "Frame",
                {PathItem{{rectPath(sheet.expanded(sheetReach())), rectPath(m_window)},
                          std::nullopt,
                          white}}};
    }

    Layer crosses() const {
        Layer layer{"joining-crosses", "Joining crosses", {}};
        std::vector<Path> paths;
        for (const Point at : crossPlaces()) {
            const Point here = onSheet(at);
            paths.push_back(line({here.x - crossArm, here.y}, {here.x + crossArm, here.y}));
            paths.push_back(line({here.x, here.y - crossArm}, {here.x, here.y + crossArm}));
        }
        if (!paths.empty()) {
            layer.items.emplace_back(PathItem{std::move(paths), pen::dimension(), std::nullopt});
        }
        return layer;
    }

    // Along the window's edge wherever another tile joins.
    Layer trimHere() const {
        Layer layer{"trim-here", "Trim here", {}};
        std::vector<Path> paths;
        const Rect& w = m_window;
        if (m_tile.column > 0) {
            paths.push_back(line(w.topLeft(), {w.left(), w.bottom()}));
        }
        if (m_tile.column + 1 < m_plan.columns) {
            paths.push_back(line({w.right(), w.top()}, w.bottomRight()));
        }
        if (m_tile.row > 0) {
            paths.push_back(line(w.topLeft(), {w.right(), w.top()}));
        }
        if (m_tile.row + 1 < m_plan.rows) {
            paths.push_back(line({w.left(), w.bottom()}, w.bottomRight()));
        }
        if (!paths.empty()) {
            const Length dash = Length::millimetres(2);
            layer.items.emplace_back(PathItem{std::move(paths),
                                              Stroke{pen::hundredths(15), pen::ink, {dash, dash}},
                                              std::nullopt});
        }
        return layer;
    }

    // Where the sheet is free of the window if it is anywhere, else in a white box in the window's
    // emptiest place.
    Layer label() const {
        const TileLabel label(m_drawing, m_plan, m_tile);
        return {"tile", "Tile", label.itemsAt(placeFor(label.room()))};
    }

  private:
    Point onSheet(Point onPage) const {
        return onPage - m_tile.window.topLeft() + m_window.topLeft();
    }

    // Items reach at most as far out as the drawing is large.
    Length sheetReach() const { return std::max(m_drawing.size.width, m_drawing.size.height); }

    // In page coordinates, and the same on both tiles that share a strip: in its middle, at a
    // quarter and three quarters of its length.
    std::vector<Point> crossPlaces() const {
        const Length half = m_plan.overlap.halfRoundedDown();
        std::vector<Point> all;
        for (const Tile& tile : m_plan.tiles) {
            const Rect& w = tile.window;
            if (tile.page != m_tile.page) {
                continue;
            }
            for (const int quarters : {1, 3}) {
                if (tile.column + 1 < m_plan.columns) {
                    all.push_back(
                        {w.right() - half, w.top() + w.y.length().scaledRounded(quarters, 4)});
                }
                if (tile.row + 1 < m_plan.rows) {
                    all.push_back(
                        {w.left() + w.x.length().scaledRounded(quarters, 4), w.bottom() - half});
                }
            }
        }
        std::erase_if(all, [&](Point at) { return !m_tile.window.contains(at); });
        return all;
    }

    // Below or right of the window where the page ends before the sheet does; else the window's
    // corner whose box the fewest items reach.
    Point placeFor(Size room) const {
        const Length margin = m_plan.printerMargin;
        const Length sheetRight = m_plan.sheet.width - margin;
        const Length sheetBottom = m_plan.sheet.height - margin;
        if (sheetBottom - m_window.bottom() >= room.height + pad) {
            return {m_window.left(), m_window.bottom() + pad};
        }
        if (sheetRight - m_window.right() >= room.width + pad) {
            return {m_window.right() + pad, m_window.top()};
        }
        return emptiestPlace(room);
    }

    // Clear of the strips the neighbours share, where the crosses are.
    Point emptiestPlace(Size room) const {
        const Length step = Length::millimetres(4);
        const Length strip = m_plan.overlap + crossArm;
        Point best = m_window.topLeft();
        int least = -1;
        for (Length y = m_window.bottom() - room.height - strip; y >= m_window.top() + strip;
             y -= step) {
            for (Length x = m_window.left() + strip; x + room.width + strip <= m_window.right();
                 x += step) {
                const int crowd = crowdAt(Rect::at({x, y}, room));
                if (least < 0 || crowd < least) {
                    least = crowd;
                    best = {x, y};
                }
                if (least == 0) {
                    return best;
                }
            }
        }
        return best;
    }

    int crowdAt(const Rect& onSheetBox) const;

    const Drawing& m_drawing;
    const TilePlan& m_plan;
    const Tile& m_tile;
    Rect m_window;  // on the sheet
};

int TileMarks::crowdAt(const Rect& onSheetBox) const {
    const Rect box = onSheetBox.moved(m_tile.window.topLeft() - m_window.topLeft());
    int crowd = 0;
    for (const Layer& layer : m_drawing.layers) {
        if (!isShown(layer, m_tile.window)) {
            continue;
        }
        const bool isSquares = layer.id == layerCheckSquares;
        for (const DrawingItem& item : layer.items) {
            const auto* path = std::get_if<PathItem>(&item);
            if (path != nullptr && !isSquares) {
                crowd += linesIn(box, *path);
            } else if (reachOf(item).intersects(box)) {
                crowd += lost;
            }
        }
    }
    return crowd;
}

}  // namespace

Drawing tileDrawing(const Drawing& drawing, const TilePlan& plan, const Tile& tile) {
    Drawing out;
    out.size = plan.sheet;
    out.title =
        fmt::format("{} \u2013 tile {} of {}", drawing.title, tile.name(), plan.tiles.size());
    out.description = drawing.description;
    const Vertex by = offsetOf(plan, tile);
    for (const Layer& layer : drawing.layers) {
        if (isShown(layer, tile.window)) {
            out.layers.push_back(shownPart(layer, tile.window, by));
        }
    }
    const TileMarks marks(drawing, plan, tile);
    for (Layer layer : {marks.frame(), marks.trimHere(), marks.crosses(), marks.label()}) {
        if (!layer.items.empty()) {
            out.layers.push_back(std::move(layer));
        }
    }
    return out;
}

}  // namespace matwright
