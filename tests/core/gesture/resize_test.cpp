// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/gesture/gesture.h"
#include "core/sketch/soundness.h"

namespace matwright {
namespace {

constexpr Length in(std::int64_t whole) {
    return Length::inches(whole);
}
constexpr Length quarter = Length::inches(0, 1, 4);

Piece blockAt(Point place, Size size) {
    Piece piece;
    piece.place = place;
    piece.size = size;
    return piece;
}
Piece block() {
    return blockAt({in(2), in(3)}, {in(4), in(6)});
}
Piece slot() {
    Piece piece = block();
    piece.kind = PieceKind::PhotoSlot;
    piece.printSize = piece.size;
    return piece;
}

TEST(ResizedBy, movesOnlyTheSidesTheHandleDrags) {
    struct Row {
        Handle handle;
        Rect after;
    };
    const Rect box{{in(2), in(6)}, {in(3), in(9)}};
    const Length right = box.right() + in(1), bottom = box.bottom() + quarter;
    const Length left = box.left() + in(1), top = box.top() + quarter;
    const Row rows[] = {
        {Handle::TopLeft, {{left, in(6)}, {top, in(9)}}},
        {Handle::Top, {{in(2), in(6)}, {top, in(9)}}},
        {Handle::TopRight, {{in(2), right}, {top, in(9)}}},
        {Handle::Right, {{in(2), right}, {in(3), in(9)}}},
        {Handle::BottomRight, {{in(2), right}, {in(3), bottom}}},
        {Handle::Bottom, {{in(2), in(6)}, {in(3), bottom}}},
        {Handle::BottomLeft, {{left, in(6)}, {in(3), bottom}}},
        {Handle::Left, {{left, in(6)}, {in(3), in(9)}}},
    };
    for (const Row& row : rows) {
        EXPECT_EQ(trimBox(resizedBy(block(), row.handle, {in(1), quarter}, {})), row.after)
            << static_cast<int>(row.handle);
    }
}

TEST(ResizedBy, fromTheCentreMovesBothEndsAndKeepsTheCentre) {
    const Piece after =
        resizedBy(block(), Handle::BottomRight, {in(1), -in(1)}, {.fromCentre = true});
    EXPECT_EQ(trimBox(after), (Rect{{in(1), in(7)}, {in(4), in(8)}}));
}

TEST(ResizedBy, keepingTheRatioFollowsTheSideThatAsksForMore) {
    const Piece wide = resizedBy(block(), Handle::BottomRight, {in(2), in(1)}, {.keepRatio = true});
    EXPECT_EQ(wide.size, (Size{in(6), in(9)}));
    const Piece tall = resizedBy(block(), Handle::BottomRight, {in(0), in(3)}, {.keepRatio = true});
    EXPECT_EQ(tall.size, (Size{in(6), in(9)}));
    EXPECT_EQ(tall.place, block().place);
    const Piece small = resizedBy(block(), Handle::TopLeft, {in(2), in(4)}, {.keepRatio = true});
    EXPECT_EQ(trimBox(small), (Rect{{in(4), in(6)}, {in(6), in(9)}}));
}

TEST(ResizedBy, aSideKeepingTheRatioTakesTheOtherSidesAlongEvenly) {
    const Piece after = resizedBy(block(), Handle::Right, {in(2), in(5)}, {.keepRatio = true});
    const Length grown = Length::inches(1, 1, 2);
    EXPECT_EQ(trimBox(after), (Rect{{in(2), in(8)}, {in(3) - grown, in(9) + grown}}));
}

TEST(ResizedBy, stopsAtTheSmallestSideWithTheOppositeSideInPlace) {
    const Piece after = resizedBy(block(), Handle::Left, {in(40), {}}, {.smallest = quarter});
    EXPECT_EQ(trimBox(after).x, (Interval{in(6) - quarter, in(6)}));
    const Piece exactly =
        resizedBy(block(), Handle::Left, {in(4) - quarter, {}}, {.smallest = quarter});
    EXPECT_EQ(exactly, after);
    const Piece oneTickMore = resizedBy(
        block(), Handle::Left, {in(4) - quarter - Length::fromTicks(1), {}}, {.smallest = quarter});
    EXPECT_EQ(oneTickMore.size.width, quarter + Length::fromTicks(1));
}

TEST(ResizedBy, stopsAtTheSmallestSideOfTheShorterOneWhenKeepingTheRatio) {
    const Piece after = resizedBy(block(), Handle::BottomRight, {-in(20), -in(20)},
                                  {.keepRatio = true, .smallest = in(1)});
    EXPECT_EQ(after.size, (Size{in(1), Length::inches(1, 1, 2)}));
}

TEST(ResizedBy, letsAPieceThatStartsSmallerThanTheSmallestSideKeepItsSize) {
    const Length thin = Length::inches(0, 1, 16);
    const Piece strip = blockAt({}, {in(5), thin});
    EXPECT_EQ(resizedBy(strip, Handle::Right, {in(1), in(1)}, {}).size, (Size{in(6), thin}));
    EXPECT_EQ(resizedBy(strip, Handle::Bottom, {{}, -in(1)}, {}).size, strip.size);
}

TEST(ResizedBy, pullsTurnedPiecesAlongTheirOwnSides) {
    Piece turned = block();
    turned.rotation = Angle::degrees(90);
    // A quarter turn clockwise: the piece's right side lies at the bottom of the page.
    const Piece after = resizedBy(turned, Handle::Right, {in(5), in(2)}, {});
    EXPECT_EQ(after.size, (Size{in(6), in(6)}));
    const Rect before = trimBounds(turned);
    EXPECT_EQ(trimBounds(after), (Rect{before.x, {before.top(), before.bottom() + in(2)}}));
}

TEST(ResizedBy, scalesPolygonCornersFromTheStart) {
    Piece piece = block();
    piece.shape = PolygonShape{{{in(2), {}}, {in(4), in(6)}, {{}, in(3)}}};
    const Piece after = resizedBy(piece, Handle::BottomRight, {in(4), -in(2)}, {});
    EXPECT_EQ(std::get<PolygonShape>(after.shape).corners,
              (std::vector<Point>{{in(4), {}}, {in(8), in(4)}, {{}, in(2)}}));
}

TEST(ResizedBy, stopsBeforeAPolygonIsSqueezedUntilItTouchesItself) {
    Piece piece = block();
    const Length tick = Length::fromTicks(1);
    const Length mid = in(2);
    // A notch 40 ticks wide: at a tenth of the width it would still be open, at 1/100 it closes.
    piece.shape = PolygonShape{{{{}, {}},
                                {mid, {}},
                                {mid, in(3)},
                                {mid + 40 * tick, in(3)},
                                {mid + 40 * tick, {}},
                                {in(4), {}},
                                {in(4), in(6)},
                                {{}, in(6)}}};
    ASSERT_FALSE(findFault(piece));
    const Piece after = resizedBy(piece, Handle::Right, {-Length::inches(3, 99, 100), {}},
                                  {.smallest = Length::inches(0, 1, 64)});
    EXPECT_FALSE(findFault(after));
    EXPECT_LT(after.size.width, in(1));
    EXPECT_EQ(after.place, piece.place);
}

TEST(ResizedBy, aPhotosPrintFollowsOnlyWhereItWasTheTrim) {
    const Piece smaller = resizedBy(slot(), Handle::BottomRight, {-in(1), -in(2)}, {});
    EXPECT_EQ(smaller.size, (Size{in(3), in(4)}));
    EXPECT_EQ(smaller.printSize, smaller.size);

    Piece trimmed = slot();
    trimmed.printSize = Size{in(5), in(7)};
    EXPECT_EQ(resizedBy(trimmed, Handle::BottomRight, {-in(1), -in(2)}, {}).printSize,
              trimmed.printSize);
}

TEST(ResizedBy, aPhotosPrintStaysWhileNoSmallerOneHoldsTheTrim) {
    EXPECT_EQ(resizedBy(slot(), Handle::Right, {-quarter, {}}, {}).printSize, slot().size);
    EXPECT_EQ(resizedBy(slot(), Handle::Right, {quarter, {}}, {}).printSize, (Size{in(5), in(7)}));
    EXPECT_EQ(resizedBy(slot(), Handle::Right, {in(20), {}}, {}).printSize, (Size{in(24), in(6)}));
    Piece metric = slot();
    metric.size = {Length::millimetres(100), Length::millimetres(150)};
    metric.printSize = metric.size;
    EXPECT_EQ(resizedBy(metric, Handle::Right, {Length::fromTicks(-1), {}}, {}).printSize,
              metric.printSize);
    Piece odd = slot();
    odd.size = {in(9), in(9)};
    odd.printSize = odd.size;
    EXPECT_EQ(resizedBy(odd, Handle::Right, {{}, in(3)}, {}).printSize, odd.printSize);
}

TEST(ResizedBy, stopsAtTheLargestSideAndAtTheCoordinateLimit) {
    EXPECT_EQ(resizedBy(block(), Handle::Right, {in(900), {}}, {}).size.width, in(200));
    const Piece far = blockAt({in(990), {}}, {in(4), in(4)});
    const Piece after = resizedBy(far, Handle::Right, {in(100), {}}, {});
    EXPECT_FALSE(findFault(after));
    EXPECT_LE(after.place.x + after.size.width, in(1000));
    EXPECT_GE(after.place.x + after.size.width, in(1000) - Length::fromTicks(1));
}

}  // namespace
}  // namespace matwright
