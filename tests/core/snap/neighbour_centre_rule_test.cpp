// SPDX-License-Identifier: MIT
#include "core/snap/neighbour_centre_rule.h"

#include <gtest/gtest.h>

#include "tests/core/snap/scene.h"

namespace matwright {
namespace {

using namespace test;

TEST(NeighbourCentreRule, bringsTheCentreToANeighboursCentre) {
    const Sketch sketch = sceneOf({box(3, 1, 4, 2)});
    const Rect at = box(4, 6, 2, 2).moved({-six(1), {}});
    const auto found = offered<NeighbourCentreRule>(Axis::Horizontal, sketch, bare(at));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].by, six(1));
    EXPECT_EQ(found[0].why, "centred on 1 \u00B7 block");
    EXPECT_EQ(found[0].guides, (std::vector<SnapGuide>{{Axis::Horizontal, in(5), in(1), in(8)}}));
}

TEST(NeighbourCentreRule, doesNotBringEdgesToCentres) {
    const Sketch sketch = sceneOf({box(3, 1, 4, 2)});
    EXPECT_TRUE(
        offered<NeighbourCentreRule>(Axis::Horizontal, sketch, bare(box(5, 6, 2, 2))).empty());
}

TEST(NeighbourCentreRule, roundsBothCentresToTheTickBelow) {
    const Sketch sketch = sceneOf({Rect::at({in(3), in(1)}, {in(4) + tick, in(2)})});
    const Rect even = box(4, 6, 2, 2);
    const Rect odd = Rect::at({in(4), in(6)}, {in(2) + tick, in(2)});
    for (const Rect& at : {even, odd}) {
        const auto found = offered<NeighbourCentreRule>(Axis::Horizontal, sketch, bare(at));
        ASSERT_EQ(found.size(), 1U);
        EXPECT_EQ(found[0].by, Length());
    }
}

TEST(NeighbourCentreRule, hasNothingForAResize) {
    const Sketch sketch = sceneOf({box(3, 1, 4, 2)});
    const SnapBox at = bare(box(4, 6, 2, 2));
    EXPECT_TRUE(offered<NeighbourCentreRule>(Axis::Horizontal, sketch, at, resizeRight).empty());
    EXPECT_TRUE(
        offered<NeighbourCentreRule>(Axis::Vertical, sketch, bare(box(8, 1, 2, 2)), resizeRight)
            .empty());
}

}  // namespace
}  // namespace matwright
