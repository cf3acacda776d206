// SPDX-License-Identifier: MIT
#include "core/pagefile/base64.h"

#include <algorithm>
#include <boost/archive/iterators/base64_from_binary.hpp>
#include <boost/archive/iterators/binary_from_base64.hpp>
#include <boost/archive/iterators/transform_width.hpp>

namespace matwright {

namespace {

namespace bits = boost::archive::iterators;
using Encoder = bits::base64_from_binary<bits::transform_width<const char*, 6, 8>>;
using Decoder = bits::transform_width<bits::binary_from_base64<const char*>, 8, 6>;

bool isDigit(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '+' ||
           c == '/';
}

}  // namespace

std::string toBase64(std::string_view bytes) {
    // The iterators read whole groups of three bytes.
    std::string padded(bytes);
    padded.resize((bytes.size() + 2) / 3 * 3, '\0');
    std::string text(Encoder(padded.data()), Encoder(padded.data() + padded.size()));
    const std::size_t padding = padded.size() - bytes.size();
    text.replace(text.size() - padding, padding, padding, '=');
    return text;
}

std::optional<std::string> fromBase64(std::string_view text) {
    if (text.size() % 4 != 0) {
        return std::nullopt;
    }
    std::string digits(text);
    std::size_t padding = 0;
    while (padding < std::min<std::size_t>(2, digits.size()) &&
           digits[digits.size() - 1 - padding] == '=') {
        digits[digits.size() - 1 - padding++] = 'A';
    }
    if (!std::ranges::all_of(digits, isDigit)) {
        return std::nullopt;
    }
    std::string bytes(Decoder(digits.data()), Decoder(digits.data() + digits.size()));
    bytes.resize(bytes.size() - padding);
    return toBase64(bytes) == text ? std::optional(std::move(bytes)) : std::nullopt;
}

}  // namespace matwright
