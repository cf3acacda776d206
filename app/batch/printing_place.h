// SPDX-License-Identifier: MIT
#pragma once

#include <expected>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "app/batch/ports.h"
#include "core/printers/printing_store.h"

namespace matwright::app {

// What the commands on printers and prints share. An int is the ExitCode of what was complained of.

std::expected<PrintingStore, int> openPrinting(const std::filesystem::path& store,
                                               BatchPorts& ports);

// By its name; in upper or lower case where only one is called so. NotFound names those there are,
// BadText where several are called so.
Result<Printer> printerNamed(const std::vector<Printer>& printers, const std::string& name);
// By its name, or by a size that only one paper of the printer has ("4x6", either way up).
Result<PrinterPaper> paperNamed(const Printer& printer, const std::string& name);

// "2026-07-14", of the person's own calendar.
std::string today();

}  // namespace matwright::app
