// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/papers/paper_on_hand.h"

namespace matwright {

// Papers on hand as a table that every spreadsheet reads: comma-separated values by RFC 4180,
// UTF-8, lines ended by CR LF. The first line names the columns:
//
//   Name,Width,Height,Count,Kind,Pattern,Sides,Thickness,Colour,Picture,Picture width
//   kraft cardstock,12 in,12 in,6,whole,none,two,216 gsm,#c8aa82,,
//   "dots, blue",5 1/2 in,7 in,1,scrap,up,one,,#5a783c,/home/somebody/dots.png,12 in
//
// Lengths are written so that they are read back exactly. Ids are not written.
std::string papersCsv(std::span<const PaperOnHand> papers);

inline constexpr std::size_t maxPapersCsvBytes = std::size_t{16} << 20;

// Columns in any order, their names in any case. Name, Width and Height are needed, all others may
// be missing or empty: 1, whole, none, one, and as PaperOnHand has it. Lengths as people write
// them, inches where no unit stands. A byte order mark and lines ended by LF alone are fine; empty
// lines are passed over. Where the first line has semicolons and no comma they stand between the
// fields, as spreadsheets of many languages have it.
//
// All or nothing: Error (Malformed, NotFound for a column that is needed, TooLarge above
// maxPapersCsvBytes, maxPapersOnHand or 50 fields in a line) with every faulty line named by its
// number, up to ten of them.
Result<std::vector<PaperOnHand>> readPapersCsv(std::string_view text);

}  // namespace matwright
