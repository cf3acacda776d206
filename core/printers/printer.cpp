// SPDX-License-Identifier: MIT
#include "core/printers/printer.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <utility>

namespace matwright {

namespace {

constexpr Length leastToPrintOn = Length::inches(0, 1, 2);

bool isLine(const std::string& text) {
    return text.size() <= maxPrinterNameBytes && std::ranges::none_of(text, [](char letter) {
               return static_cast<unsigned char>(letter) < ' ' || letter == '\x7f';
           });
}

std::optional<Error> nameFault(const std::string& name, std::string_view what) {
    if (name.find_first_not_of(' ') == std::string::npos) {
        return Error{ErrorCode::BadText, fmt::format("There is no name. Give {} one.", what), name};
    }
    if (!isLine(name)) {
        return Error{ErrorCode::BadText,
                     fmt::format("The name of {} has to be shorter, and on one line.", what), name};
    }
    return std::nullopt;
}

Error outOfRange(std::string sentence, const PrinterPaper& paper) {
    return {ErrorCode::OutOfRange, std::move(sentence), paper.name};
}

bool isSide(Length side) {
    return side >= smallestPhotoPaperSide && side <= largestPhotoPaperSide;
}

bool areMarginsSound(const PrinterPaper& paper) {
    const SheetMargin& margin = paper.margin;
    const auto isLeft = [](Length low, Length high, Length side) {
        return !low.isNegative() && !high.isNegative() && low <= side && high <= side &&
               side - low - high >= leastToPrintOn;
    };
    return isLeft(margin.left, margin.right, paper.size.width) &&
           isLeft(margin.top, margin.bottom, paper.size.height);
}

std::optional<Error> correctionFault(const PrinterPaper& paper) {
    for (const std::optional<Correction>* one : {&paper.withBorders, &paper.withoutBorders}) {
        if (std::optional<Error> fault = *one ? findFault(**one) : std::nullopt) {
            fault->where = paper.name;
            return fault;
        }
    }
    return std::nullopt;
}

}  // namespace

std::optional<Error> findFault(const PrinterPaper& paper) {
    if (std::optional<Error> fault = nameFault(paper.name, "a paper")) {
        return fault;
    }
    if (!isSide(paper.size.width) || !isSide(paper.size.height)) {
        return outOfRange("The sides of a paper are 1 to 60 in.", paper);
    }
    if (!areMarginsSound(paper)) {
        return outOfRange(
            "The margins of a paper are 0 or more, and leave 1/2 in to print on both ways.", paper);
    }
    if (paper.price < 0 || paper.price > maxSheetPrice) {
        return outOfRange(fmt::format("A paper's price is 0 to {}.", maxSheetPrice), paper);
    }
    if (paper.atHand && (*paper.atHand < 0 || *paper.atHand > maxPapersAtHand)) {
        return outOfRange(
            fmt::format("Of a paper 0 to {} are at hand, or plenty.", maxPapersAtHand), paper);
    }
    return correctionFault(paper);
}

std::optional<Error> findFault(const Printer& printer) {
    if (std::optional<Error> fault = nameFault(printer.name, "a printer")) {
        return fault;
    }
    if (!isLine(printer.queue)) {
        return Error{ErrorCode::BadText,
                     fmt::format("The name of a print queue is one line of at most {} bytes.",
                                 maxPrinterNameBytes),
                     printer.name};
    }
    if (printer.papers.size() > maxPapersOfPrinter) {
        return Error{ErrorCode::OutOfRange,
                     fmt::format("A printer has at most {} papers.", maxPapersOfPrinter),
                     printer.name};
    }
    std::set<std::string> names;
    std::set<PrinterPaperId> ids;
    for (const PrinterPaper& paper : printer.papers) {
        if (std::optional<Error> fault = findFault(paper)) {
            return fault;
        }
        if (!names.insert(paper.name).second) {
            return Error{ErrorCode::BadText,
                         "Two papers of this printer have the same name. Give one another name.",
                         paper.name};
        }
        if (paper.id.value != 0 && !ids.insert(paper.id).second) {
            return Error{ErrorCode::OutOfRange,
                         "This paper is twice the same entry of its printer. Add the second one "
                         "as a new paper.",
                         paper.name};
        }
    }
    return std::nullopt;
}

PrinterPaper resized(PrinterPaper paper, Size size) {
    if (size == paper.size) {
        return paper;
    }
    const bool isTurned = size == paper.size.turned();
    for (std::optional<Correction>* one : {&paper.withBorders, &paper.withoutBorders}) {
        if (*one && isTurned) {
            std::swap((*one)->across, (*one)->down);
        } else {
            one->reset();
        }
    }
    paper.size = size;
    return paper;
}

std::string paperText(const PrinterPaper& paper) {
    return paper.name + (paper.borderless ? ", without borders" : ", with borders");
}

const Printer* find(const std::vector<Printer>& printers, PrinterId id) {
    const auto found = std::ranges::find(printers, id, &Printer::id);
    return found == printers.end() ? nullptr : &*found;
}

const PrinterPaper* find(const Printer& printer, PrinterPaperId id) {
    const auto found = std::ranges::find(printer.papers, id, &PrinterPaper::id);
    return found == printer.papers.end() ? nullptr : &*found;
}

}  // namespace matwright
