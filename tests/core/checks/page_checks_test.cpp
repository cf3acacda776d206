// SPDX-License-Identifier: MIT
#include "tests/core/checks/check_fixture.h"

namespace matwright::test {
namespace {

constexpr Length tick = Length::fromTicks(1);

Sentences offPage(const Piece& piece) {
    return sentences(sketchWith({piece}), CheckKind::OffPage);
}

Sentences overMargin(const Piece& piece) {
    return sentences(sketchWith({piece}), CheckKind::OverMargin);
}

TEST(PageChecks, APieceUpToThePageEdgeIsNotOffIt) {
    EXPECT_EQ(offPage(pieceAt(PieceKind::Strip, "0", "0", "12", "12")), Sentences{});
}

TEST(PageChecks, OneTickOffThePageIsOffIt) {
    Piece strip = pieceAt(PieceKind::Strip, "0", "1", "12", "1");
    strip.place.x += tick;
    EXPECT_EQ(
        offPage(strip),
        Sentences{"1 · strip 12 × 1 in runs less than 1/16 in off the right edge of the page; "
                  "move it left or make it smaller."});
}

TEST(PageChecks, OffThePageNamesEachSideAndTheWayBack) {
    EXPECT_EQ(
        offPage(pieceAt(PieceKind::Block, "-1/8", "-1 1/2", "4", "6")),
        Sentences{"1 · block 4 × 6 in runs 1/8 in off the left edge of the page and 1 1/2 in "
                  "off the top edge of the page; move it right and down, or make it smaller."});
    EXPECT_EQ(offPage(pieceAt(PieceKind::Block, "9", "8", "4", "6")),
              Sentences{"1 · block 4 × 6 in runs 1 in off the right edge of the page and 2 in off "
                        "the bottom edge of the page; move it left and up, or make it smaller."});
}

TEST(PageChecks, APieceLargerThanThePageCanOnlyBeMadeSmaller) {
    EXPECT_EQ(offPage(pieceAt(PieceKind::Block, "-1", "0", "14", "6")),
              Sentences{"1 · block 14 × 6 in runs 1 in off the left edge of the page and 1 in off "
                        "the right edge of the page; make it smaller."});
}

TEST(PageChecks, APieceBesideThePageIsSaidToLieThere) {
    const Sentences expected{
        "1 · photo slot 4 × 6 in lies beside the page; move it onto the page or delete it."};
    EXPECT_EQ(offPage(photoAt("13", "1", "4", "6")), expected);
    EXPECT_EQ(offPage(photoAt("12", "1", "4", "6")), expected) << "touching from outside";
    EXPECT_EQ(overMargin(photoAt("13", "1", "4", "6")), Sentences{});
}

TEST(PageChecks, AMatOffThePageCounts) {
    Piece photo = photoAt("1/8", "1", "4", "6");
    EXPECT_EQ(offPage(photo), Sentences{});
    photo.mats = {{in("1/4"), {}, ""}};
    EXPECT_EQ(offPage(photo), Sentences{"1 · photo slot 4 × 6 in runs 1/8 in off the left edge of "
                                        "the page; move it right or make it smaller."});
}

TEST(PageChecks, ARoundPieceIsMeasuredByItsShapeWhenTurned) {
    // A circle turned by 45 degrees stays where it is; its box does not.
    Piece circle = pieceAt(PieceKind::Block, "0", "0", "4", "4");
    circle.rotation = Angle::degrees(45);
    EXPECT_FALSE(offPage(circle).empty());
    circle.shape = OvalShape{};
    circle.place = {in("1/32"), in("1/32")};  // the curve strays by 0.0006 in
    EXPECT_EQ(offPage(circle), Sentences{});
}

TEST(PageChecks, RoundingOfATurnedPieceIsForgiven) {
    // A quarter turn of sides that differ by an odd tick count lands on half ticks.
    Piece strip = pieceAt(PieceKind::Strip, "4", "4", "8", "2");
    strip.size.height += tick;
    strip.rotation = Angle::degrees(90);
    const Rect bounds = trimBounds(strip);
    strip.place.x -= bounds.left();
    strip.place.y -= bounds.top();
    EXPECT_EQ(offPage(strip), Sentences{});
    strip.place.x -= 2 * tick;
    EXPECT_EQ(offPage(strip).size(), 1u);
}

TEST(PageChecks, APhotoOnTheMarginIsInsideIt) {
    EXPECT_EQ(overMargin(photoAt("1/2", "1/2", "11", "11")), Sentences{});
}

TEST(PageChecks, APhotoOverTheMarginIsToldWithTheAmount) {
    EXPECT_EQ(
        overMargin(photoAt("3/8", "1", "4", "6")),
        Sentences{"1 · photo slot 4 × 6 in runs 1/8 in over the left margin; move it right or "
                  "make it smaller."});
}

TEST(PageChecks, AMatOverTheMarginCounts) {
    Piece photo = photoAt("1/2", "1/2", "4", "6");
    photo.mats = {{in("1/8"), {}, ""}};
    EXPECT_EQ(overMargin(photo),
              Sentences{"1 · photo slot 4 × 6 in runs 1/8 in over the left margin and 1/8 in over "
                        "the top margin; move it right and down, or make it smaller."});
}

TEST(PageChecks, PaperAndEmbellishmentsMayRunToThePageEdge) {
    for (const PieceKind kind : allPieceKinds) {
        const bool keepsToMargins = kind == PieceKind::PhotoSlot || kind == PieceKind::Title ||
                                    kind == PieceKind::Journaling;
        EXPECT_EQ(overMargin(pieceAt(kind, "0", "1", "4", "6")).size(), keepsToMargins ? 1u : 0u)
            << kindName(kind);
    }
}

TEST(PageChecks, ASideOffThePageIsNotToldTwice) {
    const Piece photo = photoAt("-1/4", "1/4", "4", "6");
    EXPECT_EQ(offPage(photo).size(), 1u);
    EXPECT_EQ(overMargin(photo),
              Sentences{"1 · photo slot 4 × 6 in runs 1/4 in over the top margin; "
                        "move it down or make it smaller."});
}

TEST(PageChecks, AmountsFollowTheChosenScale) {
    const Sketch sketch = sketchWith({photoAt("0", "1", "4", "6")});
    CheckSettings settings;
    settings.scale = Scale::WholeMillimetre;
    EXPECT_EQ(sentences(sketch, CheckKind::OverMargin, settings),
              Sentences{"1 · photo slot 4 × 6 in runs about 13 mm over the left margin; move it "
                        "right or make it smaller."});
}

Sketch doublePageWith(const Piece& piece, std::string_view foldGap) {
    Sketch sketch = blankSketch();
    sketch.page.doublePage = true;
    sketch.page.foldGap = in(foldGap);
    EXPECT_TRUE(apply(sketch, addPieces(sketch, std::vector{piece})));
    return sketch;
}

TEST(PageChecks, APhotoAcrossTheFoldIsToldTheShorterWay) {
    EXPECT_EQ(sentences(doublePageWith(photoAt("9", "2", "4", "6"), "0"), CheckKind::AcrossFold),
              Sentences{"1 · photo slot 4 × 6 in lies across the fold; move it 1 in to the left so "
                        "that it stays on one page."});
    EXPECT_EQ(
        sentences(doublePageWith(photoAt("11 1/2", "2", "4", "6"), "1/4"), CheckKind::AcrossFold),
        Sentences{"1 · photo slot 4 × 6 in lies across the fold; move it 3/4 in to the right so "
                  "that it stays on one page."});
}

TEST(PageChecks, APhotoThatTouchesTheFoldIsNotAcrossIt) {
    for (const auto* left : {"8", "12 1/4"}) {
        const Sketch sketch = doublePageWith(photoAt(left, "2", "4", "6"), "1/4");
        EXPECT_EQ(sentences(sketch, CheckKind::AcrossFold), Sentences{}) << left;
    }
    Piece photo = photoAt("8", "2", "4", "6");
    photo.place.x += tick;
    EXPECT_EQ(sentences(doublePageWith(photo, "1/4"), CheckKind::AcrossFold).size(), 1u);
}

TEST(PageChecks, ASinglePageHasNoFold) {
    EXPECT_EQ(sentences(sketchWith({photoAt("9", "2", "6", "4")}), CheckKind::AcrossFold),
              Sentences{});
}

TEST(PageChecks, PaperAndTitlesMayCrossTheFold) {
    for (const PieceKind kind : allPieceKinds) {
        const bool matters = kind == PieceKind::PhotoSlot || kind == PieceKind::Journaling;
        const Sketch sketch = doublePageWith(pieceAt(kind, "9", "2", "6", "4"), "1/4");
        EXPECT_EQ(sentences(sketch, CheckKind::AcrossFold).size(), matters ? 1u : 0u)
            << kindName(kind);
    }
}

TEST(PageChecks, BothPagesOfADoublePageHaveMarginsAtTheFoldToo) {
    EXPECT_EQ(
        sentences(doublePageWith(photoAt("12 1/2", "2", "4", "6"), "1/4"), CheckKind::OverMargin),
        Sentences{"1 · photo slot 4 × 6 in runs 1/4 in over the left margin; move it right or "
                  "make it smaller."});
    EXPECT_EQ(
        sentences(doublePageWith(photoAt("7 3/4", "2", "4", "6"), "1/4"), CheckKind::OverMargin),
        Sentences{"1 · photo slot 4 × 6 in runs 1/4 in over the right margin; move it left or "
                  "make it smaller."});
}

TEST(PageChecks, AcrossTheFoldOnlyTheOuterMarginsCount) {
    EXPECT_EQ(
        sentences(doublePageWith(photoAt("9", "1/4", "6", "4"), "1/4"), CheckKind::OverMargin),
        Sentences{"1 · photo slot 6 × 4 in runs 1/4 in over the top margin; move it down or "
                  "make it smaller."});
}

}  // namespace
}  // namespace matwright::test
