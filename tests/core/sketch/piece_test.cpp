// SPDX-License-Identifier: MIT
#include "core/sketch/piece.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace matwright {
namespace {

constexpr Length inch = Length::inches(1);
constexpr Length tick = Length::fromTicks(1);

Rect rect(int left, int top, int right, int bottom) {
    return {{inch * left, inch * right}, {inch * top, inch * bottom}};
}

Piece photo() {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.place = {4 * inch, 5 * inch};
    piece.size = {2 * inch, 3 * inch};
    piece.printSize = piece.size;
    return piece;
}

TEST(Piece, MatsGrowTheBoxOneAfterTheOther) {
    Piece piece = photo();
    EXPECT_EQ(trimBox(piece), rect(4, 5, 6, 8));
    EXPECT_EQ(outermostBox(piece), trimBox(piece));
    piece.mats = {{inch, {}, ""}, {2 * inch, {}, ""}};
    EXPECT_EQ(matBox(piece, 0), rect(3, 4, 7, 9));
    EXPECT_EQ(matBox(piece, 1), rect(1, 2, 9, 11));
    EXPECT_EQ(outermostBox(piece), matBox(piece, 1));
}

TEST(Piece, ABottomBorderReplacesTheBorderBelowOnly) {
    Piece piece = photo();
    piece.mats = {{inch, 3 * inch, ""}, {2 * inch, inch, ""}};
    EXPECT_EQ(matBox(piece, 0), rect(3, 4, 7, 11));
    EXPECT_EQ(matBox(piece, 1), rect(1, 2, 9, 12));
}

TEST(Piece, ThePrintIsCentredOnTheTrim) {
    Piece piece = photo();
    piece.printSize = Size{4 * inch, 5 * inch};
    EXPECT_EQ(printBox(piece), rect(3, 4, 7, 9));
    piece.printSize = Size{2 * inch, inch};
    EXPECT_EQ(printBox(piece), rect(4, 6, 6, 7)) << "a print smaller than its trim";
    piece.printSize = Size{2 * inch + tick, 3 * inch};
    EXPECT_EQ(printBox(piece).left(), 4 * inch) << "half a tick is rounded";
    piece.printSize.reset();
    EXPECT_EQ(printBox(piece), trimBox(piece));
}

TEST(Piece, QuarterTurnsAreExactAboutTheTrimsMiddle) {
    Piece piece = photo();  // its middle is at 5, 6 1/2
    piece.mats = {{inch, 2 * inch, ""}};
    const auto halves = [](int left, int top, int right, int bottom) {
        const Length half = Length::inches(0, 1, 2);
        return Rect{{half * left, half * right}, {half * top, half * bottom}};
    };
    const Rect expected[] = {halves(6, 8, 14, 20), halves(3, 9, 15, 17), halves(6, 6, 14, 18),
                             halves(5, 9, 17, 17)};
    for (int quarter = 0; quarter < 4; ++quarter) {
        piece.rotation = Angle::degrees(90 * quarter);
        EXPECT_EQ(outermostBounds(piece), expected[quarter]) << quarter << " quarters";
    }
}

TEST(Piece, TurnedBoundsHoldEveryCornerAndAreAtMostATickLarger) {
    std::mt19937_64 random(5);
    for (int run = 0; run < 1'000; ++run) {
        Piece piece = photo();
        piece.place.x += Length::fromTicks(static_cast<std::int64_t>(random() % 1'000'000));
        piece.size.width += Length::fromTicks(static_cast<std::int64_t>(random() % 1'000'000));
        piece.rotation = Angle::millidegrees(static_cast<std::int64_t>(random() % 360'000));
        const Rect box = trimBox(piece);
        const Rect bounds = trimBounds(piece);
        const double cx = static_cast<double>((box.left() + box.right()).ticks()) / 2;
        const double cy = static_cast<double>((box.top() + box.bottom()).ticks()) / 2;
        const double hw = static_cast<double>(piece.size.width.ticks()) / 2;
        const double hh = static_cast<double>(piece.size.height.ticks()) / 2;
        // Half the extent of a turned box.
        const double c = std::abs(piece.rotation.cosine()), s = std::abs(piece.rotation.sine());
        const double ex = hw * c + hh * s, ey = hw * s + hh * c;
        EXPECT_LE(static_cast<double>(bounds.left().ticks()), cx - ex + 1e-6);
        EXPECT_GT(static_cast<double>(bounds.left().ticks()), cx - ex - 1.001);
        EXPECT_GE(static_cast<double>(bounds.bottom().ticks()), cy + ey - 1e-6);
        EXPECT_LT(static_cast<double>(bounds.bottom().ticks()), cy + ey + 1.001);
    }
}

TEST(Piece, ANewBoxScalesPolygonCornersAndKeepsARadius) {
    Piece piece = photo();
    piece.shape = PolygonShape{{{Length(), Length()}, {2 * inch, inch}, {inch, 3 * inch}}};
    const Piece wide = withBox(piece, rect(0, 0, 4, 6));
    EXPECT_EQ(wide.place, (Point{}));
    EXPECT_EQ(wide.size, (Size{4 * inch, 6 * inch}));
    EXPECT_EQ(std::get<PolygonShape>(wide.shape),
              (PolygonShape{{{Length(), Length()}, {4 * inch, 2 * inch}, {2 * inch, 6 * inch}}}));
    EXPECT_EQ(withBox(wide, trimBox(piece)), piece);
    piece.shape = RoundedRectangleShape{inch};
    EXPECT_EQ(withBox(piece, rect(0, 0, 4, 6)).shape, piece.shape);
}

TEST(Piece, CornersOnTheBoxsEdgeStayOnItForAnySize) {
    std::mt19937_64 random(6);
    Piece piece = photo();
    piece.shape = PolygonShape{{{Length(), Length()},
                                {piece.size.width, Length()},
                                {piece.size.width, piece.size.height}}};
    for (int run = 0; run < 1'000; ++run) {
        const Size size{Length::fromTicks(static_cast<std::int64_t>(random() % 182'880'000) + 1),
                        Length::fromTicks(static_cast<std::int64_t>(random() % 182'880'000) + 1)};
        piece = withBox(piece, Rect::at({}, size));
        const auto& corners = std::get<PolygonShape>(piece.shape).corners;
        ASSERT_EQ(corners[2], (Point{size.width, size.height}));
        ASSERT_EQ(corners[1], (Point{size.width, Length()}));
    }
}

TEST(Piece, IsCalledByItsNameOrByItsKindAndPrint) {
    Piece piece = photo();
    EXPECT_EQ(displayName(piece), "photo slot 2 × 3 in");
    piece.printSize = Size{4 * inch, 6 * inch};
    EXPECT_EQ(displayName(piece), "photo slot 4 × 6 in");
    piece.name = "At the lake";
    EXPECT_EQ(displayName(piece), "At the lake");
    piece = {};
    piece.kind = PieceKind::Strip;
    piece.size = {12 * inch, Length::inches(1, 1, 2)};
    EXPECT_EQ(displayName(piece), "strip 12 × 1 1/2 in");
}

TEST(Piece, EveryKindHasAPlainName) {
    const std::string_view names[] = {"photo slot", "strip",      "block",
                                      "title",      "journaling", "embellishment"};
    for (std::size_t i = 0; i < std::size(allPieceKinds); ++i) {
        EXPECT_EQ(kindName(allPieceKinds[i]), names[i]);
    }
}

}  // namespace
}  // namespace matwright
