// SPDX-License-Identifier: MIT
#include "app/rendering/pdf.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QLocale>
#include <QPainter>
#include <QPdfWriter>
#include <cmath>

#include "app/rendering/paint.h"
#include "app/rendering/pdf_boxes.h"
#include "core/measure/catalogue.h"

namespace matwright::app {

namespace {

// Whole steps a point, so that scaling loses nothing.
constexpr int resolution = 7200;
constexpr double stepsPerPoint = resolution / 72.0;

std::optional<Error> findFault(const std::vector<PdfPage>& pages) {
    if (pages.empty()) {
        return Error{ErrorCode::Unsupported, "There is no page to write.", ""};
    }
    for (const PdfPage& page : pages) {
        const Length smallest = Length::points(1);
        if (page.media.width < smallest || page.media.height < smallest) {
            return Error{ErrorCode::Unsupported,
                         "A PDF page has to be at least 1/72 in wide and high.", ""};
        }
        if (page.media.width > maxPdfSide || page.media.height > maxPdfSide) {
            return Error{ErrorCode::Unsupported,
                         "A PDF page can be 200 in long at most; print it on several sheets.", ""};
        }
    }
    return std::nullopt;
}

// The writer rounds pages to whole points. It gets whole points at once, nothing is cut off, and
// the true boxes are set afterwards.
QSizeF wholePoints(Size media) {
    return {std::ceil(media.width.toPoints()), std::ceil(media.height.toPoints())};
}

QPageLayout layoutOf(const PdfPage& page) {
    const QPageSize size(wholePoints(page.media), QPageSize::Point, QStringLiteral("Sheet"),
                         QPageSize::ExactMatch);
    QPageLayout layout(size, QPageLayout::Portrait, QMarginsF(), QPageLayout::Point);
    layout.setMode(QPageLayout::FullPageMode);
    return layout;
}

void paintPage(QPainter& painter, const PdfPage& page) {
    painter.resetTransform();
    // PDF counts from the bottom: what the true page is shorter, the content has to come down.
    const double shorter = wholePoints(page.media).height() - page.media.height.toPoints();
    painter.translate(0, shorter * stepsPerPoint);
    const double scale = resolution / static_cast<double>(Length::ticksPerInch);
    painter.scale(scale, scale);
    painter.translate(static_cast<double>(page.offset.x.ticks()),
                      static_cast<double>(page.offset.y.ticks()));
    paintDrawing(painter, page.drawing);
    for (const PdfPicture& picture : page.pictures) {
        const auto ticks = [](Length length) { return static_cast<double>(length.ticks()); };
        const QRectF place(ticks(picture.place.left()), ticks(picture.place.top()),
                           ticks(picture.place.x.length()), ticks(picture.place.y.length()));
        painter.drawImage(place, QImage::fromData(QByteArray::fromStdString(picture.jpeg), "JPG"));
    }
}

QByteArray written(const std::vector<PdfPage>& pages, const QString& title) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(resolution);
    writer.setTitle(title);
    writer.setCreator(QCoreApplication::applicationName());
    writer.setPageLayout(layoutOf(pages.front()));
    QPainter painter(&writer);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0) {
            writer.setPageLayout(layoutOf(pages[i]));
            writer.newPage();
        }
        paintPage(painter, pages[i]);
    }
    painter.end();
    return bytes;
}

}  // namespace

Result<QByteArray> pdfBytes(const std::vector<PdfPage>& pages, const QString& title) {
    if (const std::optional<Error> fault = findFault(pages)) {
        return std::unexpected(*fault);
    }
    std::vector<PdfBoxes> boxes;
    boxes.reserve(pages.size());
    for (const PdfPage& page : pages) {
        boxes.push_back({page.media, page.trim.value_or(Rect::at({}, page.media))});
    }
    return withTrueBoxes(written(pages, title), boxes);
}

Size sheetOfThisPlace() {
    const bool isMetric = QLocale().measurementSystem() == QLocale::MetricSystem;
    return findSheetSize(isMetric ? "a4" : "letter")->size;
}

}  // namespace matwright::app
