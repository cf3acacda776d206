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

bool prepare(QPrinter& printer, Size sheet) {
    // One by one: a whole page layout is refused where its margins are less than the printer's,
    // full page or not. Points first, so that the printer's margins are not rounded to 1/100 in.
    printer.setFullPage(true);
    printer.setPageMargins(QMarginsF(), QPageLayout::Point);
    printer.setPageSize(qtPageSizeOf(sheet));
    printer.setPageOrientation(sheet.width > sheet.height ? QPageLayout::Landscape
                                                          : QPageLayout::Portrait);
    printer.setDuplex(QPrinter::DuplexNone);
    if (printer.outputFormat() == QPrinter::NativeFormat) {
        QPrintEngine* engine = printer.printEngine();
        engine->setProperty(printSystemOptions,
                            atActualSize(engine->property(printSystemOptions).toStringList()));
    }
    const QRectF paper = printer.pageLayout().fullRect(QPageLayout::Millimeter);
    return isNear(paper.width(), sheet.width.toMillimetres()) &&
           isNear(paper.height(), sheet.height.toMillimetres());
}

QStringList atActualSize(const QStringList& options) {
    static const QStringList changing = {
        QStringLiteral("print-scaling"),    QStringLiteral("scaling"),
        QStringLiteral("natural-scaling"),  QStringLiteral("fit-to-page"),
        QStringLiteral("fitplot"),          QStringLiteral("number-up"),
        QStringLiteral("number-up-layout"), QStringLiteral("page-border"),
        QStringLiteral("position"),         QStringLiteral("mirror")};
    QStringList kept{QStringLiteral("print-scaling"), QStringLiteral("none")};
    for (qsizetype i = 0; i + 1 < options.size(); i += 2) {
        if (!changing.contains(options[i])) {
            kept << options[i] << options[i + 1];
        }
    }
    return kept;
}

Length unreachableEdge(const QPrinter& printer) {
    QPageLayout layout = printer.pageLayout();
    layout.setUnits(QPageLayout::Point);
    const QMarginsF least = layout.minimumMargins();
    const double points = std::max({least.left(), least.top(), least.right(), least.bottom()});
    return Length::roundedFromTicks(points * Length::ticksPerPoint);
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
