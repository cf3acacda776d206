// SPDX-License-Identifier: MIT
#include "core/prints/print_names.h"

namespace matwright {

std::string_view suffixOf(PrintFormat format) {
    switch (format) {
        case PrintFormat::Png:
            return ".png";
        case PrintFormat::Tiff:
            return ".tif";
        case PrintFormat::Pdf:
            return ".pdf";
        case PrintFormat::Jpeg:
            break;
    }
    return ".jpg";
}

std::string fileStemOf(const Gang& gang, const std::vector<Print>& prints) {
    std::string stem;
    for (const Gang::Place& place : gang.places) {
        stem += (stem.empty() ? "" : " + ") + prints.at(place.print).name;
    }
    for (char& letter : stem) {
        const bool isControl = static_cast<unsigned char>(letter) < ' ' || letter == '\x7f';
        if (isControl || std::string_view("/\\:*?\"<>|").contains(letter)) {
            letter = '-';
        }
    }
    return stem;
}

}  // namespace matwright
