// SPDX-License-Identifier: MIT
// Bounds rest on one promise: what goes on a sheet never weighs more than its capacity.
#include "core/sheets/search/weights.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <limits>
#include <random>

#include "core/sheets/search/shape_table.h"

namespace matwright::sheets {
namespace {

Work boundlessWork() {
    return {std::numeric_limits<std::uint64_t>::max(), Work::Clock::time_point::max()};
}

Reduced twoStocks(std::mt19937_64& random) {
    const auto side = [&] { return 3 + static_cast<std::int32_t>(random() % 12); };
    Reduced reduced;
    for (int n = 0; n < 8; ++n) {
        Kind kind{side(), side(), random() % 2 == 0, 1, {}};
        kind.turn = kind.turn && kind.w != kind.h;
        reduced.kinds.push_back(kind);
    }
    std::ranges::stable_sort(reduced.kinds, std::greater{}, &Kind::area);
    reduced.stocks = {{17, 15, 3, 8, 0}, {14, 14, 2, 8, 1}};
    return reduced;
}

// Every selection there is on each stock.
void expectNeverExceeded(const Reduced& reduced, const std::vector<Weights>& all) {
    const std::vector<int> counts(reduced.kinds.size(), 1);
    ShapeTable table(reduced, counts, {17, 15, 255, -1, false, nullptr});
    Work work = boundlessWork();
    ASSERT_TRUE(table.fill(work));
    for (const std::size_t state : table.shaped()) {
        const std::vector<int> held = table.countsOf(state);
        for (std::size_t s = 0; s < reduced.stocks.size(); ++s) {
            if (!table.fits(state, reduced.stocks[s].w, reduced.stocks[s].h)) {
                continue;
            }
            for (const Weights& weights : all) {
                EXPECT_LE(weights.total(held), weights.capacity[s]);
            }
        }
    }
}

TEST(Weights, NoCutExceedsTheirCapacity) {
    for (std::uint64_t seed = 31; seed < 43; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        std::mt19937_64 random(seed);
        const Reduced reduced = twoStocks(random);
        Work work = boundlessWork();
        std::vector<Weights> found = dualFeasibleWeights(reduced, work);
        ASSERT_FALSE(found.empty());
        const std::size_t before = found.size();
        improveWeights(reduced, found, 20, work);
        sharpenWeights(reduced, std::vector{2, 1}, found, 1'000'000, work);
        EXPECT_GT(found.size(), before);
        expectNeverExceeded(reduced, found);
    }
}

TEST(Weights, ALoadoutWithoutRoomForAKindIsTooSmall) {
    Reduced reduced;
    reduced.kinds = {{10, 10, false, 1, {}}, {2, 2, false, 1, {}}};
    reduced.stocks = {{12, 12, 2, 2, 0}, {5, 5, 1, 2, 1}};
    std::vector<Weights> found;
    Work work = boundlessWork();
    EXPECT_TRUE(sharpenWeights(reduced, std::vector{0, 2}, found, 100'000, work));
    EXPECT_FALSE(sharpenWeights(reduced, std::vector{1, 0}, found, 100'000, work));
}

}  // namespace
}  // namespace matwright::sheets
