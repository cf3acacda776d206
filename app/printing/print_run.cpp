// SPDX-License-Identifier: MIT
#include "app/printing/print_run.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QPrinterInfo>

#include "app/printing/sheet_printer.h"
#include "core/measure/length_text.h"

namespace matwright::app {

namespace {

constexpr Length rounding = Length::hundredthMillimetres(10);

QString runWord(const char* text) {
    return QCoreApplication::translate("matwright::app::PrintRun", text);
}

Length roundedUp(Length length, Length step) {
    const Length nearest = length.roundedTo(step);
    return nearest + rounding < length ? nearest + step : nearest;
}

QString paperQuestion(const QPrinter& printer, const TemplateChoice& choice) {
    return runWord(
               "“%1” does not list %2 paper, so it may refuse the sheets or cut them off. Choose "
               "the paper that is in it, or another printer.")
        .arg(printer.printerName(), shortName(*choice.sheet));
}

bool isAccepted(QWidget* parent, const TemplateAsks& asks, const QPrinter& printer, bool listsPaper,
                const TemplateChoice& choice) {
    for (const QString& question :
         {listsPaper ? QString() : paperQuestion(printer, choice),
          marginQuestion(printer.printerName(), unreachableEdge(printer), choice)}) {
        if (!question.isEmpty() && !asks.goOn(parent, question)) {
            return false;
        }
    }
    return true;
}

// Painting succeeds even where the print system is gone; whether it still knows the printer is all
// it tells.
bool isReachable(const TemplateAsks& asks, const QPrinter& printer) {
    return printer.outputFormat() == QPrinter::PdfFormat ||
           asks.printers().contains(printer.printerName());
}

PrintOutcome outcomeOf(const QPrinter& printer, bool painted) {
    if (printer.outputFormat() == QPrinter::PdfFormat) {
        const QString file = QFileInfo(printer.outputFileName()).fileName();
        return painted
                   ? PrintOutcome{{}, runWord("Saved %1.").arg(file)}
                   : PrintOutcome{runWord("%1 could not be written. Choose another folder or use "
                                          "“Save PDF…”.")
                                      .arg(file),
                                  {}};
    }
    return painted ? PrintOutcome{{}, runWord("Sent to “%1”.").arg(printer.printerName())}
                   : PrintOutcome{runWord("The printer could not be started. Look at its queue, or "
                                          "save a PDF and print that at actual size."),
                                  {}};
}

}  // namespace

QString marginQuestion(const QString& printer, Length unreachable, const TemplateChoice& choice) {
    if (!choice.tiled || unreachable <= choice.printerMargin + rounding) {
        return {};
    }
    const Scale scale = choice.look.scale;
    return runWord(
               "“%1” leaves up to %2 free at the edges of the sheet, more than the printer margin "
               "of %3: the outermost lines would be missing. Set the printer margin to %2, then "
               "print.")
        .arg(printer,
             QString::fromStdString(lengthText(roundedUp(unreachable, stepOf(scale)), scale)),
             QString::fromStdString(lengthText(choice.printerMargin, scale)));
}

PrintOutcome runPrint(QWidget* parent, const TemplateAsks& asks, const TemplateSheets& sheets,
                      const TemplateChoice& choice, const QString& title) {
    const Size sheet = sheets.pages.front().media;
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(title);
    (void)prepare(printer, sheet);  // what the dialog opens with
    if (!asks.print(parent, printer, static_cast<int>(sheets.pages.size()))) {
        return {};
    }
    const bool taken = prepare(printer, sheet);  // the dialog may have set other paper
    if (!isReachable(asks, printer)) {
        return outcomeOf(printer, false);
    }
    if (printer.outputFormat() == QPrinter::NativeFormat &&
        !isAccepted(parent, asks, printer, taken && offersSheet(QPrinterInfo(printer), sheet),
                    choice)) {
        return {};
    }
    const bool inRange = printer.printRange() == QPrinter::PageRange;
    const bool painted = paintOn(printer, sheets.pages, inRange ? printer.fromPage() : 0,
                                 inRange ? printer.toPage() : 0);
    return outcomeOf(printer, painted && isReachable(asks, printer));
}

}  // namespace matwright::app
