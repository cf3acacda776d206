// SPDX-License-Identifier: MIT
#include "core/sketch/utf8.h"

#include <algorithm>

namespace matwright {

namespace {

bool isContinuation(char c) {
    return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

}  // namespace

std::size_t utf8SequenceLength(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(0);
    if (lead < 0x80) {
        return 1;
    }
    const std::size_t length = lead >= 0xC2 && lead <= 0xDF   ? 2
                               : (lead & 0xF0) == 0xE0        ? 3
                               : lead >= 0xF0 && lead <= 0xF4 ? 4
                                                              : 0;
    if (length == 0 || text.size() < length ||
        !std::ranges::all_of(text.substr(1, length - 1), isContinuation)) {
        return 0;
    }
    const bool overlong = (lead == 0xE0 && byte(1) < 0xA0) || (lead == 0xF0 && byte(1) < 0x90);
    const bool surrogate = lead == 0xED && byte(1) >= 0xA0;
    const bool tooHigh = lead == 0xF4 && byte(1) >= 0x90;
    // U+FFFE and U+FFFF cannot stand in XML 1.0.
    const bool notACharacter = lead == 0xEF && byte(1) == 0xBF && byte(2) >= 0xBE;
    return overlong || surrogate || tooHigh || notACharacter ? 0 : length;
}

}  // namespace matwright
