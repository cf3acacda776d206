// SPDX-License-Identifier: MIT
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string_view>

#include "core/sketch/soundness.h"
#include "core/sketchfile/sketch_file.h"

namespace {

void require(bool holds, const char* law) {
    if (!holds) {
        std::fprintf(stderr, "broken law: %s\n", law);
        std::abort();
    }
}

}  // namespace

// Whatever the bytes are: a refusal is a sentence with a place; what is read is sound, and written
// and read again it is the same sketch.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace matwright;
    const auto loaded = readSketch({reinterpret_cast<const char*>(data), size});
    if (!loaded) {
        require(loaded.error().sentence.ends_with('.'), "a refusal is a sentence");
        require(loaded.error().where.starts_with("line "), "a refusal names a line");
        return 0;
    }
    require(!findFault(loaded->sketch), "what is read is sound");
    const std::string written = writeSketch(loaded->sketch);
    const auto again = readSketch(written);
    require(again.has_value(), "what is written can be read");
    require(again->sketch == loaded->sketch, "what is written is read as it was");
    require(again->warnings.empty(), "what is written is known");
    require(writeSketch(again->sketch) == written, "equal sketches give equal bytes");
    return 0;
}
