// SPDX-License-Identifier: MIT
#include "core/making/fold.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

constexpr Length inch = Length::inches(1);

PageSetup doublePage() {
    PageSetup page;
    page.doublePage = true;
    page.foldGap = Length::inches(0, 1, 2);
    return page;
}

// The left page ends at 12 in, the right one begins at 12 1/2 in.
Piece slotAt(Length left) {
    Piece slot;
    slot.kind = PieceKind::PhotoSlot;
    slot.place = {left, inch};
    slot.size = {inch * 6, inch * 4};
    return slot;
}

TEST(Fold, PartsASlotThatReachesOverItAndLeavesTheGapOut) {
    const auto parting = foldParting(slotAt(inch * 8), {}, doublePage());
    ASSERT_TRUE(parting);
    EXPECT_EQ(parting->left, inch * 4);
    EXPECT_EQ(parting->right, Length::inches(1, 1, 2));
    EXPECT_EQ(shownWindow(slotAt(inch * 8), {}, doublePage()),
              (Size{Length::inches(5, 1, 2), inch * 4}));
    EXPECT_DOUBLE_EQ(parting->share({}), 4 / 5.5);
}

TEST(Fold, BorderIsOutsideOnlyAndNotAtTheFold) {
    const Length border = Length::inches(0, 1, 4);
    const auto parting = foldParting(slotAt(inch * 8), border, doublePage());
    ASSERT_TRUE(parting);
    EXPECT_EQ(parting->window(inch * 4, border), (Size{inch * 5, Length::inches(3, 1, 2)}));
    EXPECT_DOUBLE_EQ(parting->share(border), 3.75 / 5);
}

TEST(Fold, LeavesSlotsOnOnePageAndTurnedOnesWhole) {
    EXPECT_FALSE(foldParting(slotAt(inch * 6), {}, doublePage())) << "touches the fold";
    EXPECT_FALSE(foldParting(slotAt(inch * 13), {}, doublePage()));
    EXPECT_FALSE(foldParting(slotAt(inch * 8), {}, PageSetup{}));
    Piece turned = slotAt(inch * 8);
    turned.rotation = Angle::degrees(3);
    EXPECT_FALSE(foldParting(turned, {}, doublePage()));
    EXPECT_EQ(shownWindow(turned, {}, doublePage()), turned.size);
}

}  // namespace
}  // namespace matwright
