// SPDX-License-Identifier: MIT
#include "core/printplan/sheet_files.h"

#include <algorithm>
#include <set>

#include "core/library/file_stem.h"
#include "core/library/names.h"
#include "core/prints/picture_file.h"
#include "core/prints/picture_pdf.h"

namespace matwright {

namespace {

Result<PicturePage> sheetPage(const PrintPlan& plan, const PrintSheet& sheet,
                              const std::vector<Printer>& printers, const PrintOptions& options,
                              const std::stop_token& stop) {
    const Result<Raster> raster = renderSheet(plan, sheet, printers, options, stop);
    if (!raster) {
        return std::unexpected(raster.error());
    }
    PrintOptions asPdf = options;
    asPdf.format = PrintFormat::Pdf;
    Result<std::string> jpeg = pictureFile(*raster, {}, asPdf);
    if (!jpeg) {
        return std::unexpected(jpeg.error());
    }
    return PicturePage{sheet.size, Rect::at({}, sheet.size), std::nullopt, *std::move(jpeg),
                       raster->size};
}

Result<SheetFile> fileFor(const Printer& printer, std::vector<std::size_t> sheets,
                          const PrintPlan& plan, const std::vector<Printer>& printers,
                          const PrintOptions& options, const std::stop_token& stop) {
    std::vector<PicturePage> pages;
    for (const std::size_t sheet : sheets) {
        Result<PicturePage> page = sheetPage(plan, plan.sheets[sheet], printers, options, stop);
        if (!page) {
            return std::unexpected(page.error());
        }
        pages.push_back(*std::move(page));
    }
    Result<std::string> bytes = picturePdf(pages, "Sheets for " + printer.name);
    if (!bytes) {
        return std::unexpected(bytes.error());
    }
    return SheetFile{printer.id, "", *std::move(bytes), std::move(sheets)};
}

}  // namespace

Result<std::vector<SheetFile>> sheetFiles(const PrintPlan& plan,
                                          const std::vector<Printer>& printers,
                                          const PrintOptions& options,
                                          const std::stop_token& stop) {
    for (const PrintSheet& sheet : plan.sheets) {
        if (std::optional<Error> changed = changedSincePlanned(plan, sheet, printers)) {
            return std::unexpected(*std::move(changed));
        }
    }
    std::vector<SheetFile> files;
    std::set<std::string> taken;
    for (const Printer& printer : printers) {
        std::vector<std::size_t> sheets;
        for (std::size_t i = 0; i < plan.sheets.size(); ++i) {
            if (plan.sheets[i].printer == printer.id) {
                sheets.push_back(i);
            }
        }
        if (sheets.empty()) {
            continue;
        }
        Result<SheetFile> file = fileFor(printer, std::move(sheets), plan, printers, options, stop);
        if (!file) {
            return std::unexpected(file.error());
        }
        for (int number = 1; file->name.empty() || !taken.insert(file->name).second; ++number) {
            file->name = numberedFileName(stemOfTitle(printer.name), number, ".pdf");
        }
        files.push_back(*std::move(file));
    }
    return files;
}

}  // namespace matwright
