// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "app/batch/files.h"
#include "app/batch/printing_commands.h"
#include "app/batch/printing_place.h"
#include "app/rendering/pdf.h"
#include "core/printers/test_sheet.h"

namespace matwright::app {

namespace {

Result<std::pair<Printer, PrinterPaper>> chosenPaper(const TestSheetCommand& command,
                                                     PrintingStore& store) {
    const Result<std::vector<Printer>> printers = store.printers();
    if (!printers) {
        return std::unexpected(printers.error());
    }
    const Result<Printer> printer = printerNamed(*printers, command.printer);
    if (!printer) {
        return std::unexpected(printer.error());
    }
    const Result<PrinterPaper> paper = paperNamed(*printer, command.paper);
    if (!paper) {
        return std::unexpected(paper.error());
    }
    return std::pair(*printer, *paper);
}

int writeSheet(const TestSheetCommand& command, const Printer& printer, const PrinterPaper& paper,
               BatchPorts& ports) {
    const bool borderless = command.withBorders ? !*command.withBorders : paper.borderless;
    const std::optional<Correction>& known = borderless ? paper.withoutBorders : paper.withBorders;
    if (command.corrected && !known) {
        return fail(ports, WrongUse,
                    {ErrorCode::NotFound,
                     "Nothing was measured on this paper yet. Make the test sheet without "
                     "--corrected, then use \"printers measured\".",
                     paper.name});
    }
    const TestSheet sheet = testSheet(printer, paper, borderless ? Borders::Without : Borders::With,
                                      command.corrected ? known : std::nullopt);
    ports.startPainting();
    const Result<QByteArray> pdf =
        pdfBytes({{sheet.drawing, paper.size, std::nullopt, {}}}, "Test sheet");
    if (!pdf) {
        return fail(ports, CouldNotWrite,
                    {pdf.error().code, pdf.error().sentence, command.output.string()});
    }
    const Size marks = testMarks(paper, borderless ? Borders::Without : Borders::With);
    return writeNewFile(command.output,
                        std::string_view(pdf->constData(), static_cast<std::size_t>(pdf->size())),
                        fmt::format("print it at actual size; A to B should be {}, C to D {}",
                                    exactText(marks.width), exactText(marks.height)),
                        ports);
}

}  // namespace

int runTestSheet(const TestSheetCommand& command, BatchPorts& ports) {
    if (!hasSuffix(command.output, ".pdf")) {
        return refuseSuffix(command.output, ".pdf", ports);
    }
    auto store = openPrinting(command.store, ports);
    if (!store) {
        return store.error();
    }
    const auto chosen = chosenPaper(command, *store);
    if (!chosen) {
        return fail(ports, InputRefused, chosen.error());
    }
    return writeSheet(command, chosen->first, chosen->second, ports);
}

}  // namespace matwright::app
