// SPDX-License-Identifier: MIT
#include "core/sketchfile/file_text.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

constexpr auto notANumber = NumberFault::NotANumber;
constexpr auto outOfRange = NumberFault::OutOfRange;

TEST(FileText, ALengthIsAWholeNumberOfTicksAndNothingElse) {
    EXPECT_EQ(lengthFromText("914400"), Length::inches(1));
    EXPECT_EQ(lengthFromText("-1"), Length::fromTicks(-1));
    EXPECT_EQ(lengthFromText("0"), Length());
    for (const char* text : {"", " ", " 1", "1 ", "+1", "1.0", "1e3", "0x10", "1,000", "nan", "NaN",
                             "inf", "--1", "-", "1in", "\xD9\xA1"}) {
        EXPECT_EQ(lengthFromText(text), std::unexpected(notANumber)) << text;
    }
}

TEST(FileText, ALengthMayReachTheCoordinateLimitAndNotOneTickMore) {
    const std::int64_t limit = Length::coordinateLimit().ticks();
    EXPECT_EQ(lengthFromText(std::to_string(limit)), Length::coordinateLimit());
    EXPECT_EQ(lengthFromText(std::to_string(-limit)), -Length::coordinateLimit());
    EXPECT_EQ(lengthFromText(std::to_string(limit + 1)), std::unexpected(outOfRange));
    EXPECT_EQ(lengthFromText(std::to_string(-limit - 1)), std::unexpected(outOfRange));
    EXPECT_EQ(lengthFromText("9223372036854775808"), std::unexpected(outOfRange));
    EXPECT_EQ(lengthFromText(std::string(1000, '9')), std::unexpected(outOfRange));
}

TEST(FileText, AnAngleIsDegreesWithAtMostThreeDecimals) {
    EXPECT_EQ(angleFromText("90"), Angle::degrees(90));
    EXPECT_EQ(angleFromText("12.5"), Angle::millidegrees(12'500));
    EXPECT_EQ(angleFromText("0.001"), Angle::millidegrees(1));
    EXPECT_EQ(angleFromText("359.999"), Angle::millidegrees(359'999));
    EXPECT_EQ(angleFromText("12.050"), Angle::millidegrees(12'050));
    for (const char* text :
         {"", ".", "1.", ".5", "1.2345", "1.-5", "1. 5", "1e2", "nan", "1.5.5"}) {
        EXPECT_EQ(angleFromText(text), std::unexpected(notANumber)) << text;
    }
    for (const char* text : {"360", "-1", "-0.5", "1000", "99999999999999999999"}) {
        EXPECT_FALSE(angleFromText(text)) << text;
    }
}

TEST(FileText, EveryAngleIsReadBackFromWhatIsWritten) {
    for (int n = 0; n < 360'000; ++n) {
        const Angle angle = Angle::millidegrees(n);
        ASSERT_EQ(angleFromText(angleToText(angle)), angle) << angleToText(angle);
    }
    EXPECT_EQ(angleToText(Angle::degrees(90)), "90");
    EXPECT_EQ(angleToText(Angle::millidegrees(12'050)), "12.05");
}

TEST(FileText, CornersAreReadBackFromWhatIsWritten) {
    const std::vector<Point> corners{{}, {Length::fromTicks(5), Length::fromTicks(-7)}};
    EXPECT_EQ(cornersToText(corners), "0,0 5,-7");
    EXPECT_EQ(cornersFromText("0,0 5,-7"), corners);
}

TEST(FileText, CornersOfAnotherSpellingAreRefused) {
    for (const char* text : {"", " ", "1", "1,", ",1", "1,2 ", " 1,2", "1,2  3,4", "1,2,3", "1;2",
                             "1,2 3", "1.5,2", "a,b", "nan,nan"}) {
        EXPECT_EQ(cornersFromText(text), std::unexpected(notANumber)) << text;
    }
    EXPECT_EQ(cornersFromText("0,1e999"), std::unexpected(notANumber));
    EXPECT_EQ(cornersFromText("0,914400001"), std::unexpected(outOfRange));
}

}  // namespace
}  // namespace matwright
