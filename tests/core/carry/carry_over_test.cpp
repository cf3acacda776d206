// SPDX-License-Identifier: MIT
#include "core/carry/carry_over.h"

#include <gtest/gtest.h>

#include "core/measure/catalogue.h"
#include "tests/support/example_sketches.h"

namespace matwright {
namespace {

using namespace test;

constexpr Length in(std::int64_t whole, std::int64_t sixteenths = 0) {
    return Length::inches(whole, sixteenths, 16);
}

PageSetup page(const char* id) {
    return onPageSize(PageSetup{}, findPageSize(id)->size);
}

Piece photo(Point place, Size print) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.place = place;
    piece.size = print;
    piece.printSize = print;
    return piece;
}

Piece other(PieceKind kind, Rect box) {
    Piece piece;
    piece.kind = kind;
    piece.place = box.topLeft();
    piece.size = box.size();
    return piece;
}

// On 12x12 with 1/2 in margins and a 1/4 in gutter.
Sketch sketchOf(const std::vector<Piece>& pieces) {
    Sketch sketch;
    for (const Piece& piece : pieces) {
        const PieceId id = nextId(sketch);
        sketch.order.push_back(id);
        sketch.pieces.emplace(id, piece);
    }
    return sketch;
}

const Piece& pieceOf(const CarriedOver& carried, std::uint32_t id) {
    return carried.sketch.pieces.at(PieceId{id});
}

std::string toldBy(const CarriedOver& carried) {
    std::string text;
    for (const std::string& sentence : carried.gaveWay) {
        text += sentence + "\n";
    }
    return text;
}

TEST(OnPageSize, keepsMarginsUnlessTheyLeaveTooLittle) {
    PageSetup setup;
    setup.doublePage = true;
    setup.foldGap = in(0, 8);
    const PageSetup smaller = onPageSize(setup, {in(6), in(8)});
    EXPECT_EQ(smaller.margins, setup.margins);
    EXPECT_EQ(smaller.gutter, setup.gutter);
    EXPECT_TRUE(smaller.doublePage);
    EXPECT_EQ(smaller.foldGap, in(0, 8));
    setup.margins = Margins::all(in(4));
    EXPECT_EQ(onPageSize(setup, {in(8), in(12)}).margins, (Margins{in(3), in(4), in(3), in(4)}));
}

TEST(CarryOver, theSamePageGivesAnEqualSketch) {
    for (const ExampleSketch& example : exampleSketches()) {
        const CarriedOver same = carriedOver(example.sketch, example.sketch.page);
        EXPECT_EQ(same.sketch, example.sketch);
        EXPECT_TRUE(same.gaveWay.empty());
    }
}

TEST(CarryOver, aStripFromEdgeToEdgeGoesFromEdgeToEdge) {
    const Sketch start = sketchOf({other(PieceKind::Strip, {{in(0), in(12)}, {in(5), in(6)}})});
    const CarriedOver done = carriedOver(start, page("8.5x11"));
    EXPECT_EQ(trimBox(pieceOf(done, 1)).x, (Interval{in(0), in(8, 8)}));
    EXPECT_EQ(toldBy(done), "");
}

TEST(CarryOver, marginsAndGuttersStayWhatTheyAre) {
    // A focal photo and words beside it fill the width between the margins.
    const Sketch start =
        sketchOf({photo({in(0, 8), in(0, 8)}, {in(4), in(6)}),
                  other(PieceKind::Journaling, {{in(4, 12), in(11, 8)}, {in(0, 8), in(6, 8)}})});
    const CarriedOver done = carriedOver(start, page("9x12"));
    EXPECT_EQ(pieceOf(done, 1).size, (Size{in(4), in(6)}));
    EXPECT_EQ(trimBox(pieceOf(done, 1)).left(), in(0, 8));
    EXPECT_EQ(trimBox(pieceOf(done, 2)).x, (Interval{in(4, 12), in(8, 8)}));
    EXPECT_EQ(toldBy(done), "");
    EXPECT_EQ(carriedOver(done.sketch, start.page).sketch, start);
}

TEST(CarryOver, photosGetRealPrintsAndItIsTold) {
    Sketch start = sketchOf({photo({in(0, 8), in(0, 8)}, {in(5), in(5)}),
                             photo({in(5, 12), in(0, 8)}, {in(5), in(5)})});
    const CarriedOver done = carriedOver(start, page("6x8"));
    for (const std::uint32_t id : {1U, 2U}) {
        const Piece& piece = pieceOf(done, id);
        EXPECT_NE(printSizeOf(*piece.printSize), nullptr);
        EXPECT_TRUE(piece.printSize->contains(piece.size));
    }
    EXPECT_EQ(trimBox(pieceOf(done, 2)).left() - trimBox(pieceOf(done, 1)).right(), in(0, 4));
    EXPECT_EQ(trimBox(pieceOf(done, 1)).top(), trimBox(pieceOf(done, 2)).top());
    EXPECT_TRUE(toldBy(done).contains("Pieces 1 and 2 are printed")) << toldBy(done);
    EXPECT_TRUE(toldBy(done).contains("not 5 × 5 in")) << toldBy(done);
}

TEST(CarryOver, aRowOfPrintsFromMarginToMarginFillsTheNewWidthInEqualParts) {
    std::vector<Piece> row;
    for (int i = 0; i < 3; ++i) {
        row.push_back(photo({in(0, 8) + i * in(3, 12), in(1)}, {in(3, 8), in(5)}));
    }
    const CarriedOver done = carriedOver(sketchOf(row), page("8.5x11"));
    EXPECT_EQ(trimBox(pieceOf(done, 1)).left(), in(0, 8));
    EXPECT_EQ(trimBox(pieceOf(done, 3)).right(), in(8));
    for (const std::uint32_t id : {1U, 2U, 3U}) {
        // 7 in for three: 2 5/16 or 2 3/8, so that a trimmer shows it.
        EXPECT_TRUE(pieceOf(done, id).size.width.isMultipleOf(in(0, 1)));
        EXPECT_LE(abs(pieceOf(done, id).size.width - in(2, 5)), in(0, 1));
        EXPECT_EQ(pieceOf(done, id).size.height, pieceOf(done, 1).size.height);
    }
}

TEST(CarryOver, whatIsCentredStaysCentredAndRoundStaysRound) {
    Piece ornament = other(PieceKind::Embellishment, {{in(5), in(7)}, {in(2), in(4)}});
    ornament.shape = OvalShape{};
    const CarriedOver done = carriedOver(sketchOf({ornament}), page("6x8"));
    const Rect box = trimBox(pieceOf(done, 1));
    EXPECT_EQ(box.left() + box.right(), in(6));
    EXPECT_EQ(box.size().width, box.size().height);
}

TEST(CarryOver, matsKeepTheirBordersAndADeepBottomItsDepth) {
    Sketch start = sketchOf({photo({in(1), in(1)}, {in(4), in(6)})});
    start.pieces.at(PieceId{1}).mats = {{in(0, 2), in(0, 12), "white"}, {in(0, 4), {}, "kraft"}};
    const CarriedOver done = carriedOver(start, page("8x8"));
    EXPECT_EQ(pieceOf(done, 1).mats, start.pieces.at(PieceId{1}).mats);
}

TEST(CarryOver, aPrintThatIsNotInTheCatalogueStaysAndIsTold) {
    const Sketch start = sketchOf({photo({in(1), in(1)}, {in(3, 3), in(4, 5)})});
    const CarriedOver done = carriedOver(start, page("9x12"));
    EXPECT_EQ(pieceOf(done, 1).printSize, (Size{in(3, 3), in(4, 5)}));
    EXPECT_TRUE(toldBy(done).contains("no usual size")) << toldBy(done);
}

// On 9x12: a strip from edge to edge, a block in the middle and a photo that is cut.
Sketch measuredInInches() {
    Piece cut = photo({in(1), in(5, 11)}, {in(4), in(6)});
    cut.size = {in(3, 7), in(5, 3)};
    Sketch sketch = sketchOf({other(PieceKind::Strip, {{in(0), in(9)}, {in(4, 3), in(5, 3)}}),
                              other(PieceKind::Block, {{in(1), in(8)}, {in(1), in(3, 9)}}), cut});
    sketch.page = page("9x12");
    return sketch;
}

// All but the strip's width, which is the page's.
void expectSidesOn(const CarriedOver& carried, Length step) {
    EXPECT_TRUE(pieceOf(carried, 1).size.height.isMultipleOf(step));
    for (const std::uint32_t id : {2U, 3U}) {
        EXPECT_TRUE(pieceOf(carried, id).size.width.isMultipleOf(step)) << id;
        EXPECT_TRUE(pieceOf(carried, id).size.height.isMultipleOf(step)) << id;
    }
}

TEST(CarryOver, sidesGoOntoTheStepOfThePageTheyAreCarriedTo) {
    const CarriedOver metric = carriedOver(measuredInInches(), page("a4"));
    expectSidesOn(metric, Length::millimetres(1));
    EXPECT_TRUE(toldBy(metric).contains("is trimmed to 87 × 132 mm")) << toldBy(metric);
    expectSidesOn(carriedOver(metric.sketch, page("8.5x11")), in(0, 1));
    // Between pages of one kind the sketch keeps its own measure.
    expectSidesOn(carriedOver(measuredInInches(), page("8.5x11")), in(0, 1));
    expectSidesOn(carriedOver(metric.sketch, page("a4-lying")), Length::millimetres(1));
}

TEST(CarryOver, theTrimmersStepIsTheLastWord) {
    expectSidesOn(carriedOver(measuredInInches(), page("8.5x11"), Length::millimetres(1)),
                  Length::millimetres(1));
    expectSidesOn(carriedOver(measuredInInches(), page("8.5x11"), in(0, 2)), in(0, 2));
    const CarriedOver sixteenths = carriedOver(measuredInInches(), page("a4"), in(0, 1));
    expectSidesOn(sixteenths, in(0, 1));
    EXPECT_EQ(pieceOf(sixteenths, 3).size, (Size{in(3, 7), in(5, 3)}));
}

TEST(CarryOver, anglesAndTextsAndLocksStay) {
    const Sketch start = exampleSketches().back().sketch;
    const CarriedOver done = carriedOver(start, page("8x8"));
    for (const auto& [id, piece] : start.pieces) {
        const Piece& now = done.sketch.pieces.at(id);
        EXPECT_EQ(now.rotation, piece.rotation);
        EXPECT_EQ(now.name, piece.name);
        EXPECT_EQ(now.shape.index(), piece.shape.index());
    }
    EXPECT_EQ(done.sketch.order, start.order);
}

TEST(CarryOver, aSinglePageGoesToTheLeftOneOfTwo) {
    const Sketch start = sketchOf({other(PieceKind::Strip, {{in(0), in(12)}, {in(5), in(6)}})});
    PageSetup target;
    target.doublePage = true;
    target.foldGap = in(0, 8);
    const CarriedOver done = carriedOver(start, target);
    EXPECT_EQ(trimBox(pieceOf(done, 1)).x, (Interval{in(0), in(12)}));
}

TEST(CarryOver, aDoublePageIsSqueezedOntoASingleOneWithItsOuterEdges) {
    Sketch start = sketchOf({other(PieceKind::Strip, {{in(0), in(24)}, {in(5), in(6)}}),
                             photo({in(0, 8), in(7)}, {in(4), in(4)}),
                             photo({in(19, 8), in(7)}, {in(4), in(4)})});
    start.page.doublePage = true;
    const CarriedOver done = carriedOver(start, PageSetup{});
    EXPECT_EQ(trimBox(pieceOf(done, 1)).x, (Interval{in(0), in(12)}));
    EXPECT_EQ(trimBox(pieceOf(done, 2)).left(), in(0, 8));
    EXPECT_EQ(trimBox(pieceOf(done, 3)).right(), in(11, 8));
}

TEST(CarryOver, aCrowdIsScaledOnThePageAndSaysSo) {
    std::vector<Piece> crowd;
    for (int i = 0; i < 400; ++i) {
        crowd.push_back(other(PieceKind::Block, Rect::at({i % 20 * in(0, 9), i / 20 * in(0, 9)},
                                                         {in(0, 8), in(0, 8)})));
    }
    const CarriedOver done = carriedOver(sketchOf(crowd), page("6x8"));
    for (const auto& [id, piece] : done.sketch.pieces) {
        EXPECT_TRUE(surface(done.sketch.page).contains(outermostBox(piece)));
    }
    EXPECT_TRUE(toldBy(done).contains("only scaled"));
}

TEST(CarryOver, thereIsNothingToCarryOnAnEmptyPage) {
    const CarriedOver done = carriedOver(Sketch{}, page("a4"));
    EXPECT_EQ(done.sketch.page, page("a4"));
    EXPECT_TRUE(done.gaveWay.empty());
}

}  // namespace
}  // namespace matwright
