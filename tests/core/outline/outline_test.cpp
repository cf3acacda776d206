// SPDX-License-Identifier: MIT
#include "core/outline/outline.h"

#include <gtest/gtest.h>

#include <cmath>

namespace matwright {
namespace {

constexpr Length inch = Length::inches(1);
constexpr double perInch = Length::ticksPerInch;

Piece photo(Point place, Size size, Shape shape = RectangleShape{}) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.place = place;
    piece.size = size;
    piece.shape = std::move(shape);
    piece.printSize = size;
    return piece;
}

std::vector<Vertex> inInches(const Path& path) {
    std::vector<Vertex> corners = flattened(path, Length::fromTicks(1));
    for (Vertex& v : corners) {
        v = {v.x / perInch, v.y / perInch};
    }
    return corners;
}

void expectCorners(const Path& path, const std::vector<Vertex>& expected) {
    const std::vector<Vertex> corners = inInches(path);
    ASSERT_EQ(corners.size(), expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_NEAR(corners[i].x, expected[i].x, 1e-9) << "corner " << i;
        EXPECT_NEAR(corners[i].y, expected[i].y, 1e-9) << "corner " << i;
    }
}

// Corners of a polygon given in whole inches.
Shape polygon(std::initializer_list<std::pair<int, int>> corners) {
    PolygonShape shape;
    for (const auto& [x, y] : corners) {
        shape.corners.push_back({inch * x, inch * y});
    }
    return shape;
}

TEST(Outline, AnUprightRectangleIsItsTrimBox) {
    expectCorners(trimOutline(photo({inch, 2 * inch}, {4 * inch, 6 * inch})),
                  {{1, 2}, {5, 2}, {5, 8}, {1, 8}});
}

TEST(Outline, ATurnedRectangleTurnsClockwiseAboutItsMiddle) {
    Piece piece = photo({inch, 2 * inch}, {4 * inch, 6 * inch});
    piece.rotation = Angle::degrees(90);
    expectCorners(trimOutline(piece), {{6, 3}, {6, 7}, {0, 7}, {0, 3}});
    piece.rotation = Angle::degrees(45);
    const double h = std::sqrt(0.5);
    expectCorners(trimOutline(piece), {{3 + (-2 + 3) * h, 5 + (-2 - 3) * h},
                                       {3 + (2 + 3) * h, 5 + (2 - 3) * h},
                                       {3 + (2 - 3) * h, 5 + (2 + 3) * h},
                                       {3 + (-2 - 3) * h, 5 + (-2 + 3) * h}});
}

TEST(Outline, ARectanglesMatsAreTheirBoxes) {
    Piece piece = photo({2 * inch, 2 * inch}, {3 * inch, 4 * inch});
    piece.mats = {{inch, {}, ""}, {inch, 2 * inch, ""}};
    expectCorners(matOutline(piece, 0), {{1, 1}, {6, 1}, {6, 7}, {1, 7}});
    expectCorners(matOutline(piece, 1), {{0, 0}, {7, 0}, {7, 9}, {0, 9}});
    EXPECT_EQ(outermostOutline(piece), matOutline(piece, 1));
    EXPECT_EQ(boundsOf(outermostOutline(piece)), outermostBox(piece));
}

TEST(Outline, AMatWithALargerBottomTurnsAboutThePhotosMiddle) {
    Piece piece = photo({2 * inch, 2 * inch}, {2 * inch, 2 * inch});
    piece.mats = {{inch, 3 * inch, ""}};
    piece.rotation = Angle::degrees(180);
    expectCorners(matOutline(piece, 0), {{5, 5}, {1, 5}, {1, -1}, {5, -1}});
}

TEST(Outline, ThePrintIsARectangleCentredOnTheTrim) {
    Piece piece = photo({2 * inch, 2 * inch}, {3 * inch, 3 * inch}, OvalShape{});
    piece.printSize = Size{3 * inch, 5 * inch};
    expectCorners(printOutline(piece), {{2, 1}, {5, 1}, {5, 6}, {2, 6}});
    piece.printSize.reset();
    expectCorners(printOutline(piece), {{2, 2}, {5, 2}, {5, 5}, {2, 5}});
}

TEST(Outline, ARoundedMatGrowsItsRadiusByTheBorder) {
    Piece piece = photo({2 * inch, 2 * inch}, {4 * inch, 4 * inch}, RoundedRectangleShape{inch});
    piece.mats = {{inch, {}, ""}};
    EXPECT_EQ(matOutline(piece, 0), roundedRectPath(matBox(piece, 0), 2 * inch));
    // A radius larger than the photo allows is cut down first.
    piece.shape = RoundedRectangleShape{9 * inch};
    EXPECT_EQ(matOutline(piece, 0), roundedRectPath(matBox(piece, 0), 3 * inch));
}

TEST(Outline, AnOvalsMatIsTheOvalInTheGrownBox) {
    Piece piece = photo({2 * inch, 2 * inch}, {4 * inch, 3 * inch}, OvalShape{});
    piece.mats = {{inch, 2 * inch, ""}};
    EXPECT_EQ(matOutline(piece, 0), ovalPath(matBox(piece, 0)));
}

TEST(Outline, ARectangleDrawnAsAPolygonHasTheSameMats) {
    const Shape clockwise = polygon({{0, 0}, {4, 0}, {4, 3}, {0, 3}});
    const Shape widdershins = polygon({{0, 0}, {0, 3}, {4, 3}, {4, 0}});
    for (const Shape& shape : {clockwise, widdershins}) {
        Piece piece = photo({5 * inch, 5 * inch}, {4 * inch, 3 * inch}, shape);
        piece.mats = {{inch, 2 * inch, ""}, {inch, Length::inches(0, 1, 2), ""}};
        EXPECT_EQ(boundsOf(matOutline(piece, 0)), matBox(piece, 0));
        EXPECT_EQ(boundsOf(matOutline(piece, 1)), matBox(piece, 1));
    }
}

TEST(Outline, ADiamondsMatIsMitred) {
    Piece piece = photo({0 * inch, 0 * inch}, {4 * inch, 4 * inch},
                        polygon({{2, 0}, {4, 2}, {2, 4}, {0, 2}}));
    piece.mats = {{inch, {}, ""}};
    const double r = std::sqrt(2.0);
    expectCorners(matOutline(piece, 0), {{2, -r}, {4 + r, 2}, {2, 4 + r}, {-r, 2}});
}

TEST(Outline, CoversHasItsBoundaryInAndOneTickMoreAtMost) {
    Piece piece = photo({inch, inch}, {inch, inch});
    piece.mats = {{Length::inches(0, 1, 2), {}, ""}};
    const Length edge = Length::inches(2, 1, 2);
    const Length tick = Length::fromTicks(1);
    const Length middle = Length::inches(1, 1, 2);
    EXPECT_TRUE(covers(piece, {middle, middle}));
    EXPECT_TRUE(covers(piece, {edge, middle}));
    EXPECT_TRUE(covers(piece, {edge, edge}));
    EXPECT_TRUE(covers(piece, {middle, Length::inches(0, 1, 2)}));
    EXPECT_FALSE(covers(piece, {edge + 2 * tick, middle}));
    EXPECT_FALSE(covers(piece, {middle, edge + 2 * tick}));
    piece.mats.clear();
    EXPECT_FALSE(covers(piece, {edge, middle}));
}

TEST(Outline, CoversFollowsTheShapeNotTheBox) {
    const Point corner{Length::inches(1, 1, 10), Length::inches(1, 1, 10)};
    const Size size{4 * inch, 4 * inch};
    EXPECT_TRUE(covers(photo({inch, inch}, size), corner));
    EXPECT_FALSE(covers(photo({inch, inch}, size, OvalShape{}), corner));
    EXPECT_FALSE(covers(photo({inch, inch}, size, RoundedRectangleShape{inch}), corner));
    EXPECT_FALSE(covers(photo({inch, inch}, size, polygon({{4, 0}, {4, 4}, {0, 4}})), corner));
    Piece turnedPiece = photo({inch, inch}, size);
    turnedPiece.rotation = Angle::degrees(45);
    EXPECT_FALSE(covers(turnedPiece, corner));
    EXPECT_TRUE(covers(turnedPiece, {3 * inch, Length::inches(0, 1, 4)}));
}

TEST(Reach, HoldsEveryOutlineAndIsTheOutermostBoundsButForPolygonsWithMats) {
    const Shape shapes[] = {RectangleShape{},
                            RoundedRectangleShape{inch},
                            OvalShape{},
                            polygon({{0, 0}, {3, 1}, {0, 2}}),
                            polygon({{0, 0}, {3, 2}, {2, 0}}),
                            polygon({{0, 0}, {1, 1}, {3, 0}, {2, 2}, {0, 2}})};
    for (const Shape& shape : shapes) {
        for (const std::size_t mats : {0U, 1U, 2U}) {
            for (const int degrees : {0, 30, 90, 200}) {
                Piece piece = photo({inch, inch}, {3 * inch, 2 * inch}, shape);
                piece.mats.resize(mats, {inch, 2 * inch, ""});
                piece.rotation = Angle::degrees(degrees);
                const bool isMattedPolygon =
                    mats > 0 && std::holds_alternative<PolygonShape>(shape);
                EXPECT_TRUE(reachOf(piece).contains(boundsOf(outermostOutline(piece))))
                    << "shape " << shape.index() << ", mats " << mats << ", turned " << degrees;
                EXPECT_EQ(reachOf(piece) == outermostBounds(piece), !isMattedPolygon);
            }
        }
    }
}

}  // namespace
}  // namespace matwright
