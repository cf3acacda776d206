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

TEST(ContentHash, BytesInPartsGiveTheKeyOfTheWhole) {
    std::string bytes;
    for (int i = 0; i < 10'000; ++i) {
        bytes += static_cast<char>(i * 7);
    }
    for (const std::size_t part : {1UL, 3UL, 240UL, 1024UL, 9'999UL, 20'000UL}) {
        ContentHash hash;
        EXPECT_EQ(hash.key(), contentKeyOf(""));
        for (std::size_t at = 0; at < bytes.size(); at += part) {
            hash.add(std::string_view(bytes).substr(at, part));
        }
        EXPECT_EQ(hash.key(), contentKeyOf(bytes)) << part;
    }
}

}  // namespace
}  // namespace matwright
