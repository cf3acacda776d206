// SPDX-License-Identifier: MIT
// The property that makes a function dual feasible, tried on every way to fill a small side.
#include "core/sheets/search/dual_feasible.h"

#include <gtest/gtest.h>

namespace matwright::sheets {
namespace {

// The most images that lengths adding up to at most `side` can have, by dynamic programming.
std::int64_t mostImages(const DualFeasible& f, std::int64_t side) {
    std::vector<std::int64_t> most(static_cast<std::size_t>(side) + 1, 0);
    for (std::int64_t room = 1; room <= side; ++room) {
        for (std::int64_t length = 1; length <= room; ++length) {
            most[static_cast<std::size_t>(room)] =
                std::max(most[static_cast<std::size_t>(room)],
                         most[static_cast<std::size_t>(room - length)] + f(length));
        }
    }
    return most.back();
}

TEST(DualFeasible, NothingThatFitsWeighsMoreThanTheCapacity) {
    for (std::int64_t side = 1; side <= 40; ++side) {
        std::vector<std::int64_t> sides;
        for (std::int64_t s = 1; s <= side; ++s) {
            sides.push_back(s);
        }
        for (const DualFeasible& f : dualFeasibleFor(side, sides)) {
            EXPECT_LE(mostImages(f, side), f.capacity()) << "side " << side;
        }
    }
}

TEST(DualFeasible, OffersMoreThanTheIdentity) {
    EXPECT_GT(dualFeasibleFor(10, {6, 4}).size(), 5U);
}

}  // namespace
}  // namespace matwright::sheets
