// SPDX-License-Identifier: MIT
#include "core/library/printable.h"

#include <fmt/format.h>

#include "core/sketch/utf8.h"

namespace matwright {

namespace {

// The controls of Latin 1 are two bytes long.
bool isControl(std::string_view sequence) {
    const auto first = static_cast<unsigned char>(sequence[0]);
    return sequence.size() == 1 ? first < 0x20 || first == 0x7f
                                : first == 0xc2 && static_cast<unsigned char>(sequence[1]) < 0xa0;
}

}  // namespace

std::string printablePath(std::string_view path) {
    std::string shown;
    while (!path.empty()) {
        const std::size_t length = utf8SequenceLength(path);
        const std::string_view sequence = path.substr(0, length == 0 ? 1 : length);
        if (sequence == "\\") {
            shown += "\\\\";
        } else if (length == 0 || isControl(sequence)) {
            for (const char byte : sequence) {
                shown += fmt::format("\\x{:02x}", static_cast<unsigned char>(byte));
            }
        } else {
            shown += sequence;
        }
        path.remove_prefix(sequence.size());
    }
    return shown;
}

}  // namespace matwright
