// SPDX-License-Identifier: MIT
#include "app/files/page_bytes.h"

#include "core/sketchfile/sketch_file.h"

namespace matwright::app {

Result<std::string> savablePage(const Making& making,
                                const std::map<PieceId, std::string>& pictures) {
    std::string bytes = writePage(making, [&pictures](PieceId slot) {
        const auto found = pictures.find(slot);
        return found == pictures.end() ? std::string() : found->second;
    });
    if (bytes.size() > maxSketchFileBytes) {
        bytes = writePage(making);
    }
    if (bytes.size() > maxSketchFileBytes) {
        return std::unexpected(Error{ErrorCode::TooLarge,
                                     "This page has more in it than a file may hold (32 MB). "
                                     "Remove pieces or shorten their notes.",
                                     {}});
    }
    return bytes;
}

}  // namespace matwright::app
