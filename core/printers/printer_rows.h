// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/printers/printer.h"
#include "core/printers/store_tables.h"

namespace matwright {

// Printers as rows; whoever calls holds the transaction.

std::string textOf(const Correction& correction);
std::optional<Correction> parseCorrection(std::string_view text);

// Malformed for a row that breaks the rules.
Result<std::vector<Printer>> readPrinters(SqliteDatabase& database);
// Writes printer and papers, new ones where an id is 0, and takes papers out that are no longer
// there. Gives all ids.
Result<Printer> writePrinter(SqliteDatabase& database, Printer printer);

}  // namespace matwright
