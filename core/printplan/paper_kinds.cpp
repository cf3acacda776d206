// SPDX-License-Identifier: MIT
#include "core/printplan/paper_kinds.h"

#include <fmt/format.h>

#include <algorithm>

namespace matwright {

namespace {

std::string wishedName(const PlannedPrint& print, const std::vector<Printer>& printers) {
    const Printer* printer = find(printers, *print.printer);
    if (printer == nullptr) {
        return "";
    }
    const PrinterPaper* paper = print.paper ? find(*printer, *print.paper) : nullptr;
    if (print.paper && paper == nullptr) {
        return "";
    }
    return paper != nullptr ? printer->name + ", " + paper->name : printer->name;
}

}  // namespace

std::vector<PrintPaperKind> paperKinds(const std::vector<Printer>& printers) {
    std::vector<PrintPaperKind> kinds;
    for (const Printer& printer : printers) {
        for (const PrinterPaper& paper : printer.papers) {
            kinds.push_back({printer.id,
                             paper.id,
                             {paper.size, paper.atHand, paper.price, paper.reach(), 0},
                             paper.borderless});
        }
    }
    return kinds;
}

bool isWishedOn(const PlannedPrint& print, const PrintPaperKind& kind) {
    return (!print.printer || *print.printer == kind.printer) &&
           (!print.paper || *print.paper == kind.paper);
}

bool fitsOn(Size print, const PrintPaperKind& kind) {
    const Size usable = usableArea(kind.sheet, {}).size();
    return usable.contains(print) || usable.contains(print.turned());
}

std::optional<std::string> whyOnNone(const PlannedPrint& print,
                                     const std::vector<PrintPaperKind>& kinds,
                                     const std::vector<Printer>& printers) {
    const Size size = print.print.paper;
    const bool fits = std::ranges::any_of(kinds, [&](const PrintPaperKind& kind) {
        return isWishedOn(print, kind) && fitsOn(size, kind);
    });
    if (fits) {
        return std::nullopt;
    }
    if (kinds.empty()) {
        return "There is no photo paper to print on. Add a printer and its papers first.";
    }
    const std::string text = naturalSizeText(size);
    if (!print.printer) {
        return fmt::format(
            "No paper takes a print of {}. Add a paper that is large enough (also "
            "within its margins) or a print shop, or choose a smaller print.",
            text);
    }
    const std::string wished = wishedName(print, printers);
    if (wished.empty()) {
        return "The printer or paper wished for this print is not among those to print with. "
               "Choose "
               "it too, or let the print come out anywhere.";
    }
    return fmt::format(
        "A print of {} does not fit where it is wished ({}). Let it come out "
        "anywhere, or choose a smaller print.",
        text, wished);
}

}  // namespace matwright
