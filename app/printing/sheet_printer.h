// SPDX-License-Identifier: MIT
#pragma once

#include <QPrinter>
#include <QStringList>
#include <vector>

#include "app/rendering/pdf.h"

class QPrinterInfo;

namespace matwright::app {

// Sets the printer up for sheets of this size as they lie: the paper itself is asked for upright,
// turned by its orientation, the whole sheet is addressed from its corner, one side only, and the
// print system is told not to scale and to put one page on a sheet. Whatever was chosen for these
// before is replaced; other wishes (tray, quality, colour) stay. False where the printer kept other
// paper.
bool prepare(QPrinter& printer, Size sheet);

// Whether the printer lists the sheet, one way up or the other, within 1/2 mm.
bool offersSheet(const QPrinterInfo& printer, Size sheet);

// The widest strip along the edges that the printer says it cannot reach on the paper it was
// prepared for; zero where it says nothing.
Length unreachableEdge(const QPrinter& printer);

// The print system's options, names and values in turn, without those that change size or place
// of a page, and with the wish not to scale.
QStringList atActualSize(const QStringList& options);

// Paints one page a sheet at actual size, from page `first` to `last` (1 counts first; both 0 for
// all). False where the printer could not be started or gave up; true is no proof that paper
// came out.
bool paintOn(QPrinter& printer, const std::vector<PdfPage>& pages, int first = 0, int last = 0);

}  // namespace matwright::app
