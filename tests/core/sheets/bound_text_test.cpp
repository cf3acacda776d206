// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/sheets/cut_planner.h"
#include "tests/core/sheets/random_job.h"

namespace matwright::test {
namespace {

CutJob onePriceJob() {
    CutJob job;
    job.sheets = {{inchSize(12, 12), std::nullopt, 2, {}, 0}};
    return job;
}

CutAnswer answerOf(std::size_t sheets, std::int64_t cost, std::int64_t bound, int uncut = 0) {
    CutAnswer answer;
    answer.plan.sheets.resize(sheets);
    answer.plan.uncut = {uncut};
    answer.cost = cost;
    answer.costBound = bound;
    answer.provedCheapest = uncut == 0 && cost == bound;
    return answer;
}

TEST(BoundText, SaysWhatIsProved) {
    CutJob job = onePriceJob();
    EXPECT_EQ(boundText(answerOf(2, 4, 4), job), "2 sheets, proved fewest");
    EXPECT_EQ(boundText(answerOf(1, 2, 2), job), "1 sheet, proved fewest");
    EXPECT_EQ(boundText(answerOf(5, 10, 7), job), "5 sheets, at least 4 are needed");
    EXPECT_EQ(boundText(answerOf(2, 4, 1), job), "2 sheets, at least 1 is needed");
    EXPECT_EQ(boundText(answerOf(3, 6, 6, 1), job), "3 sheets, 1 piece not cut");
    job.sheets.push_back({inchSize(8, 8), 1, 1, {}, 0});
    EXPECT_EQ(boundText(answerOf(3, 5, 5), job), "3 sheets, proved cheapest");
    EXPECT_EQ(boundText(answerOf(3, 104, 100), job), "3 sheets, at most 4 % above the cheapest");
    EXPECT_EQ(boundText(answerOf(3, 5, 0), job), "3 sheets, not proved cheapest");
}

}  // namespace
}  // namespace matwright::test
