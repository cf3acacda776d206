// SPDX-License-Identifier: MIT
#include "core/sheets/search/shape_table.h"

#include <gtest/gtest.h>

#include <limits>

namespace matwright::sheets {
namespace {

Reduced twoKinds(bool threeStages = false) {
    Reduced reduced;
    reduced.threeStages = threeStages;
    reduced.kinds = {{3, 2, true, 2, {0, 0}}, {1, 1, false, 1, {1}}};
    reduced.stocks = {{6, 6, 1, 1, 0}};
    return reduced;
}

Work freeWork() {
    return {std::numeric_limits<std::uint64_t>::max(), Work::Clock::time_point::max()};
}

TEST(ShapeTable, KnowsEverySmallestBox) {
    const Reduced reduced = twoKinds();
    ShapeTable table(reduced, std::vector{2, 0}, {6, 6, 36, -1, false, nullptr});
    Work work = freeWork();
    ASSERT_TRUE(table.fill(work));
    ASSERT_EQ(table.states(), 3U);
    // Two 3x2 together: 3x4, 4x3, 2x6, 6x2; nothing smaller.
    EXPECT_TRUE(table.fits(2, 3, 4));
    EXPECT_TRUE(table.fits(2, 4, 3));
    EXPECT_TRUE(table.fits(2, 2, 6));
    EXPECT_TRUE(table.fits(2, 6, 2));
    EXPECT_FALSE(table.fits(2, 3, 3));
    EXPECT_FALSE(table.fits(2, 5, 2));
    EXPECT_EQ(table.layoutsOf(2, 6, 6).size(), 4U);
}

TEST(ShapeTable, LayoutsHoldWhatTheStateSays) {
    const Reduced reduced = twoKinds();
    ShapeTable table(reduced, std::vector{2, 1}, {6, 6, 36, -1, false, nullptr});
    Work work = freeWork();
    ASSERT_TRUE(table.fill(work));
    for (std::size_t state = 1; state < table.states(); ++state) {
        for (const Layout& layout : table.layoutsOf(state, 6, 6)) {
            EXPECT_EQ(contents(layout, 2), table.countsOf(state));
        }
    }
}

TEST(ShapeTable, LimitedWasteLeavesTightBoxes) {
    const Reduced reduced = twoKinds();
    ShapeTable table(reduced, std::vector{2, 1}, {6, 6, 36, 0, false, nullptr});
    Work work = freeWork();
    ASSERT_TRUE(table.fill(work));
    EXPECT_TRUE(table.hasShape(2));
    // 13 square units are no rectangle without waste.
    EXPECT_FALSE(table.hasShape(table.whole()));
}

TEST(ShapeTable, GoesOnWhereItStopped) {
    const Reduced reduced = twoKinds();
    ShapeTable table(reduced, std::vector{2, 1}, {6, 6, 36, -1, false, nullptr});
    Work work = freeWork();
    int rounds = 0;
    while (!table.fill(work, 1)) {
        ++rounds;
    }
    EXPECT_GT(rounds, 1);
    EXPECT_TRUE(table.hasShape(table.whole()));
}

TEST(ShapeTable, IsRefusedWhereTooLarge) {
    EXPECT_FALSE(ShapeTable::isTooLarge(std::vector{1, 1, 1}, 8));
    EXPECT_TRUE(ShapeTable::isTooLarge(std::vector{1, 1, 1}, 7));
    EXPECT_TRUE(ShapeTable::isTooLarge(std::vector<int>(200, 2000), 1'000'000));
}

}  // namespace
}  // namespace matwright::sheets
