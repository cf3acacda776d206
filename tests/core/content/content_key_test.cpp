// SPDX-License-Identifier: MIT
#include "core/content/content_key.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

// As xxhsum -H2 (the xxHash project's own program) prints it of no bytes.
TEST(ContentKey, OfNoBytesIsThePublishedValue) {
    EXPECT_EQ(contentKeyOf("").text(), "99aa06d3014798d86001c324468d497f");
}

TEST(ContentKey, IsReadBackFromItsTextAndItsBytes) {
    const ContentKey key = contentKeyOf("a sketch");
    EXPECT_EQ(parseContentKey(key.text()), key);
    ContentKey raw;
    ASSERT_TRUE(setRawBytes(rawBytes(key), raw));
    EXPECT_EQ(raw, key);
    EXPECT_NE(contentKeyOf("a sketch "), key);
}

TEST(ContentKey, ReadsNothingElse) {
    const std::string text = contentKeyOf("a sketch").text();
    EXPECT_FALSE(parseContentKey(""));
    EXPECT_FALSE(parseContentKey(text.substr(1)));
    EXPECT_FALSE(parseContentKey(text + "0"));
    EXPECT_FALSE(parseContentKey("G" + text.substr(1)));
    EXPECT_FALSE(parseContentKey("A" + text.substr(1)));
    ContentKey key = contentKeyOf("x");
    EXPECT_FALSE(setRawBytes("short", key));
    EXPECT_EQ(key, contentKeyOf("x"));
}

}  // namespace
}  // namespace matwright
