// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "tests/core/making/random_making.h"

namespace matwright::test {
namespace {

constexpr PixelSize lying{4000, 3000};
constexpr PixelSize upright{3000, 4000};

void done(Making& making, const PhotoEdit& edit) {
    const auto inverse = apply(making, {{}, edit});
    ASSERT_TRUE(inverse) << inverse.error().text();
}

PhotoId photoIn(const Making& making, std::uint32_t slot) {
    const Placement* placement = find(making.work, PieceId{slot});
    return placement == nullptr ? PhotoId() : placement->photo;
}

Making withPhotos(std::initializer_list<PixelSize> sizes) {
    Making making = fourSlots();
    int number = 1;
    std::vector<Photo> photos;
    for (const PixelSize size : sizes) {
        photos.push_back(plainPhoto(number++, size));
    }
    done(making, addPhotos(making.work, photos));
    return making;
}

TEST(PhotoBuilders, PhotosThatAreThereByContentAreNotAddedAgain) {
    Making making = withPhotos({lying, lying});
    Photo moved = plainPhoto(1);
    moved.path = "/elsewhere/1.jpg";
    const Photo added[] = {moved, plainPhoto(3), plainPhoto(3), plainPhoto(2), plainPhoto(4)};
    const PhotoEdit edit = addPhotos(making.work, added);
    ASSERT_EQ(edit.photos.size(), 2);
    EXPECT_EQ(edit.photos.at(PhotoId{3}), plainPhoto(3));
    EXPECT_EQ(edit.photos.at(PhotoId{4}), plainPhoto(4));
}

TEST(PhotoBuilders, APlacedPhotoHasItsStartingCropAndTheSlotsBorder) {
    Making making = withPhotos({lying, upright});
    done(making, placePhoto(making, PieceId{1}, PhotoId{1}));
    EXPECT_EQ(making.work.placements.at(PieceId{1}),
              (Placement{PhotoId{1}, startingCrop(lying, inches(4, 6)), {}}));
    making.work.placements.at(PieceId{1}).border = Length::inches(1);
    done(making, placePhoto(making, PieceId{1}, PhotoId{2}));
    EXPECT_EQ(making.work.placements.at(PieceId{1}),
              (Placement{PhotoId{2}, startingCrop(upright, inches(2, 4)), Length::inches(1)}));
    done(making, takeOut(PieceId{1}));
    EXPECT_TRUE(making.work.placements.empty());
}

TEST(PhotoBuilders, WhatIsNotThereIsPassedOver) {
    const Making making = withPhotos({lying});
    EXPECT_TRUE(placePhoto(making, PieceId{9}, PhotoId{1}).isEmpty());
    EXPECT_TRUE(placePhoto(making, PieceId{1}, PhotoId{9}).isEmpty());
    EXPECT_TRUE(swapPhotos(making, PieceId{1}, PieceId{9}).isEmpty());
    EXPECT_TRUE(swapPhotos(making, PieceId{1}, PieceId{1}).isEmpty());
    EXPECT_TRUE(swapPhotos(making, PieceId{1}, PieceId{2}).isEmpty());
    const PhotoId ids[] = {PhotoId{9}};
    EXPECT_TRUE(removePhotos(making.work, ids).isEmpty());
}

TEST(PhotoBuilders, PhotosThatChangePlacesKeepTheirCropsInWindowsOfOneRatio) {
    Making making = withPhotos({lying, upright});
    const Crop first{.centreX = 400'000, .zoom = 2 * Crop::one};
    const Crop second{.centreY = 600'000, .zoom = 3 * Crop::one};
    making.work.placements = {{PieceId{3}, {PhotoId{1}, first, {}}},
                              {PieceId{4}, {PhotoId{2}, second, {}}}};
    done(making, swapPhotos(making, PieceId{3}, PieceId{4}));
    EXPECT_EQ(making.work.placements.at(PieceId{3}), (Placement{PhotoId{2}, second, {}}));
    EXPECT_EQ(making.work.placements.at(PieceId{4}), (Placement{PhotoId{1}, first, {}}));
}

TEST(PhotoBuilders, PhotosThatChangePlacesStartAnewInWindowsOfOtherRatios) {
    Making making = withPhotos({lying, upright});
    const Crop crop{.centreX = 400'000, .zoom = 2 * Crop::one};
    const Length border = Length::inches(0, 1, 8);
    making.work.placements = {{PieceId{1}, {PhotoId{1}, crop, border}},
                              {PieceId{2}, {PhotoId{2}, crop, {}}}};
    done(making, swapPhotos(making, PieceId{1}, PieceId{2}));
    const Size window = windowOf(making.sketch.pieces.at(PieceId{1}), border);
    EXPECT_EQ(making.work.placements.at(PieceId{1}),
              (Placement{PhotoId{2}, startingCrop(upright, window), border}));
    EXPECT_EQ(making.work.placements.at(PieceId{2}),
              (Placement{PhotoId{1}, startingCrop(lying, inches(6, 4)), {}}));
}

TEST(PhotoBuilders, APhotoCanChangePlacesWithAnEmptySlot) {
    Making making = withPhotos({lying});
    const Placement placed{PhotoId{1}, {.zoom = 2 * Crop::one}, Length::inches(0, 1, 8)};
    making.work.placements = {{PieceId{3}, placed}};
    done(making, swapPhotos(making, PieceId{4}, PieceId{3}));
    EXPECT_EQ(making.work.placements, (std::map<PieceId, Placement>{{PieceId{4}, placed}}));
}

TEST(PhotoBuilders, UprightPhotosGoIntoUprightSlotsAndLyingOnesIntoLyingSlots) {
    Making making = withPhotos({lying, upright, upright, upright});
    done(making, fillFreeSlots(making));
    EXPECT_EQ(photoIn(making, 2), PhotoId{1});
    EXPECT_EQ(photoIn(making, 1), PhotoId{2});
    EXPECT_EQ(photoIn(making, 3), PhotoId{3});
    EXPECT_EQ(photoIn(making, 4), PhotoId{4});
}

TEST(PhotoBuilders, PhotosFillSlotsInTheOrderTheyWereTaken) {
    Making making = withPhotos({upright, upright, upright});
    making.work.photos.at(PhotoId{3}).taken = "2026-07-14 09:00:00";
    making.work.photos.at(PhotoId{2}).taken = "2026-07-14 10:00:00";
    done(making, fillFreeSlots(making));
    EXPECT_EQ(photoIn(making, 1), PhotoId{3});
    EXPECT_EQ(photoIn(making, 3), PhotoId{2});
    EXPECT_EQ(photoIn(making, 4), PhotoId{1});  // without a time last
    EXPECT_EQ(photoIn(making, 2), PhotoId{});
}

TEST(PhotoBuilders, AWishedSizeComesFirstAndTheFocalPhotoTakesTheLargestSlotLeft) {
    Making making = withPhotos({upright, upright, lying, lying});
    making.work.photos.at(PhotoId{4}).wish = inches(3, 4);
    making.work.focal = PhotoId{2};
    done(making, fillFreeSlots(making));
    EXPECT_EQ(photoIn(making, 3), PhotoId{4});
    EXPECT_EQ(photoIn(making, 1), PhotoId{2});
    EXPECT_EQ(photoIn(making, 4), PhotoId{1});
    EXPECT_EQ(photoIn(making, 2), PhotoId{3});
}

TEST(PhotoBuilders, AWishMayBeMetByASlotThatLiesTheOtherWay) {
    Making making = withPhotos({upright, lying});
    making.work.photos.at(PhotoId{1}).wish = inches(6, 4);
    making.work.photos.at(PhotoId{2}).wish = inches(6, 4);
    done(making, fillFreeSlots(making));
    EXPECT_EQ(photoIn(making, 1), PhotoId{1});
    EXPECT_EQ(photoIn(making, 2), PhotoId{2});
}

TEST(PhotoBuilders, EveryFreeSlotIsFilledEvenTheWrongWayRound) {
    Making making = withPhotos({lying, lying, lying, lying, lying});
    done(making, placePhoto(making, PieceId{4}, PhotoId{5}));
    const Placement before = making.work.placements.at(PieceId{4});
    done(making, fillFreeSlots(making));
    EXPECT_EQ(making.work.placements.size(), 4);
    EXPECT_EQ(making.work.placements.at(PieceId{4}), before);
    EXPECT_TRUE(fillFreeSlots(making).isEmpty());
}

}  // namespace
}  // namespace matwright::test
