// SPDX-License-Identifier: MIT
#include "tests/support/starters/layout.h"
#include "tests/support/starters/starters.h"

namespace matwright::test {

namespace {

Sketch oneLargePhoto() {
    Layout l("One large photo over a wide strip",
             "A 6x8 with a double mat, high on the page; the story to its left.", page12());
    l.strip(box(0_in, 6_in, 12_in, 2.5_in));
    l.strip(box(0_in, 8.75_in, 12_in, 0.375_in));
    l.lay(focal(doubleMatted(photo(p6x8))), {4.5_in, 0.75_in});
    l.journaling(box(0.75_in, 0.75_in, 3.25_in, 4.75_in));
    l.title(box(4.5_in, 9.875_in, 6.75_in, 1.375_in));
    l.pennant(box(1.25_in, 6_in, 1_in, 3.75_in));
    l.pennant(box(2.5_in, 6_in, 1_in, 2.5_in));
    l.spot({11_in, 9.25_in}, 1_in);
    l.spot({4.625_in, 0.875_in}, 0.75_in);
    return l.take();
}

Sketch roundPhotoOnCrossedStrips() {
    Layout l("Round photo on crossed strips", "One circle cut from a 6x8, where two strips cross.",
             page12());
    l.strip(box(3.5_in, 0_in, 2_in, 12_in));
    l.strip(box(0_in, 3.5_in, 12_in, 2_in));
    l.lay(focal(round(matted(trimmed(p6x8, {6_in, 6_in}), 0.25_in))), {1.25_in, 1.25_in});
    l.title(box(8_in, 3.75_in, 3.25_in, 1.5_in));
    l.journaling(box(6.5_in, 8.25_in, 4.75_in, 3_in));
    l.cluster({4.5_in, 9.25_in}, 1.25_in, Trail::Down);
    l.spot({6.875_in, 6.75_in}, 1_in);
    l.spot({2_in, 2_in}, 0.75_in);
    return l.take();
}

Sketch tallAndSmaller() {
    Layout l("A tall photo and a smaller one",
             "A 5x7 and a 3 1/2 x 5 on a wide block, the story above the smaller one.", page12());
    l.block(box(0_in, 3.75_in, 12_in, 4_in));
    l.lay(focal(doubleMatted(photo(p5x7))), {1.125_in, 0.875_in});
    l.journaling(box(7.125_in, 0.875_in, 3.75_in, 2.25_in));
    l.lay(matted(photo(p35x5)), {7.125_in, 3.375_in});
    l.title(box(1.125_in, 9.125_in, 5.75_in, 1.5_in));
    l.spot({1.25_in, 1_in}, 0.875_in);
    l.spot({10.75_in, 8.5_in}, 0.75_in);
    l.cluster({7.875_in, 9.875_in}, 1.125_in, Trail::Right);
    return l.take();
}

Sketch cornerToCorner() {
    Layout l("Corner to corner",
             "Two lying photos on a slant; words and paper hold the other two corners.", page12());
    l.block(box(0.5_in, 0.625_in, 11_in, 10.75_in));
    l.lay(focal(doubleMatted(photo(p7x5))), {0.75_in, 0.875_in});
    l.lay(matted(photo(p6x4)), {5_in, 6.875_in});
    l.journaling(box(8.75_in, 0.875_in, 2.5_in, 5.75_in));
    l.title(box(0.75_in, 6.875_in, 4_in, 1.75_in));
    l.strip(box(0.75_in, 8.875_in, 4_in, 2.25_in));
    l.spot({2.75_in, 10_in}, 1.5_in);
    l.spot({8.5_in, 1.125_in}, 0.75_in);
    l.spot({11_in, 10.875_in}, 0.875_in);
    return l.take();
}

Sketch threeInARow() {
    Layout l("Three in a row over a wide strip",
             "Three 3x4 with even gaps; title above, story below.", page12());
    l.strip(box(0_in, 5.375_in, 12_in, 2.5_in));
    l.strip(box(0_in, 8_in, 12_in, 0.25_in));
    l.row({0.875_in, 4.5_in}, times(3, matted(photo(p3x4))));
    l.title(box(0.875_in, 2_in, 6.75_in, 1.75_in));
    l.journaling(box(4.375_in, 9.5_in, 6.75_in, 1.625_in));
    l.cluster({8.5_in, 2.875_in}, 1_in, Trail::Right);
    l.spot({1_in, 4.625_in}, 0.875_in);
    l.spot({11_in, 8.625_in}, 1.125_in);
    return l.take();
}

Sketch largeWithTwoBeside() {
    Layout l("A large photo with two beside",
             "A 6x8 and two 3x4 of the same height together; words in line below.", page12());
    l.strip(box(8.5_in, 0_in, 2_in, 12_in));
    l.strip(box(10.625_in, 0_in, 0.25_in, 12_in));
    l.lay(focal(doubleMatted(photo(p6x8))), {0.875_in, 0.875_in});
    l.column({7.875_in, 0.875_in}, times(2, matted(photo(p3x4))));
    l.title(box(0.875_in, 9.875_in, 6.75_in, 1.375_in));
    l.journaling(box(7.875_in, 9.875_in, 3.25_in, 1.375_in));
    l.spot({1.125_in, 1.125_in}, 1_in);
    l.spot({7.5_in, 9.5_in}, 0.875_in);
    l.spot({11_in, 5.125_in}, 0.75_in);
    return l.take();
}

Sketch threeTossed() {
    Layout l("Three tossed on a block",
             "Three square prints with a wide border below, turned a little.", page12());
    l.block(box(2.25_in, 2.25_in, 9.75_in, 5.5_in));
    l.lay(turned(focal(bottomHeavy(photo(p4x4), 0.25_in, 0.875_in)), -5'000), {1_in, 1.25_in});
    l.lay(turned(bottomHeavy(photo(p3x3), 0.25_in, 0.75_in), 4'000), {6.75_in, 1.5_in});
    l.lay(turned(bottomHeavy(photo(p3x3), 0.25_in, 0.75_in), -3'000), {5.75_in, 6.25_in});
    l.title(box(0.75_in, 8.125_in, 4.5_in, 1.5_in));
    l.journaling(box(0.75_in, 9.875_in, 4.5_in, 1.375_in));
    l.spot({1.5_in, 6.75_in}, 0.875_in);
    l.spot({10.375_in, 1.875_in}, 1_in);
    l.cluster({9.875_in, 9.5_in}, 1.125_in, Trail::Up);
    return l.take();
}

}  // namespace

Starters fewPhotosOn12x12() {
    return {
        {"one-large-photo.sketch.svg", oneLargePhoto()},
        {"round-photo-on-crossed-strips.sketch.svg", roundPhotoOnCrossedStrips()},
        {"tall-and-smaller.sketch.svg", tallAndSmaller()},
        {"corner-to-corner.sketch.svg", cornerToCorner()},
        {"three-in-a-row.sketch.svg", threeInARow()},
        {"large-with-two-beside.sketch.svg", largeWithTwoBeside()},
        {"three-tossed.sketch.svg", threeTossed()},
    };
}

}  // namespace matwright::test
