// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/content/content_key.h"
#include "core/crop/crop.h"
#include "core/tone/tone.h"

namespace matwright {

// Everything that decides what a print shows: two prints with equal looks cannot be told apart. All
// values are exact.
struct PrintLook {
    ContentKey photo;
    Size paper;  // of the print
    Rect trim;   // on it
    Length border;
    Length bleed;  // how far the picture goes on beyond the trim, where the paper has room for it
    Crop crop;
    Size window;
    double from = 0;  // a part of the window only, see Print
    double to = 1;
    Tone tone;
    friend bool operator==(const PrintLook&, const PrintLook&) = default;
};

// What `text` keeps of it: whole numbers with spaces between, one text for one look, the doubles by
// their bits.
std::string textOf(const PrintLook& look);
// Nothing for what textOf() does not give.
std::optional<PrintLook> parsePrintLook(std::string_view text);

// The same photo on the same paper, whichever way up, whatever it shows.
bool isAlike(const PrintLook& a, const PrintLook& b);

}  // namespace matwright
