// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "app/printing/template_asks.h"
#include "app/printing/template_choice.h"

namespace matwright::app {

// What became of a print, in a sentence each; both are empty when it was cancelled.
struct PrintOutcome {
    QString problem;
    QString news;  // never claims that paper came out
};

// The system's print dialog for these sheets, then the sheets to what was chosen there: a printer,
// at actual size, or a PDF file. Asks before it sends anything to a printer that does not list the
// paper or cannot reach as far as the sheets are laid out. At least one printer must be set up.
PrintOutcome runPrint(QWidget* parent, const TemplateAsks& asks, const TemplateSheets& sheets,
                      const TemplateChoice& choice, const QString& title);

// The question about sheets laid out for `choice` on a printer that leaves `unreachable` free at
// the edges; empty where there is none: less than 0.1 mm is rounding, and a page in one piece runs
// to the edge of the sheet anyway.
QString marginQuestion(const QString& printer, Length unreachable, const TemplateChoice& choice);

}  // namespace matwright::app
