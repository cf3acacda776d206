// SPDX-License-Identifier: MIT
#include "core/pagefile/base64.h"

#include <gtest/gtest.h>

#include "tests/support/random_sketch.h"

namespace matwright::test {
namespace {

TEST(Base64, TheExamplesOfTheStandard) {
    // RFC 4648, section 10.
    const std::pair<const char*, const char*> rows[] = {{"", ""},
                                                        {"f", "Zg=="},
                                                        {"fo", "Zm8="},
                                                        {"foo", "Zm9v"},
                                                        {"foob", "Zm9vYg=="},
                                                        {"fooba", "Zm9vYmE="},
                                                        {"foobar", "Zm9vYmFy"}};
    for (const auto& [bytes, text] : rows) {
        EXPECT_EQ(toBase64(bytes), text);
        EXPECT_EQ(fromBase64(text), bytes);
    }
}

TEST(Base64, WhatIsNoneIsRefused) {
    for (const char* text : {"Z", "Zg", "Zg=", "Zg===", "=", "====", "Z===", "Zm9v\n", "Zm 9v",
                             "Zm9_", "Zh==", "Zm9=", "Zm9vZg==Zg==", "\xC3\xA4\xC3\xA4", "=Zm9"}) {
        EXPECT_FALSE(fromBase64(text)) << text;
    }
}

TEST(Base64, AnyBytesComeBack) {
    Random random(20'261'133);
    for (std::size_t length = 0; length < 300; ++length) {
        std::string bytes;
        for (std::size_t i = 0; i < length; ++i) {
            bytes += static_cast<char>(below(random, 256));
        }
        ASSERT_EQ(fromBase64(toBase64(bytes)), bytes);
    }
}

}  // namespace
}  // namespace matwright::test
