// SPDX-License-Identifier: MIT
#include "core/content/content_key.h"

#include <fmt/format.h>
#include <xxhash.h>

#include <algorithm>
#include <charconv>
#include <cstring>
#include <iterator>

namespace matwright {

std::string ContentKey::text() const {
    std::string digits;
    for (const std::uint8_t byte : bytes) {
        fmt::format_to(std::back_inserter(digits), "{:02x}", byte);
    }
    return digits;
}

ContentKey contentKeyOf(std::string_view bytes) {
    XXH128_canonical_t canonical;
    XXH128_canonicalFromHash(&canonical, XXH3_128bits(bytes.data(), bytes.size()));
    ContentKey key;
    std::ranges::copy(canonical.digest, key.bytes.begin());
    return key;
}

std::optional<ContentKey> parseContentKey(std::string_view text) {
    const auto isDigit = [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); };
    ContentKey key;
    if (text.size() != 2 * key.bytes.size() || !std::ranges::all_of(text, isDigit)) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < key.bytes.size(); ++i) {
        const char* digits = text.data() + 2 * i;
        std::from_chars(digits, digits + 2, key.bytes[i], 16);
    }
    return key;
}

std::string_view rawBytes(const ContentKey& key) {
    return {reinterpret_cast<const char*>(key.bytes.data()), key.bytes.size()};
}

bool setRawBytes(std::string_view bytes, ContentKey& key) {
    if (bytes.size() != key.bytes.size()) {
        return false;
    }
    std::memcpy(key.bytes.data(), bytes.data(), bytes.size());
    return true;
}

}  // namespace matwright

std::size_t std::hash<matwright::ContentKey>::operator()(
    const matwright::ContentKey& key) const noexcept {
    std::size_t part = 0;
    std::memcpy(&part, key.bytes.data(), sizeof part);
    return part;
}
