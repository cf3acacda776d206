// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/gesture/gesture.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

TEST(MovedBy, changesThePlaceAndNothingElse) {
    test::Random random(1);
    for (int i = 0; i < 100; ++i) {
        const Piece start = test::randomPiece(random);
        const Point by{Length::fromTicks(i * 17 - 900), Length::inches(i % 3)};
        Piece moved = movedBy(start, by);
        EXPECT_EQ(moved.place - start.place, by);
        moved.place = start.place;
        EXPECT_EQ(moved, start);
    }
}

}  // namespace
}  // namespace matwright
