// SPDX-License-Identifier: MIT
#include "app/prints/double_check_pdf.h"

#include <utility>

#include "app/rendering/pdf.h"
#include "core/prints/double_check.h"

namespace matwright::app {

Result<QByteArray> doubleCheckPdf(const Making& making, const PrintOptions& options, Size sheet,
                                  Scale scale) {
    std::vector<PdfPage> pages;
    for (DoubleCheckSheet& made :
         doubleCheckSheets(making, printsOf(making, options), sheet, scale)) {
        PdfPage page{std::move(made.drawing), sheet, {}, {}};
        for (SmallPrint& picture : made.pictures) {
            page.pictures.push_back({picture.place, std::move(picture.jpeg)});
        }
        pages.push_back(std::move(page));
    }
    return pdfBytes(pages, QString::fromStdString(making.sketch.name));
}

}  // namespace matwright::app
