// SPDX-License-Identifier: MIT
#include "core/paperplan/paper_pieces.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/outline/outline.h"

namespace matwright {
namespace {

constexpr Length in(std::int64_t whole) {
    return Length::inches(whole);
}
constexpr Length in(std::int64_t n, std::int64_t d) {
    return Length::inches(0, n, d);
}

Piece mattedPhoto(Size size) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.place = {in(1), in(1)};
    piece.size = size;
    piece.printSize = size;
    piece.name = "beach";
    piece.mats = {{in(1, 4), in(1), "kraft"}};
    return piece;
}

Piece paperPiece(PieceKind kind, Point place, Size size) {
    Piece piece;
    piece.kind = kind;
    piece.place = place;
    piece.size = size;
    piece.name = "wave";
    piece.paper = "dots";
    return piece;
}

PaperPage pageOf(std::vector<Piece> pieces, bool doublePage = false) {
    PaperPage page{"Holiday", blankSketch()};
    page.sketch.page.doublePage = doublePage;
    page.sketch.page.foldGap = doublePage ? in(1, 2) : Length();
    for (Piece& piece : pieces) {
        const PieceId id = nextId(page.sketch);
        page.sketch.order.push_back(id);
        page.sketch.pieces.emplace(id, std::move(piece));
    }
    return page;
}

std::vector<PaperPiece> cutFrom(const PaperPage& page, Length glueEdge = in(1, 2)) {
    return paperPieces(std::span(&page, 1), glueEdge);
}

TEST(PaperPieces, AMatIsAsLargeAsItsBordersSay) {
    const auto found = cutFrom(pageOf({mattedPhoto({in(4), in(6)})}));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].size, (Size{Length::inches(4, 1, 2), Length::inches(7, 1, 4)}));
    EXPECT_EQ(found[0].paper, "kraft");
    EXPECT_EQ(found[0].name, "mat under beach (no. 1)");
    EXPECT_TRUE(found[0].byHand.empty());
    EXPECT_FALSE(found[0].middle);
}

TEST(PaperPieces, AQuarterTurnOnThePageSwapsTheSides) {
    Piece photo = mattedPhoto({in(4), in(6)});
    for (const int quarters : {0, 1, 2, 3}) {
        photo.rotation = Angle::degrees(90 * quarters);
        const auto found = cutFrom(pageOf({photo}));
        const Size unturned{Length::inches(4, 1, 2), Length::inches(7, 1, 4)};
        EXPECT_EQ(found[0].size, quarters % 2 == 0 ? unturned : unturned.turned());
        EXPECT_FALSE(found[0].isAngled);
    }
    photo.rotation = Angle::degrees(7);
    EXPECT_TRUE(cutFrom(pageOf({photo}))[0].isAngled);
    EXPECT_EQ(cutFrom(pageOf({photo}))[0].size.width, Length::inches(4, 1, 2));
}

TEST(PaperPieces, WordsAndOrnamentsAreCutOnlyWhereTheyNameAPaper) {
    std::vector<Piece> pieces;
    for (const PieceKind kind : allPieceKinds) {
        if (kind != PieceKind::PhotoSlot) {
            pieces.push_back(paperPiece(kind, {in(1), in(1)}, {in(2), in(1)}));
            pieces.push_back(pieces.back());
            pieces.back().paper.clear();
        }
    }
    const auto found = cutFrom(pageOf(pieces));
    // Strips and blocks need a paper where they name none.
    EXPECT_EQ(found.size(), 7U);
    EXPECT_EQ(std::ranges::count(found, "", &PaperPiece::paper), 2);
}

TEST(PaperPieces, RoundThingsAreCutByHandOutOfTheirBox) {
    Piece oval = paperPiece(PieceKind::Block, {in(1), in(1)}, {in(3), in(2)});
    oval.shape = OvalShape{};
    const auto found = cutFrom(pageOf({oval}));
    EXPECT_EQ(found[0].size, oval.size);
    EXPECT_NE(found[0].byHand.find("oval"), std::string::npos);
}

TEST(PaperPieces, CirclesAndRoundCornersAreCutByTheirFigures) {
    Piece circle = paperPiece(PieceKind::Block, {in(1), in(1)}, {in(9, 2), in(9, 2)});
    circle.shape = OvalShape{};
    Piece rounded = mattedPhoto({in(4), in(6)});
    rounded.shape = RoundedRectangleShape{in(1, 2)};
    const auto found = cutFrom(pageOf({circle, rounded}));
    EXPECT_NE(found[0].byHand.find("a circle 4 1/2 in across"), std::string::npos);
    EXPECT_NE(found[1].byHand.find("radius 3/4 in"), std::string::npos)
        << "1/2 and a border of 1/4";
}

TEST(PaperPieces, TheMatOfAPointedShapeIsLargeEnoughForItsPoints) {
    Piece star = mattedPhoto({in(4), in(4)});
    star.mats = {{in(1, 4), {}, "kraft"}};
    star.shape = PolygonShape{{{in(2), in(0)}, {in(4), in(4)}, {in(0), in(4)}}};
    const auto found = cutFrom(pageOf({star}));
    const Rect outline = boundsOf(matOutline(star, 0));
    EXPECT_EQ(found[0].size, outline.size());
    EXPECT_GT(found[0].size.width, matBox(star, 0).size().width);
}

TEST(PaperPieces, AStripOverTheFoldIsPartedThereAndTheGapIsNotCut) {
    const Piece strip = paperPiece(PieceKind::Strip, {in(2), in(3)}, {in(20), in(2)});
    const auto found = cutFrom(pageOf({strip}, true));
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].size, (Size{in(10), in(2)}));
    EXPECT_EQ(found[0].side, FoldSide::Left);
    // From 12 1/2 in, where the right page begins, to 22 in.
    EXPECT_EQ(found[1].size, (Size{Length::inches(9, 1, 2), in(2)}));
    EXPECT_EQ(found[1].side, FoldSide::Right);
    EXPECT_NE(found[0].name, found[1].name);
    EXPECT_FALSE(found[0].remark.empty());
}

TEST(PaperPieces, AStripTurnedByAQuarterIsPartedAsItLiesOnThePage) {
    Piece strip = paperPiece(PieceKind::Strip, {in(11), in(-4)}, {in(2), in(20)});
    strip.rotation = Angle::degrees(90);  // lies from x = 2 in to 22 in
    const auto found = cutFrom(pageOf({strip}, true));
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].size, (Size{in(10), in(2)}));
    EXPECT_EQ(found[1].size, (Size{Length::inches(9, 1, 2), in(2)}));
}

TEST(PaperPieces, WhatTouchesTheFoldIsNotParted) {
    const Piece left = paperPiece(PieceKind::Strip, {in(2), in(3)}, {in(10), in(2)});
    const Piece right =
        paperPiece(PieceKind::Strip, {Length::inches(12, 1, 2), in(3)}, {in(10), in(2)});
    for (const PaperPiece& piece : cutFrom(pageOf({left, right}, true))) {
        EXPECT_EQ(piece.side, FoldSide::Whole);
        EXPECT_EQ(piece.size, left.size);
        EXPECT_TRUE(piece.remark.empty());
    }
    Piece angled = paperPiece(PieceKind::Strip, {in(2), in(3)}, {in(20), in(2)});
    angled.rotation = Angle::degrees(3);
    const auto found = cutFrom(pageOf({angled}, true));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_NE(found[0].remark.find("fold"), std::string::npos);
}

// The pages end at 12 in and begin at 12 1/2 in.
TEST(PaperPieces, WhatReachesOnlyIntoTheFoldGapIsCutAtItsPagesEdge) {
    const Piece fromLeft =
        paperPiece(PieceKind::Strip, {in(2), in(3)}, {Length::inches(10, 1, 2), in(2)});
    const Piece fromRight =
        paperPiece(PieceKind::Strip, {Length::inches(12, 1, 4), in(3)}, {in(4), in(2)});
    Piece turned = paperPiece(PieceKind::Strip, {in(7), in(1)}, {in(2), Length::inches(8, 1, 2)});
    turned.rotation = Angle::degrees(90);  // lies from x = 3 3/4 in to 12 1/4 in
    const auto found = cutFrom(pageOf({fromLeft, fromRight, turned}, true));
    ASSERT_EQ(found.size(), 3U);
    EXPECT_EQ(found[0].size, (Size{in(10), in(2)}));
    EXPECT_EQ(found[1].size, (Size{Length::inches(3, 3, 4), in(2)}));
    EXPECT_EQ(found[2].size, (Size{Length::inches(8, 1, 4), in(2)}));
    for (const PaperPiece& piece : found) {
        EXPECT_EQ(piece.side, FoldSide::Whole);
        EXPECT_NE(piece.remark.find("at the page's edge"), std::string::npos) << piece.remark;
    }
}

TEST(PaperPieces, WhatCannotBeCutAtTheFoldGapIsCutInOnePieceAndSaysSo) {
    Piece oval = paperPiece(PieceKind::Block, {in(2), in(3)}, {Length::inches(10, 1, 4), in(2)});
    oval.shape = OvalShape{};
    const Piece within =
        paperPiece(PieceKind::Strip, {Length::inches(12, 1, 8), in(3)}, {in(1, 4), in(2)});
    const auto found = cutFrom(pageOf({oval, within}, true));
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].size, oval.size);
    EXPECT_NE(found[0].remark.find("by hand"), std::string::npos);
    EXPECT_EQ(found[1].size, within.size);
    EXPECT_NE(found[1].remark.find("on neither page"), std::string::npos);
}

TEST(PaperPieces, TheMiddleOfAGuttedMatIsWhatThePhotoHidesLessTheGlueEdge) {
    Piece photo = mattedPhoto({in(4), in(6)});
    photo.mats[0].gutted = true;
    const auto found = cutFrom(pageOf({photo}));
    // The photo begins 1/4 in inside the mat; 1/2 in of glue edge more.
    EXPECT_EQ(found[0].middle, Rect::at({in(3, 4), in(3, 4)}, {in(3), in(5)}));
    EXPECT_EQ(cutFrom(pageOf({photo}), {})[0].middle,
              Rect::at({in(1, 4), in(1, 4)}, {in(4), in(6)}));
}

TEST(PaperPieces, TheMiddleTurnsWithItsMat) {
    Piece photo = mattedPhoto({in(4), in(6)});  // mat 4 1/2 x 7 1/4, the broad border at the bottom
    photo.mats[0].gutted = true;
    photo.rotation = Angle::degrees(90);  // clockwise: the bottom comes to the left
    EXPECT_EQ(cutFrom(pageOf({photo}))[0].middle,
              Rect::at({Length::inches(1, 1, 2), in(3, 4)}, {in(5), in(3)}));
    photo.rotation = Angle::degrees(180);
    EXPECT_EQ(cutFrom(pageOf({photo}))[0].middle,
              Rect::at({in(3, 4), Length::inches(1, 1, 2)}, {in(3), in(5)}));
    photo.rotation = Angle::degrees(270);
    EXPECT_EQ(cutFrom(pageOf({photo}))[0].middle, Rect::at({in(3, 4), in(3, 4)}, {in(5), in(3)}));
}

TEST(PaperPieces, OfTwoMatsTheOuterOneIsHiddenByTheInner) {
    Piece photo = mattedPhoto({in(4), in(6)});
    photo.mats = {{in(1, 4), {}, "white", true}, {in(1, 2), {}, "kraft", true}};
    const auto found = cutFrom(pageOf({photo}));
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].name, "outer mat under beach (no. 1)");
    EXPECT_EQ(found[0].middle,
              Rect::at({in(1), in(1)}, {Length::inches(3, 1, 2), Length::inches(5, 1, 2)}));
    EXPECT_EQ(found[1].name, "inner mat under beach (no. 1)");
    EXPECT_EQ(found[1].middle, Rect::at({in(3, 4), in(3, 4)}, {in(3), in(5)}));
}

TEST(PaperPieces, NoMiddleWhereNothingIsLeftOrTheShapeIsRound) {
    Piece photo = mattedPhoto({in(3, 2), in(6)});
    photo.mats[0].gutted = true;
    EXPECT_TRUE(cutFrom(pageOf({photo}))[0].middle);  // 1/2 in is left
    EXPECT_EQ(cutFrom(pageOf({photo}))[0].noMiddle, "");
    photo.size.width -= Length::fromTicks(1);
    EXPECT_FALSE(cutFrom(pageOf({photo}))[0].middle);
    EXPECT_NE(cutFrom(pageOf({photo}))[0].noMiddle.find("too small"), std::string::npos);
    photo.size = {in(4), in(6)};
    photo.shape = OvalShape{};
    EXPECT_FALSE(cutFrom(pageOf({photo}))[0].middle);
    photo.mats[0].gutted = false;  // said before it is switched on
    EXPECT_NE(cutFrom(pageOf({photo}))[0].noMiddle.find("Only of a rectangle"), std::string::npos);
}

}  // namespace
}  // namespace matwright
