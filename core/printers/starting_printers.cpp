// SPDX-License-Identifier: MIT
#include <initializer_list>

#include "core/measure/catalogue.h"
#include "core/printers/printer.h"

namespace matwright {

namespace {

struct StartingPaper {
    std::string_view size;  // of the catalogue
    std::int64_t price = 0;
};

const NamedSize& sizeNamed(std::string_view id) {
    const NamedSize* print = findPrintSize(id);
    return print != nullptr ? *print : *findSheetSize(id);
}

PrinterPaper paperOf(const StartingPaper& starting) {
    const NamedSize& size = sizeNamed(starting.size);
    PrinterPaper paper;
    paper.name = size.name;
    paper.size = size.size;
    paper.price = starting.price;
    constexpr Length margin = Length::inches(0, 1, 8);
    paper.margin = {margin, margin, margin, margin};
    return paper;
}

Printer printerOf(std::string name, PrinterKind kind, std::initializer_list<StartingPaper> papers) {
    Printer printer;
    printer.name = std::move(name);
    printer.kind = kind;
    for (const StartingPaper& paper : papers) {
        printer.papers.push_back(paperOf(paper));
    }
    return printer;
}

}  // namespace

std::vector<Printer> startingPrinters(Unit unit) {
    const bool metric = unit == Unit::Millimetre;
    const Printer small =
        metric ? printerOf("Small printer", PrinterKind::AtHome, {{"10x15cm", 30}, {"13x18cm", 50}})
               : printerOf("Small printer", PrinterKind::AtHome, {{"4x6", 30}, {"5x7", 50}});
    Printer large =
        printerOf("All-purpose printer", PrinterKind::AtHome, {{metric ? "a4" : "letter", 80}});
    for (PrinterPaper& paper : large.papers) {
        constexpr Length margin = Length::inches(0, 1, 4);
        paper.borderless = false;
        paper.margin = {margin, margin, margin, margin};
    }
    const Printer shop =
        metric ? printerOf("Print shop", PrinterKind::PrintShop, {{"10x15cm", 40}, {"13x18cm", 90}})
               : printerOf("Print shop", PrinterKind::PrintShop,
                           {{"4x6", 40}, {"5x7", 90}, {"8x10", 350}});
    return {small, large, shop};
}

}  // namespace matwright
