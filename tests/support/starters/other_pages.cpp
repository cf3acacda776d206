// SPDX-License-Identifier: MIT
#include "tests/support/starters/layout.h"
#include "tests/support/starters/starters.h"

// 8x8 and, in whole millimetres, A4.
namespace matwright::test {

namespace {

Sketch squareOnAStrip() {
    Layout l("A square photo on a strip", "A 5x5 with a double mat on a small album page.",
             page8());
    l.strip(box(0_in, 3.5_in, 8_in, 1.75_in));
    l.lay(focal(doubleMatted(photo(p5x5))), {1.75_in, 0.5_in});
    l.title(box(1.75_in, 6.5_in, 3.5_in, 1_in));
    l.journaling(box(5.5_in, 6.5_in, 2_in, 1_in));
    l.pennant(box(0.625_in, 3.5_in, 0.625_in, 2.5_in));
    l.spot({1.875_in, 0.625_in}, 0.75_in);
    l.spot({7.25_in, 6_in}, 0.75_in);
    return l.take();
}

Sketch tallAndALittleOne() {
    Layout l("A tall photo and a little one",
             "A 4x6; title, a small square and the story beside it.", page8());
    l.block(box(0_in, 2.125_in, 8_in, 3_in));
    l.lay(focal(matted(photo(p4x6))), {0.5_in, 0.875_in});
    l.title(box(5_in, 0.875_in, 2.5_in, 1.25_in));
    l.lay(photo(p25x25), {5_in, 2.375_in});
    l.journaling(box(5_in, 5.125_in, 2.5_in, 2_in));
    l.spot({0.625_in, 1_in}, 0.75_in);
    l.spot({7.375_in, 2.375_in}, 0.625_in);
    l.spot({4.75_in, 7_in}, 0.875_in);
    return l.take();
}

Sketch eightAroundATitle() {
    Layout l("Eight around a title", "A ring of 2x2 on a block, the title in the middle.", page8());
    l.block(box(0.375_in, 0.375_in, 7.25_in, 7.25_in));
    l.row({0.75_in, 0.75_in}, times(3, photo(p2x2)));
    l.lay(photo(p2x2), {0.75_in, 3_in});
    l.title(box(3_in, 3_in, 2_in, 2_in));
    l.lay(photo(p2x2), {5.25_in, 3_in});
    l.row({0.75_in, 5.25_in}, times(3, photo(p2x2)));
    l.spot({2.75_in, 3_in}, 0.625_in);
    l.spot({7.125_in, 0.875_in}, 0.625_in);
    l.spot({5_in, 5.125_in}, 0.625_in);
    return l.take();
}

Sketch largeOnA4() {
    Layout l("One large photo and a side column", "A 13x18 cm on A4 with the story to its left.",
             a4Upright());
    l.strip(box(0_mm, 150_mm, 210_mm, 52_mm));
    l.lay(focal(doubleMatted(photo(p13x18cm))), {50_mm, 24_mm});
    l.journaling(box(12_mm, 24_mm, 32_mm, 114_mm));
    l.title(box(50_mm, 230_mm, 148_mm, 36_mm));
    l.spot({28_mm, 176_mm}, 24_mm);
    l.spot({196_mm, 26_mm}, 20_mm);
    l.spot({54_mm, 226_mm}, 16_mm);
    return l.take();
}

Sketch wideOverTwoOnA4() {
    Layout l("One wide over two squares", "A lying 13x18 cm and two squares cut from 4x4 prints.",
             a4Upright());
    l.block(box(0_mm, 90_mm, 210_mm, 130_mm));
    l.title(box(12_mm, 12_mm, 130_mm, 28_mm));
    l.lay(focal(matted(photo(p18x13cm))), {12_mm, 46_mm});
    l.row({12_mm, 188_mm}, times(2, trimmed(p4x4, {90_mm, 90_mm})));
    l.spot({160_mm, 26_mm}, 20_mm);
    l.spot({14_mm, 48_mm}, 18_mm);
    l.spot({186_mm, 184_mm}, 24_mm);
    return l.take();
}

Sketch twoOnA4Lying() {
    Layout l("Two tall prints and a wide margin", "Two 10x15 cm on a block, words to their left.",
             a4Lying());
    l.block(box(74_mm, 39_mm, 223_mm, 120_mm));
    l.row({67_mm, 21_mm}, times(2, matted(photo(p10x15cm))));
    l.title(box(12_mm, 21_mm, 49_mm, 40_mm));
    l.journaling(box(12_mm, 67_mm, 49_mm, 110_mm));
    l.spot({282_mm, 30_mm}, 20_mm);
    l.spot({70_mm, 24_mm}, 16_mm);
    l.spot({176_mm, 182_mm}, 18_mm);
    return l.take();
}

}  // namespace

Starters onOtherPages() {
    return {
        {"square-on-a-strip.sketch.svg", squareOnAStrip()},
        {"tall-and-a-little-one.sketch.svg", tallAndALittleOne()},
        {"eight-around-a-title.sketch.svg", eightAroundATitle()},
        {"a4-one-large-photo.sketch.svg", largeOnA4()},
        {"a4-one-wide-over-two.sketch.svg", wideOverTwoOnA4()},
        {"a4-two-tall-prints.sketch.svg", twoOnA4Lying()},
    };
}

}  // namespace matwright::test
