// SPDX-License-Identifier: MIT
#include "app/prints/double_check_pdf.h"

#include <QLocale>
#include <utility>

#include "app/rendering/pdf.h"
#include "core/measure/catalogue.h"
#include "core/prints/double_check.h"

namespace matwright::app {

namespace {

Size sheetOfThisPlace() {
    const bool isMetric = QLocale().measurementSystem() == QLocale::MetricSystem;
    return findSheetSize(isMetric ? "a4" : "letter")->size;
}

}  // namespace

Result<void> saveDoubleCheckSheet(const Making& making, const PrintOptions& options, Scale scale,
                                  const std::shared_ptr<FileStore>& files, const QString& path) {
    const Size sheet = sheetOfThisPlace();
    std::vector<PdfPage> pages;
    for (DoubleCheckSheet& made :
         doubleCheckSheets(making, printsOf(making, options), sheet, scale)) {
        PdfPage page{std::move(made.drawing), sheet, {}, {}};
        for (SmallPrint& picture : made.pictures) {
            page.pictures.push_back({picture.place, std::move(picture.jpeg)});
        }
        pages.push_back(std::move(page));
    }
    const Result<QByteArray> pdf = pdfBytes(pages, QString::fromStdString(making.sketch.name));
    if (!pdf) {
        return std::unexpected(pdf.error());
    }
    return files->replace(path.toStdString(),
                          {pdf->constData(), static_cast<std::size_t>(pdf->size())});
}

}  // namespace matwright::app
