// SPDX-License-Identifier: MIT
#include "core/contactsheet/contact_sheet.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/drawing/svg.h"
#include "core/measure/catalogue.h"
#include "tests/support/example_sketches.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

std::vector<TextItem> textsOf(const Drawing& sheet) {
    std::vector<TextItem> texts;
    for (const Layer& layer : sheet.layers) {
        for (const DrawingItem& item : layer.items) {
            if (const auto* text = std::get_if<TextItem>(&item)) {
                texts.push_back(*text);
            }
        }
    }
    return texts;
}

bool says(const Drawing& sheet, const std::string& wanted) {
    return std::ranges::any_of(textsOf(sheet),
                               [&](const TextItem& text) { return text.text == wanted; });
}

ContactEntry entryOf(const std::string& name, Sketch sketch) {
    return {name, std::move(sketch)};
}

// Where ink may be: grown by less than a hair for rounding.
void expectInside(const Drawing& sheet, const Rect& room) {
    for (const Layer& layer : sheet.layers) {
        for (const DrawingItem& item : layer.items) {
            if (const auto* text = std::get_if<TextItem>(&item)) {
                const Length x = Length::roundedFromTicks(text->at.x);
                const Length y = Length::roundedFromTicks(text->at.y);
                const Length width = textWidthBound(text->text, text->height, text->bold);
                const Length left = text->anchor == TextAnchor::End ? x - width : x;
                EXPECT_TRUE(room.contains(Rect{{left, left + width}, {y - text->height, y}}))
                    << text->text;
                continue;
            }
            const auto& shape = std::get<PathItem>(item);
            const Length line = shape.stroke ? shape.stroke->width.scaledRounded(1, 2) : Length();
            for (const Path& path : shape.paths) {
                EXPECT_TRUE(
                    room.expanded(Length::fromTicks(2)).contains(boundsOf(path).expanded(line)));
            }
        }
    }
}

TEST(ContactGrid, FillsTheSheetWithEqualCellsThatDoNotTouch) {
    for (const char* id : {"letter", "a4"}) {
        for (int columns = 1; columns <= 10; ++columns) {
            for (const bool isTurned : {false, true}) {
                ContactSheetOptions options;
                options.sheet = findSheetSize(id)->size;
                options.sheet = isTurned ? options.sheet.turned() : options.sheet;
                options.columns = columns;
                const ContactGrid grid = contactGrid(options);
                const Rect inside = Rect::at({}, options.sheet).expanded(-options.margin);
                ASSERT_EQ(grid.columns, columns);
                ASSERT_GE(grid.rows, 1);
                for (std::size_t i = 0; i < grid.perSheet(); ++i) {
                    EXPECT_TRUE(inside.expanded(Length::fromTicks(columns)).contains(grid.cell(i)));
                    EXPECT_EQ(grid.cell(i).size(), grid.first.size());
                    for (std::size_t j = 0; j < i; ++j) {
                        EXPECT_FALSE(grid.cell(i).intersects(grid.cell(j)));
                    }
                }
                // One more row would not fit.
                EXPECT_GT(grid.cell(grid.perSheet()).bottom(), inside.bottom());
            }
        }
    }
}

TEST(ContactSheet, CountsItsSheets) {
    const ContactSheetOptions options;
    const std::size_t perSheet = contactGrid(options).perSheet();
    EXPECT_EQ(contactSheetCount(options, 0), 1u);
    EXPECT_EQ(contactSheetCount(options, 1), 1u);
    EXPECT_EQ(contactSheetCount(options, perSheet), 1u);
    EXPECT_EQ(contactSheetCount(options, perSheet + 1), 2u);
    EXPECT_EQ(contactSheetCount(options, 10 * perSheet), 10u);
}

TEST(ContactSheet, SaysNamesPhotosPageSizeTitleAndSheet) {
    test::Random random(7);
    Sketch sketch = blankSketch();
    sketch.page.doublePage = true;
    Piece photo;
    photo.kind = PieceKind::PhotoSlot;
    photo.size = {Length::inches(4), Length::inches(6)};
    sketch.pieces[PieceId{1}] = photo;
    sketch.order = {PieceId{1}};
    ContactSheetOptions options;
    options.title = "My sketches";
    const std::vector<ContactEntry> entries{entryOf("Harbour day", sketch),
                                            entryOf("two\nlines", blankSketch())};
    const Drawing sheet = contactSheet(options, entries, 2, 5);
    EXPECT_EQ(sheet.size, options.sheet);
    for (const char* text : {"Harbour day", "1 photo \u00B7 12 \u00D7 12 in double", "two lines",
                             "0 photos \u00B7 12 \u00D7 12 in", "My sketches", "Sheet 2 of 5"}) {
        EXPECT_TRUE(says(sheet, text)) << text;
    }
}

TEST(ContactSheet, SaysTheFactsInTwoLinesWhereCellsAreNarrow) {
    ContactSheetOptions options;
    options.columns = 5;
    const Drawing sheet = contactSheet(options, std::vector{entryOf("a", blankSketch())}, 1, 1);
    EXPECT_TRUE(says(sheet, "0 photos"));
    EXPECT_TRUE(says(sheet, "12 \u00D7 12 in"));
}

TEST(ContactSheet, WithoutSketchesSaysSo) {
    EXPECT_TRUE(says(contactSheet({}, {}, 1, 1), "There are no sketches to show."));
}

TEST(ContactSheet, KeepsEverythingInItsCell) {
    test::Random random(20'261'125);
    for (int round = 0; round < 60; ++round) {
        ContactSheetOptions options;
        options.columns = 1 + round % 10;
        options.title = std::string(200, 'W');
        options.sheet = findSheetSize(round % 2 == 0 ? "letter" : "a4")->size;
        const ContactEntry entry =
            entryOf(std::string(static_cast<std::size_t>(round), 'W') + "\u5199",
                    test::randomSketch(random, 1 + round));
        const Drawing sheet = contactSheet(options, std::vector{entry}, 1, 1);
        Drawing cell = sheet;
        cell.layers.erase(cell.layers.begin());
        expectInside(cell, contactGrid(options).cell(0));
        Drawing heading = sheet;
        heading.layers.resize(1);
        expectInside(heading, Rect::at({}, options.sheet).expanded(-options.margin));
    }
}

TEST(ContactSheet, KeepsProportions) {
    Sketch sketch = blankSketch();
    sketch.page.size = {Length::inches(8, 1, 2), Length::inches(11)};
    const ContactSheetOptions options;
    const Drawing sheet = contactSheet(options, std::vector{entryOf("a", sketch)}, 1, 1);
    const Rect page = boundsOf(std::get<PathItem>(sheet.layers[1].items.at(0)).paths.at(0));
    EXPECT_NEAR(ratio(page.size().width, page.size().height), 8.5 / 11, 1e-5);
    const Rect cell = contactGrid(options).cell(0);
    EXPECT_NEAR(page.x.centreRoundedDown().toInches(), cell.x.centreRoundedDown().toInches(), 1e-5);
}

TEST(ContactSheet, LeavesOutTextsTooSmallToRead) {
    ContactEntry entry{"", {}};
    for (test::ExampleSketch& example : test::exampleSketches()) {
        entry.sketch = std::move(example.sketch);
        ContactSheetOptions options;
        for (const int columns : {1, 4, 8}) {
            options.columns = columns;
            for (const TextItem& text : textsOf(contactSheet(options, std::vector{entry}, 1, 1))) {
                EXPECT_GE(text.height, Length::points(4));
            }
        }
    }
}

TEST(ContactSheet, TakesNoMoreEntriesThanItHasCells) {
    const ContactSheetOptions options;
    const std::size_t perSheet = contactGrid(options).perSheet();
    const std::vector<ContactEntry> entries(perSheet + 5, entryOf("a", blankSketch()));
    const auto texts = textsOf(contactSheet(options, entries, 1, 1));
    EXPECT_EQ(std::ranges::count(texts, "a", &TextItem::text), static_cast<int>(perSheet));
}

TEST(ContactSheets, AreAllSheetsOfTheSketches) {
    const ContactSheetOptions options;
    const std::size_t perSheet = contactGrid(options).perSheet();
    const std::vector<ContactEntry> entries(perSheet + 1, entryOf("a", blankSketch()));
    const std::vector<Drawing> sheets = contactSheets(options, entries);
    ASSERT_EQ(sheets.size(), 2u);
    EXPECT_EQ(svgText(sheets[0]),
              svgText(contactSheet(options, std::span(entries).first(perSheet), 1, 2)));
    EXPECT_EQ(svgText(sheets[1]), svgText(contactSheet(options, std::span(entries).last(1), 2, 2)));
    EXPECT_EQ(contactSheets(options, {}).size(), 1u);
}

}  // namespace
}  // namespace matwright
