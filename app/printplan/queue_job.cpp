// SPDX-License-Identifier: MIT
#include "app/printplan/queue_job.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QPrinter>
#include <QPrinterInfo>
#include <algorithm>

#include "app/printing/sheet_printer.h"

namespace matwright::app {

namespace {

QString jobWord(const char* text) {
    return QCoreApplication::translate("matwright::app::QueueJob", text);
}

constexpr Length reachRounding = Length::hundredthMillimetres(10);

// Print systems list a paper twice where it can be printed up to the edge: "4x6" and
// "4x6.Borderless".
void chooseBorderless(QPrinter& printer) {
    const QPageSize chosen = printer.pageLayout().pageSize();
    for (const QPageSize& offered : QPrinterInfo(printer).supportedPageSizes()) {
        if (offered.key().endsWith(QStringLiteral(".Borderless"), Qt::CaseInsensitive) &&
            offered.sizePoints() == chosen.sizePoints()) {
            printer.setPageSize(offered);
            return;
        }
    }
}

bool makeReady(QPrinter& printer, const QueueSheets& sheets) {
    const bool taken = prepare(printer, sheets.size);
    if (sheets.borderless && printer.outputFormat() == QPrinter::NativeFormat) {
        chooseBorderless(printer);
    }
    return taken;
}

// What has to be asked before anything is sent; empty where all is well.
QStringList doubtsAbout(const QPrinter& printer, bool taken, const QueueSheets& sheets) {
    QStringList doubts;
    if (const QString other = otherPrinterDoubt(sheets.queue, printer.printerName());
        !other.isEmpty()) {
        doubts << other;
    }
    if (QPrinterInfo(printer).state() == QPrinter::Error) {
        doubts << jobWord(
                      "The print system says that “%1” is stopped. Sheets wait in its queue until "
                      "it is started again.")
                      .arg(printer.printerName());
    }
    if (!taken || !offersSheet(QPrinterInfo(printer), sheets.size)) {
        doubts << jobWord(
                      "“%1” does not list this paper (%2), so it may refuse the sheets or cut "
                      "them off. Choose the paper that is in it, or another printer.")
                      .arg(printer.printerName(), sheets.paper);
    } else if (sheets.borderless && unreachableEdge(printer) > reachRounding) {
        doubts << jobWord(
                      "“%1” says that it leaves a border free on this paper (%2). Pictures up "
                      "to the edge would be cut off there. Look for “borderless” in its "
                      "settings.")
                      .arg(printer.printerName(), sheets.paper);
    }
    return doubts;
}

QueueJob cancelled() {
    return {nullptr, 1, 1, {}, jobWord("Cancelled; nothing was printed.")};
}

}  // namespace

QString noPrinterText() {
    return jobWord(
        "No printer is set up on this computer. Save PDFs instead and print them elsewhere, at "
        "actual size.");
}

QString otherPrinterDoubt(const QString& made, const QString& chosen) {
    return made.isEmpty() || made == chosen
               ? QString()
               : jobWord(
                     "These sheets are made for “%1” and corrected as it needs it. On “%2” they "
                     "may come out too large or too small.")
                     .arg(made, chosen);
}

QueueJob askForJob(QWidget* parent, const PlanAsks& asks, const QueueSheets& sheets) {
    const QStringList queues = asks.queues();
    if (queues.isEmpty()) {
        return {nullptr, 1, 1, noPrinterText()};
    }
    auto printer = std::make_unique<QPrinter>(QPrinter::HighResolution);
    if (queues.contains(sheets.queue)) {
        printer->setPrinterName(sheets.queue);
    }
    printer->setDocName(sheets.title);
    (void)makeReady(*printer, sheets);  // what the dialog opens with
    if (!asks.print(parent, *printer, sheets.pages, sheets.title)) {
        return cancelled();
    }
    const bool taken = makeReady(*printer, sheets);  // the dialog may have set other paper
    if (!isThere(asks, *printer)) {
        return {nullptr, 1, 1,
                jobWord("The printer could not be started. Look at its queue, or save PDFs and "
                        "print them at actual size.")};
    }
    if (printer->outputFormat() == QPrinter::NativeFormat) {
        for (const QString& doubt : doubtsAbout(*printer, taken, sheets)) {
            if (!asks.confirm(parent, doubt, jobWord("Print anyway"))) {
                return cancelled();
            }
        }
    }
    const bool inRange = printer->printRange() == QPrinter::PageRange;
    const int first = inRange ? std::max(1, printer->fromPage()) : 1;
    const int last = inRange ? std::min(printer->toPage(), sheets.pages) : sheets.pages;
    return {std::move(printer), first, last, {}};
}

QString sentText(const QPrinter& printer) {
    return printer.outputFormat() == QPrinter::PdfFormat
               ? jobWord("Saved %1.").arg(QFileInfo(printer.outputFileName()).fileName())
               : jobWord("Sent to “%1”.").arg(printer.printerName());
}

bool isThere(const PlanAsks& asks, const QPrinter& printer) {
    return printer.outputFormat() == QPrinter::PdfFormat ||
           asks.queues().contains(printer.printerName());
}

void paintSheetPicture(QPainter& painter, const QPrinter& printer, const QImage& picture,
                       Size sheet) {
    painter.drawImage(QRectF(0, 0, sheet.width.toInches() * printer.logicalDpiX(),
                             sheet.height.toInches() * printer.logicalDpiY()),
                      picture);
}

}  // namespace matwright::app
