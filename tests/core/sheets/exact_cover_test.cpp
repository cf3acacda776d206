// SPDX-License-Identifier: MIT
#include "core/sheets/search/exact_cover.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <limits>
#include <random>

#include "core/sheets/search/state_index.h"

namespace matwright::sheets {
namespace {

Work endlessWork() {
    return {std::numeric_limits<std::uint64_t>::max(), Work::Clock::time_point::max()};
}

// Kinds from the largest to the smallest, as Reduced has them; a small scrap beside the sheets.
Reduced randomPaper(std::mt19937_64& random, bool threeStages) {
    const auto number = [&](int below) {
        return static_cast<int>(random() % static_cast<std::uint64_t>(below));
    };
    Reduced reduced;
    reduced.threeStages = threeStages;
    for (int n = 0; n < 6; ++n) {
        Kind kind{3 + number(8), 3 + number(8), number(2) == 0, 1 + number(2), {}};
        kind.turn = kind.turn && kind.w != kind.h;
        reduced.kinds.push_back(kind);
    }
    std::ranges::stable_sort(reduced.kinds, std::greater{}, &Kind::area);
    reduced.stocks = {{14, 12, 10, 9, 0}, {11, 10, 1, 1, 1}};
    return reduced;
}

std::vector<int> countsOf(const Reduced& reduced) {
    std::vector<int> counts;
    for (const Kind& kind : reduced.kinds) {
        counts.push_back(kind.count);
    }
    return counts;
}

// The fewest large sheets for every state, with or without the scrap, by trying every part of it.
class EveryCover {
  public:
    explicit EveryCover(const Reduced& reduced)
        : m_reduced(reduced),
          m_table(reduced, countsOf(reduced), {14, 12, 168, -1, false, nullptr}) {
        Work work = endlessWork();
        m_table.fill(work);
        m_fewest.assign(m_table.states(), 0);
        for (std::size_t state = 1; state < m_table.states(); ++state) {
            m_fewest[state] = m_table.fits(state, 14, 12) ? 1 : 99;
            eachPart(state, [&](std::size_t part) {
                if (m_table.fits(part, 14, 12)) {
                    m_fewest[state] = std::min(m_fewest[state], 1 + m_fewest[state - part]);
                }
            });
        }
    }

    int fewest() const { return m_fewest.back(); }
    int fewestWithScrap() const {
        int fewest = m_fewest.back();
        eachPart(m_table.whole(), [&](std::size_t part) {
            if (m_table.fits(part, 11, 10)) {
                fewest = std::min(fewest, m_fewest[m_table.whole() - part]);
            }
        });
        return fewest;
    }
    const ShapeTable& table() const { return m_table; }

  private:
    template <class Do>
    void eachPart(std::size_t state, const Do& visit) const {
        const auto all = m_table.countsOf(state);
        for (std::size_t part = 1; part < state; ++part) {
            const auto some = m_table.countsOf(part);
            if (std::ranges::equal(some, all, std::less_equal{})) {
                visit(part);
            }
        }
    }

    const Reduced& m_reduced;
    ShapeTable m_table;
    std::vector<int> m_fewest;
};

ExactCover::Outcome outcomeFor(const Reduced& reduced, const Loadout& loadout) {
    Work work = endlessWork();
    auto weights = dualFeasibleWeights(reduced, work);
    sharpenWeights(reduced, loadout, weights, 1'000'000, work);
    const std::vector<Loadout> loadouts{loadout};
    ExactCover cover(reduced, weights, loadouts, work);
    return cover.run(loadouts, std::numeric_limits<std::uint64_t>::max() / 2, work);
}

TEST(ExactCover, KnowsTheFewestSheetsThatTryingEverythingFinds) {
    constexpr std::uint64_t seed = 20'261'127;
    std::mt19937_64 random(seed);
    for (int job = 0; job < 60; ++job) {
        SCOPED_TRACE("seed " + std::to_string(seed) + ", job " + std::to_string(job));
        const Reduced reduced = randomPaper(random, job % 4 == 0);
        const EveryCover every(reduced);
        for (const int scraps : {0, 1}) {
            const int fewest = scraps == 0 ? every.fewest() : every.fewestWithScrap();
            EXPECT_EQ(outcomeFor(reduced, {fewest, scraps}), ExactCover::Outcome::Found);
            EXPECT_EQ(outcomeFor(reduced, {fewest - 1, scraps}), ExactCover::Outcome::Impossible);
        }
    }
}

TEST(SharpWeights, AreNeverExceededByWhatFitsOnASheet) {
    constexpr std::uint64_t seed = 20'261'128;
    std::mt19937_64 random(seed);
    for (int job = 0; job < 40; ++job) {
        SCOPED_TRACE("seed " + std::to_string(seed) + ", job " + std::to_string(job));
        const Reduced reduced = randomPaper(random, false);
        const EveryCover every(reduced);
        Work work = endlessWork();
        std::vector<Weights> found;
        const bool tooSmall =
            sharpenWeights(reduced, Loadout{every.fewest(), 0}, found, 1'000'000, work);
        EXPECT_FALSE(tooSmall);
        ASSERT_EQ(found.size(), 1U);
        for (const std::size_t state : every.table().shaped()) {
            const std::int64_t weight = found[0].total(every.table().countsOf(state));
            EXPECT_LE(weight, found[0].capacity[0]);
            if (every.table().fits(state, 11, 10)) {
                EXPECT_LE(weight, found[0].capacity[1]);
            }
        }
    }
}

TEST(StateIndex, FindsWhatWasAddedAndNothingElse) {
    for (const std::uint64_t states : {std::uint64_t{50'000}, std::uint64_t{1} << 50U}) {
        StateIndex index(states);
        const std::uint64_t stride = states / 50'000;
        for (std::uint32_t n = 1; n < 50'000; n += 2) {
            index.add(n * stride, n);
        }
        for (std::uint32_t n = 1; n < 50'000; ++n) {
            ASSERT_EQ(index.find(n * stride), n % 2 == 1 ? n : 0);
        }
    }
}

}  // namespace
}  // namespace matwright::sheets
