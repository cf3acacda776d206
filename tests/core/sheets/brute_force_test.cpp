// SPDX-License-Identifier: MIT
// Tiny jobs, against every cut there is.
#include "tests/core/sheets/brute_force.h"

#include <gtest/gtest.h>

#include <random>

#include "core/sheets/most_valuable.h"
#include "core/sheets/plan_check.h"
#include "tests/core/sheets/random_job.h"

namespace matwright::test {
namespace {

struct Tiny {
    std::vector<BruteForce::Piece> pieces;
    int w;
    int h;
    int kerf;
};

Tiny tiny(std::uint64_t seed) {
    std::mt19937_64 random(seed);
    const auto number = [&](int below) {
        return static_cast<int>(random() % static_cast<std::uint64_t>(below));
    };
    Tiny made{{}, 5 + number(4), 5 + number(4), number(3) == 0 ? 1 : 0};
    for (int n = 3 + number(4); n > 0; --n) {
        made.pieces.push_back({1 + number(made.w), 1 + number(made.h), number(2) == 0});
    }
    return made;
}

CutJob jobOf(const Tiny& from) {
    CutJob job;
    job.rules.kerf = Length::inches(from.kerf);
    job.sheets = {{inchSize(from.w, from.h), std::nullopt, 1, {}, 0}};
    for (const auto& piece : from.pieces) {
        job.pieces.push_back({inchSize(piece.w, piece.h), 1, piece.mayTurn, 0});
    }
    return job;
}

TEST(BruteForce, FindsWhatAnEyeSees) {
    BruteForce four({{1, 1, false}, {1, 1, false}, {1, 1, false}, {1, 1, false}}, 0);
    EXPECT_EQ(four.fewestSheets(2, 2), 1);
    EXPECT_EQ(four.fewestSheets(3, 1), 2);
    // Five pieces round a hole: only without cuts from edge to edge.
    BruteForce wheel({{2, 1, false}, {1, 2, false}, {2, 1, false}, {1, 2, false}, {1, 1, false}},
                     0);
    EXPECT_EQ(wheel.fewestSheets(3, 3), 2);
}

TEST(BruteForce, AgreesWithThePlannerOnTheFewestSheets) {
    for (std::uint64_t seed = 1; seed <= 80; ++seed) {
        const Tiny made = tiny(seed);
        const CutJob job = jobOf(made);
        const auto answer = planCuts(job, {20'000'000, std::chrono::seconds(20)});
        ASSERT_TRUE(answer);
        const int fewest = BruteForce(made.pieces, made.kerf).fewestSheets(made.w, made.h);
        EXPECT_TRUE(faultsOf(answer->plan, job).empty()) << "seed " << seed;
        EXPECT_TRUE(answer->provedCheapest) << "seed " << seed;
        EXPECT_EQ(answer->plan.sheets.size(), static_cast<std::size_t>(fewest)) << "seed " << seed;
        EXPECT_EQ(answer->costBound, fewest) << "seed " << seed;
    }
}

TEST(BruteForce, AgreesOnTheMostValuableCut) {
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        const Tiny made = tiny(seed);
        std::mt19937_64 random(seed + 1000);
        ValueJob job{inchSize(made.w, made.h), Length::inches(made.kerf), {}};
        for (const auto& piece : made.pieces) {
            job.pieces.push_back({inchSize(piece.w, piece.h), 1,
                                  piece.w * piece.h * 10 + static_cast<int>(random() % 10),
                                  piece.mayTurn});
        }
        BruteForce brute(made.pieces, made.kerf);
        std::int64_t best = 0;
        for (unsigned selection = 1; selection < 1U << made.pieces.size(); ++selection) {
            std::int64_t value = 0;
            for (std::size_t i = 0; i < made.pieces.size(); ++i) {
                value += selection >> i & 1U ? job.pieces[i].value : 0;
            }
            if (value > best && brute.fits(selection, made.w, made.h)) {
                best = value;
            }
        }
        const auto answer = mostValuableCut(job);
        ASSERT_TRUE(answer);
        EXPECT_TRUE(answer->proved) << "seed " << seed;
        EXPECT_EQ(answer->value, best) << "seed " << seed;
        EXPECT_TRUE(faultsOf(answer->plan, cutJobOf(job, answer->counts)).empty());
    }
}

}  // namespace
}  // namespace matwright::test
