// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/sketch/sketch.h"

namespace matwright {

// Sketches to leaf through on paper: small pictures in rows, each with its name, page size and
// number of photos below, a heading and a page number on every sheet.

struct ContactSheetOptions {
    Size sheet = {Length::inches(8, 1, 2), Length::inches(11)};  // Letter, or A4
    Length margin = Length::inches(0, 1, 2);                     // most printers leave 1/4 in blank
    int columns = 4;                                             // 1 to 10
    std::string title;  // the heading, perhaps the library's name
};

struct ContactEntry {
    std::string name;  // as it is shown
    Sketch sketch;
};

// How the sheets are divided: the same for every sheet. A row is as high as a square picture and
// its words; at least one fits.
struct ContactGrid {
    int columns = 0;
    int rows = 0;
    Rect first;   // the cell at the top left
    Length down;  // from one row to the next
    Length across;
    std::size_t perSheet() const;
    // From 0 at the top left, row by row; below perSheet().
    Rect cell(std::size_t index) const;
};
ContactGrid contactGrid(const ContactSheetOptions& options);

// At least 1: no sketches give one sheet that says so.
std::size_t contactSheetCount(const ContactSheetOptions& options, std::size_t sketches);

// One sheet; `entries` are those on it (at most perSheet()), `sheetNumber` counts from 1. Texts
// that are too wide for their cell end in "…". Pictures keep their proportions and lie in the
// middle.
Drawing contactSheet(const ContactSheetOptions& options, std::span<const ContactEntry> entries,
                     std::size_t sheetNumber, std::size_t sheetCount);

// All sheets of them, one after the other.
std::vector<Drawing> contactSheets(const ContactSheetOptions& options,
                                   std::span<const ContactEntry> entries);

// The longest beginning of `text` that fits into `room` when set so, with "…" behind where
// something was left out; by textWidthBound(), so never wider. Empty where not even the "…" fits.
std::string fitted(const std::string& text, Length room, Length height, bool bold);

}  // namespace matwright
