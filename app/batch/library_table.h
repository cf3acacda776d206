// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

#include "core/library/search.h"

namespace matwright::app {

// Texts of a library for people to read; all on one line where a file's name is not.

// "4×6, three 3×4": the largest first, in inches where no unit is said. Empty where none is needed.
std::string printsText(const std::vector<PrintNeed>& prints);
// "12 × 12 in", "12 × 12 in, double"
std::string pageText(const SketchFacts& facts);

// One line a sketch: name, page, photos, prints, tags, path.
std::string entriesTable(const Holdings& holdings, std::span<const std::uint32_t> indices);

// One line a choice that would leave something, as it is typed: "--photos 3", and how many sketches
// it would leave.
std::string countsTable(const Holdings& holdings, const FilterCounts& counts);

// The families, their sketches below each other.
std::string familiesTable(const Holdings& holdings, std::span<const std::vector<std::size_t>> all);

}  // namespace matwright::app
