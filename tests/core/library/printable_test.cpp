// SPDX-License-Identifier: MIT
#include "core/library/printable.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

TEST(PrintablePath, ShowsTextAsItIsAndTheRestAsNumbers) {
    EXPECT_EQ(printablePath(""), "");
    EXPECT_EQ(printablePath("2022/Süße 写真.sketch.svg"), "2022/Süße 写真.sketch.svg");
    EXPECT_EQ(printablePath("two\nlines\t"), "two\\x0alines\\x09");
    EXPECT_EQ(printablePath("\x7f\u0085"), "\\x7f\\xc2\\x85");
    EXPECT_EQ(printablePath("caf\xe9.svg"), "caf\\xe9.svg");
    EXPECT_EQ(printablePath("\xf0\x9f"), "\\xf0\\x9f");
    EXPECT_EQ(printablePath("back\\slash"), "back\\\\slash");
}

TEST(PrintablePath, KeepsDifferentNamesDifferent) {
    EXPECT_NE(printablePath("a\nb"), printablePath("a\\x0ab"));
}

}  // namespace
}  // namespace matwright
