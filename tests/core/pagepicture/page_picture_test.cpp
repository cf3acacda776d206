// SPDX-License-Identifier: MIT
#include "core/pagepicture/page_picture.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/making/making_edit.h"
#include "core/outline/outline.h"
#include "core/picture/picture.h"
#include "tests/support/random_sketch.h"

namespace matwright::test {
namespace {

Piece slot() {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.place = {Length::inches(1), Length::inches(2)};
    piece.size = {Length::inches(4), Length::inches(6)};
    piece.printSize = piece.size;
    piece.mats = {{Length::inches(0, 1, 8), {}, "kraft"}, {Length::inches(0, 1, 4), {}, ""}};
    return piece;
}

Piece paperPiece(PieceKind kind, std::string paper) {
    Piece piece;
    piece.kind = kind;
    piece.size = {Length::inches(12), Length::inches(2)};
    piece.paper = std::move(paper);
    return piece;
}

Making pageWith(std::initializer_list<Piece> pieces) {
    Making making{blankSketch(), {}};
    (void)apply(making.sketch, addPieces(making.sketch, pieces));
    making.work.papers["kraft"] = {{200, 170, 130}, {}, {}, {}};
    making.work.papers["flowers"] = {
        {1, 2, 3}, "/papers/flowers.jpg", contentKeyOf("f"), Length::inches(12)};
    Photo photo;
    photo.path = "/photos/a.jpg";
    photo.upright = {3000, 4000};
    making.work.photos[PhotoId{1}] = photo;
    return making;
}

TEST(PagePicture, APageWithoutPiecesIsItsPaper) {
    Making making{blankSketch(), {}};
    const auto one = pagePicture(making);
    ASSERT_EQ(one.size(), 1);
    EXPECT_EQ(one[0].part, PagePart::Page);
    EXPECT_EQ(std::get<Colour>(one[0].fill), (Colour{255, 255, 255}));
    making.sketch.page.doublePage = true;
    EXPECT_EQ(pagePicture(making).size(), 2);
}

TEST(PagePicture, MatsLieUnderThePhotoTheOutermostFirst) {
    Making making = pageWith({slot()});
    const Length border = Length::inches(0, 1, 2);
    const Crop crop{.zoom = 2 * Crop::one};
    making.work.placements[PieceId{1}] = {PhotoId{1}, crop, border};
    ASSERT_FALSE(findFault(making));
    const auto parts = pagePicture(making);
    ASSERT_EQ(parts.size(), 4);
    EXPECT_EQ(parts[1].part, PagePart::Mat);
    EXPECT_EQ(parts[1].mat, 1);
    EXPECT_EQ(std::get<Colour>(parts[1].fill), matFill(1));
    EXPECT_EQ(parts[1].outline, matOutline(slot(), 1));
    EXPECT_EQ(parts[2].mat, 0);
    EXPECT_EQ(std::get<Colour>(parts[2].fill), (Colour{200, 170, 130}));
    const auto& photo = std::get<PhotoFill>(parts[3].fill);
    EXPECT_EQ(parts[3].outline, trimOutline(slot()));
    EXPECT_EQ(photo.photo, PhotoId{1});
    EXPECT_EQ(photo.window.box, Rect::at({Length::inches(1, 1, 2), Length::inches(2, 1, 2)},
                                         {Length::inches(3), Length::inches(5)}));
    const CropWindow shown = windowIn(crop, {3000, 4000}, {Length::inches(3), Length::inches(5)});
    EXPECT_EQ(photo.shown.width, shown.width);
    EXPECT_EQ(photo.shown.centreX, shown.centreX);
    EXPECT_NEAR(photo.window.centre.x, 3 * 914'400.0, 1e-9);
    EXPECT_NEAR(photo.window.centre.y, 5 * 914'400.0, 1e-9);
}

TEST(PagePicture, AFreeSlotLooksAsInASketch) {
    const auto parts = pagePicture(pageWith({slot()}));
    ASSERT_EQ(parts.size(), 4);
    const auto& look = std::get<SketchFill>(parts[3].fill);
    ASSERT_EQ(look.items.size(), 2);  // the slot and its mark, without the mats
    EXPECT_EQ(std::get<PathItem>(look.items[0]).paths.front(), trimOutline(slot()));
}

TEST(PagePicture, PaperWithAPictureIsLaidFromThePiecesCornerAndTurnsWithIt) {
    Piece strip = paperPiece(PieceKind::Strip, "flowers");
    strip.rotation = Angle::degrees(30);
    const auto parts = pagePicture(pageWith({strip}));
    ASSERT_EQ(parts.size(), 2);
    const auto& paper = std::get<PaperFill>(parts[1].fill);
    EXPECT_EQ(paper.look.picture, "/papers/flowers.jpg");
    EXPECT_EQ(paper.at.box, trimBox(strip));
    EXPECT_EQ(paper.at.rotation, Angle::degrees(30));
    EXPECT_TRUE(parts[1].edge);
}

TEST(PagePicture, LetteringOnPaperKeepsItsMarkAndUnknownPaperLooksAsInASketch) {
    const auto parts = pagePicture(pageWith(
        {paperPiece(PieceKind::Title, "kraft"), paperPiece(PieceKind::Strip, "unheard of")}));
    ASSERT_EQ(parts.size(), 4);
    EXPECT_EQ(std::get<Colour>(parts[1].fill), (Colour{200, 170, 130}));
    EXPECT_EQ(std::get<SketchFill>(parts[2].fill).items.size(), 1);
    EXPECT_EQ(std::get<SketchFill>(parts[3].fill).items.size(), 1);
}

TEST(PagePicture, EveryPieceOfARandomPageHasItsPartsInOrder) {
    constexpr std::uint64_t seed = 20'261'132;
    Random random(seed);
    for (int run = 0; run < 300; ++run) {
        const Making making{randomSketch(random, static_cast<int>(below(random, 9))), {}};
        const auto parts = pagePicture(making);
        std::vector<PieceId> tops;
        std::size_t mats = 0;
        for (const PagePiece& part : parts) {
            mats += part.part == PagePart::Mat ? 1 : 0;
            if (part.part == PagePart::Piece) {
                tops.push_back(part.piece);
            }
        }
        EXPECT_EQ(tops, making.sketch.order) << "seed " << seed << ", run " << run;
        std::size_t expected = 0;
        for (const auto& [id, piece] : making.sketch.pieces) {
            expected += piece.mats.size();
        }
        EXPECT_EQ(mats, expected);
    }
}

TEST(PagePicture, PhotoAcrossTheFoldIsTwoPartsThatMeetAndTheGapStaysFree) {
    Piece across = slot();
    across.mats.clear();
    across.place.x = Length::inches(10);
    across.size = {Length::inches(6), Length::inches(4)};
    across.printSize = across.size;
    Making making = pageWith({across});
    making.sketch.page.doublePage = true;
    making.sketch.page.foldGap = Length::inches(0, 1, 2);
    Photo photo;
    photo.upright = {4000, 3000};
    making.work.photos[PhotoId{7}] = photo;
    making.work.placements[PieceId{1}] = {PhotoId{7}, {}, {}};
    const auto parts = pagePicture(making);
    ASSERT_EQ(parts.size(), 4u);
    const auto& left = std::get<PhotoFill>(parts[2].fill);
    const auto& right = std::get<PhotoFill>(parts[3].fill);
    EXPECT_EQ(left.window.box.left(), Length::inches(10));
    EXPECT_EQ(left.window.box.right(), Length::inches(12));
    EXPECT_EQ(right.window.box.left(), Length::inches(12, 1, 2));
    EXPECT_EQ(right.window.box.right(), Length::inches(16));
    EXPECT_EQ(left.from, 0);
    EXPECT_EQ(left.to, right.from);
    EXPECT_EQ(right.to, 1);
    EXPECT_DOUBLE_EQ(left.to, 2 / 5.5);
    EXPECT_EQ(left.whole, (Size{Length::inches(5, 1, 2), Length::inches(4)}));
}

}  // namespace
}  // namespace matwright::test
