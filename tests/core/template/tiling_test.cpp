// SPDX-License-Identifier: MIT
#include "core/template/tiling.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "core/measure/catalogue.h"
#include "core/template/template.h"
#include "tests/core/template/drawing_probe.h"
#include "tests/support/example_sketches.h"

namespace matwright {
namespace {

constexpr Size in(std::int64_t width, std::int64_t height) {
    return {Length::inches(width), Length::inches(height)};
}

TilingOptions optionsFor(std::string_view sheet, Length overlap) {
    return {findSheetSize(sheet)->size, Length::inches(0, 1, 4), overlap};
}

// n = 1 if the page fits the printable length, else ceil((L - o) / (P - o)) per axis, the better of
// the two sheet directions; worked out by hand. (CSS Paged Media 3, appendix B has the notion of
// tiling, not the numbers.)
TEST(PlanTiles, NeedsTheFewestSheets) {
    const Size page12 = in(12, 12);
    const Size letter = {Length::inches(8, 1, 2), Length::inches(11)};
    const Size a4 = {Length::millimetres(210), Length::millimetres(297)};
    const struct {
        Size page;
        const char* sheet;
        std::size_t count;
    } table[] = {
        {page12, "letter", 4},  {page12, "a4", 4},    {page12, "tabloid", 2}, {page12, "a3", 2},
        {page12, "12x18", 2},   {page12, "13x19", 1}, {letter, "letter", 2},  {letter, "a4", 2},
        {letter, "tabloid", 1}, {letter, "a3", 1},    {a4, "a4", 2},          {a4, "letter", 2},
    };
    for (const Length overlap : {Length(), Length::inches(0, 1, 4)}) {
        for (const auto& row : table) {
            const auto plan = planTiles(row.page, optionsFor(row.sheet, overlap));
            ASSERT_TRUE(plan);
            EXPECT_EQ(plan->tiles.size(), row.count) << row.sheet;
        }
    }
}

TEST(PlanTiles, TurnsTheSheetOnlyWhereThatSavesOne) {
    const Size letter = {Length::inches(8, 1, 2), Length::inches(11)};
    EXPECT_TRUE(planTiles(letter, optionsFor("letter", Length()))->turned);
    EXPECT_FALSE(planTiles(in(12, 12), optionsFor("letter", Length()))->turned);
    EXPECT_FALSE(planTiles(in(2, 2), optionsFor("letter", Length()))->turned);
}

TEST(PlanTiles, FillsOneSheetToTheTickAndNeedsTwoBeyond) {
    const Size fits = {Length::inches(8), Length::inches(10, 1, 2)};
    const Length tick = Length::fromTicks(1);
    const TilingOptions options = optionsFor("letter", Length());
    EXPECT_EQ(planTiles(fits, options)->tiles.size(), 1U);
    EXPECT_EQ(planTiles(Size{fits.width, fits.height + tick}, options)->tiles.size(), 2U);
}

// Laws: the windows cover the page without gaps, neighbours share exactly the overlap, none is
// larger than the sheet can print.
TEST(PlanTiles, CoversThePage) {
    for (const NamedSize& page : pageSizes()) {
        for (const NamedSize& sheet : sheetSizes()) {
            for (const Length overlap : {Length(), Length::inches(0, 1, 4), Length::inches(2)}) {
                const auto plan = planTiles(page.size, optionsFor(sheet.id, overlap));
                ASSERT_TRUE(plan);
                EXPECT_EQ(plan->tiles.front().window.topLeft(), Point());
                EXPECT_EQ(plan->tiles.back().window.bottomRight(),
                          (Point{page.size.width, page.size.height}));
                for (const Tile& tile : plan->tiles) {
                    const Size reach{plan->sheet.width - 2 * plan->printerMargin,
                                     plan->sheet.height - 2 * plan->printerMargin};
                    EXPECT_TRUE(reach.contains(tile.window.size()));
                    EXPECT_TRUE(tile.window.size().isPositive());
                    if (tile.column > 0) {
                        const Tile& left = plan->tiles[static_cast<std::size_t>(
                            tile.row * plan->columns + tile.column - 1)];
                        EXPECT_EQ(left.window.right() - tile.window.left(), overlap);
                    }
                }
            }
        }
    }
}

PageSetup doublePage(Size size, Length gap) {
    PageSetup page;
    page.size = size;
    page.doublePage = true;
    page.foldGap = gap;
    return page;
}

// Each page takes as many sheets as it does alone.
TEST(PlanTiles, TilesADoublePageFromTheFoldPageByPage) {
    for (const NamedSize& size : pageSizes()) {
        for (const NamedSize& sheet : sheetSizes()) {
            for (const Length gap : {Length(), Length::inches(0, 1, 2)}) {
                const PageSetup page = doublePage(size.size, gap);
                const TilingOptions options = optionsFor(sheet.id, Length::inches(0, 1, 4));
                const auto plan = planTiles(page, options);
                ASSERT_TRUE(plan);
                if (!plan->isPageByPage()) {
                    EXPECT_EQ(plan->tiles.size(), 1U) << size.id << " on " << sheet.id;
                    continue;
                }
                const auto one = planTiles(size.size, options);
                const std::size_t half = one->tiles.size();
                ASSERT_EQ(plan->tiles.size(), 2 * half) << size.id << " on " << sheet.id;
                for (std::size_t i = 0; i < half; ++i) {
                    const Point right{size.size.width + gap, Length()};
                    EXPECT_EQ(plan->tiles[i].window, one->tiles[i].window);
                    EXPECT_EQ(plan->tiles[half + i].window, one->tiles[i].window.moved(right));
                }
            }
        }
    }
}

TEST(PlanTiles, KeepsADoublePageTogetherOnlyWhereOneSheetHoldsIt) {
    const auto plan = [](Length gap) {
        return planTiles(doublePage(in(6, 8), gap), optionsFor("13x19", Length()));
    };
    // 13 x 19 in less the margins: 12 1/2 in wide at most.
    EXPECT_EQ(plan(Length::inches(0, 1, 2))->tiles.size(), 1U);
    EXPECT_FALSE(plan(Length::inches(0, 1, 2))->isPageByPage());
    const Length more = Length::inches(6, 1, 2) + Length::fromTicks(1);
    EXPECT_EQ(plan(more)->tiles.size(), 2U);
    EXPECT_TRUE(plan(more)->isPageByPage());
}

TEST(PlanTiles, NamesTheTilesOfADoublePageByTheirPage) {
    const auto plan = planTiles(doublePage(in(12, 12), Length()), optionsFor("letter", Length()));
    std::vector<std::string> names;
    for (const Tile& tile : plan->tiles) {
        names.push_back(tile.name());
    }
    EXPECT_EQ(names, (std::vector<std::string>{"left A1", "left A2", "left B1", "left B2",
                                               "right A1", "right A2", "right B1", "right B2"}));
}

TEST(PlanTiles, OfASinglePageIsThatOfItsSize) {
    PageSetup page;
    page.foldGap = Length::inches(1);  // means nothing to a single page
    const auto plan = planTiles(page, optionsFor("letter", Length()));
    EXPECT_EQ(plan->tiles.size(), 4U);
    EXPECT_FALSE(plan->isPageByPage());
}

// 12 in on Letter: columns 0 to 8 and 7 3/4 to 12 in, rows 0 to 10 1/2 and 10 1/4 to 12 in. Crosses
// stand in the middle of the shared 1/4 in, 3 mm an arm.
TEST(PlanTiles, KeepsTextsOffTheStripsWithCrosses) {
    const auto plan = planTiles(in(12, 12), optionsFor("letter", Length::inches(0, 1, 4)));
    const Length strip = Length::inches(0, 1, 8) + Length::millimetres(3);
    const auto parts = plan->parts();
    ASSERT_EQ(parts.size(), 4U);
    EXPECT_EQ(parts[0], (Rect{{Length(), Length::inches(8) - strip},
                              {Length(), Length::inches(10, 1, 2) - strip}}));
    EXPECT_EQ(parts[3], (Rect{{Length::inches(7, 3, 4) + strip, Length::inches(12)},
                              {Length::inches(10, 1, 4) + strip, Length::inches(12)}}));
    // One tick past the sheet leaves a second window that is nothing but strip.
    const auto narrow =
        planTiles(Size{Length::inches(8), Length::inches(10, 1, 2) + Length::fromTicks(1)},
                  optionsFor("letter", Length()));
    ASSERT_EQ(narrow->tiles.size(), 2U);
    EXPECT_EQ(narrow->parts().size(), 1U);
}

TEST(PlanTiles, RefusesWhatLeavesNoRoom) {
    EXPECT_FALSE(planTiles(in(12, 12), optionsFor("letter", Length::inches(7, 3, 4))));
    EXPECT_TRUE(planTiles(in(12, 12), optionsFor("letter", Length::inches(7, 1, 2))));
    TilingOptions wide = optionsFor("letter", Length());
    wide.printerMargin = Length::inches(4, 1, 4);
    EXPECT_EQ(planTiles(in(12, 12), wide).error().code, ErrorCode::OutOfRange);
    wide.printerMargin = Length::inches(-1);
    EXPECT_FALSE(planTiles(in(12, 12), wide));
    const Size huge = in(200, 100);
    EXPECT_FALSE(planTiles(huge, optionsFor("letter", Length::inches(7, 1, 2))));
}

TEST(Tile, IsNamedByRowLetterAndColumnNumber) {
    EXPECT_EQ((Tile{0, 0, {}}).name(), "A1");
    EXPECT_EQ((Tile{1, 2, {}}).name(), "B3");
    EXPECT_EQ((Tile{26, 0, {}}).name(), "AA1");
}

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
