// SPDX-License-Identifier: MIT
#include "core/family/family.h"

#include <gtest/gtest.h>

#include <functional>

#include "core/carry/turned_sketch.h"
#include "tests/support/example_sketches.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

using namespace test;

constexpr Length in(std::int64_t whole, std::int64_t sixteenths = 0) {
    return Length::inches(whole, sixteenths, 16);
}

Sketch withPieces(std::vector<Piece> pieces) {
    Sketch sketch;
    for (Piece& piece : pieces) {
        const PieceId id = nextId(sketch);
        sketch.order.push_back(id);
        sketch.pieces.emplace(id, std::move(piece));
    }
    return sketch;
}

Piece block(Point place, Size size) {
    Piece piece;
    piece.place = place;
    piece.size = size;
    return piece;
}

Sketch twoBlocks() {
    return withPieces(
        {block({in(1), in(1)}, {in(4), in(2)}), block({in(6), in(7)}, {in(3), in(3)})});
}

Sketch changed(const Sketch& sketch, std::uint32_t id, const std::function<void(Piece&)>& change) {
    Sketch result = sketch;
    change(result.pieces.at(PieceId{id}));
    return result;
}

TEST(SameFamily, aSketchIsOfItsOwnFamilyAndSoIsAnEmptyOne) {
    EXPECT_TRUE(isSameFamily(twoBlocks(), twoBlocks()));
    EXPECT_TRUE(isSameFamily(Sketch{}, Sketch{}));
    EXPECT_FALSE(isSameFamily(Sketch{}, twoBlocks()));
}

TEST(SameFamily, placesMayShiftByAQuarterInchAndNoTickMore) {
    const Length step = familyPlaceTolerance;
    const auto shifted = [&](Length by) {
        return changed(twoBlocks(), 1, [&](Piece& p) { p.place.x += by; });
    };
    EXPECT_TRUE(isSameFamily(twoBlocks(), shifted(step)));
    EXPECT_TRUE(isSameFamily(twoBlocks(), shifted(-step)));
    EXPECT_FALSE(isSameFamily(twoBlocks(), shifted(step + Length::fromTicks(1))));
    EXPECT_FALSE(isSameFamily(twoBlocks(), shifted(-step - Length::fromTicks(1))));
}

TEST(SameFamily, sizesMayDifferByAnEighthAndNoTickMore) {
    const auto wider = [&](Length by) {
        return changed(twoBlocks(), 2, [&](Piece& p) { p.size.width += by; });
    };
    EXPECT_TRUE(isSameFamily(twoBlocks(), wider(familySizeTolerance)));
    EXPECT_FALSE(isSameFamily(twoBlocks(), wider(familySizeTolerance + Length::fromTicks(1))));
}

TEST(SameFamily, anglesMayDifferByTwoDegreesAcrossZeroToo) {
    const auto at = [&](std::int64_t millidegrees) {
        return changed(twoBlocks(), 1,
                       [&](Piece& p) { p.rotation = Angle::millidegrees(millidegrees); });
    };
    EXPECT_TRUE(isSameFamily(at(-1000), at(1000)));
    EXPECT_FALSE(isSameFamily(at(-1000), at(1001)));
}

TEST(SameFamily, kindPrintMatsAndShapeCount) {
    const Sketch start = twoBlocks();
    EXPECT_FALSE(
        isSameFamily(start, changed(start, 1, [](Piece& p) { p.kind = PieceKind::Journaling; })));
    EXPECT_FALSE(isSameFamily(start, changed(start, 1, [](Piece& p) { p.shape = OvalShape{}; })));
    const Sketch photo = changed(start, 1, [](Piece& p) {
        p.kind = PieceKind::PhotoSlot;
        p.printSize = p.size;
    });
    EXPECT_FALSE(
        isSameFamily(photo, changed(photo, 1, [](Piece& p) { p.printSize = Size{in(4), in(3)}; })));
    EXPECT_FALSE(
        isSameFamily(photo, changed(photo, 1, [](Piece& p) { p.mats = {{in(0, 2), {}, ""}}; })));
}

TEST(SameFamily, namesNotesPapersLocksAndOrderDoNot) {
    Sketch other = twoBlocks();
    other.name = "n";
    other.note = "n";
    other.page.gutter = in(1);
    other.pieces.at(PieceId{1}).paper = "p";
    other.pieces.at(PieceId{1}).locked = true;
    std::swap(other.order[0], other.order[1]);
    std::swap(other.pieces.at(PieceId{1}), other.pieces.at(PieceId{2}));
    EXPECT_TRUE(isSameFamily(twoBlocks(), other));
}

TEST(SameFamily, quarterTurnsCountBetweenAPageSizeAndTheSameTurned) {
    Sketch upright = twoBlocks();
    upright.page.size = {in(8, 8), in(11)};
    const Sketch lying = *turned(upright, WholeTurn::QuarterClockwise);
    EXPECT_TRUE(isSameFamily(upright, lying));
    Sketch otherPage = lying;
    otherPage.page.size = upright.page.size;
    EXPECT_FALSE(isSameFamily(upright, otherPage));
}

TEST(SameFamily, aPolygonCountsByItsCornersWhereverTheyBegin) {
    const auto triangle = [](std::vector<Point> corners) {
        return changed(twoBlocks(), 2,
                       [&](Piece& p) { p.shape = PolygonShape{std::move(corners)}; });
    };
    const Sketch start = triangle({{in(0), in(0)}, {in(3), in(1)}, {in(1), in(3)}});
    EXPECT_TRUE(isSameFamily(start, triangle({{in(1), in(3)}, {in(3), in(1)}, {in(0), in(0)}})));
    EXPECT_FALSE(isSameFamily(start, triangle({{in(0), in(0)}, {in(3), in(1)}, {in(2), in(3)}})));
}

// Greedy pairing would give the first piece the second one's only partner.
TEST(SameFamily, piecesThatLieCloseTogetherArePairedRightly) {
    const auto at = [](Length a, Length b) {
        return withPieces({block({a, in(1)}, {in(2), in(2)}), block({b, in(1)}, {in(2), in(2)})});
    };
    EXPECT_TRUE(isSameFamily(at(in(2), in(2, 4)), at(in(2, 4), in(2, 8))));
    EXPECT_FALSE(isSameFamily(at(in(2), in(2, 4)), at(in(2, 5), in(2, 8))));
}

TEST(SameFamily, everyTurnOfARandomSketchIsOfItsFamilyBothWays) {
    Random random(91);
    for (int i = 0; i < 300; ++i) {
        const Sketch sketch = randomSketch(random, 7);
        for (const WholeTurn turn : allWholeTurns) {
            const auto other = turned(sketch, turn);
            if (other) {
                EXPECT_TRUE(isSameFamily(sketch, *other)) << "seed 91, sketch " << i;
                EXPECT_TRUE(isSameFamily(*other, sketch)) << "seed 91, sketch " << i;
            }
        }
    }
}

TEST(Families, areNumberedInOrderOfTheirFirstMembersAndLonersGetNone) {
    const FamilyTraits a = familyTraits(twoBlocks());
    const FamilyTraits b = familyTraits(exampleSketches()[0].sketch);
    const FamilyTraits turnedA =
        familyTraits(*turned(twoBlocks(), WholeTurn::QuarterCounterClockwise));
    const FamilyTraits turnedB =
        familyTraits(*turned(exampleSketches()[0].sketch, WholeTurn::MirroredTopBottom));
    const std::vector<FamilyTraits> all{familyTraits(Sketch{}), b, a, turnedA, turnedB};
    EXPECT_EQ(familiesOf(all), (std::vector<int>{0, 1, 2, 2, 1}));
    EXPECT_EQ(familiesOf({}), std::vector<int>{});
}

TEST(Families, aChainOfTinyShiftsIsOneFamily) {
    std::vector<FamilyTraits> chain;
    for (int i = 0; i < 5; ++i) {
        chain.push_back(familyTraits(
            changed(twoBlocks(), 1, [&](Piece& p) { p.place.x += i * familyPlaceTolerance; })));
    }
    EXPECT_FALSE(isSameFamily(chain.front(), chain.back()));
    EXPECT_EQ(familiesOf(chain), std::vector<int>(5, 1));
}

}  // namespace
}  // namespace matwright
