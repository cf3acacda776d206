// SPDX-License-Identifier: MIT
#include "core/library/file_stem.h"

namespace matwright {

std::string stemOfTitle(std::string_view title) {
    std::string stem(title);
    for (char& letter : stem) {
        const bool isControl = static_cast<unsigned char>(letter) < ' ' || letter == '\x7f';
        if (isControl || std::string_view("/\\:*?\"<>|").contains(letter)) {
            letter = '-';
        }
    }
    if (stem.starts_with('.')) {
        stem.front() = '-';
    }
    return stem;
}

}  // namespace matwright
