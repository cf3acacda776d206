// SPDX-License-Identifier: MIT
#include "core/template/guides.h"

#include "core/template/pen.h"
#include "core/template/template.h"

namespace matwright {

namespace {

constexpr Length tickLength = Length::millimetres(4);

struct Line {
    Point from;
    Point to;
};

std::vector<Line> centreTicks(const Rect& page) {
    const Point centre = page.centreRoundedDown();
    return {{{centre.x, page.top()}, {centre.x, page.top() + tickLength}},
            {{centre.x, page.bottom() - tickLength}, {centre.x, page.bottom()}},
            {{page.left(), centre.y}, {page.left() + tickLength, centre.y}},
            {{page.right() - tickLength, centre.y}, {page.right(), centre.y}}};
}

std::optional<Line> foldLine(const PageSetup& setup) {
    const std::vector<Rect> both = pages(setup);
    if (both.size() < 2) {
        return std::nullopt;
    }
    const Length middle = Interval{both[0].right(), both[1].left()}.centreRoundedDown();
    return Line{{middle, both[0].top()}, {middle, both[0].bottom()}};
}

// Where the pages meet, their edges are one black line: a white band in it lets the fold show.
bool needsBand(const PageSetup& setup) {
    return setup.foldGap < 2 * pen::foldBand().width;
}

}  // namespace

Layer pageLayer(const PageSetup& setup) {
    Layer layer{layerPage, "Page", {}};
    // White under everything: a viewer with a dark background would show black on black.
    layer.items.emplace_back(
        PathItem{{rectPath(surface(setup))}, std::nullopt, Colour{255, 255, 255}});
    const Stroke stroke = pen::page();
    for (const Rect& page : pages(setup)) {
        layer.items.emplace_back(PathItem{
            {rectPath(page.expanded(-stroke.width.halfRoundedDown()))}, stroke, std::nullopt});
    }
    return layer;
}

Layer guideLayer(const PageSetup& setup) {
    Layer layer{layerGuides, "Margins, fold and centres", {}};
    for (const Rect& inside : insideMargins(setup)) {
        layer.items.emplace_back(PathItem{{rectPath(inside)}, pen::guide(), std::nullopt});
    }
    if (const auto fold = foldLine(setup)) {
        const Path line = linePath(vertexAt(fold->from), vertexAt(fold->to));
        if (needsBand(setup)) {
            layer.items.emplace_back(PathItem{{line}, pen::foldBand(), std::nullopt});
        }
        layer.items.emplace_back(PathItem{{line}, pen::fold(), std::nullopt});
    }
    std::vector<Path> ticks;
    for (const Rect& page : pages(setup)) {
        for (const Line& tick : centreTicks(page)) {
            ticks.push_back(linePath(vertexAt(tick.from), vertexAt(tick.to)));
        }
    }
    layer.items.emplace_back(PathItem{std::move(ticks), pen::tick(), std::nullopt});
    return layer;
}

void addGuides(const PageSetup& setup, bool withGuides, Occupancy& occupancy) {
    for (const Rect& page : pages(setup)) {
        // The fold is a page edge inside the sheet: nothing is written across it.
        occupancy.addLine(vertexAt({page.right(), page.top()}), vertexAt(page.bottomRight()),
                          Occupancy::Outline);
        occupancy.addLine(vertexAt(page.topLeft()), vertexAt({page.left(), page.bottom()}),
                          Occupancy::Outline);
        for (const Line& tick : centreTicks(page)) {
            if (withGuides) {
                occupancy.addLine(vertexAt(tick.from), vertexAt(tick.to), Occupancy::Guide);
            }
        }
    }
    if (!withGuides) {
        return;
    }
    if (const auto fold = foldLine(setup)) {
        occupancy.addLine(vertexAt(fold->from), vertexAt(fold->to), Occupancy::Guide);
    }
    for (const Rect& inside : insideMargins(setup)) {
        const Path edge = rectPath(inside);
        occupancy.addRing(flattened(edge, pen::hundredths(1)), Occupancy::Guide);
    }
}

}  // namespace matwright
