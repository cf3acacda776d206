// SPDX-License-Identifier: MIT
#pragma once

#include <QPrinter>
#include <vector>

#include "app/rendering/pdf.h"

class QPrinterInfo;

namespace matwright::app {

// Sets the printer up for sheets of this size as they lie: the paper itself is asked for upright,
// turned by its orientation, the whole sheet is addressed from its corner, one side only, and the
// print system is told not to scale. Whatever was chosen for these before is replaced.
void prepare(QPrinter& printer, Size sheet);

// Whether the printer lists the sheet, one way up or the other, within 1/2 mm.
bool offersSheet(const QPrinterInfo& printer, Size sheet);

// Paints one page a sheet at actual size, from page `first` to `last` (1 counts first; both 0 for
// all). False where the printer could not be started or gave up; true is no proof that paper
// came out.
bool paintOn(QPrinter& printer, const std::vector<PdfPage>& pages, int first = 0, int last = 0);

}  // namespace matwright::app
