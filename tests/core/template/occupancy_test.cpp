// SPDX-License-Identifier: MIT
#include "core/template/occupancy.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

constexpr Rect box(std::int64_t left, std::int64_t top, std::int64_t right, std::int64_t bottom) {
    return {{Length::millimetres(left), Length::millimetres(right)},
            {Length::millimetres(top), Length::millimetres(bottom)}};
}

Vertex at(std::int64_t x, std::int64_t y) {
    return vertexAt({Length::millimetres(x), Length::millimetres(y)});
}

Occupancy sheet() {
    return Occupancy({Length::millimetres(100), Length::millimetres(60)});
}

TEST(Occupancy, BoxesMustLieOnTheSheet) {
    const Occupancy empty = sheet();
    EXPECT_TRUE(empty.isFree(box(0, 0, 100, 60), Occupancy::Everything));
    EXPECT_FALSE(empty.isFree(box(-1, 0, 10, 10), Occupancy::Everything));
    EXPECT_FALSE(empty.isFree(box(90, 50, 100, 61), Occupancy::Everything));
}

TEST(Occupancy, ABoxAcrossASeamLiesOnNoPart) {
    // Two parts that share the strip from 48 to 52 mm.
    const Occupancy parts({Length::millimetres(100), Length::millimetres(60)},
                          {box(0, 0, 52, 60), box(48, 0, 100, 60)});
    EXPECT_TRUE(parts.isFreeOnOnePart(box(40, 10, 52, 20), Occupancy::Mark));
    EXPECT_TRUE(parts.isFreeOnOnePart(box(48, 10, 60, 20), Occupancy::Mark));
    EXPECT_FALSE(parts.isFreeOnOnePart(box(47, 10, 53, 20), Occupancy::Mark));
    EXPECT_TRUE(parts.isFree(box(47, 10, 53, 20), Occupancy::Mark));
    EXPECT_TRUE(sheet().isFreeOnOnePart(box(47, 10, 53, 20), Occupancy::Mark));
    EXPECT_FALSE(sheet().isFreeOnOnePart(box(90, 10, 101, 20), Occupancy::Mark));
}

TEST(Occupancy, TouchingBoxesAreFreeOfEachOther) {
    Occupancy things = sheet();
    things.addBox(box(10, 10, 20, 20), Occupancy::Mark);
    EXPECT_TRUE(things.isFree(box(20, 10, 30, 20), Occupancy::Mark));
    EXPECT_FALSE(things.isFree(box(19, 19, 30, 30), Occupancy::Mark));
    EXPECT_FALSE(things.isFree(box(12, 12, 13, 13), Occupancy::Mark));
    EXPECT_TRUE(things.isFree(box(12, 12, 13, 13), Occupancy::Outline));
}

TEST(Occupancy, ALineIsInTheWayOnlyWhereItRuns) {
    Occupancy things = sheet();
    things.addLine(at(0, 0), at(60, 60), Occupancy::Outline);
    EXPECT_FALSE(things.isFree(box(25, 25, 35, 35), Occupancy::Outline));
    EXPECT_FALSE(things.isFree(box(10, 0, 20, 10), Occupancy::Outline));  // one corner on it
    EXPECT_TRUE(things.isFree(box(11, 0, 20, 10), Occupancy::Outline));
    EXPECT_TRUE(things.isFree(box(0, 30, 20, 50), Occupancy::Outline));
}

TEST(Occupancy, LinesMeetBoxesAndLines) {
    Occupancy things = sheet();
    things.addBox(box(10, 10, 20, 20), Occupancy::Mark);
    things.addLine(at(50, 0), at(50, 60), Occupancy::Mark);
    EXPECT_FALSE(things.isFree(at(0, 15), at(30, 15), Occupancy::Mark));
    EXPECT_TRUE(things.isFree(at(0, 25), at(30, 25), Occupancy::Mark));
    EXPECT_FALSE(things.isFree(at(30, 25), at(50, 25), Occupancy::Mark));
    EXPECT_FALSE(things.isFree(at(40, 30), at(60, 31), Occupancy::Mark));
    EXPECT_TRUE(things.isFree(at(40, 30), at(49, 31), Occupancy::Mark));
}

TEST(Occupancy, CountsWhatIsInTheWay) {
    Occupancy things = sheet();
    EXPECT_EQ(things.crowd(box(0, 0, 5, 5), Occupancy::Everything), 0);
    things.addLine(at(1, 1), at(2, 2), Occupancy::Outline);
    things.addLine(at(1, 2), at(2, 1), Occupancy::Outline);
    things.addBox(box(2, 2, 3, 3), Occupancy::Mark);
    EXPECT_EQ(things.crowd(box(0, 0, 5, 5), Occupancy::Outline), 2);
    EXPECT_EQ(things.crowd(box(0, 0, 5, 5), Occupancy::Everything), 3);
}

TEST(Occupancy, FindsLinesThatRunAlongAStrip) {
    Occupancy things = sheet();
    things.addLine(at(10, 20), at(40, 20), Occupancy::Outline);
    const Length most = Length::millimetres(4);
    EXPECT_TRUE(things.hasLineAlong(box(0, 19, 60, 21), true, most));
    EXPECT_FALSE(things.hasLineAlong(box(0, 21, 60, 23), true, most));
    EXPECT_FALSE(things.hasLineAlong(box(0, 19, 13, 21), true, most));   // only 3 mm of it
    EXPECT_FALSE(things.hasLineAlong(box(20, 0, 22, 60), false, most));  // across, not along
}

}  // namespace
}  // namespace matwright
