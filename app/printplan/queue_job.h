// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <memory>

#include "app/printplan/plan_asks.h"
#include "core/measure/rect.h"

class QImage;
class QPainter;

namespace matwright::app {

// Sheets of one paper that go to a printer together.
struct QueueSheets {
    QString queue;  // the system's printer that is offered first; empty: its usual one
    QString paper;  // its name, for people
    Size size;
    bool borderless = false;
    int pages = 1;
    QString title;  // of the dialog and the job
};

// The way to a printer, made ready for these sheets at actual size; without a printer `problem`
// says why, or `news` that it was cancelled.
struct QueueJob {
    std::unique_ptr<QPrinter> printer;
    int first = 1;  // the pages that are wanted, 1 being the first
    int last = 1;
    QString problem = {};
    QString news = {};
};

// The system's print dialog, then questions about what the printer does not list. At actual size
// and without scaling whatever was chosen there (app/printing/sheet_printer.h).
QueueJob askForJob(QWidget* parent, const PlanAsks& asks, const QueueSheets& sheets);

// What to do where no printer is set up on this computer.
QString noPrinterText();

// What is to be asked where sheets that are made for one printer, and corrected for it, go to
// another; empty where they do not. `made` is empty for a printer that has no queue.
QString otherPrinterDoubt(const QString& made, const QString& chosen);

// Where the sheets went: "Sent to “Attic”." or "Saved sheets.pdf.".
QString sentText(const QPrinter& printer);
// Whether the print system still knows the printer; painting succeeds even where it is gone.
bool isThere(const PlanAsks& asks, const QPrinter& printer);

// Fills the whole page that a painter of the printer stands at.
void paintSheetPicture(QPainter& painter, const QPrinter& printer, const QImage& picture,
                       Size sheet);

}  // namespace matwright::app
