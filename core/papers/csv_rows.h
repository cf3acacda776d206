// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"

namespace matwright {

// Comma-separated values as RFC 4180 has them, by libcsv.

using CsvRow = std::vector<std::string>;

struct NumberedRow {
    std::size_t line = 0;  // the first of the file is 1; a quoted field may go over several
    CsvRow fields;
};

// One record with its CR LF; fields with commas, quotes, line breaks or blanks at an end are
// quoted.
std::string csvLine(const CsvRow& row);

inline constexpr std::size_t maxCsvRows = 100'000;
inline constexpr std::size_t maxCsvFields = 200;

// Every record; empty lines are left out, blanks belong to their field. LF alone ends a line too,
// and a byte order mark is passed over. Error: Malformed with the line's number for a quote where
// none may stand or one that is never closed; TooLarge where there are more records, or more fields
// in one of them, than that, or no memory. Nothing beyond those limits is stored.
// `between` stands between the fields of a line.
Result<std::vector<NumberedRow>> readCsv(std::string_view text, std::size_t maxRows = maxCsvRows,
                                         std::size_t maxFields = maxCsvFields, char between = ',');

std::string_view withoutBlanks(std::string_view field);

}  // namespace matwright
