// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/measure/catalogue.h"
#include "tests/support/carry_laws.h"
#include "tests/support/example_sketches.h"
#include "tests/support/plausible_sketch.h"

// A short run of what tests/checks/carry_over looks at.
namespace matwright {
namespace {

using namespace test;

void expectLaws(const Sketch& sketch, const PageSetup& target, const std::string& what) {
    const CarriedOver there = carriedOver(sketch, target);
    for (const std::string& sentence : brokenCarryLaws(sketch, target, there)) {
        ADD_FAILURE() << what << ": " << sentence;
    }
    if (there.gaveWay.empty()) {
        EXPECT_EQ(carriedOver(there.sketch, sketch.page).sketch, sketch) << what;
    }
}

TEST(CarryLaws, holdForTheExamplesOnEveryPageSize) {
    for (const ExampleSketch& example : exampleSketches()) {
        for (const NamedSize& size : pageSizes()) {
            expectLaws(example.sketch, onPageSize(example.sketch.page, size.size),
                       example.file + " to " + std::string(size.id));
        }
    }
}

TEST(CarryLaws, holdForRandomSketches) {
    Random random(41);
    const auto sizes = pageSizes();
    for (int i = 0; i < 40; ++i) {
        const Sketch sketch = i % 2 == 0 ? plausibleSketch(random) : randomSketch(random, i % 9);
        PageSetup target = onPageSize(sketch.page, sizes[below(random, sizes.size())].size);
        if (i % 10 == 0) {
            target.doublePage = !target.doublePage;
            target.foldGap = Length();
        }
        expectLaws(sketch, target, "seed 41, sketch " + std::to_string(i));
    }
}

// The checker itself has to see what is wrong.
TEST(CarryLaws, theCheckerMindsLostRelationsPrintsAndPlaces) {
    const Sketch sketch = exampleSketches().front().sketch;
    const PageSetup target = onPageSize(sketch.page, findPageSize("9x12")->size);
    const CarriedOver good = carriedOver(sketch, target);
    ASSERT_TRUE(brokenCarryLaws(sketch, target, good).empty());
    CarriedOver moved = good;
    moved.sketch.pieces.at(PieceId{3}).place.x += Length::fromTicks(1);
    EXPECT_FALSE(brokenCarryLaws(sketch, target, moved).empty());
    CarriedOver odd = good;
    odd.sketch.pieces.at(PieceId{2}).printSize = Size{Length::inches(7), Length::inches(7)};
    EXPECT_FALSE(brokenCarryLaws(sketch, target, odd).empty());
    CarriedOver off = good;
    off.sketch.pieces.at(PieceId{2}).place.x = Length::inches(-1);
    EXPECT_FALSE(brokenCarryLaws(sketch, target, off).empty());
}

}  // namespace
}  // namespace matwright
