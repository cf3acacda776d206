// SPDX-License-Identifier: MIT
#include "app/panels/piece_changes.h"

#include <algorithm>

#include "core/measure/catalogue.h"
#include "core/sketch/soundness.h"
#include "tests/app/panels/panel_bench.h"
#include "tests/support/random_sketch.h"

namespace matwright::app {
namespace {

Piece slot(Size print, Size trim) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.place = {inches(1), inches(2)};
    piece.printSize = print;
    piece.size = trim;
    return piece;
}

TEST(WithPrint, BringsAnUntrimmedSlotToThePrintAndKeepsATrimThatFits) {
    const struct {
        Size before, trim, print, after;
    } rows[] = {
        {inchSize(4, 6), inchSize(4, 6), inchSize(5, 7), inchSize(5, 7)},  // untrimmed
        {inchSize(4, 6), inchSize(3, 3), inchSize(3, 4), inchSize(3, 3)},  // trimmed, fits
        {inchSize(4, 6), inchSize(3, 3), inchSize(2, 2), inchSize(2, 2)},  // trimmed, too large
        {inchSize(4, 6), inchSize(4, 5), inchSize(4, 5), inchSize(4, 5)},  // fits exactly
    };
    for (const auto& row : rows) {
        const Piece after = withPrint(slot(row.before, row.trim), row.print);
        EXPECT_EQ(after.printSize, row.print);
        EXPECT_EQ(after.size, row.after) << printName(row.print).toStdString();
        EXPECT_EQ(after.place, (Point{inches(1), inches(2)}));
    }
}

TEST(WithPrint, LeavesOtherKindsAlone) {
    Piece block = slot(inchSize(4, 6), inchSize(4, 6));
    block.kind = PieceKind::Block;
    block.printSize.reset();
    EXPECT_EQ(withPrint(block, inchSize(3, 4)), block);
}

TEST(WithTrim, KeepsAPrintThatHoldsTheTrimAndFindsALargerOneElse) {
    const Piece before = slot(inchSize(4, 6), inchSize(4, 6));
    EXPECT_EQ(withTrim(before, inchSize(3, 3)).printSize, inchSize(4, 6));
    EXPECT_EQ(withTrim(before, inchSize(4, 6)).printSize, inchSize(4, 6));
    const Piece larger = withTrim(before, inchSize(5, 6));
    EXPECT_EQ(larger.size, inchSize(5, 6));
    EXPECT_TRUE(larger.printSize->contains(larger.size));
}

TEST(WithWidth, KeepsTheRatioToTheTickWhenAsked) {
    const Piece before = slot(inchSize(4, 6), inchSize(4, 6));
    EXPECT_EQ(withWidth(before, inches(3), false).size, inchSize(3, 6));
    EXPECT_EQ(withWidth(before, inches(3), true).size, (Size{inches(3), inches(4, 1, 2)}));
    EXPECT_EQ(withHeight(before, inches(3), true).size, inchSize(2, 3));
}

TEST(CommonTrims, StartWithTheWholePrintFitInItAndRepeatNothing) {
    for (const NamedSize& known : printSizes()) {
        for (const Size print : {known.size, known.size.turned()}) {
            const std::vector<Size> trims = commonTrims(print);
            ASSERT_FALSE(trims.empty());
            EXPECT_EQ(trims.front(), print);
            for (const Size trim : trims) {
                EXPECT_TRUE(print.contains(trim)) << known.id;
                EXPECT_EQ(std::ranges::count(trims, trim), 1) << known.id;
            }
        }
    }
}

// Common practice, no source: a 3x4 print is often trimmed to 3x3 or 2 1/2 x 2 1/2.
TEST(CommonTrims, HoldTheUsualTrimsOfA3x4Print) {
    const std::vector<Size> trims = commonTrims(inchSize(3, 4));
    const Size half = {inches(2, 1, 2), inches(2, 1, 2)};
    EXPECT_NE(std::ranges::find(trims, inchSize(3, 3)), trims.end());
    EXPECT_NE(std::ranges::find(trims, half), trims.end());
}

TEST(BeginningShape, IsSoundInEveryBoxOfARandomSketch) {
    constexpr std::uint64_t seed = 20240611;
    test::Random random(seed);
    for (int i = 0; i < 300; ++i) {
        Piece piece = test::randomPiece(random);
        for (const ShapeKind kind :
             {ShapeKind::Rectangle, ShapeKind::Rounded, ShapeKind::Oval, ShapeKind::Polygon}) {
            piece.shape = beginningShape(kind, piece.size);
            EXPECT_EQ(shapeKindOf(piece.shape), kind);
            EXPECT_FALSE(findFault(piece)) << "seed " << seed << ", piece " << i;
        }
    }
}

TEST(BeginningShape, IsSoundInTheSmallestBox) {
    Piece piece;
    piece.size = {inches(0, 1, 64), inches(0, 1, 64)};
    for (const ShapeKind kind : {ShapeKind::Rounded, ShapeKind::Polygon}) {
        piece.shape = beginningShape(kind, piece.size);
        EXPECT_FALSE(findFault(piece));
    }
}

TEST(PrintName, SaysCentimetresWhereTheCatalogueDoes) {
    EXPECT_EQ(printName(inchSize(4, 6)), QStringLiteral("4 × 6 in"));
    EXPECT_EQ(printName(findPrintSize("10x15cm")->size), QStringLiteral("10 × 15 cm"));
    EXPECT_EQ(printName(findPrintSize("13x18cm")->size.turned()), QStringLiteral("18 × 13 cm"));
    EXPECT_EQ(printName(findPrintSize("3.5x5")->size), QStringLiteral("3 1/2 × 5 in"));
}

TEST(WithOneMoreMat, StopsAtTheMostAPhotoSlotMayHave) {
    Piece piece = slot(inchSize(4, 6), inchSize(4, 6));
    for (std::size_t i = 1; i <= maxMats + 1; ++i) {
        piece = withOneMoreMat(piece);
        EXPECT_EQ(piece.mats.size(), std::min(i, maxMats));
    }
}

}  // namespace
}  // namespace matwright::app
