// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/measure/catalogue.h"

namespace matwright {
namespace {

Length in(std::int64_t whole) {
    return Length::inches(whole);
}
Length half(std::int64_t whole) {
    return Length::inches(whole, 1, 2);
}

TEST(PrintSizeFor, isTheTrimItselfForEveryCataloguePrintEitherWay) {
    for (const NamedSize& print : printSizes()) {
        EXPECT_EQ(printSizeFor(print.size), print.size) << print.id;
        EXPECT_EQ(printSizeFor(print.size.turned()), print.size.turned()) << print.id;
    }
}

TEST(PrintSizeFor, takesTheSmallestPrintThatHoldsTheTrim) {
    struct Row {
        Size trim;
        Size print;
    };
    // A 3x4 print trimmed to 2 1/2 x 3 1/2 in; common practice, no source.
    const Row rows[] = {
        {{half(2), half(3)}, {in(3), in(4)}},
        {{half(3), half(2)}, {in(4), in(3)}},
        {{half(2), half(2)}, {half(2), half(2)}},
        {{in(3), in(4) + Length::fromTicks(1)}, {half(3), in(5)}},
        {{in(4), half(5)}, {in(4), in(6)}},
        {{half(5), in(4)}, {in(6), in(4)}},
        {{in(1), in(1)}, {in(2), in(2)}},
        {{half(4), half(4)}, {in(5), in(5)}},  // 127 mm, and still no centimetre print
        {{in(7), in(7)}, {in(8), in(10)}},
    };
    for (const Row& row : rows) {
        EXPECT_EQ(printSizeFor(row.trim), row.print)
            << row.trim.width.toInches() << " x " << row.trim.height.toInches();
    }
}

TEST(PrintSizeFor, isTheTrimWhereNoPrintHoldsIt) {
    const Size large{in(8), in(10) + Length::fromTicks(1)};
    EXPECT_EQ(printSizeFor(large), large);
    EXPECT_EQ(smallestPrintFor(large), std::nullopt);
}

TEST(PrintSizeFor, offersCentimetrePrintsOnlyToTrimsInWholeMillimetres) {
    const Size inMillimetres{Length::millimetres(98), Length::millimetres(148)};
    EXPECT_EQ(printSizeFor(inMillimetres).height, Length::millimetres(150));
    const Size inInches{half(3), half(5)};
    EXPECT_EQ(printSizeFor(inInches), (Size{in(4), in(6)}));
}

}  // namespace
}  // namespace matwright
