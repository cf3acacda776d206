// SPDX-License-Identifier: MIT
#include "app/canvas/handles.h"

#include <gtest/gtest.h>

#include <cmath>

namespace matwright::app {
namespace {

const QRectF view(0, 0, 1000, 1000);
const Viewport viewport(100.0 / static_cast<double>(Length::ticksPerInch), {0, 0});

Piece block(Length x, Length y, Length w, Length h) {
    Piece piece;
    piece.place = {x, y};
    piece.size = {w, h};
    return piece;
}

Piece middling() {
    return block(Length::inches(4), Length::inches(4), Length::inches(2), Length::inches(1));
}

TEST(HandlesTest, AnUnturnedPieceHasEightAndOneForTurning) {
    const HandleLayout layout = handlesOf(middling(), viewport, view);
    ASSERT_EQ(layout.spots.size(), 9u);
    const HandleSpot* corner = layout.spotAt({400, 400});
    ASSERT_TRUE(corner && corner->resize);
    EXPECT_EQ(*corner->resize, Handle::TopLeft);
    const HandleSpot* side = layout.spotAt({600, 450});
    ASSERT_TRUE(side && side->resize);
    EXPECT_EQ(*side->resize, Handle::Right);
    EXPECT_FALSE(layout.spots.back().resize);
    EXPECT_LT(layout.spots.back().at.y(), 400);
}

TEST(HandlesTest, TheAreaOfAHandleIs24PixelsWide) {
    const HandleLayout layout = handlesOf(middling(), viewport, view);
    EXPECT_TRUE(layout.spotAt({388, 388}));
    EXPECT_TRUE(layout.spotAt({412, 412}));
    EXPECT_FALSE(layout.spotAt({387, 400}));
    EXPECT_FALSE(layout.spotAt({413, 413}));
}

TEST(HandlesTest, TheMiddleOfASmallPieceCanStillBeGrabbed) {
    const Piece small = block(Length::inches(4), Length::inches(4), Length::inches(0, 1, 4),
                              Length::inches(0, 1, 4));
    const HandleLayout layout = handlesOf(small, viewport, view);
    EXPECT_FALSE(layout.spotAt({412.5, 412.5}));
    EXPECT_TRUE(layout.spotAt({401, 401}));
    EXPECT_TRUE(layout.spotAt({392, 392}));
}

TEST(HandlesTest, HandlesFollowATurnedPiece) {
    Piece piece = middling();
    piece.rotation = Angle::degrees(90);  // the box then spans 450..550 across, 350..550 down
    const HandleLayout layout = handlesOf(piece, viewport, view);
    const HandleSpot* topLeft = layout.spotAt({550, 350});
    ASSERT_TRUE(topLeft && topLeft->resize);
    EXPECT_EQ(*topLeft->resize, Handle::TopLeft);
    EXPECT_GT(layout.spots.back().at.x(), 550);  // "up" now points right
}

TEST(HandlesTest, TheHandleForTurningGoesBelowWhereThereIsNoRoomAbove) {
    const Piece piece = block(Length::inches(4), Length(), Length::inches(2), Length::inches(1));
    const HandleLayout layout = handlesOf(piece, viewport, view);
    EXPECT_GT(layout.spots.back().at.y(), 100);
}

TEST(HandlesTest, SeveralPiecesOnlyTurn) {
    const HandleLayout layout =
        handlesOf(Rect::at({}, {Length::inches(3), Length::inches(3)}), viewport, view);
    ASSERT_EQ(layout.spots.size(), 1u);
    EXPECT_FALSE(layout.spots.front().resize);
}

TEST(HandlesTest, CursorsTurnWithThePiece) {
    EXPECT_EQ(cursorOf(Handle::Right, 0), Qt::SizeHorCursor);
    EXPECT_EQ(cursorOf(Handle::Right, 90), Qt::SizeVerCursor);
    EXPECT_EQ(cursorOf(Handle::TopLeft, 0), Qt::SizeFDiagCursor);
    EXPECT_EQ(cursorOf(Handle::TopRight, 0), Qt::SizeBDiagCursor);
    EXPECT_EQ(cursorOf(Handle::TopLeft, 45), Qt::SizeVerCursor);
    EXPECT_EQ(cursorOf(Handle::Left, 359), Qt::SizeHorCursor);
}

}  // namespace
}  // namespace matwright::app
