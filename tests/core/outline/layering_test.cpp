// SPDX-License-Identifier: MIT
#include "core/outline/layering.h"

#include <gtest/gtest.h>

#include <numbers>

#include "core/outline/outline.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

constexpr Length inch = Length::inches(1);

Piece block(int left, int top, int width, int height) {
    Piece piece;
    piece.place = {inch * left, inch * top};
    piece.size = {inch * width, inch * height};
    return piece;
}

// Ids 1, 2, … from bottom to top.
Sketch sketchOf(const std::vector<Piece>& pieces) {
    Sketch sketch = blankSketch();
    EXPECT_TRUE(apply(sketch, addPieces(sketch, pieces)));
    return sketch;
}

TEST(Layering, AnEmptySketchHasNothingToSay) {
    const Sketch sketch = blankSketch();
    EXPECT_TRUE(overlaps(sketch).empty());
    EXPECT_TRUE(coverAbove(sketch, PieceId{1}).isEmpty());
    EXPECT_EQ(hiddenShare(sketch, PieceId{1}), 0);
    EXPECT_TRUE(Layering(sketch).nearAbove(PieceId{1}).empty());
    EXPECT_TRUE(Layering(sketch).outermostRegion(PieceId{1}).isEmpty());
}

TEST(Layering, OnlyWhatLiesAboveHides) {
    const Sketch sketch = sketchOf({block(0, 0, 4, 4), block(0, 0, 2, 4)});
    EXPECT_NEAR(hiddenShare(sketch, PieceId{1}), 0.5, 1e-9);
    EXPECT_EQ(hiddenShare(sketch, PieceId{2}), 0);
}

TEST(Layering, TheOrderDecidesNotTheId) {
    Sketch sketch = sketchOf({block(0, 0, 4, 4), block(0, 0, 2, 4)});
    sketch.order = {PieceId{2}, PieceId{1}};
    EXPECT_EQ(hiddenShare(sketch, PieceId{1}), 0);
    EXPECT_EQ(hiddenShare(sketch, PieceId{2}), 1);
    EXPECT_EQ(overlaps(sketch), (std::vector<Overlap>{{PieceId{2}, PieceId{1}, 8}}));
}

TEST(Layering, SharedCoverIsCountedOnce) {
    const Sketch sketch = sketchOf({block(0, 0, 4, 4), block(0, 0, 3, 4), block(1, 0, 3, 4)});
    EXPECT_EQ(hiddenShare(sketch, PieceId{1}), 1);
    EXPECT_NEAR(hiddenShare(sketch, PieceId{2}), 2.0 / 3, 1e-9);
}

TEST(Layering, TheMatOfACoverHidesToo) {
    Piece photo = block(1, 1, 2, 2);
    photo.kind = PieceKind::PhotoSlot;
    photo.printSize = photo.size;
    photo.mats = {{inch, {}, ""}};
    const Sketch sketch = sketchOf({block(0, 0, 8, 4), photo});
    EXPECT_NEAR(hiddenShare(sketch, PieceId{1}), 0.5, 1e-9);
    EXPECT_NEAR(areaSquareInches(coverAbove(sketch, PieceId{1})), 16, 1e-8);
}

TEST(Layering, OnlyTheTrimCountsAsHiddenNotTheMat) {
    Piece photo = block(1, 1, 2, 2);
    photo.kind = PieceKind::PhotoSlot;
    photo.printSize = photo.size;
    photo.mats = {{inch, {}, ""}};
    const Sketch sketch = sketchOf({photo, block(0, 0, 1, 4)});
    EXPECT_EQ(hiddenShare(sketch, PieceId{1}), 0);
    EXPECT_EQ(overlaps(sketch).size(), 1u);
}

TEST(Layering, CoverAboveLeavesOutWhatIsFarAway) {
    const Sketch sketch = sketchOf({block(0, 0, 2, 2), block(1, 1, 2, 2), block(8, 8, 2, 2)});
    EXPECT_NEAR(areaSquareInches(coverAbove(sketch, PieceId{1})), 4, 1e-8);
    EXPECT_EQ(Layering(sketch).nearAbove(PieceId{1}), std::vector{PieceId{2}});
}

TEST(Layering, TouchingPiecesDoNotOverlap) {
    EXPECT_TRUE(
        overlaps(sketchOf({block(0, 0, 2, 2), block(2, 0, 2, 2), block(2, 2, 2, 2)})).empty());
}

TEST(Layering, AnOverlapOfAHundredthOfAnInchSquareCountsOnlyWhenItIsLarger) {
    const auto shiftedBy = [](Length by) {
        Piece second = block(0, 0, 1, 1);
        second.place = {inch - by, inch - by};
        return overlaps(sketchOf({block(0, 0, 1, 1), second}));
    };
    const Length hundredth = Length::inches(0, 1, 100);
    EXPECT_TRUE(shiftedBy(hundredth - Length::fromTicks(1)).empty());
    EXPECT_EQ(shiftedBy(hundredth + Length::fromTicks(1)).size(), 1u);
}

TEST(Layering, RoundPiecesOverlapByTheirShapeNotTheirBox) {
    Piece a = block(0, 0, 2, 2);
    Piece b = block(2, 2, 2, 2);
    b.place = {Length::inches(1, 3, 4), Length::inches(1, 3, 4)};
    a.shape = OvalShape{};
    b.shape = OvalShape{};
    EXPECT_TRUE(overlaps(sketchOf({a, b})).empty());
    b.place = {};
    const std::vector<Overlap> same = overlaps(sketchOf({a, b}));
    ASSERT_EQ(same.size(), 1u);
    EXPECT_NEAR(same.front().areaSquareInches, std::numbers::pi, 0.002);
}

TEST(Layering, AMitreThatSticksOutOfTheMatsBoxStillOverlaps) {
    Piece photo = block(2, 2, 4, 4);
    photo.kind = PieceKind::PhotoSlot;
    photo.printSize = photo.size;
    photo.shape = PolygonShape{
        {{2 * inch, Length()}, {4 * inch, 2 * inch}, {2 * inch, 4 * inch}, {Length(), 2 * inch}}};
    photo.mats = {{inch, {}, ""}};
    Piece strip = block(0, 0, 4, 1);
    strip.place = {2 * inch, Length::inches(0, -1, 4)};  // ends 1/4 in above the mat's box at 1 in
    const Sketch sketch = sketchOf({photo, strip});
    EXPECT_EQ(overlaps(sketch).size(), 1u);
}

TEST(Layering, AgreesWithAskingEveryPairForRandomSketches) {
    constexpr std::uint64_t seed = 99;
    test::Random random(seed);
    for (int run = 0; run < 20; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", run " << run);
        const Sketch sketch = test::randomSketch(random, 12);
        std::vector<Overlap> expected;
        for (std::size_t i = 0; i < sketch.order.size(); ++i) {
            for (std::size_t j = i + 1; j < sketch.order.size(); ++j) {
                const double area = areaSquareInches(
                    intersected(regionOf(outermostOutline(sketch.pieces.at(sketch.order[i]))),
                                regionOf(outermostOutline(sketch.pieces.at(sketch.order[j])))));
                if (area > smallestOverlap) {
                    expected.push_back({sketch.order[i], sketch.order[j], area});
                }
            }
        }
        const std::vector<Overlap> found = overlaps(sketch);
        ASSERT_EQ(found.size(), expected.size());
        for (std::size_t i = 0; i < found.size(); ++i) {
            EXPECT_EQ(found[i].below, expected[i].below);
            EXPECT_EQ(found[i].above, expected[i].above);
            EXPECT_NEAR(found[i].areaSquareInches, expected[i].areaSquareInches, 1e-6);
        }
    }
}

}  // namespace
}  // namespace matwright
