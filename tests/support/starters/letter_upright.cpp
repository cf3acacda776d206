// SPDX-License-Identifier: MIT
#include "tests/support/starters/layout.h"
#include "tests/support/starters/starters.h"

namespace matwright::test {

namespace {

Sketch captionBorder() {
    Layout l("A caption border", "A 5x7 with a wide border below that carries the title.",
             letterUpright());
    l.strip(box(0_in, 2_in, 8.5_in, 4.25_in));
    l.lay(focal(bottomHeavy(photo(p5x7), 0.375_in, 1.5_in)), {1.375_in, 0.625_in});
    l.title(box(1.75_in, 8.25_in, 5_in, 1_in));
    l.journaling(box(1.375_in, 9.75_in, 5.75_in, 0.75_in));
    l.spot({1.5_in, 0.75_in}, 0.875_in);
    l.spot({7_in, 7.75_in}, 1.125_in);
    l.spot({0.6875_in, 5.625_in}, 0.75_in);
    return l.take();
}

Sketch wideSmallAndStory() {
    Layout l("A wide photo, a small one, a story", "A lying 5x7 over a lying 3x4 and the story.",
             letterUpright());
    l.block(box(0_in, 4.5_in, 8.5_in, 6.5_in));
    l.title(box(0.625_in, 0.5_in, 5.25_in, 1_in));
    l.lay(focal(matted(photo(p7x5))), {0.625_in, 1.75_in});
    l.lay(matted(photo(p4x3)), {0.625_in, 7.25_in});
    l.journaling(box(5.125_in, 7.25_in, 2.75_in, 3.25_in));
    l.spot({6.625_in, 1_in}, 0.875_in);
    l.spot({0.75_in, 1.875_in}, 0.75_in);
    l.spot({4.875_in, 7.25_in}, 1_in);
    return l.take();
}

Sketch tallAndAPair() {
    Layout l("Tall with a pair beside", "A 4x6 and two 3x3 on a wide block.", letterUpright());
    l.block(box(0_in, 3.75_in, 8.5_in, 3.75_in));
    l.title(box(0.5_in, 0.75_in, 5.5_in, 1.5_in));
    l.lay(focal(matted(photo(p4x6))), {0.5_in, 2.5_in});
    l.column({5_in, 2.5_in}, times(2, photo(p3x3)));
    l.journaling(box(0.5_in, 9_in, 7.5_in, 1.5_in));
    l.spot({6.75_in, 1.5_in}, 1_in);
    l.spot({0.625_in, 2.625_in}, 0.75_in);
    l.spot({7.875_in, 8.625_in}, 0.875_in);
    return l.take();
}

Sketch tallWithALadder() {
    Layout l("Tall with a ladder of three", "A 5x7 and a column of three 2x2 on an upright strip.",
             withMargin(letterUpright(), 0.375_in));
    l.strip(box(6.375_in, 0_in, 1.25_in, 11_in));
    l.lay(focal(matted(photo(p5x7))), {0.375_in, 0.75_in});
    l.column({5.875_in, 0.75_in}, times(3, matted(photo(p2x2))));
    l.title(box(0.375_in, 8.25_in, 5.25_in, 1_in));
    l.journaling(box(0.375_in, 9.5_in, 5.25_in, 1.125_in));
    l.cluster({7_in, 9_in}, 1.125_in, Trail::Down);
    l.spot({0.5_in, 0.875_in}, 0.75_in);
    l.spot({5.5_in, 7.75_in}, 0.75_in);
    return l.take();
}

Sketch fiveSquaresAndAStory() {
    Layout l("Five squares and a story", "Two columns of 3x3; the sixth place is for words.",
             letterUpright());
    l.strip(box(7_in, 0_in, 1_in, 11_in));
    l.grid({0.5_in, 0.75_in}, 2, times(4, photo(p3x3)));
    l.lay(photo(p3x3), {0.5_in, 7.25_in});
    l.journaling(box(3.75_in, 7.25_in, 3_in, 3_in));
    l.title(box(7_in, 0.75_in, 1_in, 6.25_in));
    l.spot({7.5_in, 8.75_in}, 1.125_in);
    l.spot({0.625_in, 0.875_in}, 0.75_in);
    l.spot({6.625_in, 7.25_in}, 0.75_in);
    return l.take();
}

Sketch eightInTwoColumns() {
    Layout l("Eight in two columns", "Two columns of 2x2 to the left, words to the right.",
             letterUpright());
    l.block(box(0_in, 0.75_in, 5_in, 9.5_in));
    l.grid({0.5_in, 1.125_in}, 2, times(8, photo(p2x2)));
    l.title(box(5.25_in, 1.125_in, 2.75_in, 2_in));
    l.journaling(box(5.25_in, 5.625_in, 2.75_in, 4.25_in));
    l.cluster({6.125_in, 4.375_in}, 1.25_in, Trail::Right);
    l.spot({4.875_in, 1_in}, 0.75_in);
    l.spot({4.875_in, 9.875_in}, 0.875_in);
    return l.take();
}

Sketch photoStoryThreeBelow() {
    Layout l("Photo and story, three below", "A 3 1/2 x 5 beside the story, three 2x2 under both.",
             letterUpright());
    l.strip(box(0_in, 7.75_in, 8.5_in, 1.5_in));
    l.title(box(0.625_in, 0.625_in, 7.25_in, 1.25_in));
    l.lay(focal(photo(p35x5)), {0.625_in, 2.125_in});
    l.journaling(box(4.375_in, 2.125_in, 3.5_in, 5_in));
    l.row({0.625_in, 7.375_in}, times(3, matted(photo(p2x2))));
    l.spot({0.75_in, 2.25_in}, 0.875_in);
    l.spot({5.25_in, 7.375_in}, 0.625_in);
    l.spot({7.75_in, 9.5_in}, 0.75_in);
    return l.take();
}

Sketch threeCircles() {
    Layout l("Three circles down the page", "A large and two smaller circles swing about a strip.",
             letterUpright());
    l.strip(box(2.25_in, 0_in, 2_in, 11_in));
    l.lay(focal(round(matted(photo(p5x5), 0.25_in))), {0.5_in, 0.75_in});
    l.lay(round(matted(photo(p3x3))), {4.625_in, 5.375_in});
    l.lay(round(matted(photo(p25x25))), {1.875_in, 6.75_in});
    l.title(box(4.625_in, 9.25_in, 3.25_in, 1.25_in));
    l.journaling(box(6.25_in, 0.75_in, 1.75_in, 3.75_in));
    l.spot({1.125_in, 6.875_in}, 1.125_in);
    l.spot({5_in, 1.375_in}, 0.75_in);
    l.spot({7.5_in, 5.625_in}, 0.875_in);
    return l.take();
}

Sketch threeLeaning() {
    Layout l("Three leaning in a column",
             "Three lying 3x4 trimmed a little, each turned, on a wide strip.", letterUpright());
    l.strip(box(1.125_in, 0_in, 3.5_in, 11_in));
    const Piece leaning = matted(trimmed(p4x3, {3.75_in, 2.75_in}));
    l.lay(turned(leaning, -2'000), {0.75_in, 0.625_in});
    l.lay(turned(leaning, 2'000), {0.875_in, 4_in});
    l.lay(turned(leaning, -2'000), {0.75_in, 7.375_in});
    l.title(box(5.375_in, 1.25_in, 2.625_in, 2_in));
    l.journaling(box(5.375_in, 6_in, 2.625_in, 4_in));
    l.spot({6.6875_in, 4.625_in}, 1.25_in);
    l.spot({4.875_in, 3.75_in}, 0.625_in);
    l.spot({4.75_in, 10.25_in}, 0.875_in);
    return l.take();
}

}  // namespace

Starters onLetterUpright() {
    return {
        {"caption-border.sketch.svg", captionBorder()},
        {"wide-small-and-story.sketch.svg", wideSmallAndStory()},
        {"tall-with-a-pair.sketch.svg", tallAndAPair()},
        {"tall-with-a-ladder.sketch.svg", tallWithALadder()},
        {"five-squares-and-a-story.sketch.svg", fiveSquaresAndAStory()},
        {"eight-in-two-columns.sketch.svg", eightInTwoColumns()},
        {"photo-story-three-below.sketch.svg", photoStoryThreeBelow()},
        {"three-circles.sketch.svg", threeCircles()},
        {"three-leaning.sketch.svg", threeLeaning()},
    };
}

}  // namespace matwright::test
