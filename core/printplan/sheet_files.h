// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/printplan/print_plan.h"
#include "core/raster/raster.h"

namespace matwright {

// Sheets ready for the printer.

// Whether the printers still are as the sheet was planned for. NotFound, to plan anew, where its
// printer or paper is gone, has another size, is now printed with borders instead of without (or
// the other way round), or where a print lies outside of what is reached now.
std::optional<Error> changedSincePlanned(const PrintPlan& plan, const PrintSheet& sheet,
                                         const std::vector<Printer>& printers);

// The sheet as pixels at options.ppi, exactly the paper's size, as it is to be sent: the printer's
// correction applied, pictures at the edge of a corrected borderless paper going on beyond it, cut
// marks (where options.cutMarks) on bare paper outside of all prints. A white border inside a print
// is corrected by the middle of both factors, so it may be off by half their difference. Pictures
// go on beyond the trim as planned, whatever options.bleed is. Errors as renderGang() and
// changedSincePlanned().
Result<Raster> renderSheet(const PrintPlan& plan, const PrintSheet& sheet,
                           const std::vector<Printer>& printers, const PrintOptions& options,
                           const std::stop_token& stop = {});

struct SheetFile {
    PrinterId printer;
    std::string name;   // "Small printer.pdf": of the printer, safe as a file's name, no two alike
    std::string bytes;  // a PDF, one page a sheet in the plan's order
    std::vector<std::size_t> sheets;  // indexes of the plan's
};

// One PDF a printer that has sheets. Every page is exactly its paper (MediaBox), PrintScaling None,
// pictures in it as JPEG at options.ppi (a print shop's too). Every sheet is in one of them: errors
// as renderSheet().
Result<std::vector<SheetFile>> sheetFiles(const PrintPlan& plan,
                                          const std::vector<Printer>& printers,
                                          const PrintOptions& options,
                                          const std::stop_token& stop = {});

}  // namespace matwright
