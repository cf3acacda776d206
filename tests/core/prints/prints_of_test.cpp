// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/prints/print_job.h"
#include "core/sketch/edit.h"

namespace matwright {

namespace {

constexpr Length in(std::int64_t n) {
    return Length::inches(n);
}
constexpr Length eighths(std::int64_t n) {
    return Length::inches(0, n, 8);
}

// Slots of these boxes on a page, each with photo 1.
Making makingWith(const std::vector<Rect>& boxes, bool doublePage, Length foldGap = {}) {
    Making making{blankSketch(), {}};
    making.sketch.page.doublePage = doublePage;
    making.sketch.page.foldGap = foldGap;
    std::vector<Piece> pieces;
    for (const Rect& box : boxes) {
        Piece& piece = pieces.emplace_back();
        piece.kind = PieceKind::PhotoSlot;
        piece.place = box.topLeft();
        piece.size = box.size();
        piece.printSize = box.size();
    }
    EXPECT_TRUE(apply(making.sketch, addPieces(making.sketch, pieces)));
    Photo photo;
    photo.path = "/nowhere/one.jpg";
    photo.upright = {4032, 3024};
    making.work.photos[{1}] = photo;
    for (const PieceId id : making.sketch.order) {
        making.work.placements[id] = Placement{{1}, {}, {}};
    }
    return making;
}

TEST(PrintsOf, GiveOnePrintASlotFromBottomToTop) {
    Making making = makingWith(
        {Rect::at({in(1), in(1)}, {in(4), in(6)}), Rect::at({in(6), in(1)}, {in(3), in(4)})},
        false);
    making.sketch.pieces.at(making.sketch.order[1]).name = "Focal photo";
    const std::vector<Print> prints = printsOf(making, {});
    ASSERT_EQ(prints.size(), 2U);
    EXPECT_EQ(prints[0].paper, (Size{in(4), in(6)}));
    EXPECT_EQ(prints[0].slot, making.sketch.order[0]);
    EXPECT_EQ(prints[1].name, "2 Focal photo");
    EXPECT_EQ(prints[1].window, (Size{in(3), in(4)}));
}

TEST(PrintsOf, LeaveOutSlotsWithoutAPhoto) {
    Making making = makingWith({Rect::at({in(1), in(1)}, {in(4), in(6)})}, false);
    making.work.placements.clear();
    EXPECT_TRUE(printsOf(making, {}).empty());
}

TEST(PrintsOf, LayTheTrimInTheMiddleOfThePrintSize) {
    Making making = makingWith({Rect::at({in(1), in(1)}, {in(3), in(3)})}, false);
    making.sketch.pieces.begin()->second.printSize = Size{in(3), in(4)};
    const Print print = printsOf(making, {}).front();
    EXPECT_EQ(print.paper, (Size{in(3), in(4)}));
    EXPECT_EQ(print.trim, Rect::at({Length(), eighths(4)}, {in(3), in(3)}));
}

TEST(PrintsOf, TakePaperForTheBleedWhereThePrintSizeIsTooSmall) {
    Making making = makingWith({Rect::at({in(1), in(1)}, {in(3), in(3)})}, false);
    making.sketch.pieces.begin()->second.printSize = Size{in(3), in(4)};
    PrintOptions options;
    options.bleed = eighths(1);
    const Print print = printsOf(making, options).front();
    EXPECT_EQ(print.paper, (Size{in(3) + eighths(2), in(4)}));
    EXPECT_EQ(print.trim, Rect::at({eighths(1), eighths(4)}, {in(3), in(3)}));
}

TEST(PrintsOf, TakeTheWhiteBorderFromTheWindow) {
    Making making = makingWith({Rect::at({in(1), in(1)}, {in(4), in(6)})}, false);
    making.work.placements.begin()->second.border = eighths(2);
    const Print print = printsOf(making, {}).front();
    EXPECT_EQ(print.border, eighths(2));
    EXPECT_EQ(print.window, (Size{in(3) + eighths(4), in(5) + eighths(4)}));
}

TEST(PrintsOf, PartASlotAcrossTheFoldIntoTwoThatMeet) {
    // 8 x 5 from 2 in left of the fold on: 2 in and 6 in with no gap between the pages.
    const Making making = makingWith({Rect::at({in(10), in(3)}, {in(8), in(5)})}, true, Length());
    const std::vector<Print> prints = printsOf(making, {});
    ASSERT_EQ(prints.size(), 2U);
    EXPECT_EQ(prints[0].paper, (Size{in(2), in(5)}));
    EXPECT_EQ(prints[1].paper, (Size{in(6), in(5)}));
    EXPECT_EQ(prints[0].window, (Size{in(8), in(5)}));
    EXPECT_DOUBLE_EQ(prints[0].from, 0);
    EXPECT_DOUBLE_EQ(prints[0].to, 0.25);
    EXPECT_EQ(prints[0].to, prints[1].from);
    EXPECT_DOUBLE_EQ(prints[1].to, 1);
    EXPECT_TRUE(prints[0].name.ends_with(", left part")) << prints[0].name;
    EXPECT_TRUE(prints[1].name.ends_with(", right part")) << prints[1].name;
}

TEST(PrintsOf, LoseNothingInTheFoldGap) {
    // The pages are 1/2 in apart: 2 in on the left page, 5 1/2 in on the right one.
    Making making = makingWith({Rect::at({in(10), in(3)}, {in(8), in(5)})}, true, eighths(4));
    making.work.placements.begin()->second.border = eighths(2);
    const std::vector<Print> prints = printsOf(making, {});
    ASSERT_EQ(prints.size(), 2U);
    EXPECT_EQ(prints[0].paper.width + prints[1].paper.width, in(7) + eighths(4));
    // The window is what shows on both papers together.
    EXPECT_EQ(prints[0].window.width, in(7));
    EXPECT_DOUBLE_EQ(prints[0].to, (2 - 0.25) / 7);
    EXPECT_EQ(prints[0].to, prints[1].from);
}

TEST(PrintsOf, GiveOnePrintWhereTheSlotOnlyTouchesTheFold) {
    EXPECT_EQ(printsOf(makingWith({Rect::at({in(8), in(3)}, {in(4), in(6)})}, true), {}).size(),
              1U);
    EXPECT_EQ(printsOf(makingWith({Rect::at({in(12), in(3)}, {in(4), in(6)})}, true), {}).size(),
              1U);
}

TEST(PrintsOf, GiveOnePrintOfATurnedSlotAcrossTheFold) {
    Making making = makingWith({Rect::at({in(10), in(3)}, {in(8), in(5)})}, true);
    making.sketch.pieces.begin()->second.rotation = Angle::degrees(5);
    EXPECT_EQ(printsOf(making, {}).size(), 1U);
}

}  // namespace

}  // namespace matwright
