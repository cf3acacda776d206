// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/sketch/sketch.h"

namespace matwright {
namespace {

constexpr Length inch = Length::inches(1);

Rect rect(Length left, Length top, Length right, Length bottom) {
    return {{left, right}, {top, bottom}};
}

TEST(Page, ABlankSketchIsOne12By12PageWithMarginsAndAGutter) {
    const Sketch sketch = blankSketch();
    EXPECT_EQ(surface(sketch.page), rect(Length(), Length(), 12 * inch, 12 * inch));
    EXPECT_EQ(pages(sketch.page).size(), 1u);
    EXPECT_EQ(sketch.page.margins, Margins::all(Length::inches(0, 1, 2)));
    EXPECT_EQ(sketch.page.gutter, Length::inches(0, 1, 4));
    EXPECT_TRUE(sketch.pieces.empty());
}

TEST(Page, ADoublePageIsTwoPagesAndTheGapBetweenThem) {
    PageSetup page;
    page.size = {8 * inch, 11 * inch};
    page.doublePage = true;
    page.foldGap = inch;
    EXPECT_EQ(surface(page), rect(Length(), Length(), 17 * inch, 11 * inch));
    ASSERT_EQ(pages(page).size(), 2u);
    EXPECT_EQ(pages(page)[0], rect(Length(), Length(), 8 * inch, 11 * inch));
    EXPECT_EQ(pages(page)[1], rect(9 * inch, Length(), 17 * inch, 11 * inch));
}

TEST(Page, EveryPageKeepsAllItsMarginsAtTheFoldToo) {
    PageSetup page;
    page.size = {8 * inch, 11 * inch};
    page.doublePage = true;
    page.foldGap = inch;
    page.margins = {inch, 2 * inch, 3 * inch, 4 * inch};
    ASSERT_EQ(insideMargins(page).size(), 2u);
    EXPECT_EQ(insideMargins(page)[0], rect(inch, 2 * inch, 5 * inch, 7 * inch));
    EXPECT_EQ(insideMargins(page)[1], rect(10 * inch, 2 * inch, 14 * inch, 7 * inch));
}

TEST(Page, APieceIsMeasuredFromTheLastPageThatBeginsAtItsLeftEndOrBefore) {
    PageSetup page;
    EXPECT_EQ(pageOf(pages(page), 50 * inch), 0u);
    page.doublePage = true;
    page.foldGap = inch;
    const Length right = 13 * inch;
    const Length tick = Length::fromTicks(1);
    for (const Length left : {-inch, Length(), 12 * inch, right - tick}) {
        EXPECT_EQ(pageOf(pages(page), left), 0u) << left.ticks();
    }
    for (const Length left : {right, right + tick, 50 * inch}) {
        EXPECT_EQ(pageOf(pages(page), left), 1u) << left.ticks();
    }
}

TEST(Page, PiecesAreFoundByIdAndNumberedFromTheBottom) {
    Sketch sketch;
    for (const std::uint32_t id : {7u, 3u, 5u}) {
        sketch.pieces.emplace(PieceId{id}, Piece{});
        sketch.order.push_back(PieceId{id});
    }
    EXPECT_EQ(pieceNumber(sketch, PieceId{7}), 1u);
    EXPECT_EQ(pieceNumber(sketch, PieceId{5}), 3u);
    EXPECT_EQ(pieceNumber(sketch, PieceId{1}), 0u);
    EXPECT_EQ(find(sketch, PieceId{3}), &sketch.pieces.at(PieceId{3}));
    EXPECT_EQ(find(sketch, PieceId{4}), nullptr);
    EXPECT_EQ(find(sketch, PieceId{}), nullptr);
}

TEST(Page, TheNextIdIsOnePastTheLargestOrTheFirstGapAtTheEnd) {
    Sketch sketch;
    EXPECT_EQ(nextId(sketch), PieceId{1});
    sketch.pieces.emplace(PieceId{1}, Piece{});
    sketch.pieces.emplace(PieceId{9}, Piece{});
    EXPECT_EQ(nextId(sketch), PieceId{10});
    sketch.pieces.emplace(PieceId{maxPieceId.value - 1}, Piece{});
    EXPECT_EQ(nextId(sketch), maxPieceId);
    sketch.pieces.emplace(maxPieceId, Piece{});
    EXPECT_EQ(nextId(sketch), PieceId{2});
}

}  // namespace
}  // namespace matwright
