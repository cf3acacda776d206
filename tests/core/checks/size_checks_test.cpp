// SPDX-License-Identifier: MIT
#include "tests/core/checks/check_fixture.h"

namespace matwright::test {
namespace {

Sentences offScale(const Piece& piece, const CheckSettings& settings = {}) {
    return sentences(sketchWith({piece}), CheckKind::OffScale, settings);
}

TEST(SizeChecks, SixteenthsAreOnTheTrimmersScale) {
    Piece photo = photoAt("1", "1", "3 15/16", "5 1/16");
    photo.mats = {{in("1/8"), in("5/16"), ""}, {in("1/16"), {}, ""}};
    EXPECT_EQ(offScale(photo), Sentences{});
}

TEST(SizeChecks, AThirtySecondIsNot) {
    EXPECT_EQ(offScale(pieceAt(PieceKind::Strip, "1", "1", "3 1/32", "1")),
              Sentences{"1 · strip 3 1/32 × 1 in: it is 3 1/32 in wide, which a trimmer marked in "
                        "1/16 in does not show; make it 3 1/16 in wide."});
}

TEST(SizeChecks, BothSidesAreTold) {
    EXPECT_EQ(
        offScale(photoAt("1", "1", "89 mm", "119 mm")),
        Sentences{"1 · photo slot 89 × 119 mm: its trim is 89 mm wide and 119 mm tall, "
                  "which a trimmer marked in 1/16 in does not show; make it 3 1/2 in wide and "
                  "4 11/16 in tall."});
}

TEST(SizeChecks, AnOddLengthIsToldToAThousandth) {
    EXPECT_EQ(
        offScale(pieceAt(PieceKind::Block, "1", "1", "1", "3.14159")),
        Sentences{"1 · block 1 × ≈3 1/8 in: it is about 3.142 in tall, which a trimmer marked "
                  "in 1/16 in does not show; make it 3 1/8 in tall."});
}

TEST(SizeChecks, TheInnermostMatThatIsOffIsTold) {
    Piece photo = photoAt("1", "1", "4", "6");
    photo.mats = {{in("3/32"), {}, ""}};
    EXPECT_EQ(offScale(photo), Sentences{}) << "both borders together make 3/16";
    photo.mats = {{in("1/8"), {}, ""}, {in("1/64"), {}, ""}};
    EXPECT_EQ(offScale(photo),
              Sentences{"1 · photo slot 4 × 6 in: its second mat is 4 9/32 in wide and 6 9/32 in "
                        "tall, which a trimmer marked in 1/16 in does not show; make it 4 5/16 in "
                        "wide and 6 5/16 in tall."});
    photo.mats = {{in("1/8"), in("5/32"), ""}};
    EXPECT_EQ(
        offScale(photo),
        Sentences{"1 · photo slot 4 × 6 in: its mat is 6 9/32 in tall, which a trimmer marked "
                  "in 1/16 in does not show; make it 6 5/16 in tall."});
}

TEST(SizeChecks, AMillimetreTrimmerShowsMillimetres) {
    CheckSettings settings;
    settings.trimmerStep = Length::millimetres(1);
    settings.scale = Scale::WholeMillimetre;
    EXPECT_EQ(offScale(photoAt("1", "1", "89 mm", "119 mm"), settings), Sentences{});
    EXPECT_EQ(
        offScale(pieceAt(PieceKind::Block, "1", "1", "10", "253.7 mm"), settings),
        Sentences{"1 · block 10 × ≈10 in: it is 253.7 mm tall, which a trimmer marked in 1 mm "
                  "does not show; make it 254 mm tall."});
}

TEST(SizeChecks, NothingIsToldToBeMadeZero) {
    EXPECT_EQ(
        offScale(pieceAt(PieceKind::Strip, "1", "1", "4", "1/64")),
        Sentences{"1 · strip 4 × ≈0 in: it is 1/64 in tall, which a trimmer marked in 1/16 in "
                  "does not show; make it 1/16 in tall."});
}

TEST(SizeChecks, PlacesForLetteringAndOrnamentsAreNotCut) {
    for (const PieceKind kind : allPieceKinds) {
        const bool isCut =
            kind == PieceKind::PhotoSlot || kind == PieceKind::Strip || kind == PieceKind::Block;
        EXPECT_EQ(offScale(pieceAt(kind, "1", "1", "3 1/32", "1")).size(), isCut ? 1u : 0u)
            << kindName(kind);
    }
}

Sentences noSuchPrint(const Piece& piece) {
    return sentences(sketchWith({piece}), CheckKind::NoSuchPrintSize);
}

TEST(SizeChecks, CataloguePrintsEitherWayUpArePrintSizes) {
    EXPECT_EQ(noSuchPrint(photoAt("1", "1", "4", "6")), Sentences{});
    EXPECT_EQ(noSuchPrint(photoAt("1", "1", "6", "4")), Sentences{});
    EXPECT_EQ(noSuchPrint(photoAt("1", "1", "100 mm", "150 mm")), Sentences{});
}

TEST(SizeChecks, AnotherPrintSizeComesWithOneThatHoldsTheTrim) {
    EXPECT_EQ(noSuchPrint(photoAt("1", "1", "3", "5")),
              Sentences{"1 · photo slot 3 × 5 in: 3 × 5 in is not a usual print size; print it "
                        "3 1/2 × 5 in and trim it."});
    EXPECT_EQ(noSuchPrint(photoAt("1", "1", "5", "3")),
              Sentences{"1 · photo slot 5 × 3 in: 5 × 3 in is not a usual print size; print it "
                        "3 1/2 × 5 in and trim it."});
}

TEST(SizeChecks, ATrimInInchesIsNotSentToACentimetrePrint) {
    Piece photo = photoAt("1", "1", "3 7/8", "5 7/8");
    photo.printSize = Size{in("3 7/8"), in("6")};
    EXPECT_EQ(noSuchPrint(photo),
              Sentences{"1 · photo slot 3 7/8 × 6 in: 3 7/8 × 6 in is not a usual print size; "
                        "print it 4 × 6 in and trim it."});
}

TEST(SizeChecks, ATrimLargerThanEveryPrintIsPrintedToMeasure) {
    EXPECT_EQ(noSuchPrint(photoAt("1", "1", "9", "9")),
              Sentences{"1 · photo slot 9 × 9 in: 9 × 9 in is not a usual print size; choose one "
                        "from the list, or have it printed to measure."});
}

Sentences trimOverPrint(Piece piece, Size print) {
    piece.printSize = print;
    return sentences(sketchWith({piece}), CheckKind::TrimOverPrint);
}

TEST(SizeChecks, ATrimUpToThePrintFits) {
    EXPECT_EQ(trimOverPrint(photoAt("1", "1", "4", "6"), {in("4"), in("6")}), Sentences{});
    EXPECT_EQ(trimOverPrint(photoAt("1", "1", "3", "3"), {in("3"), in("4")}), Sentences{});
}

TEST(SizeChecks, ATrimOverThePrintIsToldByHowMuch) {
    EXPECT_EQ(trimOverPrint(photoAt("1", "1", "4 1/8", "6 1/4"), {in("4"), in("6")}),
              Sentences{"1 · photo slot 4 × 6 in: its trim is 1/8 in wider and 1/4 in taller than "
                        "its print; trim it smaller or choose a larger print."});
}

TEST(SizeChecks, ATrimAcrossItsPrintOnlyNeedsATurn) {
    EXPECT_EQ(trimOverPrint(photoAt("1", "1", "6", "4"), {in("4"), in("6")}),
              Sentences{"1 · photo slot 4 × 6 in: its trim is 2 in wider than its print; turn the "
                        "print the other way."});
}

TEST(SizeChecks, OneTickOverThePrintIsTold) {
    Piece photo = photoAt("1", "1", "4", "6");
    photo.size.width += Length::fromTicks(1);
    EXPECT_EQ(trimOverPrint(photo, {in("4"), in("6")}),
              Sentences{"1 · photo slot 4 × 6 in: its trim is less than 1/16 in wider than its "
                        "print; trim it smaller or choose a larger print."});
}

}  // namespace
}  // namespace matwright::test
