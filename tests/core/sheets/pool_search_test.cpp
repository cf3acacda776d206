// SPDX-License-Identifier: MIT
// The packer's answers and the search that asks it.
#include "core/sheets/search/pool_search.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <limits>
#include <random>

namespace matwright::sheets {
namespace {

Work unlimitedWork() {
    return {std::numeric_limits<std::uint64_t>::max(), Work::Clock::time_point::max()};
}

Reduced thirtyPieces(std::uint64_t seed, bool threeStages) {
    std::mt19937_64 random(seed);
    const auto side = [&] { return 10 + static_cast<std::int32_t>(random() % 50); };
    Reduced reduced;
    reduced.threeStages = threeStages;
    for (int n = 0; n < 30; ++n) {
        Kind kind{side(), side(), random() % 2 == 0, 1, {}};
        kind.turn = kind.turn && kind.w != kind.h;
        reduced.kinds.push_back(kind);
    }
    std::ranges::stable_sort(reduced.kinds, std::greater{}, &Kind::area);
    reduced.stocks = {{100, 90, 1, 30, 0}};
    return reduced;
}

std::vector<Weights> areasOf(const Reduced& reduced) {
    Weights weights;
    for (const Kind& kind : reduced.kinds) {
        weights.ofKind.push_back(kind.area());
    }
    for (const Stock& stock : reduced.stocks) {
        weights.capacity.push_back(stock.area());
    }
    return {weights};
}

void expectHolds(const Reduced& reduced, const Layout& layout, std::vector<int> kinds) {
    std::vector<int> counts(reduced.kinds.size(), 0);
    for (const int kind : kinds) {
        ++counts[static_cast<std::size_t>(kind)];
    }
    ASSERT_FALSE(layout.empty());
    EXPECT_EQ(contents(layout, counts.size()), counts);
    EXPECT_LE(layout.back().w, reduced.stocks[0].w);
    EXPECT_LE(layout.back().h, reduced.stocks[0].h);
}

TEST(SheetPacker, AYesHasALayoutWithThesePieces) {
    for (const bool threeStages : {false, true}) {
        const Reduced reduced = thirtyPieces(21, threeStages);
        const auto weights = areasOf(reduced);
        SheetPacker packer(reduced, weights);
        std::mt19937_64 random(22);
        Work work = unlimitedWork();
        int yes = 0;
        for (int n = 0; n < 300; ++n) {
            std::vector<int> kinds;
            for (int kind = 0; kind < 30; ++kind) {
                if (random() % 5 == 0) {
                    kinds.push_back(kind);
                }
            }
            if (!kinds.empty() && packer.packs(kinds, 0, work)) {
                ++yes;
                expectHolds(reduced, packer.layout(kinds, 0), kinds);
            }
        }
        EXPECT_GT(yes, 20);
    }
}

TEST(SheetPacker, AnswersTheSameInWhateverOrderItIsAsked) {
    const Reduced reduced = thirtyPieces(23, false);
    const auto weights = areasOf(reduced);
    SheetPacker packer(reduced, weights);
    std::mt19937_64 random(24);
    Work work = unlimitedWork();
    for (int n = 0; n < 100; ++n) {
        std::vector<int> kinds;
        while (kinds.size() < 6) {
            kinds.push_back(static_cast<int>(random() % 30));
            std::ranges::sort(kinds);
            kinds.erase(std::unique(kinds.begin(), kinds.end()), kinds.end());
        }
        SheetPacker fresh(reduced, weights);
        const bool before = packer.packs(kinds, 0, work);
        std::ranges::reverse(kinds);
        EXPECT_EQ(packer.packs(kinds, 0, work), before);
        EXPECT_EQ(fresh.packs(kinds, 0, work), before);
    }
}

// Enough sheets that it is found soon.
TEST(PoolSearch, LaysEveryPieceOnceAndTheSameSeedGivesTheSame) {
    const Reduced reduced = thirtyPieces(25, false);
    const auto weights = areasOf(reduced);
    const auto sheets = static_cast<std::size_t>(reduced.area() / reduced.stocks[0].area() + 2);
    std::vector<std::vector<int>> first;
    for (int run = 0; run < 2; ++run) {
        SheetPacker packer(reduced, weights);
        PoolSearch pool(reduced, packer, 7);
        Work work(50'000'000, Work::Clock::time_point::max());
        pool.start(std::vector<int>(sheets, 0), {});
        ASSERT_TRUE(pool.run(200'000, work.limit(), work));
        std::vector<int> sum(reduced.kinds.size(), 0);
        std::vector<std::vector<int>> held;
        for (const FilledSheet& sheet : pool.filled()) {
            held.push_back(contents(sheet.layout, sum.size()));
            std::ranges::transform(sum, held.back(), sum.begin(), std::plus{});
            EXPECT_LE(sheet.layout.back().w, reduced.stocks[0].w);
            EXPECT_LE(sheet.layout.back().h, reduced.stocks[0].h);
        }
        EXPECT_EQ(sum, std::vector<int>(sum.size(), 1));
        if (run == 0) {
            first = held;
        }
        EXPECT_EQ(held, first);
    }
}

TEST(PoolSearch, EndsWhereThePiecesCannotBeHeld) {
    const Reduced reduced = thirtyPieces(26, false);
    const auto weights = areasOf(reduced);
    SheetPacker packer(reduced, weights);
    PoolSearch pool(reduced, packer, 1);
    Work work(2'000'000, Work::Clock::time_point::max());
    pool.start({0}, {});
    EXPECT_FALSE(pool.run(3000, work.limit(), work));
    const auto filled = pool.filled();
    ASSERT_EQ(filled.size(), 1U);
    EXPECT_LE(filled[0].layout.back().w, reduced.stocks[0].w);
}

}  // namespace
}  // namespace matwright::sheets
