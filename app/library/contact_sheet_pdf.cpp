// SPDX-License-Identifier: MIT
#include "app/library/contact_sheet_pdf.h"

#include <QLocale>
#include <algorithm>
#include <span>

#include "app/rendering/pdf.h"
#include "core/contactsheet/contact_sheet.h"
#include "core/library/names.h"
#include "core/measure/catalogue.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {
namespace {

std::vector<ContactEntry> contactEntries(const std::filesystem::path& library,
                                         const std::vector<std::string>& sketches) {
    DiskFileStore store;
    std::vector<ContactEntry> entries;
    for (const std::string& path : sketches) {
        if (auto loaded = loadSketch(store, library / path)) {
            std::string name = shownSketchName(loaded->sketch.name, path);
            entries.push_back({std::move(name), std::move(loaded->sketch)});
        }
    }
    return entries;
}

Size sheetOfThisPlace() {
    const bool isMetric = QLocale().measurementSystem() == QLocale::MetricSystem;
    return findSheetSize(isMetric ? "a4" : "letter")->size;
}

}  // namespace

Result<QByteArray> contactSheetPdf(const std::filesystem::path& library,
                                   const std::vector<std::string>& sketches, const QString& title) {
    const std::vector<ContactEntry> entries = contactEntries(library, sketches);
    ContactSheetOptions options;
    options.sheet = sheetOfThisPlace();
    options.title = title.toStdString();
    const std::size_t perSheet = contactGrid(options).perSheet();
    const std::size_t sheets = contactSheetCount(options, entries.size());
    std::vector<PdfPage> pages;
    for (std::size_t i = 0; i < sheets; ++i) {
        const std::size_t from = std::min(i * perSheet, entries.size());
        const std::size_t count = std::min(perSheet, entries.size() - from);
        const auto onSheet = std::span(entries).subspan(from, count);
        pages.push_back({contactSheet(options, onSheet, i + 1, sheets), options.sheet, {}, {}});
    }
    return pdfBytes(pages, title);
}

}  // namespace matwright::app
