// SPDX-License-Identifier: MIT
#include "core/template/cut_lines.h"

#include <gtest/gtest.h>

#include "core/drawing/svg.h"
#include "core/sketch/edit.h"
#include "core/template/template.h"
#include "tests/core/template/drawing_probe.h"
#include "tests/support/example_sketches.h"

namespace matwright {
namespace {

TEST(CutLines, AreClosedOutlinesOneLayerAPaper) {
    const Drawing drawing = cutLineDrawing(test::exampleSketches()[0].sketch);
    std::vector<std::string> papers;
    for (const Layer& layer : drawing.layers) {
        papers.push_back(layer.label + " " + std::to_string(layer.items.size()));
        for (const DrawingItem& item : layer.items) {
            const PathItem& path = std::get<PathItem>(item);
            EXPECT_TRUE(path.paths.at(0).closed);
            EXPECT_FALSE(path.fill);
            EXPECT_TRUE(path.stroke->dash.empty());
        }
    }
    // One strip, a double mat, three single mats, four photos, the story; the title is no cut.
    const std::vector<std::string> expected{"wave print 1", "navy cardstock 1", "white cardstock 4",
                                            "photo slot 4", "cream cardstock 1"};
    EXPECT_EQ(papers, expected);
}

// What the cut lines hold is what the labels call trimmed, and nothing else.
TEST(CutLines, AreOfThePiecesWhoseLabelsSayTrim) {
    for (const PieceKind kind : allPieceKinds) {
        Sketch sketch = blankSketch();
        Piece piece;
        piece.kind = kind;
        piece.place = {Length::inches(2), Length::inches(2)};
        piece.size = {Length::inches(4), Length::inches(4)};
        if (kind == PieceKind::PhotoSlot) {
            piece.printSize = piece.size;
        }
        ASSERT_TRUE(apply(sketch, addPieces(sketch, {&piece, 1})));
        const Drawing drawn = templateDrawing(sketch, {});
        const std::string label = test::labelOf(*test::findLayer(drawn, layerLabels), 1);
        EXPECT_EQ(label.find("trim 4") != std::string::npos, isCut(kind)) << kindName(kind);
        EXPECT_EQ(label.find("size 4") == std::string::npos, isCut(kind)) << kindName(kind);
        EXPECT_EQ(!cutLineDrawing(sketch).layers.empty(), isCut(kind)) << kindName(kind);
    }
}

TEST(CutLines, KeepHiddenPartsWholeAndTheSheetTrue) {
    Sketch sketch = blankSketch();
    Piece below;
    below.size = {Length::inches(4), Length::inches(4)};
    Piece above = below;
    above.place = {Length::inches(2), Length::inches(2)};
    ASSERT_TRUE(apply(sketch, addPieces(sketch, std::vector<Piece>{below, above})));
    const Drawing drawing = cutLineDrawing(sketch);
    EXPECT_EQ(drawing.size, (Size{Length::inches(12), Length::inches(12)}));
    ASSERT_EQ(drawing.layers.size(), 1U);
    EXPECT_NE(svgText(drawing).find("M0 0L101.6 0L101.6 101.6L0 101.6Z"), std::string::npos);
}

}  // namespace
}  // namespace matwright
