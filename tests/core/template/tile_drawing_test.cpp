// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "core/template/template.h"
#include "core/template/tiling.h"
#include "tests/core/template/drawing_probe.h"
#include "tests/core/template/tiling_values.h"
#include "tests/support/example_sketches.h"

namespace matwright {
namespace {

using test::doublePage;
using test::in;
using test::optionsFor;

std::vector<Vertex> crossesOnPage(const Drawing& drawing, const TilePlan& plan, const Tile& tile) {
    std::vector<Vertex> out;
    const Drawing sheet = tileDrawing(drawing, plan, tile);
    const Point by = tile.window.topLeft() - Point{plan.printerMargin, plan.printerMargin};
    for (const test::InkLine& line :
         test::strokedLines(*test::findLayer(sheet, "joining-crosses"))) {
        if (line.from.y == line.to.y) {
            out.push_back({(line.from.x + line.to.x) / 2 + static_cast<double>(by.x.ticks()),
                           line.from.y + static_cast<double>(by.y.ticks())});
        }
    }
    return out;
}

TEST(TileDrawing, HasTheSameCrossesAsItsNeighbourWhereTheyJoin) {
    const Drawing drawing = templateDrawing(blankSketch(), {});
    const auto plan = planTiles(drawing.size, optionsFor("letter", Length::inches(0, 1, 4)));
    ASSERT_TRUE(plan);
    for (std::size_t a = 0; a < plan->tiles.size(); ++a) {
        for (std::size_t b = a + 1; b < plan->tiles.size(); ++b) {
            const auto mine = crossesOnPage(drawing, *plan, plan->tiles[a]);
            const auto theirs = crossesOnPage(drawing, *plan, plan->tiles[b]);
            const auto shared = std::ranges::count_if(
                mine, [&](Vertex v) { return std::ranges::find(theirs, v) != theirs.end(); });
            const bool beside = plan->tiles[a].row == plan->tiles[b].row ||
                                plan->tiles[a].column == plan->tiles[b].column;
            EXPECT_GE(shared, beside ? 2 : 0);
        }
    }
}

TEST(TileDrawing, JoinsNothingAcrossTheFold) {
    Sketch sketch = blankSketch();
    sketch.page = doublePage(in(12, 12), Length());
    const Drawing drawing = templateDrawing(sketch, {});
    const auto plan = planTiles(sketch.page, optionsFor("letter", Length::inches(0, 1, 4)));
    ASSERT_TRUE(plan);
    for (const Tile& tile : plan->tiles) {
        const Drawing sheet = tileDrawing(drawing, *plan, tile);
        EXPECT_EQ(test::strokedLines(*test::findLayer(sheet, "trim-here")).size(), 2U);
        for (const Vertex cross : crossesOnPage(drawing, *plan, tile)) {
            const bool isLeft = cross.x < vertexAt({Length::inches(12), {}}).x;
            EXPECT_EQ(isLeft, tile.page == TiledPage::Left) << tile.name();
        }
    }
}

// The map of the whole: a box for each tile of both pages, in the drawing's proportions.
TEST(TileDrawing, ShowsBothPagesOnTheMap) {
    Sketch sketch = blankSketch();
    sketch.page = doublePage(in(12, 12), Length::inches(1));
    const auto plan = planTiles(sketch.page, optionsFor("letter", Length()));
    const Drawing sheet = tileDrawing(templateDrawing(sketch, {}), *plan, plan->tiles[4]);
    const Layer* label = test::findLayer(sheet, "tile");
    const auto boxes = test::textBoxes(*label);
    EXPECT_EQ(boxes[0].text, "Tile right A1 of 8");
    const auto map = std::ranges::find_if(label->items, [](const DrawingItem& item) {
        const auto* path = std::get_if<PathItem>(&item);
        return path != nullptr && path->paths.size() == 8;
    });
    ASSERT_NE(map, label->items.end());
    const std::vector<Path>& tiles = std::get<PathItem>(*map).paths;
    const double whole = (boundsOf(tiles[7]).right() - boundsOf(tiles[0]).left()).toInches();
    const double gap = (boundsOf(tiles[4]).left() - boundsOf(tiles[1]).right()).toInches();
    EXPECT_NEAR(gap / whole, 1.0 / 25, 0.001);
}

struct PlacedText {
    std::string key;  // its words and its place on the page
    Rect ink;
};

// The texts of a template's layers, `by` away from where they are on the page.
std::vector<PlacedText> textsOf(const Drawing& drawing, Point by) {
    std::vector<PlacedText> out;
    for (const char* id : {layerDimensions, layerLabels, layerCheckSquares, layerTitle, layerKey}) {
        const Layer* layer = test::findLayer(drawing, id);
        for (const test::InkBox& box :
             layer == nullptr ? std::vector<test::InkBox>() : test::textBoxes(*layer)) {
            const Rect ink{
                {Length::roundedFromTicks(box.left), Length::roundedFromTicks(box.right)},
                {Length::roundedFromTicks(box.top), Length::roundedFromTicks(box.bottom)}};
            const Point at = ink.topLeft() - by;
            out.push_back(
                {fmt::format("{} at {:.2f}, {:.2f}", box.text, at.x.toInches(), at.y.toInches()),
                 ink});
        }
    }
    return out;
}

TEST(TileDrawing, LetsEveryTextBeReadOnASheet) {
    for (const auto& example : test::exampleSketches()) {
        const auto plan =
            planTiles(example.sketch.page, optionsFor("letter", Length::inches(0, 1, 4)));
        TemplateOptions options;
        options.parts = plan->parts();
        const Drawing drawing = templateDrawing(example.sketch, options);
        std::map<std::string, bool> read;
        for (const PlacedText& text : textsOf(drawing, {})) {
            read[text.key] = false;
        }
        for (const Tile& tile : plan->tiles) {
            const Drawing sheet = tileDrawing(drawing, *plan, tile);
            const Point margin{plan->printerMargin, plan->printerMargin};
            const Rect window = Rect::at(margin, tile.window.size());
            const Layer* label = test::findLayer(sheet, "tile");
            const Rect covered = boundsOf(std::get<PathItem>(label->items[0]).paths[0]);
            for (const PlacedText& text : textsOf(sheet, margin - tile.window.topLeft())) {
                read[text.key] |= window.contains(text.ink) && !text.ink.intersects(covered);
            }
        }
        EXPECT_GT(read.size(), 10U);
        for (const auto& [text, isRead] : read) {
            EXPECT_TRUE(isRead) << example.file << ": " << text;
        }
    }
}

TEST(TileDrawing, ShowsItsWindowAtTrueSizeInsideTheMargins) {
    Drawing drawing;
    drawing.size = in(12, 12);
    drawing.title = "Lines";
    const Vertex from = vertexAt({Length::inches(9), Length::inches(1)});
    const Vertex to = vertexAt({Length::inches(9), Length::inches(2)});
    drawing.layers.push_back(
        {"trim", "", {PathItem{{linePath(from, to)}, Stroke{Length::points(1), {}, {}}, {}}}});
    const auto plan = planTiles(drawing.size, optionsFor("letter", Length()));
    ASSERT_TRUE(plan);
    const Drawing first = tileDrawing(drawing, *plan, plan->tiles[0]);
    EXPECT_TRUE(test::findLayer(first, "trim")->items.empty());
    const Drawing second = tileDrawing(drawing, *plan, plan->tiles[1]);
    const auto lines = test::strokedLines(*test::findLayer(second, "trim"));
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].from, vertexAt({Length::inches(1, 1, 4), Length::inches(1, 1, 4)}));
    EXPECT_EQ(second.size, plan->sheet);
}

// The length of the level line that ends next to these words.
double lengthBeside(const Layer& label, std::string_view words) {
    const auto boxes = test::textBoxes(label);
    const auto text = std::ranges::find(boxes, words, &test::InkBox::text);
    if (text == boxes.end()) {
        return 0;
    }
    for (const test::InkLine& line : test::strokedLines(label)) {
        const double gap = (text->left - line.to.x) / Length::ticksPerInch;
        if (line.from.y == line.to.y && line.to.y > text->top && line.to.y < text->bottom &&
            gap > 0 && gap < 0.1) {
            return (line.to.x - line.from.x) / Length::ticksPerInch;
        }
    }
    return 0;
}

TEST(TileDrawing, HasBothRulersWholeOnEverySheet) {
    for (const NamedSize& page : pageSizes()) {
        Sketch sketch = blankSketch();
        sketch.page.size = page.size;
        const Drawing drawing = templateDrawing(sketch, {});
        for (const NamedSize& sheet : sheetSizes()) {
            const auto plan = planTiles(page.size, optionsFor(sheet.id, Length::inches(0, 1, 4)));
            ASSERT_TRUE(plan);
            const Rect reach = Rect::at({}, plan->sheet).expanded(-plan->printerMargin);
            for (const Tile& tile : plan->tiles) {
                const Drawing drawn = tileDrawing(drawing, *plan, tile);
                const Layer* label = test::findLayer(drawn, "tile");
                ASSERT_TRUE(label);
                EXPECT_NEAR(lengthBeside(*label, "1 in"), 1, 1e-9) << sheet.id;
                EXPECT_NEAR(lengthBeside(*label, "50 mm"), 50 / 25.4, 1e-9) << sheet.id;
                EXPECT_TRUE(reach.contains(boundsOf(std::get<PathItem>(label->items[0]).paths[0])))
                    << page.id << " on " << sheet.id;
            }
        }
    }
}

TEST(TileDrawing, KeepsNoSquareThatASeamCutsAndHidesNone) {
    int kept = 0;
    int cut = 0;
    for (const auto& example : test::exampleSketches()) {
        const Drawing drawing = templateDrawing(example.sketch, {});
        const auto plan = planTiles(drawing.size, optionsFor("letter", Length::inches(0, 1, 4)));
        ASSERT_TRUE(plan);
        for (const Tile& tile : plan->tiles) {
            const Drawing sheet = tileDrawing(drawing, *plan, tile);
            const Layer* squares = test::findLayer(sheet, layerCheckSquares);
            if (squares == nullptr || squares->items.empty()) {
                ++cut;
                continue;
            }
            ++kept;
            const Rect window =
                Rect::at({plan->printerMargin, plan->printerMargin}, tile.window.size());
            const Rect box = boundsOf(std::get<PathItem>(squares->items[0]).paths[0]);
            EXPECT_TRUE(window.contains(box)) << example.file;
            const Layer* label = test::findLayer(sheet, "tile");
            EXPECT_FALSE(box.intersects(boundsOf(std::get<PathItem>(label->items[0]).paths[0])))
                << example.file << " " << tile.name();
        }
    }
    EXPECT_GT(kept, 0);
    EXPECT_GT(cut, 0);
}

TEST(TileDrawing, SaysWhichTileItIs) {
    const Drawing drawing = templateDrawing(blankSketch(), {});
    const auto plan = planTiles(drawing.size, optionsFor("letter", Length()));
    const auto boxes =
        test::textBoxes(*test::findLayer(tileDrawing(drawing, *plan, plan->tiles[3]), "tile"));
    ASSERT_FALSE(boxes.empty());
    EXPECT_EQ(boxes[0].text, "Tile B2 of 4");
}

}  // namespace
}  // namespace matwright
