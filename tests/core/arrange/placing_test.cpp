// SPDX-License-Identifier: MIT
#include "core/arrange/placing.h"

#include <gtest/gtest.h>

#include "tests/core/arrange/rows.h"

namespace matwright {
namespace {

using namespace test;

constexpr Length half = Length::inches(0, 1, 2);
constexpr Length quarter = Length::inches(0, 1, 4);
constexpr Length eighth = Length::inches(0, 1, 8);

Piece slot(Length width, Length height) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.size = {width, height};
    piece.printSize = piece.size;
    return piece;
}

Piece block(Length width, Length height) {
    Piece piece;
    piece.size = {width, height};
    return piece;
}

// Adds each piece where freePlace() says, as clicks on ready-made slots do.
Sketch clicked(Sketch sketch, const std::vector<Piece>& pieces) {
    for (Piece piece : pieces) {
        piece.place = freePlace(sketch, piece).value();
        sketch = after(sketch, addPieces(sketch, std::vector{piece}));
    }
    return sketch;
}

std::vector<Piece> fourPhotos() {
    return {slot(in(6), in(4)), slot(in(3), in(4)), slot(in(3), in(4)), slot(in(3), in(4))};
}

// The outermost boxes lie inside the margins with at least a gutter between them.
void expectNeat(const Sketch& sketch) {
    const Rect area = insideMargins(sketch.page).front();
    for (const auto& [id, piece] : sketch.pieces) {
        const Rect own = outermostBounds(piece);
        EXPECT_TRUE(area.contains(own)) << id.value;
        for (const auto& [otherId, other] : sketch.pieces) {
            if (otherId != id) {
                EXPECT_FALSE(
                    own.expanded(sketch.page.gutter).interiorIntersects(outermostBounds(other)))
                    << id.value << " and " << otherId.value;
            }
        }
    }
}

TEST(FreePlace, putsABlockInTheTopLeftCornerInsideTheMargins) {
    EXPECT_EQ(freePlace(blankSketch(), block(in(3), in(2))), (Point{half, half}));
}

TEST(FreePlace, goesOnAGutterToTheRightThenToTheNextRow) {
    const Piece wide = block(in(5), in(2));
    const Sketch sketch = clicked(blankSketch(), {wide, wide, wide});
    EXPECT_EQ(boxOf(sketch, 2).topLeft(), (Point{half + in(5) + quarter, half}));
    EXPECT_EQ(boxOf(sketch, 3).topLeft(), (Point{half, half + in(2) + quarter}));
}

TEST(FreePlace, fillsAGapThatIsJustWideEnough) {
    const Length left = half + in(2) + quarter;
    const Sketch sketch = sketchOf({Rect::at({half, half}, {in(2), in(3)}),
                                    Rect::at({left + in(2) + quarter, half}, {in(2), in(3)})});
    EXPECT_EQ(freePlace(sketch, block(in(2), in(3))), (Point{left, half}));
    EXPECT_NE(freePlace(sketch, block(in(2) + ticks(1), in(3))).value().x, left);
}

// The common page of one 4x6 and three 3x4 (common practice, no source), by four clicks.
TEST(FreePlace, fourClicksMakeAPageThatMatsFitOnLater) {
    const Sketch bare = clicked(blankSketch(), fourPhotos());
    expectNeat(bare);
    EXPECT_EQ(boxOf(bare, 1).topLeft(), (Point{half + eighth, half + eighth}));
    EXPECT_EQ(boxOf(bare, 2).topLeft(), (Point{in(7) + eighth, half + eighth}));
    EXPECT_EQ(boxOf(bare, 3).topLeft(), (Point{half + eighth, in(5) + eighth}));
    EXPECT_EQ(boxOf(bare, 4).topLeft(), (Point{in(4) + eighth, in(5) + eighth}));

    Sketch matted = bare;
    for (auto& [id, piece] : matted.pieces) {
        piece.mats = {Mat{eighth, {}, ""}};
    }
    expectNeat(matted);
}

TEST(FreePlace, countsTheGutterFromMatEdgeToMatEdge) {
    Piece matted = slot(in(3), in(4));
    matted.mats = {Mat{quarter, {}, ""}};
    const Sketch sketch = clicked(blankSketch(), {matted, matted});
    EXPECT_EQ(outermostBox(sketch.pieces.at(PieceId{1})).topLeft(), (Point{half, half}));
    EXPECT_EQ(outermostBox(sketch.pieces.at(PieceId{2})).left(),
              outermostBox(sketch.pieces.at(PieceId{1})).right() + quarter);
}

TEST(FreePlace, laysABareSlotTightlyWhereThereIsNoRoomForMats) {
    const Piece full = slot(in(11), in(11));
    EXPECT_EQ(freePlace(blankSketch(), full), (Point{half, half}));
    const Piece nearlyFull = slot(in(11) - quarter, in(11) - quarter);
    EXPECT_EQ(freePlace(blankSketch(), nearlyFull), (Point{half + eighth, half + eighth}));
}

TEST(FreePlace, onADoublePageFillsTheLeftPageFirst) {
    Sketch sketch = blankSketch();
    sketch.page.doublePage = true;
    sketch.page.foldGap = in(1);
    const Piece large = block(in(8), in(8));
    sketch = clicked(sketch, {large, large});
    EXPECT_EQ(boxOf(sketch, 1).topLeft(), (Point{half, half}));
    EXPECT_EQ(boxOf(sketch, 2).topLeft(), (Point{in(13) + half, half}));
}

TEST(FreePlace, laysThingsOnPapersWhereOnlyPaperIsLeft) {
    const Sketch sketch = sketchOf({Rect::at({}, {in(12), in(12)})});
    EXPECT_EQ(freePlace(sketch, slot(in(4), in(6))), (Point{half + eighth, half + eighth}));
}

TEST(FreePlace, isNoneWhereEverySpotWouldCoverAPhotoOrLeaveTheMargins) {
    Sketch sketch = clicked(blankSketch(), {slot(in(11), in(11))});
    EXPECT_EQ(freePlace(sketch, slot(in(4), in(6))), std::nullopt);
    EXPECT_EQ(freePlace(blankSketch(), block(in(12), in(12))), std::nullopt);
}

TEST(MiddlePlace, putsTheOutermostBoundsInTheMiddleOfTheLeftPage) {
    EXPECT_EQ(middlePlace(blankSketch(), slot(in(4), in(6))), (Point{in(4), in(3)}));
    EXPECT_EQ(middlePlace(blankSketch(), block(in(12), in(12))), Point{});
    Sketch doublePage = blankSketch();
    doublePage.page.doublePage = true;
    Piece matted = slot(in(4), in(6));
    matted.mats.push_back({in(1), in(3), ""});
    EXPECT_EQ(middlePlace(doublePage, matted), (Point{in(4), in(2)}));
}

TEST(FreePlace, goesByTheBoundsOfATurnedPieceAndNotByItsPlace) {
    Piece piece = block(in(4), in(2));
    piece.rotation = Angle::degrees(90);
    piece.place = {in(-77), in(5)};
    piece.place = freePlace(blankSketch(), piece).value();
    EXPECT_EQ(trimBounds(piece), Rect::at({half, half}, {in(2), in(4)}));
}

TEST(FreePlace, keepsOutOfTheWayOfPiecesThatHangOverTheMargin) {
    const Sketch sketch = sketchOf({Rect::at({-in(1), -in(1)}, {in(3), in(3)})});
    EXPECT_EQ(freePlace(sketch, block(in(2), in(2))), (Point{in(2) + quarter, half}));
    EXPECT_EQ(freePlace(sketch, block(in(11), in(2))), (Point{half, in(2) + quarter}));
}

}  // namespace
}  // namespace matwright
