// SPDX-License-Identifier: MIT
#include "core/making/copies.h"

#include <gtest/gtest.h>

#include "tests/core/making/random_making.h"

namespace matwright::test {
namespace {

Making withPhotoIn(std::uint32_t slot) {
    Making making = fourSlots();
    const Photo photos[] = {plainPhoto(1), plainPhoto(2)};
    EXPECT_TRUE(apply(making, {{}, addPhotos(making.work, photos)}));
    EXPECT_TRUE(apply(making, {{}, placePhoto(making, PieceId{slot}, PhotoId{2})}));
    making.work.placements.at(PieceId{slot}).border = Length::inches(0, 1, 4);
    return making;
}

void add(Making& making, const Making& copy) {
    const auto inverse = apply(making, addCopy(making, copy));
    ASSERT_TRUE(inverse) << inverse.error().text();
}

TEST(Copies, LieOnTopInTheOrderOfTheOriginals) {
    Making making = withPhotoIn(1);
    making.sketch.order = {PieceId{3}, PieceId{1}, PieceId{2}, PieceId{4}};
    const PieceId chosen[] = {PieceId{1}, PieceId{3}, PieceId{77}};
    const Sketch before = making.sketch;
    add(making, copyOf(making, chosen));
    EXPECT_EQ(making.sketch.order, (std::vector{PieceId{3}, PieceId{1}, PieceId{2}, PieceId{4},
                                                PieceId{5}, PieceId{6}}));
    EXPECT_EQ(making.sketch.pieces.at(PieceId{5}), before.pieces.at(PieceId{3}));
    EXPECT_EQ(making.sketch.pieces.at(PieceId{6}), before.pieces.at(PieceId{1}));
}

TEST(Copies, OfNothingChangeNothing) {
    const Making making = withPhotoIn(1);
    EXPECT_TRUE(addCopy(making, copyOf(making, {})).isEmpty());
}

TEST(Copies, BringThePhotoAsItIsCropped) {
    Making making = withPhotoIn(1);
    making.work.placements.at(PieceId{1}).crop.centreX += 1000;
    const PieceId chosen[] = {PieceId{1}, PieceId{2}};
    add(making, copyOf(making, chosen));
    EXPECT_EQ(making.work.placements.at(PieceId{5}), making.work.placements.at(PieceId{1}));
    EXPECT_FALSE(making.work.placements.contains(PieceId{6}));
    EXPECT_EQ(making.work.photos.size(), 2);
}

TEST(Copies, PutThePhotoBackThatACutTookOutOfItsSlot) {
    Making making = withPhotoIn(3);
    const Placement there = making.work.placements.at(PieceId{3});
    const PieceId chosen[] = {PieceId{3}};
    const Making copy = copyOf(making, chosen);
    ASSERT_TRUE(apply(making, {removePieces(making.sketch, chosen), {}}));
    ASSERT_TRUE(making.work.placements.empty());
    add(making, copy);
    ASSERT_EQ(making.work.placements.size(), 1);
    EXPECT_EQ(making.work.placements.begin()->second, there);
}

TEST(Copies, OnAnotherPageBringTheirPhotosAndPapersAlong) {
    Making from = withPhotoIn(1);
    for (const char* paper : {"navy", "cream"}) {
        from.sketch.pieces.at(PieceId{1})
            .mats.push_back({Length::inches(0, 1, 4), std::nullopt, paper, false});
    }
    for (const char* paper : {"navy", "cream", "kraft"}) {
        from.work.papers[paper].colour = {10, 20, 30};
    }
    Making to = fourSlots();
    to.work.papers["cream"].colour = {250, 240, 220};
    const Photo other[] = {plainPhoto(9)};
    ASSERT_TRUE(apply(to, {{}, addPhotos(to.work, other)}));
    const PieceId chosen[] = {PieceId{1}};
    add(to, copyOf(from, chosen));
    ASSERT_EQ(to.work.photos.size(), 2);
    const Placement there = to.work.placements.at(PieceId{5});
    EXPECT_EQ(to.work.photos.at(there.photo), plainPhoto(2));
    EXPECT_EQ(to.work.papers.at("cream").colour, (Colour{250, 240, 220}));
    EXPECT_EQ(to.work.papers.at("navy").colour, (Colour{10, 20, 30}));
    EXPECT_FALSE(to.work.papers.contains("kraft"));
    EXPECT_EQ(findFault(to), std::nullopt);
}

TEST(Copies, OfRandomPagesAreSoundAndUndone) {
    for (unsigned seed = 1; seed <= 100; ++seed) {
        Random random(seed);
        const Making from = randomMaking(random, 12, 6);
        Making to = randomMaking(random, 5, 3);
        const Making copy = copyOf(from, from.sketch.order);
        EXPECT_EQ(findFault(copy), std::nullopt) << "seed " << seed;
        const Making before = to;
        const auto inverse = apply(to, addCopy(to, copy));
        ASSERT_TRUE(inverse) << "seed " << seed << ": " << inverse.error().text();
        EXPECT_EQ(findFault(to), std::nullopt) << "seed " << seed;
        EXPECT_EQ(to.work.placements.size(),
                  before.work.placements.size() + from.work.placements.size());
        ASSERT_TRUE(apply(to, *inverse));
        EXPECT_EQ(to, before) << "seed " << seed;
    }
}

}  // namespace
}  // namespace matwright::test
