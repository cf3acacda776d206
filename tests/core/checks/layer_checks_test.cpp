// SPDX-License-Identifier: MIT
#include "tests/core/checks/check_fixture.h"

namespace matwright::test {
namespace {

Sentences overlap(const std::vector<Piece>& pieces) {
    return sentences(sketchWith(pieces), CheckKind::PhotosOverlap);
}

Sentences hidden(const std::vector<Piece>& pieces) {
    return sentences(sketchWith(pieces), CheckKind::Hidden);
}

TEST(LayerChecks, PhotosEdgeToEdgeDoNotOverlap) {
    EXPECT_EQ(overlap({photoAt("1", "1", "4", "6"), photoAt("5", "1", "4", "6")}), Sentences{});
}

TEST(LayerChecks, OverlappingPhotosAreToldOnceForTheLowerOne) {
    const std::vector<Piece> pieces{photoAt("1", "1", "4", "6"), photoAt("4 3/4", "1", "4", "6")};
    EXPECT_EQ(overlap(pieces), Sentences{"1 · photo slot 4 × 6 in lies 1/4 in under 2 · photo slot "
                                         "4 × 6 in; pull them apart."});
    const auto findings = checkSketch(sketchWith(pieces), {});
    ASSERT_EQ(findings.size(), 1u);
    EXPECT_EQ(findings.front().pieces, (std::vector{PieceId{1}, PieceId{2}}));
}

TEST(LayerChecks, TheMatsOfTwoPhotosMayNotOverlapEither) {
    std::vector<Piece> pieces{photoAt("1", "1", "4", "6"), photoAt("5 1/8", "1", "4", "6")};
    EXPECT_EQ(overlap(pieces), Sentences{});
    pieces[0].mats = {{in("1/8"), {}, ""}};
    EXPECT_EQ(overlap(pieces), Sentences{});
    pieces[1].mats = {{in("1/8"), {}, ""}};
    EXPECT_EQ(overlap(pieces), Sentences{"1 · photo slot 4 × 6 in lies 1/8 in under 2 · photo slot "
                                         "4 × 6 in; pull them apart."});
}

TEST(LayerChecks, AMatUnderAStripIsNormalAPhotoUnderItIsNot) {
    std::vector<Piece> pieces{photoAt("2", "2", "4", "6"),
                              pieceAt(PieceKind::Strip, "6", "1", "1", "10")};
    pieces[0].mats = {{in("1/2"), {}, ""}};
    EXPECT_EQ(overlap(pieces), Sentences{});
    pieces[1].place.x -= in("1/8");
    EXPECT_EQ(overlap(pieces), Sentences{"1 · photo slot 4 × 6 in lies 1/8 in under 2 · strip 1 × "
                                         "10 in; bring the photo forward or pull them apart."});
}

TEST(LayerChecks, APhotoOnABlockIsNormal) {
    EXPECT_EQ(overlap({pieceAt(PieceKind::Block, "1", "1", "8", "8"), photoAt("2", "2", "4", "6")}),
              Sentences{});
}

TEST(LayerChecks, LetteringAndOrnamentsMayLieOnAPhoto) {
    for (const PieceKind kind : allPieceKinds) {
        const bool covers =
            kind == PieceKind::PhotoSlot || kind == PieceKind::Strip || kind == PieceKind::Block;
        EXPECT_EQ(overlap({photoAt("1", "1", "4", "6"), pieceAt(kind, "4", "6", "2", "1")}).size(),
                  covers ? 1u : 0u)
            << kindName(kind);
    }
}

TEST(LayerChecks, SeveralCoversAreToldInOneSentence) {
    std::vector<Piece> pieces{photoAt("1", "1", "4", "6"),
                              pieceAt(PieceKind::Strip, "0", "2", "2", "1")};
    pieces.push_back(pieceAt(PieceKind::Strip, "0", "3 1/2", "2", "1"));
    EXPECT_EQ(overlap(pieces),
              Sentences{"1 · photo slot 4 × 6 in lies 1 in under 2 · strip 2 × 1 in, and one more "
                        "piece; bring the photo forward or pull them apart."});
    pieces.push_back(pieceAt(PieceKind::Strip, "0", "5", "2", "1"));
    EXPECT_EQ(overlap(pieces),
              Sentences{"1 · photo slot 4 × 6 in lies 1 in under 2 · strip 2 × 1 in, and 2 more "
                        "pieces; bring the photo forward or pull them apart."});
    for (int i = 0; i < 20; ++i) {
        pieces.push_back(pieceAt(PieceKind::Strip, "0", "5", "2", "1"));
    }
    EXPECT_EQ(overlap(pieces),
              Sentences{"1 · photo slot 4 × 6 in lies 1 in under 2 · strip 2 × 1 in, and many more "
                        "pieces; bring the photo forward or pull them apart."});
}

TEST(LayerChecks, TurnedPhotosOverlapByTheirOutlines) {
    // Two squares point to point: their boxes overlap, they do not.
    std::vector<Piece> pieces{photoAt("1", "1", "3", "3"), photoAt("4", "4", "3", "3")};
    pieces[0].rotation = Angle::degrees(45);
    pieces[1].rotation = Angle::degrees(45);
    EXPECT_EQ(overlap(pieces), Sentences{});
}

TEST(LayerChecks, AQuarterHiddenIsAllowedMoreIsNot) {
    const Piece photo = photoAt("1", "1", "4", "4");
    Piece strip = pieceAt(PieceKind::Strip, "1", "1", "1", "4");
    EXPECT_EQ(hidden({photo, strip}), Sentences{});
    strip.size.width += in("1/16");
    EXPECT_EQ(hidden({photo, strip}),
              Sentences{"1 · photo slot 4 × 4 in is more than a quarter "
                        "under other pieces; bring it forward or move it."});
}

TEST(LayerChecks, TheSentenceGrowsWithWhatIsHidden) {
    const Piece title = pieceAt(PieceKind::Title, "1", "1", "4", "1");
    const auto under = [&](std::string_view width) {
        return hidden({title, pieceAt(PieceKind::Strip, "1", "1", width, "1")});
    };
    EXPECT_EQ(under("2 1/2"), Sentences{"1 · title 4 × 1 in is more than half under other pieces; "
                                        "bring it forward or move it."});
    EXPECT_EQ(under("3 1/2"),
              Sentences{"1 · title 4 × 1 in is more than three quarters under other "
                        "pieces; bring it forward or move it."});
    EXPECT_EQ(under("4"), Sentences{"1 · title 4 × 1 in lies wholly under other pieces; bring it "
                                    "forward or leave it out."});
}

TEST(LayerChecks, PaperUnderPhotosIsOnlyToldWhenNothingOfItShows) {
    for (const PieceKind kind : allPieceKinds) {
        const bool mayBeCovered = kind == PieceKind::Strip || kind == PieceKind::Block ||
                                  kind == PieceKind::Embellishment;
        const Piece below = pieceAt(kind, "1", "1", "4", "4");
        EXPECT_EQ(hidden({below, photoAt("1", "1", "4", "3 15/16")}).size(), mayBeCovered ? 0u : 1u)
            << kindName(kind);
        EXPECT_EQ(hidden({below, photoAt("1", "1", "4", "4")}).size(), 1u) << kindName(kind);
    }
}

}  // namespace
}  // namespace matwright::test
