// SPDX-License-Identifier: MIT
#include "core/sheets/most_valuable.h"

#include <gtest/gtest.h>

#include "core/sheets/plan_check.h"
#include "tests/core/sheets/random_job.h"

namespace matwright::test {
namespace {

// cgcut1 of Christofides & Whitlock (Oper. Res. 25, 1977); optimum 244 as published.
ValueJob firstOfChristofidesAndWhitlock() {
    ValueJob job{{Length::fromTicks(15), Length::fromTicks(10)}, {}, {}};
    constexpr int rows[][4] = {{8, 4, 2, 66}, {3, 7, 1, 35}, {8, 2, 3, 24}, {3, 4, 5, 17},
                               {3, 3, 2, 11}, {3, 2, 2, 8},  {2, 1, 1, 2}};
    for (const auto& row : rows) {
        job.pieces.push_back(
            {{Length::fromTicks(row[0]), Length::fromTicks(row[1])}, row[2], row[3], false});
    }
    return job;
}

TEST(MostValuableCut, ProvesThePublishedOptimum) {
    const ValueJob job = firstOfChristofidesAndWhitlock();
    const auto answer = mostValuableCut(job);
    ASSERT_TRUE(answer);
    EXPECT_TRUE(answer->proved);
    EXPECT_EQ(answer->value, 244);
    EXPECT_TRUE(faultsOf(answer->plan, cutJobOf(job, answer->counts)).empty());
    for (std::size_t i = 0; i < job.pieces.size(); ++i) {
        EXPECT_LE(answer->counts[i], *job.pieces[i].copies);
    }
}

TEST(MostValuableCut, UnlimitedCopiesAreWorthAtLeastAsMuch) {
    ValueJob job = firstOfChristofidesAndWhitlock();
    for (ValuedPiece& piece : job.pieces) {
        piece.copies = std::nullopt;
    }
    const auto answer = mostValuableCut(job);
    ASSERT_TRUE(answer);
    EXPECT_TRUE(answer->proved);
    EXPECT_GE(answer->value, 244);
    EXPECT_TRUE(faultsOf(answer->plan, cutJobOf(job, answer->counts)).empty());
}

TEST(MostValuableCut, NothingFitsAndNothingIsWorthAnything) {
    ValueJob job{inchSize(2, 2), {}, {{inchSize(3, 1), std::nullopt, 5, true}}};
    EXPECT_EQ(mostValuableCut(job)->value, 0);
    job.pieces[0] = {inchSize(1, 1), std::nullopt, 0, true};
    EXPECT_TRUE(mostValuableCut(job)->proved);
    job.pieces.clear();
    EXPECT_TRUE(mostValuableCut(job)->proved);
}

TEST(MostValuableCut, RefusesUnsoundJobs) {
    ValueJob job{inchSize(2, 2), {}, {{inchSize(1, 1), std::nullopt, -1, true}}};
    EXPECT_FALSE(mostValuableCut(job));
    job.pieces[0] = {inchSize(1, 1), -1, 1, true};
    EXPECT_FALSE(mostValuableCut(job));
    job.pieces[0] = {inchSize(0, 1), 1, 1, true};
    EXPECT_FALSE(mostValuableCut(job));
    job.pieces.assign(256, {inchSize(1, 1), 1, 1, true});
    EXPECT_FALSE(mostValuableCut(job));
}

TEST(MostValuableCut, ManyCopiesAreNeverClaimedProvedWithoutProof) {
    // 200 copies of one piece are beyond what the limited search counts; the answer is still sound.
    ValueJob job{
        inchSize(16, 13), {}, {{inchSize(1, 1), 200, 3, false}, {inchSize(5, 7), 2, 100, false}}};
    const auto answer = mostValuableCut(job);
    ASSERT_TRUE(answer);
    EXPECT_LE(answer->value, answer->bound);
    EXPECT_TRUE(faultsOf(answer->plan, cutJobOf(job, answer->counts)).empty());
}

}  // namespace
}  // namespace matwright::test
