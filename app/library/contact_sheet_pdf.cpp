// SPDX-License-Identifier: MIT
#include "app/library/contact_sheet_pdf.h"

#include <utility>

#include "app/rendering/pdf.h"
#include "core/contactsheet/contact_sheet.h"
#include "core/library/names.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {

Result<ContactSheetPdf> contactSheetPdf(const std::filesystem::path& library,
                                        const std::vector<std::string>& sketches,
                                        const QString& title) {
    DiskFileStore store;
    ContactSheetPdf made;
    std::vector<ContactEntry> entries;
    for (const std::string& path : sketches) {
        if (auto loaded = loadSketch(store, library / path)) {
            std::string name = shownSketchName(loaded->sketch.name, path);
            entries.push_back({std::move(name), std::move(loaded->sketch)});
        } else {
            made.leftOut.push_back(std::move(loaded.error()));
        }
    }
    ContactSheetOptions options;
    options.sheet = sheetOfThisPlace();
    options.title = title.toStdString();
    std::vector<PdfPage> pages;
    for (Drawing& drawing : contactSheets(options, entries)) {
        pages.push_back({std::move(drawing), options.sheet, {}, {}});
    }
    auto bytes = pdfBytes(pages, title);
    if (!bytes) {
        return std::unexpected(std::move(bytes.error()));
    }
    made.bytes = *std::move(bytes);
    return made;
}

}  // namespace matwright::app
