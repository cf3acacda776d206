// SPDX-License-Identifier: MIT
#include "core/drawing/colour_text.h"

#include <fmt/format.h>

#include <charconv>

namespace matwright {

std::string colourText(Colour colour) {
    return fmt::format("#{:02x}{:02x}{:02x}", colour.red, colour.green, colour.blue);
}

std::optional<Colour> parseColour(std::string_view text) {
    if (text.size() != 7 || text.front() != '#') {
        return std::nullopt;
    }
    unsigned number = 0;
    const char* const last = text.data() + text.size();
    const auto [end, failed] = std::from_chars(text.data() + 1, last, number, 16);
    if (failed != std::errc() || end != last) {
        return std::nullopt;
    }
    return Colour{static_cast<std::uint8_t>(number >> 16 & 0xff),
                  static_cast<std::uint8_t>(number >> 8 & 0xff),
                  static_cast<std::uint8_t>(number & 0xff)};
}

}  // namespace matwright
