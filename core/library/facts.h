// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/measure/rect.h"
#include "core/sketch/sketch.h"

namespace matwright {

// Prints of one size that a sketch needs.
struct PrintNeed {
    Size size;      // short side first
    int count = 0;  // at least 1
    friend bool operator==(const PrintNeed&, const PrintNeed&) = default;
};

// What a library shows of a sketch and finds it by, without its pieces.
struct SketchFacts {
    std::string name;
    std::string note;
    Size pageSize;  // of one page, as it lies
    bool doublePage = false;
    // Photo slots, and how many of them are taller than wide, wider than tall, or neither:
    // photos = upright + lying + square.
    int photos = 0;
    int uprightPhotos = 0;
    int lyingPhotos = 0;
    int squarePhotos = 0;
    // By area, then by short side, from small to large; each size once.
    std::vector<PrintNeed> prints;
    int titles = 0;       // pieces kept free for a title
    int journalings = 0;  // pieces kept free for journaling

    friend bool operator==(const SketchFacts&, const SketchFacts&) = default;
};

// Upright and lying go by the trim as it lies on the page: a slot turned by more than 45 and less
// than 135 degrees either way counts as the other one. A slot without a print size needs a print of
// its trim size. Holds for every sound sketch.
SketchFacts factsOf(const Sketch& sketch);

// `size` with its short side as the width.
Size shortSideFirst(Size size);
// From small to large: by area, then by short side. Sizes of sketches only (no side above the
// coordinate limit).
bool isSmallerPrint(Size a, Size b);

}  // namespace matwright
