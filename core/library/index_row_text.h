// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "core/library/index_rows.h"

namespace matwright {

// What the tables of the index file hold and how rows are packed. Raised whenever one of these (or
// the facts, labels or traits in them) changes; an index of another version is not read.
inline constexpr int indexFileVersion = 2;

// A row of the index file: a checksum over the path and the rest, then the rest packed. The readers
// are false for bytes that are not what the writers gave for this path.
std::string sketchRow(std::string_view path, const IndexedSketch& sketch);
bool readSketchRow(std::string_view path, std::string_view row, IndexedSketch& sketch);
std::string labelRow(std::string_view path, const IndexedLabels& labels);
bool readLabelRow(std::string_view path, std::string_view row, IndexedLabels& labels);

}  // namespace matwright
