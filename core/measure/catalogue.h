// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/measure/rect.h"

namespace matwright {

// A size with a name people know. `id` is stable and safe in files and on a command line
// ("12x12", "letter", "4x6"). `pwgName` is the media size self-describing name of PWG 5101.1 where
// one is registered, else empty; it always names the upright form, short edge first.
struct NamedSize {
    std::string_view id;
    std::string_view name;
    Size size;
    std::string_view pwgName;
};

// Page sizes a sketch may start from: 12x12, 8.5x11 and A4 both ways, 8x8, 6x8, 9x12.
std::span<const NamedSize> pageSizes();
// Photo print sizes, upright: 2x2 to 8x10 in, 10x15 cm and 13x18 cm.
std::span<const NamedSize> printSizes();
// Printer and photo paper sheets, upright: Letter, A4, Legal, Tabloid, A3, 12x18, 13x19.
std::span<const NamedSize> sheetSizes();

// nullptr where there is none of that id.
const NamedSize* findPageSize(std::string_view id);
const NamedSize* findPrintSize(std::string_view id);
const NamedSize* findSheetSize(std::string_view id);

// The entry with exactly this size; for prints and sheets, either way up. nullptr where none.
const NamedSize* pageSizeOf(Size size);
const NamedSize* printSizeOf(Size size);
const NamedSize* sheetSizeOf(Size size);

// The smallest catalogue print, either way up, that holds the trim. Prints sold in whole
// centimetres are considered only for a trim in whole millimetres, so that a page planned in inches
// is not sent to the other kind of print for a sliver of area.
std::optional<Size> smallestPrintFor(Size trim);
// smallestPrintFor(), or the trim itself where no print holds it.
Size printSizeFor(Size trim);

}  // namespace matwright
