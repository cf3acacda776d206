// SPDX-License-Identifier: MIT
#include "core/sketch/edit.h"

#include <gtest/gtest.h>

#include "core/sketch/soundness.h"

namespace matwright {
namespace {

using Order = std::vector<PieceId>;

Piece block(int width) {
    Piece piece;
    piece.size = {Length::inches(width), Length::inches(1)};
    return piece;
}

Sketch sketchOf(int pieces) {
    Sketch sketch = blankSketch();
    for (int i = 1; i <= pieces; ++i) {
        const PieceId id{static_cast<std::uint32_t>(i)};
        sketch.pieces.emplace(id, block(i));
        sketch.order.push_back(id);
    }
    return sketch;
}

// Applies, checks soundness, checks that the inverse gives the sketch back and that its own inverse
// leads forward again; returns the sketch after the edit.
Sketch appliedBothWays(const Sketch& before, const Edit& edit) {
    Sketch sketch = before;
    const Result<Edit> inverse = apply(sketch, edit);
    EXPECT_TRUE(inverse) << inverse.error().text();
    EXPECT_FALSE(findFault(sketch));
    Sketch back = sketch;
    const Result<Edit> again = apply(back, *inverse);
    EXPECT_TRUE(again);
    EXPECT_EQ(back, before);
    EXPECT_TRUE(apply(back, *again));
    EXPECT_EQ(back, sketch);
    return sketch;
}

void expectRefused(const Sketch& before, const Edit& edit, const std::string& word) {
    Sketch sketch = before;
    const Result<Edit> inverse = apply(sketch, edit);
    ASSERT_FALSE(inverse);
    EXPECT_EQ(inverse.error().code, ErrorCode::BadEdit);
    EXPECT_NE(inverse.error().sentence.find(word), std::string::npos) << inverse.error().sentence;
    EXPECT_EQ(sketch, before) << "a refused edit changes nothing";
}

TEST(Edit, AnEmptyEditChangesNothing) {
    EXPECT_TRUE(Edit{}.isEmpty());
    EXPECT_EQ(appliedBothWays(sketchOf(2), {}), sketchOf(2));
}

TEST(Edit, AddedPiecesGoOnTopInIdOrder) {
    const Sketch sketch =
        appliedBothWays(sketchOf(2), addPieces(sketchOf(2), std::vector{block(7), block(8)}));
    EXPECT_EQ(sketch.order, (Order{PieceId{1}, PieceId{2}, PieceId{3}, PieceId{4}}));
    EXPECT_EQ(sketch.pieces.at(PieceId{3}), block(7));
    EXPECT_EQ(sketch.pieces.at(PieceId{4}), block(8));
}

TEST(Edit, AddingGoesOnAfterTheLargestIdThereCanBe) {
    Sketch before;
    before.pieces.emplace(PieceId{2}, block(1));
    before.pieces.emplace(maxPieceId, block(2));
    before.order = {maxPieceId, PieceId{2}};
    const Sketch sketch =
        appliedBothWays(before, addPieces(before, std::vector{block(3), block(4)}));
    EXPECT_EQ(sketch.order, (Order{maxPieceId, PieceId{2}, PieceId{1}, PieceId{3}}));
    EXPECT_EQ(sketch.pieces.at(PieceId{1}), block(3));
}

TEST(Edit, RemovedPiecesLeaveTheOrder) {
    const Sketch sketch =
        appliedBothWays(sketchOf(3), removePieces(sketchOf(3), Order{PieceId{2}, PieceId{9}}));
    EXPECT_EQ(sketch.order, (Order{PieceId{1}, PieceId{3}}));
    EXPECT_EQ(find(sketch, PieceId{2}), nullptr);
}

TEST(Edit, RemovingWhatIsNotThereIsNoChange) {
    EXPECT_TRUE(removePieces(sketchOf(1), Order{PieceId{5}}).isEmpty());
    Edit edit;
    edit.pieces.emplace(PieceId{5}, std::nullopt);
    EXPECT_EQ(appliedBothWays(sketchOf(1), edit), sketchOf(1));
}

TEST(Edit, AChangedPieceKeepsItsPlaceInTheOrder) {
    const Sketch sketch = appliedBothWays(sketchOf(3), changePiece(PieceId{2}, block(9)));
    EXPECT_EQ(sketch.order, sketchOf(3).order);
    EXPECT_EQ(sketch.pieces.at(PieceId{2}), block(9));
}

TEST(Edit, ANewOrderIsTakenAsItIs) {
    Edit edit;
    edit.order = Order{PieceId{3}, PieceId{1}, PieceId{2}};
    EXPECT_EQ(appliedBothWays(sketchOf(3), edit).order, *edit.order);
}

TEST(Edit, AnOrderMayComeWithAddedAndRemovedPieces) {
    Edit edit = addPieces(sketchOf(2), std::vector{block(5)});
    edit.pieces.emplace(PieceId{1}, std::nullopt);
    edit.order = Order{PieceId{3}, PieceId{2}};
    EXPECT_EQ(appliedBothWays(sketchOf(2), edit).order, *edit.order);
}

TEST(Edit, PageAndTextsAreExchanged) {
    PageSetup page;
    page.doublePage = true;
    Edit edit = changePage(page);
    edit.texts = SketchTexts{"Lake", "two\nlines"};
    const Sketch sketch = appliedBothWays(sketchOf(1), edit);
    EXPECT_EQ(sketch.page, page);
    EXPECT_EQ(sketch.name, "Lake");
    EXPECT_EQ(sketch.note, "two\nlines");
}

TEST(Edit, AnOrderThatDoesNotListEveryPieceOnceIsRefused) {
    for (const Order& order : std::vector<Order>{{},
                                                 {PieceId{1}},
                                                 {PieceId{1}, PieceId{1}},
                                                 {PieceId{1}, PieceId{3}},
                                                 {PieceId{1}, PieceId{2}, PieceId{2}}}) {
        Edit edit;
        edit.order = order;
        expectRefused(sketchOf(2), edit, "order");
    }
}

TEST(Edit, ARefusedOrderTakesBackThePiecesToo) {
    Edit edit = addPieces(sketchOf(2), std::vector{block(5)});
    edit.pieces.emplace(PieceId{1}, std::nullopt);
    edit.pieces.emplace(PieceId{2}, block(9));
    edit.order = Order{PieceId{1}, PieceId{2}, PieceId{3}};
    expectRefused(sketchOf(2), edit, "order");
}

TEST(Edit, UnsoundPiecesPagesAndTextsAreRefused) {
    expectRefused(sketchOf(2), changePiece(PieceId{1}, block(0)), "piece's sides");
    PageSetup page;
    page.gutter = Length::fromTicks(-1);
    expectRefused(sketchOf(2), changePage(page), "gutter");
    Edit texts;
    texts.texts = SketchTexts{"\x01", ""};
    expectRefused(sketchOf(2), texts, "name or note");
    texts.texts = SketchTexts{"", "\xFF"};
    expectRefused(sketchOf(2), texts, "name or note");
}

TEST(Edit, OneUnsoundPieceAmongGoodOnesRefusesAll) {
    Edit edit = changePiece(PieceId{1}, block(9));
    edit.pieces.emplace(PieceId{2}, block(0));
    expectRefused(sketchOf(3), edit, "piece's sides");
}

TEST(Edit, IdsOutOfRangeAreRefused) {
    for (const PieceId id : {PieceId{0}, PieceId{maxPieceId.value + 1}}) {
        expectRefused(sketchOf(1), changePiece(id, block(1)), "id");
        Edit removal;
        removal.pieces.emplace(id, std::nullopt);
        expectRefused(sketchOf(1), removal, "id");
    }
}

TEST(Edit, TheTwentyThousandthPieceFitsTheNextOneDoesNot) {
    Sketch sketch = sketchOf(1);
    ASSERT_TRUE(apply(sketch, addPieces(sketch, std::vector<Piece>(maxPieces - 2, block(1)))));
    ASSERT_TRUE(apply(sketch, addPieces(sketch, std::vector{block(1)})));
    ASSERT_EQ(sketch.pieces.size(), maxPieces);
    expectRefused(sketch, addPieces(sketch, std::vector{block(1)}), "20,000");
    // One out, one in.
    Edit exchange = addPieces(sketch, std::vector{block(1)});
    exchange.pieces.emplace(PieceId{1}, std::nullopt);
    EXPECT_TRUE(apply(sketch, exchange));
}

TEST(Edit, MergingLetsTheSecondWin) {
    const Edit both = merged(changePiece(PieceId{1}, block(7)), changePiece(PieceId{1}, block(8)));
    EXPECT_EQ(both, changePiece(PieceId{1}, block(8)));
    Edit first = changePage({});
    first.texts = SketchTexts{"a", "b"};
    PageSetup page;
    page.doublePage = true;
    EXPECT_EQ(merged(first, changePage(page)).page, page);
    EXPECT_EQ(merged(first, changePage(page)).texts, first.texts);
    EXPECT_EQ(merged(first, {}), first);
    EXPECT_EQ(merged({}, first), first);
}

TEST(Edit, AMergedOrderFollowsPiecesThatComeAndGo) {
    Edit first;
    first.order = Order{PieceId{3}, PieceId{2}, PieceId{1}};
    Edit second = addPieces(sketchOf(3), std::vector{block(5)});
    second.pieces.emplace(PieceId{2}, std::nullopt);
    Sketch oneByOne = sketchOf(3);
    ASSERT_TRUE(apply(oneByOne, first));
    ASSERT_TRUE(apply(oneByOne, second));
    Sketch atOnce = sketchOf(3);
    ASSERT_TRUE(apply(atOnce, merged(first, second)));
    EXPECT_EQ(atOnce, oneByOne);
    EXPECT_EQ(atOnce.order, (Order{PieceId{3}, PieceId{1}, PieceId{4}}));
}

}  // namespace
}  // namespace matwright
