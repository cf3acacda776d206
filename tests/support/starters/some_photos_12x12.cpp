// SPDX-License-Identifier: MIT
#include "tests/support/starters/layout.h"
#include "tests/support/starters/starters.h"

namespace matwright::test {

namespace {

Sketch fourOnABlock() {
    Layout l("Four on a block", "Four lying 3x4 close together, a strip down the left side.",
             page12());
    l.strip(box(0.75_in, 0_in, 1.25_in, 12_in));
    l.block(box(2.5_in, 1.25_in, 8.75_in, 6.75_in));
    l.grid({2.75_in, 1.5_in}, 2, times(4, photo(p4x3)));
    l.title(box(2.5_in, 8.25_in, 5.25_in, 1.5_in));
    l.journaling(box(8_in, 8.25_in, 3.25_in, 2.5_in));
    l.cluster({1.375_in, 8.5_in}, 1.25_in, Trail::Down);
    l.spot({11_in, 1.5_in}, 0.75_in);
    l.spot({6.625_in, 7.875_in}, 0.875_in);
    return l.take();
}

Sketch wideOverThree() {
    Layout l("One wide over three small", "A lying 6x8 over three squares of the same width.",
             page12());
    l.block(box(0_in, 0.75_in, 9.5_in, 9.25_in));
    l.lay(focal(photo(p8x6)), {1_in, 1_in});
    l.row({1_in, 7.25_in}, times(3, photo(p25x25)));
    l.title(box(1_in, 10.25_in, 8_in, 1.125_in));
    l.journaling(box(9.75_in, 3.25_in, 1.75_in, 6.75_in));
    l.spot({10.625_in, 2.125_in}, 1.5_in);
    l.spot({0.875_in, 0.875_in}, 0.875_in);
    l.spot({9.125_in, 9.875_in}, 0.75_in);
    return l.take();
}

Sketch fourAroundACircle() {
    Layout l("Four around a circle", "The title sits in a circle where four squares meet.",
             page12());
    l.roundBlock(box(0.75_in, 0.5_in, 10.5_in, 10.5_in));
    l.grid({1.875_in, 1.625_in}, 2, times(4, photo(p4x4)));
    l.roundTitle(box(4.5_in, 4.25_in, 3_in, 3_in));
    l.journaling(box(3_in, 10.125_in, 6_in, 1.25_in));
    l.spot({1.75_in, 1.5_in}, 1_in);
    l.spot({10.25_in, 3.5_in}, 0.75_in);
    l.spot({9.75_in, 10.375_in}, 1.25_in);
    return l.take();
}

Sketch twoOneTwo() {
    Layout l("Two, one, two", "A tall 4x6 between two pairs of squares of the same height.",
             page12());
    l.block(box(0_in, 5.875_in, 12_in, 6.125_in));
    l.column({0.625_in, 2.75_in}, times(2, photo(p3x3)));
    l.lay(focal(matted(photo(p4x6))), {3.875_in, 2.75_in});
    l.column({8.375_in, 2.75_in}, times(2, photo(p3x3)));
    l.title(box(0.625_in, 0.875_in, 7.5_in, 1.375_in));
    l.journaling(box(3.875_in, 9.5_in, 7.5_in, 1.5_in));
    l.cluster({9_in, 1.5625_in}, 1_in, Trail::Right);
    l.spot({7.875_in, 8.75_in}, 1_in);
    l.spot({0.75_in, 2.875_in}, 0.75_in);
    return l.take();
}

Sketch oneOverFour() {
    Layout l("One wide over a row of four",
             "A lying 6x8 and four 2x2 on a strip, left side kept free.", page12());
    l.strip(box(1_in, 0_in, 0.75_in, 12_in));
    l.strip(box(0_in, 8.125_in, 12_in, 1.25_in));
    l.lay(focal(doubleMatted(photo(p8x6))), {2.5_in, 0.75_in});
    l.row({2.5_in, 7.75_in}, times(4, photo(p2x2)));
    l.title(box(2.5_in, 10.125_in, 4.25_in, 1.125_in));
    l.journaling(box(7_in, 10.125_in, 4.25_in, 1.125_in));
    l.spot({1.375_in, 8.75_in}, 1.5_in);
    l.spot({11_in, 7.375_in}, 0.875_in);
    l.spot({2.625_in, 0.875_in}, 0.75_in);
    return l.take();
}

}  // namespace

Starters somePhotosOn12x12() {
    return {
        {"four-on-a-block.sketch.svg", fourOnABlock()},
        {"one-wide-over-three.sketch.svg", wideOverThree()},
        {"four-around-a-circle.sketch.svg", fourAroundACircle()},
        {"two-one-two.sketch.svg", twoOneTwo()},
        {"one-wide-over-four.sketch.svg", oneOverFour()},
    };
}

}  // namespace matwright::test
