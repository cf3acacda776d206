// SPDX-License-Identifier: MIT
#include "core/template/tiling.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "core/measure/catalogue.h"
#include "core/template/template.h"
#include "tests/core/template/drawing_probe.h"
#include "tests/core/template/tiling_values.h"
#include "tests/support/example_sketches.h"

namespace matwright {
namespace {

using test::doublePage;
using test::in;
using test::optionsFor;

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

}  // namespace
}  // namespace matwright
