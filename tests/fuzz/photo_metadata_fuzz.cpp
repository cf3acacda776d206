// SPDX-License-Identifier: MIT
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string_view>

#include "core/photo/metadata_text.h"

namespace {

void require(bool holds, const char* law) {
    if (!holds) {
        std::fprintf(stderr, "broken law: %s\n", law);
        std::abort();
    }
}

bool isTime(std::string_view text) {
    return text.size() == 19 && text[4] == '-' && text[7] == '-' && text[10] == ' ' &&
           text[13] == ':' && text[16] == ':';
}

}  // namespace

// Whatever the bytes are: a time that is read has the one form, a rating its range, and the form
// itself is read back.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace matwright;
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    const XmpFacts facts = readXmp(bytes);
    require(!facts.rating || (*facts.rating >= -1 && *facts.rating <= 5), "a rating is in range");
    for (const auto& time : {facts.taken, exifTime(bytes), xmpTime(bytes)}) {
        if (time) {
            require(isTime(*time), "a time has the one form");
            std::string again = *time;
            again[10] = 'T';
            require(xmpTime(again) == time, "a time is read back as it was");
        }
    }
    return 0;
}
