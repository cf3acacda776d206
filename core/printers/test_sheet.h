// SPDX-License-Identifier: MIT
#pragma once

#include "core/drawing/drawing.h"
#include "core/printers/printer.h"

namespace matwright {

// A sheet to be printed and measured with a ruler: it says by how much a printer enlarges.

enum class Borders { With, Without };

struct TestSheet {
    Drawing drawing;  // exactly the paper's size
    // How far the marks are from each other as the sheet is sent: A and B across, C and D down.
    Size marks;
    // Where the marks' middles lie on the drawing.
    Point a, b, c, d;
};

// The marks' distances on a sheet of this paper: whole inches, or whole centimetres for papers in
// millimetres, as far apart as the paper allows with room for 5 % of enlargement.
Size testMarks(const PrinterPaper& paper, Borders borders);

// Rulers across and down, inches and millimetres with numbers, the marks A to D, and what to
// measure. With a correction the same sheet as it is to be sent to come out true: a check that the
// printer is right now. Its words say which of both it is. The marks of a 1 in paper are 1/2 in
// apart at least; nothing is nearer to an edge than the paper's margin (Without: 1/8 in).
TestSheet testSheet(const Printer& printer, const PrinterPaper& paper, Borders borders,
                    const std::optional<Correction>& correction = std::nullopt);

}  // namespace matwright
