// SPDX-License-Identifier: MIT
#include "core/template/text_block.h"

#include <gtest/gtest.h>

#include "tests/core/template/drawing_probe.h"

namespace matwright {
namespace {

TextBlock sample() {
    return {{"1 \u00B7 lighthouse", "print 6 \u00D7 4 in", "gjpqy"}, Length::points(8), true};
}

void expectInside(const TextBlock& block) {
    const Point at{Length::inches(2), Length::inches(3)};
    const Rect room = Rect::at(at, roomOf(block));
    const auto ticks = [](Length l) { return static_cast<double>(l.ticks()); };
    const auto boxes = test::textBoxes({"", "", itemsAt(block, at)});
    ASSERT_EQ(boxes.size(), block.lines.size());
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        EXPECT_GE(boxes[i].left, ticks(room.left()) - 1);
        EXPECT_LE(boxes[i].right, ticks(room.right()) + 1);
        EXPECT_GE(boxes[i].top, ticks(room.top()) - 1);
        EXPECT_LE(boxes[i].bottom, ticks(room.bottom()) + 1);
        for (std::size_t j = 0; j < i; ++j) {
            EXPECT_FALSE(test::overlap(boxes[i], boxes[j]));
        }
    }
}

TEST(TextBlock, KeepsItsLinesInItsRoomAndApart) {
    TextBlock block = sample();
    expectInside(block);
    block.centred = true;
    expectInside(block);
    block.upright = true;
    expectInside(block);
    block.centred = false;
    expectInside(block);
}

TEST(TextBlock, SwapsItsSidesWhenUpright) {
    TextBlock block = sample();
    const Size lying = roomOf(block);
    block.upright = true;
    EXPECT_EQ(roomOf(block), lying.turned());
}

TEST(Shortened, CutsBetweenCharactersAndMarksIt) {
    EXPECT_EQ(shortened("", 3), "");
    EXPECT_EQ(shortened("abc", 3), "abc");
    EXPECT_EQ(shortened("abcd", 3), "ab\u2026");
    EXPECT_EQ(shortened("Gr\u00FC\u00DFe", 5), "Gr\u00FC\u00DFe");
    EXPECT_EQ(shortened("Gr\u00FC\u00DFe", 4), "Gr\u00FC\u2026");
}

}  // namespace
}  // namespace matwright
