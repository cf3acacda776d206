// SPDX-License-Identifier: MIT
#include "tests/support/starters/layout.h"
#include "tests/support/starters/starters.h"

// Two facing pages; no photo and no journaling lies across the fold.
namespace matwright::test {

namespace {

// The right page's x on 12x12 and on upright letter pages, with the 1/2 in of the fold.
Length right12(Length x) {
    return onTheRight(facing(page12()), x);
}
Length rightLetter(Length x) {
    return onTheRight(facing(letterUpright()), x);
}

Sketch stripAcrossBoth() {
    Layout l("One strip across both pages", "An 8x10 to the left, three 3x4 in a row to the right.",
             facing(page12()));
    l.strip(box(0_in, 6_in, 12_in, 2.5_in));
    l.strip(box(right12(0_in), 6_in, 12_in, 2.5_in));
    l.strip(box(0_in, 8.625_in, 12_in, 0.25_in));
    l.strip(box(right12(0_in), 8.625_in, 12_in, 0.25_in));
    l.lay(focal(doubleMatted(photo(p10x8))), {0.625_in, 0.625_in});
    l.title(box(0.625_in, 9.75_in, 7.5_in, 1.5_in));
    l.journaling(box(right12(0.875_in), 0.625_in, 6.75_in, 3.5_in));
    l.row({right12(0.875_in), 5.125_in}, times(3, matted(photo(p3x4))));
    l.spot({9_in, 10.5_in}, 1.125_in);
    l.cluster({right12(8.75_in), 2.375_in}, 1.375_in, Trail::Right);
    l.spot({right12(11_in), 9.25_in}, 1_in);
    return l.take();
}

Sketch photoAndStoryFacing() {
    Layout l("A large photo faces the story",
             "An upright 8x10 and one 4x6 with much room for words.", facing(page12()));
    l.strip(box(0.75_in, 0_in, 1.5_in, 12_in));
    l.strip(box(right12(0_in), 7.25_in, 12_in, 2.5_in));
    l.lay(focal(doubleMatted(photo(p8x10))), {2.625_in, 0.625_in});
    l.title(box(right12(0.75_in), 0.625_in, 5.25_in, 1.75_in));
    l.journaling(box(right12(0.75_in), 2.625_in, 5.25_in, 4.25_in));
    l.lay(matted(photo(p4x6)), {right12(6.75_in), 5.125_in});
    l.cluster({1.5_in, 9.5_in}, 1.5_in, Trail::Up);
    l.spot({11.125_in, 0.875_in}, 1_in);
    l.spot({right12(3.5_in), 8.5_in}, 1.5_in);
    return l.take();
}

Sketch sixInOneLongRow() {
    Layout l("Six in one long row", "Three 3x3 on each page in one line over a strip.",
             facing(page12()));
    l.strip(box(0_in, 5.125_in, 12_in, 1.75_in));
    l.strip(box(right12(0_in), 5.125_in, 12_in, 1.75_in));
    l.title(box(1.25_in, 1.25_in, 9.5_in, 2.75_in));
    l.row({1.25_in, 4.5_in}, times(3, photo(p3x3)));
    l.row({right12(1.25_in), 4.5_in}, times(3, photo(p3x3)));
    l.journaling(box(right12(1.25_in), 8_in, 9.5_in, 2.75_in));
    l.cluster({2_in, 8.75_in}, 1.25_in, Trail::Right);
    l.spot({10.75_in, 4.5_in}, 0.875_in);
    l.spot({right12(10.5_in), 4.375_in}, 1.25_in);
    return l.take();
}

Sketch sevenOfOneHeight() {
    Layout l("Seven of one height", "A 6x8 with two 3x4; four 4x4 make the same height.",
             facing(page12()));
    l.strip(box(0_in, 3.5_in, 12_in, 3_in));
    l.strip(box(right12(0_in), 3.5_in, 12_in, 3_in));
    l.lay(focal(doubleMatted(photo(p6x8))), {0.875_in, 0.75_in});
    l.column({7.875_in, 0.75_in}, times(2, matted(photo(p3x4))));
    l.grid({right12(0.875_in), 0.75_in}, 2, times(4, matted(photo(p4x4))));
    l.title(box(0.875_in, 9.875_in, 6.75_in, 1.375_in));
    l.journaling(box(right12(0.875_in), 9.875_in, 8.75_in, 1.375_in));
    l.spot({1_in, 0.875_in}, 1_in);
    l.spot({right12(10.75_in), 5_in}, 1.5_in);
    l.spot({7.5_in, 9.75_in}, 0.875_in);
    return l.take();
}

Sketch largeAndEightSmall() {
    Layout l("One large and eight small",
             "An upright 8x10 faces two columns of squares as tall as it.", facing(page12()));
    l.strip(box(0_in, 4.25_in, 12_in, 3.5_in));
    l.strip(box(right12(0_in), 4.25_in, 12_in, 3.5_in));
    l.lay(focal(doubleMatted(photo(p8x10))), {1.625_in, 0.625_in});
    l.grid({right12(0.625_in), 0.625_in}, 2, times(8, photo(p25x25)));
    l.title(box(right12(6.125_in), 0.625_in, 5.25_in, 3.25_in));
    l.journaling(box(right12(6.125_in), 8.125_in, 5.25_in, 3.25_in));
    l.spots({right12(7.25_in), 6_in}, 1.125_in);
    l.spot({10.25_in, 11.25_in}, 1_in);
    l.spot({1.75_in, 0.75_in}, 0.75_in);
    return l.take();
}

Sketch tiltedAndRound() {
    Layout l("Tilted left, round right",
             "A turned 5x7, a circle and three squares on facing blocks.", facing(page12()));
    l.block(box(1.5_in, 3_in, 10.5_in, 5.5_in));
    l.block(box(right12(0_in), 3_in, 10.5_in, 5.5_in));
    l.lay(turned(focal(bottomHeavy(photo(p5x7), 0.375_in, 1.25_in)), -4'000), {1.75_in, 1_in});
    l.lay(turned(bottomHeavy(photo(p25x25), 0.25_in, 0.75_in), 5'000), {8.25_in, 5.5_in});
    l.lay(round(matted(photo(p5x5), 0.25_in)), {right12(1_in), 1.5_in});
    l.column({right12(6.75_in), 1.5_in}, times(2, matted(photo(p3x3))));
    l.title(box(1.75_in, 10_in, 7.5_in, 1.375_in));
    l.journaling(box(right12(1_in), 9.375_in, 9_in, 2_in));
    l.spot({1.75_in, 1.5_in}, 1_in);
    l.spot({10.5_in, 10.625_in}, 1.25_in);
    l.spot({right12(5.25_in), 6.75_in}, 1.25_in);
    return l.take();
}

Sketch letterTallAndTwo() {
    Layout l("A tall photo faces two", "A 5x7 to the left, two lying 3 1/2 x 5 as tall together.",
             facing(letterUpright()));
    l.strip(box(0_in, 5_in, 8.5_in, 2.5_in));
    l.strip(box(rightLetter(0_in), 5_in, 8.5_in, 2.5_in));
    l.lay(focal(doubleMatted(photo(p5x7))), {2.125_in, 0.75_in});
    l.title(box(2.125_in, 8.875_in, 5.75_in, 1.5_in));
    l.column({rightLetter(0.625_in), 0.75_in}, times(2, matted(photo(p5x35))));
    l.journaling(box(rightLetter(0.625_in), 8.875_in, 7.25_in, 1.5_in));
    l.spot({1.0625_in, 6.25_in}, 1.25_in);
    l.spot({2.25_in, 0.875_in}, 0.75_in);
    l.spot({rightLetter(6.875_in), 6.25_in}, 1.5_in);
    return l.take();
}

Sketch letterOneFacesFour() {
    Layout l("One faces four", "A 6x8 to the left, four 3x4 of the same outline to the right.",
             facing(letterUpright()));
    l.block(box(0_in, 2.5_in, 8.5_in, 5_in));
    l.block(box(rightLetter(0_in), 2.5_in, 8.5_in, 5_in));
    l.lay(focal(matted(photo(p6x8))), {1.125_in, 0.75_in});
    l.grid({rightLetter(1.125_in), 0.75_in}, 2, times(4, photo(p3x4)));
    l.title(box(1.125_in, 9.25_in, 6.25_in, 1.25_in));
    l.journaling(box(rightLetter(1.125_in), 9.25_in, 6.25_in, 1.25_in));
    l.spot({1.25_in, 0.875_in}, 0.875_in);
    l.spot({7.25_in, 8.875_in}, 1_in);
    l.spot({rightLetter(7.375_in), 0.875_in}, 0.875_in);
    return l.take();
}

}  // namespace

Starters onDoublePages() {
    return {
        {"double-one-strip-across.sketch.svg", stripAcrossBoth()},
        {"double-photo-faces-story.sketch.svg", photoAndStoryFacing()},
        {"double-six-in-a-row.sketch.svg", sixInOneLongRow()},
        {"double-seven-of-one-height.sketch.svg", sevenOfOneHeight()},
        {"double-one-large-eight-small.sketch.svg", largeAndEightSmall()},
        {"double-tilted-and-round.sketch.svg", tiltedAndRound()},
        {"double-letter-tall-and-two.sketch.svg", letterTallAndTwo()},
        {"double-letter-one-faces-four.sketch.svg", letterOneFacesFour()},
    };
}

}  // namespace matwright::test
