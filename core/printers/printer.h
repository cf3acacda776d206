// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/error/error.h"
#include "core/measure/length_text.h"
#include "core/printers/correction.h"
#include "core/sheets/cut_job.h"

namespace matwright {

// The person's own printers, and the photo papers they take.

// Each names one thing of one store for as long as it lives; 0 is one that is not kept yet.
struct PrinterId {
    std::int64_t value = 0;
    friend constexpr auto operator<=>(PrinterId, PrinterId) = default;
};
struct PrinterPaperId {
    std::int64_t value = 0;
    friend constexpr auto operator<=>(PrinterPaperId, PrinterPaperId) = default;
};

enum class PrinterKind { AtHome, PrintShop };

struct PrinterPaper {
    PrinterPaperId id;
    std::string name;  // "Glossy 4 × 6"
    Size size;         // upright or lying, as it goes in and as sheets of it are drawn
    // Printed up to the edge. Else `margin` is what the printer cannot reach on each side; it is
    // kept while the paper is printed without borders.
    bool borderless = true;
    SheetMargin margin;
    // What one costs, in any unit that is the same for all of them, or how unwelcome its use is.
    std::int64_t price = 100;
    std::optional<int> atHand;  // nothing: plenty
    // What its test sheets measured: with borders, and without. They are not alike, because
    // printers enlarge what is to reach the edges.
    std::optional<Correction> withBorders;
    std::optional<Correction> withoutBorders;

    // What cannot be reached as the paper is printed now.
    SheetMargin reach() const { return borderless ? SheetMargin{} : margin; }
    // That of the way it is printed now; nothing until it was measured.
    const std::optional<Correction>& correction() const {
        return borderless ? withoutBorders : withBorders;
    }
    friend bool operator==(const PrinterPaper&, const PrinterPaper&) = default;
};

struct Printer {
    PrinterId id;
    std::string name;
    PrinterKind kind = PrinterKind::AtHome;
    std::string queue;  // the system's print queue; empty: files are made for it
    std::vector<PrinterPaper> papers;
    friend bool operator==(const Printer&, const Printer&) = default;
};

inline constexpr std::size_t maxPrinters = 50;
inline constexpr std::size_t maxPapersOfPrinter = 50;
inline constexpr std::size_t maxPrinterNameBytes = 200;
inline constexpr int maxPapersAtHand = 100'000;
inline constexpr Length smallestPhotoPaperSide = Length::inches(1);
inline constexpr Length largestPhotoPaperSide = Length::inches(60);

// The first rule broken (OutOfRange or BadText, a whole sentence, `where` the printer or paper), or
// nothing: names are text on one line of 1 to maxPrinterNameBytes bytes (a queue's may be empty),
// no two papers of a printer have one name or one id other than 0, sides are smallestPhotoPaperSide
// to largestPhotoPaperSide, margins 0 or more and leave 1/2 in to print on, prices 0 to
// maxSheetPrice, at hand 0 to maxPapersAtHand, corrections sound, at most maxPapersOfPrinter
// papers.
std::optional<Error> findFault(const Printer& printer);
std::optional<Error> findFault(const PrinterPaper& paper);

// The paper in another size. What its test sheets measured goes along where the paper is only
// turned: the print system turns a lying sheet, the paper runs through the printer as before, so
// across and down change places. In any other size it no longer holds and is left out.
PrinterPaper resized(PrinterPaper paper, Size size);

// What a new person begins with, to be changed at will: a small printer for 4x6 and 5x7 without
// borders, an all-purpose one with margins (Letter, or A4 for people who measure in millimetres),
// and a print shop. Sizes are those of PWG 5101.1; margins and prices are common practice, no
// source. Ids are 0.
std::vector<Printer> startingPrinters(Unit unit);

// "Glossy 4 × 6, without borders", "Plain Letter, with borders"
std::string paperText(const PrinterPaper& paper);

// nullptr where there is none.
const Printer* find(const std::vector<Printer>& printers, PrinterId id);
const PrinterPaper* find(const Printer& printer, PrinterPaperId id);

}  // namespace matwright
