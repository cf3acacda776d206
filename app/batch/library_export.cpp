// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "app/batch/files.h"
#include "app/batch/library_search.h"
#include "app/rendering/pdf.h"
#include "core/library/zip_export.h"

namespace matwright::app {

namespace {

std::string countText(std::size_t sketches) {
    return sketches == 1 ? "1 sketch" : fmt::format("{} sketches", sketches);
}

struct Selection {
    OpenedLibrary library;
    std::vector<std::size_t> indices;
};

std::expected<Selection, int> namedSketches(const ExportCommand& command, BatchPorts& ports) {
    if (command.query != Query{} || !command.familyOf.empty()) {
        return std::unexpected(
            fail(ports, WrongUse,
                 {ErrorCode::Unsupported,
                  "Name sketches or give filters and an order, not both at once.", ""}));
    }
    auto library = openLibraryAloud(command.library, ports);
    if (!library) {
        return std::unexpected(library.error());
    }
    Selection selection{std::move(*library), {}};
    for (const std::string& name : command.named) {
        const Result<std::size_t> index = sketchNamed(selection.library, name);
        if (!index) {
            return std::unexpected(fail(ports, InputRefused, index.error()));
        }
        selection.indices.push_back(*index);
    }
    return selection;
}

std::expected<Selection, int> foundSketches(const ExportCommand& command, BatchPorts& ports) {
    auto searched = searchedLibrary(command, ports);
    if (!searched) {
        return std::unexpected(searched.error());
    }
    if (searched->found.indices.empty()) {
        complain(ports, {}, searched->whyNothing);
        return std::unexpected(Findings);
    }
    const auto& found = searched->found.indices;
    return Selection{std::move(searched->library), {found.begin(), found.end()}};
}

int exportZipOf(const ExportCommand& command, const Selection& selection, BatchPorts& ports) {
    std::vector<std::string> paths;
    paths.reserve(selection.indices.size());
    for (const std::size_t index : selection.indices) {
        paths.emplace_back(selection.library.holdings->path(index));
    }
    const auto zip = zipOfSketches(ports.files, selection.library.folder, paths);
    if (!zip) {
        const bool isOurs = zip.error().code == ErrorCode::WriteFailed;
        return fail(ports, isOurs ? CouldNotWrite : InputRefused, zip.error());
    }
    return writeFile(command.output, *zip, countText(paths.size()), ports);
}

std::expected<std::vector<ContactEntry>, int> contactEntries(const Selection& selection,
                                                             BatchPorts& ports) {
    std::vector<ContactEntry> entries;
    for (const std::size_t index : selection.indices) {
        const LibraryEntry entry = selection.library.holdings->entry(index);
        auto sketch = readInput(selection.library.folder / entry.path, ports);
        if (!sketch) {
            return std::unexpected(sketch.error());
        }
        entries.push_back({shownName(entry), std::move(*sketch)});
    }
    return entries;
}

std::vector<PdfPage> sheetsOf(const ContactSheetOptions& options,
                              std::span<const ContactEntry> entries) {
    std::vector<PdfPage> sheets;
    for (Drawing& drawing : contactSheets(options, entries)) {
        sheets.push_back({std::move(drawing), options.sheet, {}, {}});
    }
    return sheets;
}

int exportSheets(const ExportCommand& command, const Selection& selection, BatchPorts& ports) {
    const auto entries = contactEntries(selection, ports);
    if (!entries) {
        return entries.error();
    }
    const std::vector<PdfPage> sheets = sheetsOf(command.sheets, *entries);
    ports.startPainting();
    const Result<QByteArray> pdf = pdfBytes(sheets, QString::fromStdString(command.sheets.title));
    if (!pdf) {
        return fail(ports, CouldNotWrite,
                    {pdf.error().code, pdf.error().sentence, command.output.string()});
    }
    const std::string what = fmt::format("{} on {} {}", countText(entries->size()), sheets.size(),
                                         sheets.size() == 1 ? "sheet" : "sheets");
    return writeFile(command.output, {pdf->constData(), static_cast<std::size_t>(pdf->size())},
                     what, ports);
}

}  // namespace

int runLibraryExport(const ExportCommand& command, BatchPorts& ports) {
    const bool asZip = hasSuffix(command.output, ".zip");
    if (!asZip && !hasSuffix(command.output, ".pdf")) {
        return refuseSuffix(command.output, ".zip or .pdf", ports);
    }
    const auto selection =
        command.named.empty() ? foundSketches(command, ports) : namedSketches(command, ports);
    if (!selection) {
        return selection.error();
    }
    return asZip ? exportZipOf(command, *selection, ports)
                 : exportSheets(command, *selection, ports);
}

}  // namespace matwright::app
