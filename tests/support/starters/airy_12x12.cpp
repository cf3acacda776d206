// SPDX-License-Identifier: MIT
#include "tests/support/starters/layout.h"
#include "tests/support/starters/starters.h"

// More white paper than photos.
namespace matwright::test {

namespace {

Sketch quietPage() {
    Layout l("A quiet page", "One 4x6 and a short story low on the right; the rest stays white.",
             page12());
    l.strip(box(0_in, 7.25_in, 12_in, 1.25_in));
    l.strip(box(0_in, 8.625_in, 12_in, 0.25_in));
    l.lay(focal(doubleMatted(photo(p4x6))), {5.75_in, 3.75_in});
    l.title(box(0.875_in, 5_in, 4.625_in, 1.75_in));
    l.journaling(box(0.875_in, 9.125_in, 4.625_in, 1.375_in));
    l.spot({5.875_in, 3.875_in}, 0.875_in);
    l.spot({10.375_in, 10.25_in}, 1.125_in);
    l.cluster({2_in, 7.875_in}, 1_in, Trail::Right);
    return l.take();
}

Sketch threeSteps() {
    Layout l("Three steps down", "Three squares step down the page; words fill the two corners.",
             page12());
    l.strip(box(0_in, 4.75_in, 12_in, 2.5_in));
    l.lay(matted(photo(p3x3)), {0.875_in, 0.875_in});
    l.lay(focal(doubleMatted(photo(p3x3))), {4.125_in, 4.125_in});
    l.lay(matted(photo(p3x3)), {7.875_in, 7.875_in});
    l.title(box(4.375_in, 1.75_in, 6.75_in, 1.5_in));
    l.journaling(box(0.875_in, 8.5_in, 6.5_in, 2_in));
    l.spot({4_in, 4.25_in}, 0.875_in);
    l.cluster({9.125_in, 6_in}, 1.25_in, Trail::Right);
    l.spot({1.875_in, 6_in}, 1.125_in);
    return l.take();
}

Sketch friezeOfFive() {
    Layout l("A frieze of five", "A lying 5x7 over a row of 2x2 from margin to margin.", page12());
    l.strip(box(0_in, 8.375_in, 12_in, 1.25_in));
    l.lay(focal(doubleMatted(photo(p7x5))), {3.75_in, 1.5_in});
    l.title(box(0.5_in, 1.5_in, 2.75_in, 2.5_in));
    l.journaling(box(0.5_in, 4.25_in, 2.75_in, 3_in));
    l.row({0.5_in, 8_in}, times(5, photo(p2x2)));
    l.spot({11.375_in, 7_in}, 1_in);
    l.spot({3.875_in, 1.625_in}, 0.875_in);
    l.spot({2.625_in, 7.875_in}, 0.875_in);
    return l.take();
}

Sketch sideBySideLow() {
    Layout l("Side by side, low on the page",
             "A 4x6 and a 3x4 stand on one line under a wide title.", page12());
    l.strip(box(0_in, 8_in, 12_in, 4_in));
    l.title(box(1.25_in, 1.5_in, 9.5_in, 1.75_in));
    l.lay(focal(doubleMatted(photo(p4x6))), {1.25_in, 3.75_in});
    l.lay(matted(photo(p3x4)), {6.25_in, 6.25_in});
    l.journaling(box(6.25_in, 3.75_in, 4.5_in, 2.25_in));
    l.spot({1.375_in, 3.875_in}, 1_in);
    l.spot({10.25_in, 9.25_in}, 1.5_in);
    l.spot({9.5_in, 6.5_in}, 0.75_in);
    return l.take();
}

}  // namespace

Starters airyOn12x12() {
    return {
        {"quiet-page.sketch.svg", quietPage()},
        {"three-steps-down.sketch.svg", threeSteps()},
        {"frieze-of-five.sketch.svg", friezeOfFive()},
        {"side-by-side-low.sketch.svg", sideBySideLow()},
    };
}

}  // namespace matwright::test
