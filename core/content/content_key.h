// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace matwright {

// What a file holds, in 16 bytes: the 128-bit XXH3 of its bytes. Equal bytes give equal keys, on
// every machine; different bytes giving one key by chance is not to be expected in any library
// (below 1e-28 for 100,000 files). It is no protection against somebody who makes such bytes on
// purpose.
struct ContentKey {
    std::array<std::uint8_t, 16> bytes{};  // big end first, as it is written
    friend auto operator<=>(const ContentKey&, const ContentKey&) = default;

    // 32 lower case hexadecimal digits; safe as a file name.
    std::string text() const;
};

ContentKey contentKeyOf(std::string_view bytes);
// Reads what text() gives; nothing for anything else.
std::optional<ContentKey> parseContentKey(std::string_view text);

// The 16 bytes themselves, for records that are not text. The view is into `key`.
std::string_view rawBytes(const ContentKey& key);
// False, and `key` as it was, unless there are 16.
bool setRawBytes(std::string_view bytes, ContentKey& key);

}  // namespace matwright

template <>
struct std::hash<matwright::ContentKey> {
    std::size_t operator()(const matwright::ContentKey& key) const noexcept;
};
