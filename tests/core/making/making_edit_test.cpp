// SPDX-License-Identifier: MIT
#include "core/making/making_edit.h"

#include <gtest/gtest.h>

#include "tests/core/making/random_making.h"

namespace matwright::test {
namespace {

constexpr PieceId slot1{1};
constexpr PhotoId photo7{7};

Making onePlaced() {
    Making making = fourSlots();
    making.work.photos[photo7] = plainPhoto(7);
    making.work.placements[slot1] = {photo7, {.zoom = 2 * Crop::one}, Length::inches(0, 1, 4)};
    making.work.focal = photo7;
    return making;
}

void expectUndone(const Making& before, const PageEdit& edit) {
    Making making = before;
    const auto inverse = apply(making, edit);
    ASSERT_TRUE(inverse) << inverse.error().text();
    EXPECT_FALSE(findFault(making));
    ASSERT_TRUE(apply(making, *inverse));
    EXPECT_EQ(making, before);
}

PageEdit removal(const Making& making, PieceId id) {
    const PieceId ids[] = {id};
    return {removePieces(making.sketch, ids), {}};
}

TEST(PageEdit, ASlotThatGoesLosesItsPhotoAndTheInverseBringsItBack) {
    Making making = onePlaced();
    expectUndone(making, removal(making, slot1));
    ASSERT_TRUE(apply(making, removal(making, slot1)));
    EXPECT_TRUE(making.work.placements.empty());
    EXPECT_EQ(making.work.photos.size(), 1);
}

TEST(PageEdit, APieceThatIsASlotNoMoreLosesItsPhoto) {
    Making making = onePlaced();
    Piece block = making.sketch.pieces.at(slot1);
    block.kind = PieceKind::Block;
    block.printSize.reset();
    const PageEdit edit{changePiece(slot1, block), {}};
    expectUndone(making, edit);
    ASSERT_TRUE(apply(making, edit));
    EXPECT_TRUE(making.work.placements.empty());
}

TEST(PageEdit, APhotoThatGoesLeavesItsSlotsAndTheFocalMark) {
    Making making = onePlaced();
    const PhotoId ids[] = {photo7};
    const PageEdit edit{{}, removePhotos(making.work, ids)};
    expectUndone(making, edit);
    ASSERT_TRUE(apply(making, edit));
    EXPECT_TRUE(making.work.isEmpty());
}

TEST(PageEdit, ASlotThatChangesItsSizeKeepsItsCropAndBorder) {
    Making making = onePlaced();
    const Placement before = making.work.placements.at(slot1);
    Piece slot = making.sketch.pieces.at(slot1);
    slot.size = inches(2, 2);
    ASSERT_TRUE(apply(making, {changePiece(slot1, slot), {}}));
    EXPECT_EQ(making.work.placements.at(slot1), before);
}

// Each is refused with a sentence, and nothing has changed.
TEST(PageEdit, WhatWouldBreakAPageIsRefusedWhole) {
    const Making before = onePlaced();
    Piece small = before.sketch.pieces.at(slot1);
    small.size.width = Length::inches(0, 1, 2);
    PageEdit rows[10];
    rows[0].sketch = changePiece(slot1, small);
    rows[1].photos.placements[PieceId{2}] = Placement{PhotoId{8}, {}, {}};
    rows[2].photos.placements[PieceId{20}] = Placement{photo7, {}, {}};
    rows[3].photos.placements[PieceId{2}] = Placement{photo7, {.zoom = 0}, {}};
    rows[4].photos.photos[PhotoId{0}] = plainPhoto(1);
    rows[5].photos.photos[PhotoId{9}] = Photo();
    rows[6].photos.papers[""] = PaperLook();
    rows[7].photos.focal = std::optional(PhotoId{9});
    rows[8] = removal(before, slot1);
    rows[8].photos.placements[slot1] = before.work.placements.at(slot1);
    rows[9].photos.photos[PhotoId{9}] = plainPhoto(9);
    rows[9].sketch.order = std::vector{slot1};
    int row = 0;
    for (PageEdit& edit : rows) {
        if (row < 8) {
            edit.photos.photos.try_emplace(PhotoId{30}, plainPhoto(30));
        }
        Making making = before;
        const auto inverse = apply(making, edit);
        ASSERT_FALSE(inverse) << row;
        EXPECT_EQ(inverse.error().code, ErrorCode::BadEdit) << row;
        EXPECT_TRUE(inverse.error().sentence.ends_with('.')) << row;
        EXPECT_EQ(making, before) << row;
        ++row;
    }
}

TEST(PageEdit, APageHoldsTwoThousandPhotos) {
    Making making = fourSlots();
    std::vector<Photo> photos;
    for (int i = 0; i < 2'000; ++i) {
        photos.push_back(plainPhoto(i));
    }
    ASSERT_TRUE(apply(making, {{}, addPhotos(making.work, photos)}));
    const Photo more[] = {plainPhoto(5'000)};
    EXPECT_FALSE(apply(making, {{}, addPhotos(making.work, more)}));
    EXPECT_EQ(making.work.photos.size(), 2'000);
}

TEST(PageEdit, AnEditThatSwapsAPhotoForAnotherInOneGoIsAccepted) {
    Making making = onePlaced();
    PageEdit edit;
    edit.photos.photos = {{photo7, std::nullopt}, {PhotoId{8}, plainPhoto(8)}};
    edit.photos.placements[slot1] = Placement{PhotoId{8}, {}, {}};
    edit.photos.focal = std::optional(PhotoId{8});
    expectUndone(making, edit);
    ASSERT_TRUE(apply(making, edit));
    EXPECT_EQ(making.work.placements.at(slot1).photo, PhotoId{8});
    EXPECT_EQ(making.work.focal, PhotoId{8});
}

}  // namespace
}  // namespace matwright::test
