// SPDX-License-Identifier: MIT
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string_view>

#include "core/pagefile/page_file.h"

namespace {

void require(bool holds, const char* law) {
    if (!holds) {
        std::fprintf(stderr, "broken law: %s\n", law);
        std::abort();
    }
}

}  // namespace

// Whatever the bytes are: a refusal is a sentence with a place; what is read is sound, and written
// and read again it is the same page; the small pictures it carries stay what they are.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace matwright;
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    const std::string folder = "/photos";
    const auto pictures = smallPicturesIn(bytes);
    const auto loaded = readPage(bytes, folder);
    if (!loaded) {
        require(loaded.error().sentence.ends_with('.'), "a refusal is a sentence");
        require(loaded.error().where.starts_with("line "), "a refusal names a line");
        return 0;
    }
    require(!findFault(loaded->making), "what is read is sound");
    const auto pictureOf = [&](PieceId slot) {
        const auto it = pictures.find(slot);
        return it == pictures.end() ? std::string() : it->second;
    };
    const std::string written = writePage(loaded->making, pictureOf, folder);
    const auto again = readPage(written, folder);
    require(again.has_value(), "what is written can be read");
    require(again->making == loaded->making, "what is written is read as it was");
    require(again->warnings.empty(), "what is written is known");
    require(writePage(again->making, pictureOf, folder) == written, "equal pages give equal bytes");
    for (const auto& [slot, picture] : smallPicturesIn(written)) {
        require(pictureOf(slot) == picture, "a picture comes out as it was");
    }
    return 0;
}
