// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <iostream>

#include "core/sketchfile/sketch_file.h"
#include "tests/core/sketchfile/example.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

using test::Random;

void expectRoundTrip(const Sketch& sketch) {
    const std::string written = writeSketch(sketch);
    const auto loaded = readSketch(written);
    ASSERT_TRUE(loaded) << loaded.error().text() << "\n" << written;
    ASSERT_EQ(loaded->sketch, sketch) << written;
    ASSERT_TRUE(loaded->warnings.empty()) << loaded->warnings.front();
    ASSERT_EQ(writeSketch(loaded->sketch), written);
}

TEST(RoundTrip, TenThousandRandomSketchesGiveEqualSketchesAndEqualBytes) {
    constexpr std::uint64_t seed = 20'240'611;
    constexpr int count = 10'000;
    Random random(seed);
    std::size_t pieces = 0;
    for (int i = 0; i < count; ++i) {
        const Sketch sketch = test::randomSketch(random, static_cast<int>(test::below(random, 13)));
        pieces += sketch.pieces.size();
        ASSERT_NO_FATAL_FAILURE(expectRoundTrip(sketch)) << "sketch " << i << ", seed " << seed;
    }
    std::cout << count << " sketches byte-equal, seed " << seed << " (" << pieces << " pieces)\n";
}

TEST(RoundTrip, TheExampleAndTheBlankSketchComeBack) {
    expectRoundTrip(test::exampleSketch());
    expectRoundTrip(blankSketch());
}

TEST(RoundTrip, TextsKeepEverySpaceLineBreakAndSign) {
    for (const char* text :
         {" ", "   ", "\n", "\n\n a", " a ", "a\n", "a\n \nb", "<", "&amp;", "]]>", "\"'",
          "<![CDATA[x]]>", "&#10;", "\u00A0", "\U0001F642", "\uFEFFa", "<!-- -->", "a  b"}) {
        Sketch sketch = test::exampleSketch();
        sketch.note = text;
        sketch.pieces[PieceId{1}].note = text;
        if (!sketch.note.contains('\n')) {
            sketch.name = text;
            sketch.pieces[PieceId{1}].name = text;
            sketch.pieces[PieceId{1}].paper = text;
            sketch.pieces[PieceId{1}].mats[1].paper = text;
        }
        expectRoundTrip(sketch);
    }
}

TEST(RoundTrip, TheLargestAndSmallestValuesComeBack) {
    Sketch sketch = blankSketch();
    Piece tiny;
    tiny.size = {Length::inches(0, 1, 64), Length::inches(0, 1, 64)};
    tiny.place = {-Length::coordinateLimit(), Length::coordinateLimit() - tiny.size.height};
    Piece huge;
    huge.size = {Length::inches(200), Length::inches(200)};
    huge.shape = RoundedRectangleShape{Length::fromTicks(1)};
    huge.rotation = Angle::millidegrees(359'999);
    huge.note = std::string(maxTextBytes, 'x');
    sketch.pieces = {{PieceId{1}, tiny}, {maxPieceId, huge}};
    sketch.order = {maxPieceId, PieceId{1}};
    expectRoundTrip(sketch);
}

TEST(RoundTrip, ADoublePageWithoutAFoldGapStaysADoublePage) {
    Sketch sketch = blankSketch();
    sketch.page.doublePage = true;
    expectRoundTrip(sketch);
    sketch.page.foldGap = Length::fromTicks(1);
    expectRoundTrip(sketch);
}

TEST(RoundTrip, EveryAngleOfAThousandthOfADegreeComesBack) {
    Sketch sketch = blankSketch();
    for (int millidegrees : {1, 10, 100, 999, 1'000, 1'001, 12'345, 90'000, 359'990, 359'999}) {
        Piece piece;
        piece.size = {Length::inches(1), Length::inches(1)};
        piece.rotation = Angle::millidegrees(millidegrees);
        const PieceId id = nextId(sketch);
        sketch.pieces.emplace(id, piece);
        sketch.order.push_back(id);
    }
    expectRoundTrip(sketch);
}

}  // namespace
}  // namespace matwright
