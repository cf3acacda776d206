// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "core/library/holdings.h"

namespace matwright::app {

// What is said of a sketch in the library, in a person's words.

// "12 × 12 in", "12 × 12 in, double page".
QString pageWords(const SketchFacts& facts);
// "1 photo", "4 photos", "no photos".
QString photoWords(int photos);
// "12 × 12 in"; A4 by its name.
QString pageSizeWords(Size size);
// The same as short as prints are named: "12×12", "8 1/2×11", "A4".
QString shortSizeWords(Size size);
// "4×6", "10×15 cm": inches without the unit, other sizes with it.
QString printWords(Size size);
// "4×6, three 3×4"; empty where none is needed.
QString printNeedWords(const std::vector<PrintNeed>& prints);
// "used once, on 3 May 2026"; "not used yet".
QString useWords(const Labels& labels);
// All that the wall shows of it, in one line to be read out.
QString spokenEntry(const LibraryEntry& entry, int alike);

// A path, name or other bytes of a library, as text for people.
QString shownPath(std::string_view path);
QString asText(std::string_view utf8);

}  // namespace matwright::app
