// SPDX-License-Identifier: MIT
#include "core/library/file_stem.h"

#include <gtest/gtest.h>

namespace matwright {

namespace {

TEST(AFilesStem, IsATitleWithoutWhatSomeSystemsRefuse) {
    EXPECT_EQ(stemOfTitle("Small printer, 4 × 6 in"), "Small printer, 4 × 6 in");
    EXPECT_EQ(stemOfTitle("A/B\\C: \"D\" <e> f|g? h*\n"), "A-B-C- -D- -e- f-g- h--");
    EXPECT_EQ(stemOfTitle(".hidden"), "-hidden");
    EXPECT_EQ(stemOfTitle(""), "");
}

}  // namespace

}  // namespace matwright
