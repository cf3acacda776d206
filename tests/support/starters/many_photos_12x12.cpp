// SPDX-License-Identifier: MIT
#include "tests/support/starters/layout.h"
#include "tests/support/starters/starters.h"

namespace matwright::test {

namespace {

Sketch fiveAroundASquare() {
    Layout l("Five small around a square", "A 5x5 in the corner of a grid of 2 1/2 in squares.",
             page12());
    l.strip(box(0_in, 3.75_in, 12_in, 1.25_in));
    l.block(box(1.625_in, 0.625_in, 8.75_in, 10.875_in));
    l.lay(focal(matted(photo(p5x5))), {2_in, 1_in});
    l.column({7.5_in, 1_in}, times(3, photo(p25x25)));
    l.row({2_in, 6.5_in}, times(2, photo(p25x25)));
    l.title(box(2_in, 9.375_in, 5.25_in, 1.75_in));
    l.journaling(box(7.5_in, 9.375_in, 2.5_in, 1.75_in));
    l.spot({0.8125_in, 4.375_in}, 0.875_in);
    l.spot({10.125_in, 1.25_in}, 0.875_in);
    l.spot({7.375_in, 9.25_in}, 0.75_in);
    return l.take();
}

Sketch twoRowsAndATitleBand() {
    Layout l("Two rows and a title band", "Three squares above and three below one wide strip.",
             page12());
    l.strip(box(0_in, 4.75_in, 12_in, 2.5_in));
    l.row({1.25_in, 1.25_in}, times(3, photo(p3x3)));
    l.row({1.25_in, 7.75_in}, times(3, photo(p3x3)));
    l.title(box(1.25_in, 5.125_in, 6.25_in, 1.75_in));
    l.journaling(box(7.75_in, 5.125_in, 3_in, 1.75_in));
    l.spot({1.25_in, 7.625_in}, 0.875_in);
    l.spot({10.625_in, 1.375_in}, 0.75_in);
    l.spot({7.25_in, 4.5_in}, 1_in);
    return l.take();
}

Sketch threeOverThreeUnder() {
    Layout l("Three over, three under", "A lying 4x6 between two rows of 2x2, words to the right.",
             page12());
    l.strip(box(0_in, 4.5_in, 12_in, 3_in));
    l.row({0.875_in, 1.5_in}, times(3, photo(p2x2)));
    l.lay(focal(matted(photo(p6x4), 0.25_in)), {0.875_in, 3.75_in});
    l.row({0.875_in, 8.5_in}, times(3, photo(p2x2)));
    l.title(box(7.875_in, 1.5_in, 3.25_in, 2_in));
    l.journaling(box(7.875_in, 8.5_in, 3.25_in, 2_in));
    l.spots({8.5_in, 6_in}, 0.75_in);
    l.spot({1_in, 3.875_in}, 0.75_in);
    l.spot({7.25_in, 8.125_in}, 1_in);
    return l.take();
}

Sketch titleInTheGrid() {
    Layout l("A title in the grid", "A 5x5, seven small squares and the title as one of them.",
             page12());
    l.strip(box(0_in, 9.5_in, 12_in, 1.5_in));
    l.column({0.625_in, 0.875_in}, times(3, photo(p25x25)));
    l.lay(focal(matted(photo(p5x5))), {3.375_in, 0.875_in});
    l.title(box(3.375_in, 6.375_in, 2.5_in, 2.5_in));
    l.lay(photo(p25x25), {6.125_in, 6.375_in});
    l.column({8.875_in, 0.875_in}, times(3, photo(p25x25)));
    l.journaling(box(3.375_in, 9.125_in, 8_in, 2.25_in));
    l.spot({1.875_in, 10.25_in}, 1.5_in);
    l.spot({3.5_in, 1_in}, 0.75_in);
    l.spot({8.5_in, 6.25_in}, 0.875_in);
    return l.take();
}

Sketch nineAndAColumn() {
    Layout l("A full page with a column of four",
             "A lying 4x6 between pairs of squares, four 2 1/2 in squares beside them.", page12());
    l.strip(box(0_in, 4.25_in, 12_in, 3.5_in));
    l.row({2.25_in, 0.625_in}, times(2, photo(p3x3)));
    l.lay(focal(matted(photo(p6x4))), {2.25_in, 3.875_in});
    l.row({2.25_in, 8.375_in}, times(2, photo(p3x3)));
    l.column({8.75_in, 0.625_in}, times(4, photo(p25x25)));
    l.title(box(0.625_in, 0.625_in, 1.375_in, 6.25_in));
    l.journaling(box(0.625_in, 7.125_in, 1.375_in, 4.25_in));
    l.spot({2.25_in, 4.125_in}, 0.875_in);
    l.spot({11.125_in, 0.875_in}, 0.75_in);
    l.spot({8.375_in, 11.125_in}, 0.875_in);
    return l.take();
}

Sketch nineSquares() {
    Layout l("Nine squares and a side title",
             "A plain grid of 2 1/2 in squares on a block with room all round.", page12());
    l.strip(box(0.75_in, 0_in, 1.75_in, 12_in));
    l.block(box(2.75_in, 1.25_in, 8.5_in, 8.5_in));
    l.grid({3_in, 1.5_in}, 3, times(9, photo(p25x25)));
    l.title(box(1_in, 1.25_in, 1.25_in, 8.5_in));
    l.journaling(box(2.75_in, 10_in, 8.5_in, 1.25_in));
    l.spot({1.625_in, 10.625_in}, 1.25_in);
    l.spot({11.125_in, 1.375_in}, 0.875_in);
    l.spot({5.625_in, 9.875_in}, 0.75_in);
    return l.take();
}

}  // namespace

Starters manyPhotosOn12x12() {
    return {
        {"five-around-a-square.sketch.svg", fiveAroundASquare()},
        {"two-rows-and-a-title-band.sketch.svg", twoRowsAndATitleBand()},
        {"three-over-three-under.sketch.svg", threeOverThreeUnder()},
        {"title-in-the-grid.sketch.svg", titleInTheGrid()},
        {"nine-and-a-column.sketch.svg", nineAndAColumn()},
        {"nine-squares.sketch.svg", nineSquares()},
    };
}

}  // namespace matwright::test
