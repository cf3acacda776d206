// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

#include "core/making/making.h"

namespace matwright {

// What comes out of the printer: files of exactly the size they say.

enum class PrintFormat { Jpeg, Png, Tiff, Pdf };

inline constexpr int smallestPpi = 72;
inline constexpr int largestPpi = 1200;
// Of one print or sheet, which is kept in memory: 24 x 36 in at 600 ppi is below.
inline constexpr std::int64_t mostPrintPixels = 400'000'000;

struct PrintOptions {
    PrintFormat format = PrintFormat::Jpeg;
    int ppi = 300;           // smallestPpi .. largestPpi
    int quality = 95;        // of a JPEG: 1 .. 100; from 90 on without colour subsampling
    Length bleed;            // picture beyond the trim on every side, 0 or more
    bool cutMarks = false;   // hairlines outside the trim, where the print has room for them
    bool keepPlace = false;  // place of capture and camera serial numbers
    friend bool operator==(const PrintOptions&, const PrintOptions&) = default;
};

// One print of one photo. A slot gives one; a slot across the fold of a double page gives two that
// meet: each shows its side of the picture up to its page's edge, and what they show together is
// the whole crop (nothing is lost in the fold gap).
struct Print {
    PieceId slot;
    PhotoId photo;
    std::string name;  // "2 Focal photo", "2 Focal photo, left part": for files and sheets
    Size paper;        // the whole print as it comes out: print size, or trim and bleed if larger
    Rect trim;         // where the trim lies on that paper
    Length border;     // white, inside the trim
    // The part of the photo behind the trim less the border, as `crop` of `window`; a part of it
    // only (in fractions of the window, left to right) for a print that meets another.
    Crop crop;
    Size window;
    double from = 0;
    double to = 1;
    Tone tone;
    friend bool operator==(const Print&, const Print&) = default;
};

// Every print of a page, in the order of its slots from bottom to top; slots without a photo give
// none. A turned slot across the fold gives one print, to be cut by hand.
std::vector<Print> printsOf(const Making& making, const PrintOptions& options);

// Several prints on one sheet, beside each other without a gap as long as they fit: {3x4, 3x4} on a
// 4x6. Places are where the prints' own papers lie, the turned ones turned.
struct Gang {
    Size sheet;
    struct Place {
        std::size_t print;  // index into the prints
        Point at;
        bool turned = false;  // a quarter turn to the right
        friend bool operator==(const Place&, const Place&) = default;
    };
    std::vector<Place> places;
    friend bool operator==(const Gang&, const Gang&) = default;
};

// Pairs prints of one paper, upright or lying alike, that two by two fill a catalogue print exactly
// (3x4 twice is 4x6) of at most 5x7 in, which is what small home printers take; what is left goes
// alone. Long sides lie together; of an upright and a lying one the second is turned. (A plan over
// all sheets is another part's work.)
std::vector<Gang> simpleGangs(const std::vector<Print>& prints);

}  // namespace matwright
