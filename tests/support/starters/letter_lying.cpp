// SPDX-License-Identifier: MIT
#include "tests/support/starters/layout.h"
#include "tests/support/starters/starters.h"

namespace matwright::test {

namespace {

Sketch photoLeftStoryRight() {
    Layout l("Photo left, story right", "A 5x7 at full height and a wide place for words.",
             letterLying());
    l.strip(box(0_in, 5.25_in, 11_in, 1.875_in));
    l.strip(box(0_in, 7.25_in, 11_in, 0.25_in));
    l.lay(focal(matted(photo(p5x7))), {0.625_in, 0.625_in});
    l.title(box(6.25_in, 0.625_in, 4.125_in, 1.375_in));
    l.journaling(box(6.25_in, 2.25_in, 4.125_in, 2.625_in));
    l.pennant(box(6.75_in, 5.25_in, 0.75_in, 2.375_in));
    l.pennant(box(7.75_in, 5.25_in, 0.75_in, 1.5_in));
    l.spot({0.75_in, 0.75_in}, 0.75_in);
    l.spot({9.75_in, 6.1875_in}, 1.25_in);
    return l.take();
}

Sketch twoUprights() {
    Layout l("Two uprights, room to the left", "Two 4x6 side by side on a block, an upright strip.",
             letterLying());
    l.strip(box(0.5_in, 0_in, 0.75_in, 8.5_in));
    l.block(box(1.25_in, 1.25_in, 9.75_in, 4.5_in));
    l.row({1.75_in, 0.625_in}, times(2, matted(photo(p4x6))));
    l.title(box(1.75_in, 7.125_in, 4.25_in, 0.875_in));
    l.journaling(box(6.25_in, 7.125_in, 4.25_in, 0.875_in));
    l.cluster({0.875_in, 6.75_in}, 1_in, Trail::Up);
    l.spot({1.875_in, 0.75_in}, 0.75_in);
    l.spot({10.375_in, 6.625_in}, 0.875_in);
    return l.take();
}

Sketch wideWithTwoSmall() {
    Layout l("A wide photo with two small",
             "A lying 4x6 and two 2x2 on a strip, words above and below.", letterLying());
    l.strip(box(0_in, 3_in, 11_in, 2.5_in));
    l.strip(box(0_in, 5.625_in, 11_in, 0.1875_in));
    l.title(box(0.875_in, 0.5_in, 5_in, 1.125_in));
    l.lay(focal(doubleMatted(photo(p6x4))), {0.875_in, 1.875_in});
    l.column({7.875_in, 1.875_in}, times(2, matted(photo(p2x2))));
    l.journaling(box(4.125_in, 6.875_in, 6_in, 1.125_in));
    l.cluster({6.75_in, 1.0625_in}, 0.875_in, Trail::Right);
    l.spot({1_in, 2_in}, 0.875_in);
    l.spot({10_in, 6.5_in}, 0.75_in);
    return l.take();
}

Sketch tallAndFourSmall() {
    Layout l("One tall, four small and words", "A 5x7 beside title, story and a square of 2x2.",
             withMargin(letterLying(), 0.375_in));
    l.block(box(5_in, 2.5_in, 6_in, 6_in));
    l.lay(focal(matted(photo(p5x7))), {0.375_in, 0.625_in});
    l.title(box(5.875_in, 0.625_in, 2.875_in, 1.5_in));
    l.journaling(box(9_in, 0.625_in, 1.625_in, 1.5_in));
    l.grid({5.875_in, 3.125_in}, 2, times(4, matted(photo(p2x2))));
    l.spot({0.5_in, 0.75_in}, 0.75_in);
    l.spot({10.5_in, 3.125_in}, 0.75_in);
    l.spot({5.625_in, 7.625_in}, 0.875_in);
    return l.take();
}

Sketch tallAndSixSmall() {
    Layout l("One tall and six small", "A 4x6 beside six 2x2 of the same height; words below.",
             letterLying());
    l.strip(box(0_in, 1.5_in, 11_in, 4.5_in));
    l.lay(focal(matted(photo(p4x6), 0.25_in)), {1_in, 0.5_in});
    l.grid({5.75_in, 0.5_in}, 2, times(6, photo(p2x2)));
    l.title(box(1_in, 7.25_in, 4.5_in, 0.75_in));
    l.journaling(box(5.75_in, 7.25_in, 4.25_in, 0.75_in));
    l.spot({1.125_in, 0.625_in}, 0.75_in);
    l.spot({10_in, 2.625_in}, 0.875_in);
    l.spot({5.375_in, 6.875_in}, 0.75_in);
    return l.take();
}

Sketch twoRowsOfFour() {
    Layout l("Two rows of four", "Eight matted 2x2 on a wide block between title and story.",
             letterLying());
    l.block(box(0_in, 2.5_in, 11_in, 3.5_in));
    l.title(box(0.625_in, 0.5_in, 5.5_in, 1.125_in));
    l.grid({0.625_in, 1.875_in}, 4, times(8, matted(photo(p2x2))));
    l.journaling(box(4.625_in, 6.875_in, 5.75_in, 1.125_in));
    l.spots({6.75_in, 1.0625_in}, 0.75_in);
    l.spot({0.75_in, 1.875_in}, 0.75_in);
    l.spot({10.25_in, 6.625_in}, 0.875_in);
    return l.take();
}

}  // namespace

Starters onLetterLying() {
    return {
        {"photo-left-story-right.sketch.svg", photoLeftStoryRight()},
        {"two-uprights.sketch.svg", twoUprights()},
        {"wide-with-two-small.sketch.svg", wideWithTwoSmall()},
        {"one-tall-and-four-small.sketch.svg", tallAndFourSmall()},
        {"one-tall-and-six-small.sketch.svg", tallAndSixSmall()},
        {"two-rows-of-four.sketch.svg", twoRowsOfFour()},
    };
}

}  // namespace matwright::test
