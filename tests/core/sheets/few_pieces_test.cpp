// SPDX-License-Identifier: MIT
#include "core/sheets/search/few_pieces.h"

#include <gtest/gtest.h>

#include <limits>
#include <random>

#include "core/sheets/search/shape_table.h"

namespace matwright::sheets {
namespace {

Work workWithoutEnd() {
    return {std::numeric_limits<std::uint64_t>::max(), Work::Clock::time_point::max()};
}

// Sides such that about half of the handfuls below go on the sheet.
Reduced manyKinds(std::mt19937_64& random, bool threeStages) {
    const auto side = [&] { return 2 + static_cast<std::int32_t>(random() % 14); };
    Reduced reduced;
    reduced.threeStages = threeStages;
    for (int n = 0; n < 9; ++n) {
        Kind kind{side(), side(), random() % 2 == 0, 2, {}};
        kind.turn = kind.turn && kind.w != kind.h;
        reduced.kinds.push_back(kind);
    }
    reduced.stocks = {{20, 18, 1, 9, 0}};
    return reduced;
}

// What ShapeTable says, which counts pieces and limits nothing but the sides.
bool fitsByTable(const Reduced& reduced, std::span<const int> kinds) {
    std::vector<int> counts(reduced.kinds.size(), 0);
    for (const int kind : kinds) {
        ++counts[static_cast<std::size_t>(kind)];
    }
    const Stock& stock = reduced.stocks.front();
    ShapeTable table(reduced, counts, {stock.w, stock.h, stock.area(), -1, false, nullptr});
    Work work = workWithoutEnd();
    return table.fill(work) && table.hasShape(table.whole());
}

TEST(FewPieces, SaysWhatTheTableOfAllShapesSays) {
    constexpr std::uint64_t seed = 11;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random(seed);
    int fitting = 0;
    int asked = 0;
    for (int round = 0; round < 60; ++round) {
        const Reduced reduced = manyKinds(random, round % 2 == 1);
        FewPieces few(reduced);
        for (std::size_t n = 1; n <= 7; ++n, ++asked) {
            std::vector<int> kinds;
            while (kinds.size() < n) {
                kinds.push_back(static_cast<int>(random() % reduced.kinds.size()));
            }
            Work work = workWithoutEnd();
            const bool fits = few.fit(kinds, reduced.stocks.front(), work);
            EXPECT_EQ(fits, fitsByTable(reduced, kinds)) << "round " << round << ", " << n;
            fitting += fits;
        }
    }
    // Both answers are there often enough to mean something.
    EXPECT_GT(fitting, asked / 5);
    EXPECT_LT(fitting, asked * 4 / 5);
}

TEST(FewPieces, NineFillASheetToTheLastUnit) {
    Reduced reduced;
    reduced.kinds = {{4, 4, false, 9, {}}};
    reduced.stocks = {{12, 12, 1, 1, 0}, {12, 11, 1, 1, 1}};
    FewPieces few(reduced);
    const std::vector<int> nine(FewPieces::most, 0);
    Work work = workWithoutEnd();
    EXPECT_TRUE(few.fit(nine, reduced.stocks[0], work));
    EXPECT_FALSE(few.fit(nine, reduced.stocks[1], work));
}

// Five pieces round a hole, as in a pinwheel, cannot be cut from edge to edge.
TEST(FewPieces, APinwheelCannotBeCut) {
    Reduced reduced;
    reduced.kinds = {{3, 2, true, 4, {}}, {1, 1, false, 1, {}}};
    reduced.stocks = {{5, 5, 1, 1, 0}, {5, 6, 1, 1, 1}};
    FewPieces few(reduced);
    const std::vector<int> kinds{0, 0, 0, 0, 1};
    Work work = workWithoutEnd();
    EXPECT_FALSE(few.fit(kinds, reduced.stocks[0], work));
    EXPECT_TRUE(few.fit(kinds, reduced.stocks[1], work));
}

TEST(FewPieces, SaysNoWhereTheWorkIsOver) {
    Reduced reduced;
    reduced.kinds = {{4, 4, false, 9, {}}};
    reduced.stocks = {{12, 12, 1, 1, 0}};
    FewPieces few(reduced);
    Work work(1, Work::Clock::time_point::max());
    EXPECT_FALSE(few.fit(std::vector<int>(FewPieces::most, 0), reduced.stocks[0], work));
    EXPECT_TRUE(work.over());
}

}  // namespace
}  // namespace matwright::sheets
