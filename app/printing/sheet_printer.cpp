// SPDX-License-Identifier: MIT
#include "app/printing/sheet_printer.h"

#include <QPageSize>
#include <QPainter>
#include <QPrintEngine>
#include <QPrinterInfo>
#include <algorithm>
#include <cmath>

#include "app/rendering/paint.h"

namespace matwright::app {

namespace {

// Options for the print system, a list of names and values in turn. Qt has no public name for it.
constexpr auto printSystemOptions = QPrintEngine::PrintEnginePropertyKey(0xfe00);

Size upright(Size size) {
    return size.width > size.height ? size.turned() : size;
}

QPageSize qtPageSizeOf(Size sheet) {
    const Size paper = upright(sheet);
    return QPageSize(QSizeF(paper.width.toInches(), paper.height.toInches()), QPageSize::Inch);
}

bool isNear(double a, double b) {
    return std::abs(a - b) <= 0.5;  // mm; what print systems take for the same paper
}

}  // namespace

void prepare(QPrinter& printer, Size sheet) {
    printer.setFullPage(true);
    const QPageLayout::Orientation orientation =
        sheet.width > sheet.height ? QPageLayout::Landscape : QPageLayout::Portrait;
    QPageLayout layout(qtPageSizeOf(sheet), orientation, QMarginsF(), QPageLayout::Inch);
    layout.setMode(QPageLayout::FullPageMode);
    printer.setPageLayout(layout);
    printer.setDuplex(QPrinter::DuplexNone);
    if (printer.outputFormat() == QPrinter::NativeFormat) {
        printer.printEngine()->setProperty(
            printSystemOptions,
            QStringList{QStringLiteral("print-scaling"), QStringLiteral("none")});
    }
}

bool offersSheet(const QPrinterInfo& printer, Size sheet) {
    const Size paper = upright(sheet);
    return std::ranges::any_of(printer.supportedPageSizes(), [&](const QPageSize& offered) {
        const QSizeF mm = offered.size(QPageSize::Millimeter);
        const double shorter = std::min(mm.width(), mm.height());
        const double longer = std::max(mm.width(), mm.height());
        return isNear(shorter, paper.width.toMillimetres()) &&
               isNear(longer, paper.height.toMillimetres());
    });
}

namespace {

void paintPage(QPainter& painter, const QPrinter& printer, const PdfPage& page) {
    painter.save();
    const double ticks = Length::ticksPerInch;
    painter.scale(printer.logicalDpiX() / ticks, printer.logicalDpiY() / ticks);
    painter.translate(static_cast<double>(page.offset.x.ticks()),
                      static_cast<double>(page.offset.y.ticks()));
    paintDrawing(painter, page.drawing);
    painter.restore();
}

}  // namespace

bool paintOn(QPrinter& printer, const std::vector<PdfPage>& pages, int first, int last) {
    const int count = static_cast<int>(pages.size());
    const int from = first > 0 ? first : 1;
    const int to = last > 0 ? std::min(last, count) : count;
    if (from > to) {
        return false;
    }
    QPainter painter;
    if (!painter.begin(&printer)) {
        return false;
    }
    for (int number = from; number <= to; ++number) {
        if (number > from && !printer.newPage()) {
            return false;
        }
        paintPage(painter, printer, pages[static_cast<std::size_t>(number - 1)]);
    }
    return painter.end() && printer.printerState() != QPrinter::Error;
}

}  // namespace matwright::app
