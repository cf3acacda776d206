// SPDX-License-Identifier: MIT
#include "core/template/template.h"

#include <gtest/gtest.h>

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
    const std::vector<std::string> all{layerPage,   layerGuides,       layerMats,
                                       layerTrim,   layerHidden,       layerDimensions,
                                       layerLabels, layerCheckSquares, layerTitle};
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
    const std::vector<std::string> rest{layerPage, layerMats, layerTrim, layerHidden, layerTitle};
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
