// SPDX-License-Identifier: MIT
#include "core/sketch/soundness.h"

#include <gtest/gtest.h>

#include <vector>

#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

constexpr Length tick = Length::fromTicks(1);
constexpr Length smallest = Length::inches(0, 1, 64);
constexpr Length largest = Length::inches(200);

Piece block() {
    Piece piece;
    piece.size = {Length::inches(2), Length::inches(3)};
    return piece;
}

Piece photo() {
    Piece piece = block();
    piece.kind = PieceKind::PhotoSlot;
    piece.printSize = piece.size;
    return piece;
}

template <typename Subject>
void expectSound(const Subject& subject) {
    const auto fault = findFault(subject);
    EXPECT_FALSE(fault) << fault->text();
}

// `word` is a part of the sentence that only this rule says.
template <typename Subject>
void expectFault(const Subject& subject, const std::string& word) {
    const auto fault = findFault(subject);
    ASSERT_TRUE(fault) << "no fault found, expected: " << word;
    EXPECT_EQ(fault->code, ErrorCode::Malformed);
    EXPECT_NE(fault->sentence.find(word), std::string::npos) << fault->sentence;
    EXPECT_TRUE(fault->sentence.ends_with('.')) << fault->sentence;
}

TEST(Soundness, TheBlankSketchIsSound) {
    expectSound(blankSketch());
}

TEST(Soundness, PageSidesGoFrom1To100Inches) {
    PageSetup page;
    page.margins = {};
    for (Length Size::* side : {&Size::width, &Size::height}) {
        page.size = {Length::inches(12), Length::inches(12)};
        for (const Length good : {Length::inches(1), Length::inches(100)}) {
            page.size.*side = good;
            expectSound(page);
        }
        for (const Length bad : {Length::inches(1) - tick, Length::inches(100) + tick, Length(),
                                 -Length::inches(12)}) {
            page.size.*side = bad;
            expectFault(page, "page's sides");
        }
    }
}

TEST(Soundness, OnlyADoublePageHasAFoldGapOfUpTo10Inches) {
    PageSetup page;
    page.foldGap = tick;
    expectFault(page, "fold gap");
    page.doublePage = true;
    expectSound(page);
    page.foldGap = Length::inches(10);
    expectSound(page);
    page.foldGap += tick;
    expectFault(page, "fold gap");
    page.foldGap = -tick;
    expectFault(page, "fold gap");
}

TEST(Soundness, TheGutterGoesFrom0To10Inches) {
    PageSetup page;
    for (const Length good : {Length(), Length::inches(10)}) {
        page.gutter = good;
        expectSound(page);
    }
    for (const Length bad : {-tick, Length::inches(10) + tick}) {
        page.gutter = bad;
        expectFault(page, "gutter");
    }
}

TEST(Soundness, MarginsAreNotNegativeAndLeaveSomeOfThePage) {
    PageSetup page;
    page.margins = {};
    expectSound(page);
    for (Length Margins::* side :
         {&Margins::left, &Margins::top, &Margins::right, &Margins::bottom}) {
        page.margins = {};
        page.margins.*side = -tick;
        expectFault(page, "margins");
        page.margins.*side = Length::inches(12) - tick;
        expectSound(page);
        page.margins.*side = Length::inches(12);
        expectFault(page, "margins");
    }
    page.margins = {Length::inches(6), Length(), Length::inches(6) - tick, Length()};
    expectSound(page);
    page.margins.right += tick;
    expectFault(page, "margins");
    page.margins = {Length(), Length::inches(6), Length(), Length::inches(6) - tick};
    expectSound(page);
    page.margins.bottom += tick;
    expectFault(page, "margins");
}

TEST(Soundness, HugeMarginsDoNotOverflow) {
    PageSetup page;
    page.margins = Margins::all(Length::fromTicks(INT64_MAX));
    expectFault(page, "margins");
    page.margins = Margins::all(Length::fromTicks(INT64_MIN));
    expectFault(page, "margins");
}

TEST(Soundness, PieceSidesGoFromA64thTo200Inches) {
    for (Length Size::* side : {&Size::width, &Size::height}) {
        for (const Length good : {smallest, largest}) {
            Piece piece = block();
            piece.size.*side = good;
            expectSound(piece);
        }
        for (const Length bad : {smallest - tick, largest + tick, Length(), -Length::inches(1),
                                 Length::fromTicks(INT64_MAX), Length::fromTicks(INT64_MIN)}) {
            Piece piece = block();
            piece.size.*side = bad;
            expectFault(piece, "piece's sides");
        }
    }
}

TEST(Soundness, EveryEdgeIsWithinTheCoordinateLimit) {
    const Length limit = Length::coordinateLimit();
    for (Length Point::* axis : {&Point::x, &Point::y}) {
        Piece piece = block();
        const Length side = axis == &Point::x ? piece.size.width : piece.size.height;
        piece.place.*axis = -limit;
        expectSound(piece);
        piece.place.*axis -= tick;
        expectFault(piece, "1,000 in");
        piece.place.*axis = limit - side;
        expectSound(piece);
        piece.place.*axis += tick;
        expectFault(piece, "1,000 in");
        for (const auto extreme : {INT64_MAX, INT64_MIN}) {
            piece.place.*axis = Length::fromTicks(extreme);
            expectFault(piece, "1,000 in");
        }
    }
}

TEST(Soundness, MatsAndTurnsCountForTheCoordinateLimit) {
    Piece piece = photo();
    piece.place.x = -Length::coordinateLimit();
    expectSound(piece);
    piece.mats = {{smallest, {}, ""}};
    expectFault(piece, "1,000 in");
    piece.mats.clear();
    piece.rotation = Angle::degrees(90);  // 2 x 3 becomes 3 wide about the same middle
    expectFault(piece, "1,000 in");
}

TEST(Soundness, OnlyPhotoSlotsHaveAPrintSizeAndMats) {
    for (const PieceKind kind : allPieceKinds) {
        SCOPED_TRACE(kindName(kind));
        Piece piece = block();
        piece.kind = kind;
        const bool isPhoto = kind == PieceKind::PhotoSlot;
        isPhoto ? expectFault(piece, "needs a print size") : expectSound(piece);
        piece.printSize = piece.size;
        isPhoto ? expectSound(piece) : expectFault(piece, "Only a photo slot");
        piece.printSize.reset();
        piece.mats = {{Length::inches(1), {}, ""}};
        isPhoto ? expectFault(piece, "needs a print size")
                : expectFault(piece, "Only a photo slot");
    }
}

TEST(Soundness, PrintSidesGoFromA64thTo200Inches) {
    for (Length Size::* side : {&Size::width, &Size::height}) {
        Piece piece = photo();
        for (const Length good : {smallest, largest}) {
            (*piece.printSize).*side = good;
            expectSound(piece);
        }
        for (const Length bad : {smallest - tick, largest + tick, -largest}) {
            (*piece.printSize).*side = bad;
            expectFault(piece, "print's sides");
        }
    }
}

TEST(Soundness, APhotoHasAtMostTwoMatsWithBordersOfA64thTo20Inches) {
    Piece piece = photo();
    piece.mats.assign(maxMats, Mat{Length::inches(1), {}, ""});
    expectSound(piece);
    piece.mats.push_back(piece.mats.front());
    expectFault(piece, "at most 2 mats");

    piece.mats = {{smallest, {}, ""}, {Length::inches(20), {}, ""}};
    expectSound(piece);
    for (const Length bad : {Length(), smallest - tick, Length::inches(20) + tick, -smallest}) {
        piece.mats = {{bad, {}, ""}};
        expectFault(piece, "border");
        piece.mats = {{smallest, bad, ""}};
        expectFault(piece, "border");
        piece.mats = {{smallest, {}, ""}, {bad, {}, ""}};
        expectFault(piece, "border");
    }
    piece.mats = {{smallest, Length::inches(20), ""}};
    expectSound(piece);
}

TEST(Soundness, RoundedCornersHaveARadiusAbove0UpTo200Inches) {
    Piece piece = block();
    for (const Length good : {tick, largest}) {
        piece.shape = RoundedRectangleShape{good};
        expectSound(piece);
    }
    for (const Length bad : {Length(), -tick, largest + tick}) {
        piece.shape = RoundedRectangleShape{bad};
        expectFault(piece, "radius");
    }
}

TEST(Soundness, TextsOfAPieceAreCheckedEach) {
    for (std::string Piece::* text : {&Piece::name, &Piece::note, &Piece::paper}) {
        Piece piece = block();
        piece.*text = "bell \a";
        expectFault(piece, "characters that cannot be saved");
        piece.*text = "plain";
        expectSound(piece);
    }
    Piece piece = block();
    piece.note = "two\nlines";
    expectSound(piece);
    piece.name = "two\nlines";
    expectFault(piece, "characters");
    piece = photo();
    piece.mats = {{Length::inches(1), {}, "two\nlines"}};
    expectFault(piece, "paper name");
}

TEST(Soundness, TheFaultNamesThePiece) {
    Piece piece = photo();
    piece.name = "At the lake";
    piece.mats.assign(3, Mat{Length::inches(1), {}, ""});
    EXPECT_EQ(findFault(piece)->where, "At the lake");
    piece.name.clear();
    EXPECT_EQ(findFault(piece)->where, "photo slot 2 × 3 in");
}

Sketch sketchOfThree() {
    Sketch sketch;
    for (const std::uint32_t id : {1u, 2u, 3u}) {
        sketch.pieces.emplace(PieceId{id}, block());
        sketch.order.push_back(PieceId{id});
    }
    return sketch;
}

TEST(Soundness, TheOrderListsEveryPieceExactlyOnce) {
    expectSound(sketchOfThree());
    for (const std::vector<PieceId>& order :
         std::vector<std::vector<PieceId>>{{},
                                           {PieceId{1}, PieceId{2}},
                                           {PieceId{1}, PieceId{2}, PieceId{2}},
                                           {PieceId{1}, PieceId{2}, PieceId{4}},
                                           {PieceId{1}, PieceId{2}, PieceId{3}, PieceId{3}},
                                           {PieceId{1}, PieceId{2}, PieceId{3}, PieceId{4}}}) {
        Sketch sketch = sketchOfThree();
        sketch.order = order;
        expectFault(sketch, "order");
    }
}

TEST(Soundness, IdsGoFrom1ToTheLargest) {
    for (const auto& [id, sound] : {std::pair{PieceId{1}, true},
                                    {maxPieceId, true},
                                    {PieceId{0}, false},
                                    {PieceId{maxPieceId.value + 1}, false}}) {
        Sketch sketch;
        sketch.pieces.emplace(id, block());
        sketch.order = {id};
        EXPECT_EQ(!findFault(sketch), sound) << id.value;
    }
}

TEST(Soundness, ASketchHoldsTwentyThousandPieces) {
    Sketch sketch;
    for (std::uint32_t id = 1; id <= maxPieces; ++id) {
        sketch.pieces.emplace(PieceId{id}, block());
        sketch.order.push_back(PieceId{id});
    }
    expectSound(sketch);
    const PieceId one{static_cast<std::uint32_t>(maxPieces) + 1};
    sketch.pieces.emplace(one, block());
    sketch.order.push_back(one);
    expectFault(sketch, "at most 20000 pieces");
}

TEST(Soundness, ASketchIsOnlyAsSoundAsItsPageItsPiecesAndItsTexts) {
    Sketch sketch = sketchOfThree();
    sketch.pieces.at(PieceId{2}).size.width = Length();
    expectFault(sketch, "piece's sides");
    sketch = sketchOfThree();
    sketch.page.gutter = -tick;
    expectFault(sketch, "gutter");
    sketch = sketchOfThree();
    sketch.name = "\t";
    expectFault(sketch, "sketch's name or note");
    sketch = sketchOfThree();
    sketch.note = "\r\n";
    expectFault(sketch, "sketch's name or note");
    sketch.note = "line\nline";
    expectSound(sketch);
}

TEST(Soundness, RandomSketchesOfTheTestsAreSound) {
    constexpr std::uint64_t seed = 1;
    test::Random random(seed);
    for (int run = 0; run < 200; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", run " << run);
        expectSound(test::randomSketch(random, 10));
    }
}

}  // namespace
}  // namespace matwright
