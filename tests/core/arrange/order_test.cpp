// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/arrange/arrange.h"
#include "tests/core/arrange/rows.h"

namespace matwright {
namespace {

using namespace test;
using Ids = std::vector<std::uint32_t>;

Sketch five() {
    return sketchOf(std::vector<Rect>(5, tickBox(0, 20'000)));
}

std::vector<PieceId> idsOf(const Ids& values) {
    std::vector<PieceId> ids;
    for (const std::uint32_t value : values) {
        ids.push_back(PieceId{value});
    }
    return ids;
}

TEST(Reordered, movesTheChosenPiecesAndKeepsTheirOrder) {
    struct Row {
        Ids chosen;
        OrderStep step;
        Ids order;
    };
    const Row rows[] = {
        {{2}, OrderStep::ToFront, {1, 3, 4, 5, 2}},
        {{4, 2}, OrderStep::ToFront, {1, 3, 5, 2, 4}},
        {{2}, OrderStep::Forward, {1, 3, 2, 4, 5}},
        {{2, 3}, OrderStep::Forward, {1, 4, 2, 3, 5}},
        {{1, 3}, OrderStep::Forward, {2, 1, 4, 3, 5}},
        {{4, 5}, OrderStep::Forward, {1, 2, 3, 4, 5}},
        {{3, 5}, OrderStep::Forward, {1, 2, 4, 3, 5}},
        {{4}, OrderStep::Backward, {1, 2, 4, 3, 5}},
        {{3, 4}, OrderStep::Backward, {1, 3, 4, 2, 5}},
        {{1, 2}, OrderStep::Backward, {1, 2, 3, 4, 5}},
        {{1, 3}, OrderStep::Backward, {1, 3, 2, 4, 5}},
        {{4}, OrderStep::ToBack, {4, 1, 2, 3, 5}},
        {{4, 2}, OrderStep::ToBack, {2, 4, 1, 3, 5}},
        {{1, 2, 3, 4, 5}, OrderStep::ToFront, {1, 2, 3, 4, 5}},
        {{}, OrderStep::ToFront, {1, 2, 3, 4, 5}},
        {{9}, OrderStep::ToBack, {1, 2, 3, 4, 5}},
    };
    for (const Row& row : rows) {
        const Edit edit = reordered(five(), idsOf(row.chosen), row.step);
        EXPECT_EQ(after(five(), edit).order, idsOf(row.order))
            << static_cast<int>(row.step) << testing::PrintToString(row.chosen);
        EXPECT_EQ(edit.isEmpty(), row.order == (Ids{1, 2, 3, 4, 5}));
    }
}

TEST(Reordered, doesNotTakeLockedPiecesAlong) {
    Sketch start = five();
    pieceOf(start, 2).locked = true;
    EXPECT_EQ(after(start, reordered(start, idsOf({1, 2}), OrderStep::ToFront)).order,
              idsOf({2, 3, 4, 5, 1}));
}

TEST(Reordered, doesNothingToAnEmptySketch) {
    for (const OrderStep step :
         {OrderStep::ToFront, OrderStep::Forward, OrderStep::Backward, OrderStep::ToBack}) {
        EXPECT_TRUE(reordered(blankSketch(), idsOf({1}), step).isEmpty());
    }
}

}  // namespace
}  // namespace matwright
