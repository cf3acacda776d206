// SPDX-License-Identifier: MIT
#include "core/library/facts.h"

#include <gtest/gtest.h>

#include "core/sketch/edit.h"

namespace matwright {
namespace {

constexpr Length in(std::int64_t whole) {
    return Length::inches(whole);
}

void add(Sketch& sketch, const Piece& piece) {
    const PieceId id = nextId(sketch);
    sketch.pieces.emplace(id, piece);
    sketch.order.push_back(id);
}

Piece photo(Size trim, std::optional<Size> print = {}, std::int64_t millidegrees = 0) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.size = trim;
    piece.printSize = print;
    piece.rotation = Angle::millidegrees(millidegrees);
    return piece;
}

Piece ofKind(PieceKind kind) {
    Piece piece;
    piece.kind = kind;
    piece.size = {in(3), in(1)};
    return piece;
}

TEST(Facts, OfABlankSketchAreItsPageAlone) {
    SketchFacts expected;
    expected.pageSize = {in(12), in(12)};
    EXPECT_EQ(factsOf(blankSketch()), expected);
}

TEST(Facts, NameNotePageAndDoublePageAreThoseOfTheSketch) {
    Sketch sketch;
    sketch.name = "A day out";
    sketch.note = "two\nlines";
    sketch.page.size = {in(11), Length::inches(8, 1, 2)};
    sketch.page.doublePage = true;
    const SketchFacts facts = factsOf(sketch);
    EXPECT_EQ(facts.name, "A day out");
    EXPECT_EQ(facts.note, "two\nlines");
    EXPECT_EQ(facts.pageSize, (Size{in(11), Length::inches(8, 1, 2)}));
    EXPECT_TRUE(facts.doublePage);
}

TEST(Facts, CountEachKindOfPlaceAndNoOther) {
    Sketch sketch;
    for (const PieceKind kind : allPieceKinds) {
        add(sketch, ofKind(kind));
    }
    add(sketch, ofKind(PieceKind::Title));
    add(sketch, ofKind(PieceKind::Journaling));
    add(sketch, ofKind(PieceKind::Journaling));
    const SketchFacts facts = factsOf(sketch);
    EXPECT_EQ(facts.photos, 1);
    EXPECT_EQ(facts.titles, 2);
    EXPECT_EQ(facts.journalings, 3);
}

TEST(Facts, UprightAndLyingGoByTheTrimAsItLiesOnThePage) {
    const Size tall{in(4), in(6)};
    const struct {
        Size trim;
        std::int64_t millidegrees;
        int upright, lying, square;
    } cases[] = {
        {tall, 0, 1, 0, 0},
        {tall.turned(), 0, 0, 1, 0},
        {{in(4), in(4)}, 0, 0, 0, 1},
        {tall, 45'000, 1, 0, 0},
        {tall, 45'001, 0, 1, 0},
        {tall, 90'000, 0, 1, 0},
        {tall, 134'999, 0, 1, 0},
        {tall, 135'000, 1, 0, 0},
        {tall, 180'000, 1, 0, 0},
        {tall, 225'001, 0, 1, 0},
        {tall, 270'000, 0, 1, 0},
        {tall, 315'000, 1, 0, 0},
        {{in(4), in(4)}, 90'000, 0, 0, 1},
        {{in(4), in(4) + Length::fromTicks(1)}, 0, 1, 0, 0},
    };
    for (const auto& one : cases) {
        Sketch sketch;
        add(sketch, photo(one.trim, {}, one.millidegrees));
        const SketchFacts facts = factsOf(sketch);
        EXPECT_EQ(facts.uprightPhotos, one.upright) << one.millidegrees;
        EXPECT_EQ(facts.lyingPhotos, one.lying) << one.millidegrees;
        EXPECT_EQ(facts.squarePhotos, one.square) << one.millidegrees;
    }
}

TEST(Facts, PrintsAreCountedEitherWayUpFromSmallToLarge) {
    Sketch sketch;
    add(sketch, photo({in(5), in(3)}, Size{in(6), in(4)}));
    add(sketch, photo({in(3), in(3)}));
    add(sketch, photo({in(4), in(6)}, Size{in(4), in(6)}));
    add(sketch, photo({in(2), in(2)}, Size{in(3), in(4)}));
    const std::vector<PrintNeed> expected{
        {{in(3), in(3)}, 1}, {{in(3), in(4)}, 1}, {{in(4), in(6)}, 2}};
    EXPECT_EQ(factsOf(sketch).prints, expected);
}

TEST(Facts, PrintsOfOneAreaAreOrderedByTheShortSide) {
    EXPECT_TRUE(isSmallerPrint({in(2), in(6)}, {in(3), in(4)}));
    EXPECT_FALSE(isSmallerPrint({in(3), in(4)}, {in(2), in(6)}));
    EXPECT_FALSE(isSmallerPrint({in(3), in(4)}, {in(3), in(4)}));
}

}  // namespace
}  // namespace matwright
