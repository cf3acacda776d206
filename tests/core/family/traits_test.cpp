// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/carry/turned_sketch.h"
#include "core/family/family.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

using namespace test;

TEST(FamilyTraits, bytesGiveBackEqualTraits) {
    Random random(81);
    for (int i = 0; i < 500; ++i) {
        const FamilyTraits traits = familyTraits(randomSketch(random, i % 12));
        const auto back = FamilyTraits::fromBytes(traits.toBytes());
        ASSERT_TRUE(back) << "seed 81, sketch " << i;
        EXPECT_EQ(*back, traits) << "seed 81, sketch " << i;
    }
}

TEST(FamilyTraits, bytesCutShortOrTooLongAreRefused) {
    Random random(82);
    const std::string bytes = familyTraits(randomSketch(random, 3)).toBytes();
    for (std::size_t length = 0; length < bytes.size(); ++length) {
        EXPECT_FALSE(FamilyTraits::fromBytes(std::string_view(bytes).substr(0, length)));
    }
    const auto longer = FamilyTraits::fromBytes(bytes + '\0');
    ASSERT_FALSE(longer);
    EXPECT_EQ(longer.error().code, ErrorCode::Malformed);
}

TEST(FamilyTraits, anyBytesAreReadOrRefusedButNeverRunOver) {
    Random random(83);
    for (int i = 0; i < 5'000; ++i) {
        std::string bytes = "F1";
        for (auto n = below(random, 60); n > 0; --n) {
            bytes += static_cast<char>(below(random, 256));
        }
        if (const auto read = FamilyTraits::fromBytes(bytes)) {
            EXPECT_EQ(FamilyTraits::fromBytes(read->toBytes()), *read);
        }
    }
}

TEST(FamilyTraits, theKeyStaysUnderEveryTurn) {
    Random random(84);
    for (int i = 0; i < 300; ++i) {
        const Sketch sketch = randomSketch(random, 6);
        const std::uint64_t key = familyTraits(sketch).key();
        for (const WholeTurn turn : allWholeTurns) {
            if (const auto other = turned(sketch, turn)) {
                EXPECT_EQ(familyTraits(*other).key(), key) << "seed 84, sketch " << i;
            }
        }
    }
}

TEST(FamilyTraits, theKeyTellsPrintsMatsAndPagesApart) {
    Random random(85);
    Sketch sketch = randomSketch(random, 0);
    Piece photo;
    photo.kind = PieceKind::PhotoSlot;
    photo.size = {Length::inches(4), Length::inches(6)};
    photo.printSize = photo.size;
    sketch.pieces.emplace(PieceId{1}, photo);
    sketch.order = {PieceId{1}};
    const std::uint64_t key = familyTraits(sketch).key();
    Sketch other = sketch;
    other.pieces.at(PieceId{1}).printSize = Size{Length::inches(5), Length::inches(7)};
    EXPECT_NE(familyTraits(other).key(), key);
    other = sketch;
    other.pieces.at(PieceId{1}).mats = {{Length::inches(0, 1, 8), {}, ""}};
    EXPECT_NE(familyTraits(other).key(), key);
    other = sketch;
    other.page.size.width += Length::fromTicks(1);
    EXPECT_NE(familyTraits(other).key(), key);
    other = sketch;
    other.name = "Another name";
    other.page.gutter += Length::fromTicks(1);
    other.pieces.at(PieceId{1}).place.x += Length::fromTicks(1);
    EXPECT_EQ(familyTraits(other).key(), key);
}

}  // namespace
}  // namespace matwright
