// SPDX-License-Identifier: MIT
#include "core/template/template.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/drawing/svg.h"
#include "core/sketch/edit.h"
#include "tests/core/template/drawing_probe.h"
#include "tests/support/example_sketches.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

Piece photo(Point place, Size size) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.place = place;
    piece.size = size;
    piece.printSize = size;
    return piece;
}

Sketch with(const std::vector<Piece>& pieces) {
    Sketch sketch = blankSketch();
    EXPECT_TRUE(apply(sketch, addPieces(sketch, pieces)));
    return sketch;
}

std::vector<std::string> layerIds(const Drawing& drawing) {
    std::vector<std::string> ids;
    for (const Layer& layer : drawing.layers) {
        ids.push_back(layer.id);
    }
    return ids;
}

std::string allText(const Drawing& drawing) {
    std::string all = "\n";
    for (const Layer& layer : drawing.layers) {
        for (const test::InkBox& box : test::textBoxes(layer)) {
            all += box.text + "\n";
        }
    }
    return all;
}

bool mentions(const Drawing& drawing, const std::string& words) {
    return allText(drawing).find(words) != std::string::npos;
}

const Sketch matted = [] {
    Piece piece = photo({Length::inches(1), Length::inches(2)},
                        {Length::inches(3, 7, 8), Length::inches(5, 7, 8)});
    piece.printSize = Size{Length::inches(4), Length::inches(6)};
    piece.mats = {{Length::inches(0, 1, 8), std::nullopt, ""}};
    return with({piece});
}();

TEST(Template, HasItsLayersFromBackToFront) {
    const std::vector<std::string> all{layerPage,   layerGuides,     layerMats,   layerTrim,
                                       layerHidden, layerDimensions, layerLabels, layerCheckSquares,
                                       layerTitle,  layerKey};
    EXPECT_EQ(layerIds(templateDrawing(matted, {})), all);
}

TEST(Template, IsAsLargeAsTheSheet) {
    EXPECT_EQ(templateDrawing(blankSketch(), {}).size,
              (Size{Length::inches(12), Length::inches(12)}));
    Sketch both = blankSketch();
    both.page.doublePage = true;
    both.page.foldGap = Length::inches(0, 1, 2);
    EXPECT_EQ(templateDrawing(both, {}).size.width, Length::inches(24, 1, 2));
}

TEST(Template, SaysNumberNameAndSizes) {
    const Drawing drawing = templateDrawing(matted, {});
    EXPECT_TRUE(mentions(drawing, "1 \u00B7 photo slot"));
    EXPECT_TRUE(mentions(drawing, "print 4 \u00D7 6 in"));
    EXPECT_TRUE(mentions(drawing, "trim 3 7/8 \u00D7 5 7/8 in"));
    EXPECT_TRUE(mentions(drawing, "mat 4 1/8 \u00D7 6 1/8 in"));
}

// The words of the key beside each sample line, from the samples' strokes.
std::vector<std::pair<std::string, Stroke>> keyOf(const Drawing& drawing) {
    std::vector<std::pair<std::string, Stroke>> out;
    const Layer* key = test::findLayer(drawing, layerKey);
    for (std::size_t i = 0; key != nullptr && i + 1 < key->items.size(); i += 2) {
        out.emplace_back(std::get<TextItem>(key->items[i + 1]).text,
                         *std::get<PathItem>(key->items[i]).stroke);
    }
    return out;
}

bool hasStroke(const Drawing& drawing, const char* id, const Stroke& stroke) {
    const Layer* layer = test::findLayer(drawing, id);
    return std::ranges::any_of(layer->items, [&](const DrawingItem& item) {
        return std::get<PathItem>(item).stroke == stroke;
    });
}

TEST(Template, HasAKeyToTheLinesItDrawsAndNoOthers) {
    using Words = std::vector<std::string>;
    const auto words = [](const Drawing& drawing) {
        Words all;
        for (const auto& [text, stroke] : keyOf(drawing)) {
            all.push_back(text);
        }
        return all;
    };
    TemplateOptions bare;
    bare.guides = false;
    EXPECT_EQ(words(templateDrawing(blankSketch(), bare)), Words{});
    EXPECT_EQ(words(templateDrawing(matted, bare)), (Words{"trim line", "edge of a mat"}));
    EXPECT_EQ(words(templateDrawing(matted, {})), (Words{"trim line", "edge of a mat", "margin"}));
    Sketch both = matted;
    both.page.doublePage = true;
    EXPECT_EQ(words(templateDrawing(both, {})),
              (Words{"trim line", "edge of a mat", "margin", "fold"}));
}

TEST(Template, ShowsEachLineInTheKeyAsItIsDrawn) {
    Piece over =
        photo({Length::inches(2), Length::inches(3)}, {Length::inches(4), Length::inches(4)});
    Sketch sketch = matted;
    sketch.page.doublePage = true;
    ASSERT_TRUE(apply(sketch, addPieces(sketch, {&over, 1})));
    const Drawing drawing = templateDrawing(sketch, {});
    const std::vector<std::pair<std::string, const char*>> places{
        {"trim line", layerTrim},
        {"edge of a mat", layerMats},
        {"trim line, hidden", layerHidden},
        {"edge of a mat, hidden", layerHidden},
        {"margin", layerGuides},
        {"fold", layerGuides}};
    const auto key = keyOf(drawing);
    ASSERT_EQ(key.size(), places.size());
    for (std::size_t i = 0; i < key.size(); ++i) {
        EXPECT_EQ(key[i].first, places[i].first);
        EXPECT_TRUE(hasStroke(drawing, places[i].second, key[i].second)) << key[i].first;
        for (std::size_t j = 0; j < i; ++j) {
            EXPECT_FALSE(key[i].second == key[j].second) << key[i].first;
        }
    }
}

TEST(Template, OfEveryExampleHasItsKeyAndItsTitle) {
    for (const auto& example : test::exampleSketches()) {
        const Drawing drawing = templateDrawing(example.sketch, {});
        EXPECT_TRUE(test::findLayer(drawing, layerTitle)) << example.file;
        EXPECT_GE(keyOf(drawing).size(), 3U) << example.file;
    }
}

TEST(Template, MeasuresToTheMatAndSaysSo) {
    const std::string said = "Distances of matted photos go to the edge of the mat.";
    // The trim lies at 1 and 2 in, its mat 1/8 in further out.
    const Drawing drawing = templateDrawing(matted, {});
    EXPECT_TRUE(mentions(drawing, "\n7/8\n"));
    EXPECT_TRUE(mentions(drawing, "\n1 7/8\n"));
    EXPECT_TRUE(mentions(drawing, said));
    const Drawing unmatted = templateDrawing(with({photo({Length::inches(1), Length::inches(2)},
                                                         {Length::inches(4), Length::inches(6)})}),
                                             {});
    EXPECT_TRUE(mentions(unmatted, "\n2\n"));
    EXPECT_FALSE(mentions(unmatted, said));
}

TEST(Template, SaysTheMatsDistanceInTheLabelWhereNoLineHasRoom) {
    Sketch sketch = matted;
    sketch.pieces.begin()->second.place = {Length::inches(0, 3, 16), Length::inches(0, 3, 16)};
    EXPECT_TRUE(mentions(templateDrawing(sketch, {}), "mat left 1/16, top 1/16"));
}

TEST(Template, DrawsTheFoldAlsoWhereThePagesTouch) {
    for (const Length gap : {Length(), Length::fromTicks(1), Length::inches(0, 1, 2)}) {
        Sketch sketch = blankSketch();
        sketch.page.doublePage = true;
        sketch.page.foldGap = gap;
        const Drawing drawing = templateDrawing(sketch, {});
        const double fold = 12 + gap.toInches() / 2;
        const auto lines = test::strokedLines(*test::findLayer(drawing, layerGuides));
        EXPECT_TRUE(std::ranges::any_of(lines, [&](const test::InkLine& line) {
            return std::abs(line.from.x / Length::ticksPerInch - fold) < 1e-5 &&
                   line.from.x == line.to.x && line.from.y == 0 &&
                   line.to.y == vertexAt({Length(), Length::inches(12)}).y;
        })) << gap.ticks();
    }
}

TEST(Template, SaysHowToPrintAndCut) {
    TemplateOptions options;
    options.note = "Left page of the album";
    const Drawing drawing = templateDrawing(matted, options);
    for (const char* words : {"12 \u00D7 12 in page", "Print at actual size", "Figures in inches",
                              "sharp blade", "Left page of the album", "1 in", "50 mm"}) {
        EXPECT_TRUE(mentions(drawing, words)) << words;
    }
}

TEST(Template, LeavesOutWhatTheOptionsSwitchOff) {
    TemplateOptions options;
    options.labels = options.dimensions = options.guides = options.checkSquares = false;
    const std::vector<std::string> rest{layerPage,   layerMats,  layerTrim,
                                        layerHidden, layerTitle, layerKey};
    const Drawing drawing = templateDrawing(matted, options);
    EXPECT_EQ(layerIds(drawing), rest);
    EXPECT_FALSE(mentions(drawing, "squares"));
}

TEST(Template, MeasuresFromThePageTheLeftEdgeLiesOn) {
    Sketch sketch = with(
        {photo({Length::inches(14), Length::inches(3)}, {Length::inches(4), Length::inches(6)})});
    sketch.page.doublePage = true;
    sketch.page.foldGap = Length::inches(1);
    EXPECT_TRUE(mentions(templateDrawing(sketch, {}), "\n1\n"));
    EXPECT_FALSE(mentions(templateDrawing(sketch, {}), "14"));
}

double strokedLength(const Drawing& drawing, const char* id) {
    double sum = 0;
    for (const test::InkLine& line : test::strokedLines(*test::findLayer(drawing, id))) {
        sum += std::hypot(line.to.x - line.from.x, line.to.y - line.from.y);
    }
    return sum / static_cast<double>(Length::ticksPerInch);
}

TEST(Template, DashesWhatLiesUnderAnotherPieceAndKeepsTheWholeLength) {
    const Size size{Length::inches(4), Length::inches(4)};
    // The second hides the lower right quarter of the first: 2 in of each of two sides.
    const Drawing drawing =
        templateDrawing(with({photo({Length::inches(1), Length::inches(1)}, size),
                              photo({Length::inches(3), Length::inches(3)}, size)}),
                        {});
    EXPECT_NEAR(strokedLength(drawing, layerHidden), 4, 1e-6);
    EXPECT_NEAR(strokedLength(drawing, layerTrim), 32 - 4, 1e-6);
    for (const DrawingItem& item : test::findLayer(drawing, layerHidden)->items) {
        EXPECT_FALSE(std::get<PathItem>(item).stroke->dash.empty());
    }
    for (const DrawingItem& item : test::findLayer(drawing, layerTrim)->items) {
        EXPECT_TRUE(std::get<PathItem>(item).stroke->dash.empty());
    }
}

TEST(Template, ShowsMatEdgesBesideTheirPhoto) {
    const Drawing drawing = templateDrawing(matted, {});
    EXPECT_NEAR(strokedLength(drawing, layerMats), 2 * (4.125 + 6.125), 1e-6);
    EXPECT_NEAR(strokedLength(drawing, layerHidden), 0, 1e-6);
}

TEST(Template, DrawsNothingOffTheSheet) {
    const Drawing drawing = templateDrawing(with({photo({Length::inches(-1), Length::inches(11)},
                                                        {Length::inches(4), Length::inches(6)})}),
                                            {});
    EXPECT_NEAR(strokedLength(drawing, layerTrim), 3 + 1, 0.01);
}

TEST(Template, LiesOnWhitePaper) {
    const Drawing drawing = templateDrawing(blankSketch(), {});
    ASSERT_EQ(drawing.layers.front().id, layerPage);
    const auto& paper = std::get<PathItem>(drawing.layers.front().items.front());
    EXPECT_EQ(paper.fill, (Colour{255, 255, 255}));
    EXPECT_FALSE(paper.stroke);
    EXPECT_EQ(boundsOf(paper.paths.at(0)), Rect::at({}, drawing.size));
}

TEST(Template, KeepsTheCheckSquaresTrue) {
    for (const auto& example : test::exampleSketches()) {
        const Drawing drawing = templateDrawing(example.sketch, {});
        EXPECT_NEAR(strokedLength(drawing, layerCheckSquares), 4 * 50 / 25.4 + 4, 1e-6)
            << example.file;
    }
}

TEST(Template, OfATinyOrCrowdedPageIsStillADrawing) {
    Sketch tiny = blankSketch();
    tiny.page.size = {Length::inches(1), Length::inches(1)};
    tiny.page.margins = {};
    EXPECT_EQ(templateDrawing(tiny, {}).size.width, Length::inches(1));
    std::vector<Piece> many(
        150, photo({Length::inches(1), Length::inches(1)}, {Length::inches(4), Length::inches(6)}));
    EXPECT_TRUE(mentions(templateDrawing(with(many), {}), "no room for their figures"));
}

TEST(Template, OfEqualSketchesIsEqual) {
    test::Random random(5);
    const Sketch sketch = test::randomSketch(random, 10);
    EXPECT_EQ(svgText(templateDrawing(sketch, {})), svgText(templateDrawing(sketch, {})));
}

}  // namespace
}  // namespace matwright
