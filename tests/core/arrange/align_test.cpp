// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/arrange/arrange.h"
#include "tests/core/arrange/rows.h"

namespace matwright {
namespace {

using namespace test;

Sketch three() {
    return sketchOf({{{in(1), in(3)}, {in(1), in(2)}},
                     {{in(4), in(5)}, {in(3), in(6)}},
                     {{in(6), in(9)}, {in(2), in(7)}}});
}

TEST(Aligned, bringsEveryEdgeOrMiddleToTheSelectionsOwn) {
    struct Row {
        AlignTo to;
        Point places[3];
    };
    const Length half = Length::inches(0, 1, 2);
    const Row rows[] = {
        {AlignTo::Left, {{in(1), in(1)}, {in(1), in(3)}, {in(1), in(2)}}},
        {AlignTo::CentreX, {{in(4), in(1)}, {in(4) + half, in(3)}, {in(3) + half, in(2)}}},
        {AlignTo::Right, {{in(7), in(1)}, {in(8), in(3)}, {in(6), in(2)}}},
        {AlignTo::Top, {{in(1), in(1)}, {in(4), in(1)}, {in(6), in(1)}}},
        {AlignTo::CentreY, {{in(1), in(3) + half}, {in(4), in(2) + half}, {in(6), in(1) + half}}},
        {AlignTo::Bottom, {{in(1), in(6)}, {in(4), in(4)}, {in(6), in(2)}}},
    };
    for (const Row& row : rows) {
        const Sketch start = three();
        const Sketch done = after(start, aligned(start, allIds(start), row.to));
        for (std::uint32_t id = 1; id <= 3; ++id) {
            EXPECT_EQ(boxOf(done, id).topLeft(), row.places[id - 1])
                << static_cast<int>(row.to) << " piece " << id;
        }
    }
}

TEST(Aligned, bringsOnePieceToTheAreaInsideTheMargins) {
    const Sketch start = three();
    const PieceId id[] = {PieceId{2}};
    const Length half = Length::inches(0, 1, 2);
    EXPECT_EQ(boxOf(after(start, aligned(start, id, AlignTo::Left)), 2).left(), half);
    EXPECT_EQ(boxOf(after(start, aligned(start, id, AlignTo::Right)), 2).right(), in(12) - half);
    EXPECT_EQ(boxOf(after(start, aligned(start, id, AlignTo::CentreX)), 2).left(), in(5) + half);
    EXPECT_EQ(boxOf(after(start, aligned(start, id, AlignTo::Bottom)), 2).bottom(), in(12) - half);
}

TEST(Aligned, onADoublePageUsesThePageThePieceIsOn) {
    Sketch start = three();
    start.page.doublePage = true;
    start.page.foldGap = in(1);
    const PieceId id[] = {PieceId{1}};
    const Length half = Length::inches(0, 1, 2);
    pieceOf(start, 1).place.x = in(12);  // two inches wide: its middle is the right page's edge
    EXPECT_EQ(boxOf(after(start, aligned(start, id, AlignTo::Left)), 1).left(), in(13) + half);
    pieceOf(start, 1).place.x = in(10);
    EXPECT_EQ(boxOf(after(start, aligned(start, id, AlignTo::Left)), 1).left(), half);
}

TEST(Aligned, goesByTheBoundsOfTurnedPieces) {
    Sketch start = three();
    pieceOf(start, 3).rotation = Angle::degrees(90);
    const Sketch done = after(start, aligned(start, allIds(start), AlignTo::Left));
    for (const auto& [id, piece] : done.pieces) {
        EXPECT_EQ(trimBounds(piece).left(), in(1));
    }
}

TEST(Aligned, goesByTrimsNotByMats) {
    Sketch start = three();
    pieceOf(start, 3).kind = PieceKind::PhotoSlot;
    pieceOf(start, 3).printSize = pieceOf(start, 3).size;
    pieceOf(start, 3).mats = {Mat{in(1), {}, ""}};
    const Sketch done = after(start, aligned(start, allIds(start), AlignTo::Top));
    EXPECT_EQ(boxOf(done, 3).top(), in(1));
}

TEST(Aligned, leavesALockedPieceAndBringsTheOthersToIt) {
    Sketch start = three();
    pieceOf(start, 1).locked = true;
    const Sketch done = after(start, aligned(start, allIds(start), AlignTo::Left));
    EXPECT_EQ(boxOf(done, 1), boxOf(start, 1));
    EXPECT_EQ(boxOf(done, 3).left(), in(1));
}

TEST(Aligned, isEmptyWithoutPiecesAndWhereAllIsAlignedAlready) {
    const Sketch start = three();
    const PieceId nobody[] = {PieceId{99}};
    EXPECT_TRUE(aligned(start, {}, AlignTo::Left).isEmpty());
    EXPECT_TRUE(aligned(start, nobody, AlignTo::Left).isEmpty());
    const Sketch done = after(start, aligned(start, allIds(start), AlignTo::CentreX));
    EXPECT_TRUE(aligned(done, allIds(done), AlignTo::CentreX).isEmpty());
}

}  // namespace
}  // namespace matwright
