// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/prints/print_job.h"

namespace matwright {

namespace {

constexpr Length in(std::int64_t n) {
    return Length::inches(n);
}

std::vector<Print> printsOn(const std::vector<Size>& papers) {
    std::vector<Print> prints;
    for (const Size& paper : papers) {
        Print print;
        print.paper = paper;
        prints.push_back(print);
    }
    return prints;
}

constexpr Size threeByFour{in(3), in(4)};
constexpr Size fourBySix{in(4), in(6)};

TEST(SimpleGangs, PutTwo3x4On4x6WithoutAGap) {
    // Common practice, no source: two 3x4 fill a 4x6 exactly, side by side.
    const std::vector<Gang> gangs = simpleGangs(printsOn({threeByFour, threeByFour}));
    ASSERT_EQ(gangs.size(), 1U);
    EXPECT_EQ(gangs[0].sheet, (Size{in(6), in(4)}));
    ASSERT_EQ(gangs[0].places.size(), 2U);
    EXPECT_EQ(gangs[0].places[1].at, (Point{in(3), Length()}));
    EXPECT_FALSE(gangs[0].places[1].turned);
}

TEST(SimpleGangs, PutTwoLyingOnesUnderEachOther) {
    const std::vector<Gang> gangs =
        simpleGangs(printsOn({threeByFour.turned(), threeByFour.turned()}));
    ASSERT_EQ(gangs.size(), 1U);
    EXPECT_EQ(gangs[0].sheet, fourBySix);
    EXPECT_EQ(gangs[0].places[1].at, (Point{Length(), in(3)}));
}

TEST(SimpleGangs, TurnTheSecondOfAnUprightAndALyingOne) {
    const std::vector<Gang> gangs = simpleGangs(printsOn({threeByFour, threeByFour.turned()}));
    ASSERT_EQ(gangs.size(), 1U);
    EXPECT_FALSE(gangs[0].places[0].turned);
    EXPECT_TRUE(gangs[0].places[1].turned);
}

TEST(SimpleGangs, LeaveTheOddOneAloneOnItsPaper) {
    // The common page: one 4x6 and three 3x4.
    const std::vector<Gang> gangs =
        simpleGangs(printsOn({threeByFour, fourBySix, threeByFour, threeByFour}));
    ASSERT_EQ(gangs.size(), 3U);
    EXPECT_EQ(gangs[0].places.size(), 2U);
    EXPECT_EQ(gangs[0].places[1].print, 2U);
    EXPECT_EQ(gangs[1].sheet, fourBySix);
    EXPECT_EQ(gangs[2].sheet, threeByFour);
    EXPECT_EQ(gangs[2].places[0].print, 3U);
}

TEST(SimpleGangs, PairNothingOntoSheetsThatSmallPrintersDoNotTake) {
    // Two 4x6 would fill a 6x8.
    EXPECT_EQ(simpleGangs(printsOn({fourBySix, fourBySix})).size(), 2U);
}

TEST(SimpleGangs, HaveEveryPrintOnce) {
    const auto prints = printsOn({threeByFour,
                                  {in(2), in(2)},
                                  threeByFour.turned(),
                                  threeByFour,
                                  {in(5), in(7)},
                                  {in(2), in(2)}});
    std::vector<int> times(prints.size(), 0);
    for (const Gang& gang : simpleGangs(prints)) {
        for (const Gang::Place& place : gang.places) {
            ++times[place.print];
        }
    }
    EXPECT_EQ(times, std::vector<int>(prints.size(), 1));
}

}  // namespace

}  // namespace matwright
