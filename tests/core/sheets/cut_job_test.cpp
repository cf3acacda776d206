// SPDX-License-Identifier: MIT
#include "core/sheets/cut_job.h"

#include <gtest/gtest.h>

#include <functional>

#include "tests/core/sheets/random_job.h"

namespace matwright::test {
namespace {

CutJob soundJob() {
    CutJob job;
    job.pieces = {{inchSize(4, 6), 2, true, 0}};
    job.sheets = {{inchSize(12, 12), std::nullopt, 1, {}, 0}};
    return job;
}

TEST(CutJob, IsSoundAtItsLimits) {
    CutJob job = soundJob();
    EXPECT_FALSE(findFault(job));
    job.pieces[0].count = maxPiecesOfJob;
    job.pieces[0].size = {Length::coordinateLimit(), Length::fromTicks(1)};
    job.sheets[0].atHand = 0;
    job.sheets[0].price = 0;
    EXPECT_FALSE(findFault(job));
    EXPECT_FALSE(findFault(CutJob{}));
    job.sheets[0].size = inchSize(48, 48);
    EXPECT_FALSE(findFault(job));
}

TEST(CutJob, NamesWhatIsUnsound) {
    const std::vector<std::function<void(CutJob&)>> table{
        [](CutJob& j) { j.pieces[0].size.width = Length(); },
        [](CutJob& j) { j.pieces[0].size.height = Length::inches(-1); },
        [](CutJob& j) { j.pieces[0].size.width = Length::inches(1001); },
        [](CutJob& j) { j.pieces[0].count = -1; },
        [](CutJob& j) { j.pieces[0].count = maxPiecesOfJob + 1; },
        [](CutJob& j) { j.pieces.push_back({inchSize(1, 1), maxPiecesOfJob, true, 0}); },
        [](CutJob& j) { j.sheets[0].size = {}; },
        [](CutJob& j) { j.sheets[0].atHand = -1; },
        [](CutJob& j) { j.sheets[0].price = -1; },
        [](CutJob& j) { j.sheets[0].price = maxSheetPrice + 1; },
        [](CutJob& j) { j.sheets[0].margin.left = Length::fromTicks(-1); },
        [](CutJob& j) { j.rules.kerf = Length::fromTicks(-1); },
        [](CutJob& j) { j.rules.kerf = Length::inches(1) + Length::fromTicks(1); },
        [](CutJob& j) {
            j.sheets[0].size = inchSize(1000, 1000);
            j.pieces[0].count = 5;
        },
        [](CutJob& j) { j.rules.usefulSide = Length::fromTicks(-1); },
    };
    for (std::size_t i = 0; i < table.size(); ++i) {
        CutJob job = soundJob();
        table[i](job);
        EXPECT_TRUE(findFault(job)) << "row " << i;
    }
}

TEST(CutJob, AMarginIsAtLeastAsWideAsTheBlade) {
    CutSheet sheet{inchSize(10, 10), 1, 1, {}, 0};
    sheet.margin.left = Length::fromTicks(5);
    sheet.margin.bottom = Length::inches(1);
    const Rect usable = usableArea(sheet, Length::fromTicks(9));
    EXPECT_EQ(usable.left(), Length::fromTicks(9));
    EXPECT_EQ(usable.right(), Length::inches(10));
    EXPECT_EQ(usable.bottom(), Length::inches(9));
}

}  // namespace
}  // namespace matwright::test
