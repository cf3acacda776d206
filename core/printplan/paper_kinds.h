// SPDX-License-Identifier: MIT
#pragma once

#include "core/printplan/print_plan.h"

namespace matwright {

// A paper of a printer as sheets to cut from.
struct PrintPaperKind {
    PrinterId printer;
    PrinterPaperId paper;
    CutSheet sheet;
    bool borderless = true;
};

// In the order of the printers and their papers.
std::vector<PrintPaperKind> paperKinds(const std::vector<Printer>& printers);

// Whether the print may come out on this kind at all: wished or not forbidden, and large enough.
bool isWishedOn(const PlannedPrint& print, const PrintPaperKind& kind);
bool fitsOn(Size print, const PrintPaperKind& kind);

// Why no kind takes the print, and what to do; nothing where one does.
std::optional<std::string> whyOnNone(const PlannedPrint& print,
                                     const std::vector<PrintPaperKind>& kinds,
                                     const std::vector<Printer>& printers);

}  // namespace matwright
