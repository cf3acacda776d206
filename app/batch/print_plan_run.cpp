// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <ostream>

#include "app/batch/files.h"
#include "app/batch/print_plan_text.h"
#include "app/batch/printing_commands.h"
#include "app/batch/printing_place.h"
#include "app/rendering/pdf.h"
#include "core/cutpicture/plan_pages.h"
#include "core/library/names.h"
#include "core/pagefile/page_file.h"
#include "core/printplan/drawn_sheet.h"
#include "core/printplan/printed.h"
#include "core/printplan/sheet_files.h"

namespace matwright::app {

namespace {

// Each round fills every sheet that has room once.
constexpr int mostFillings = 12;

std::expected<PlanPage, int> readPlanPage(const std::filesystem::path& input, BatchPorts& ports) {
    Result<LoadedPage> loaded = loadPage(ports.files, std::filesystem::absolute(input));
    if (!loaded) {
        return std::unexpected(fail(ports, InputRefused, loaded.error()));
    }
    for (const std::string& warning : loaded->warnings) {
        complain(ports, input, warning);
    }
    // The name prints are recorded for: that of the file, as in the program's own print plan. Pages
    // made from one sketch have one name inside.
    return PlanPage{std::string(stemOf(input.native())), std::move(loaded->making)};
}

std::expected<std::vector<PlanPage>, int> readPages(
    const std::vector<std::filesystem::path>& inputs, BatchPorts& ports) {
    std::vector<PlanPage> pages;
    for (const std::filesystem::path& input : inputs) {
        auto page = readPlanPage(input, ports);
        if (!page) {
            return std::unexpected(page.error());
        }
        pages.push_back(*std::move(page));
    }
    return pages;
}

Result<std::vector<Printer>> chosenPrinters(const PrintPlanCommand& command,
                                            std::vector<Printer> all) {
    if (command.printers.empty()) {
        return all;
    }
    std::vector<Printer> chosen;
    for (const std::string& name : command.printers) {
        Result<Printer> printer = printerNamed(all, name);
        if (!printer) {
            return std::unexpected(printer.error());
        }
        if (find(chosen, printer->id) == nullptr) {
            chosen.push_back(*std::move(printer));
        }
    }
    return chosen;
}

Result<PlanInput> inputFrom(const PrintPlanCommand& command, PrintingStore& store) {
    Result<std::vector<Printer>> printers = store.printers();
    if (!printers) {
        return std::unexpected(printers.error());
    }
    Result<std::vector<Printer>> chosen = chosenPrinters(command, *std::move(printers));
    if (!chosen) {
        return std::unexpected(chosen.error());
    }
    PlanInput input;
    input.printers = *std::move(chosen);
    auto onHand = store.prints(PrintState::OnHand);
    auto used = store.prints(PrintState::Used);
    auto printed = store.printedPhotos();
    for (const auto* failed : {&onHand, &used}) {
        if (!*failed) {
            return std::unexpected(failed->error());
        }
    }
    if (!printed) {
        return std::unexpected(printed.error());
    }
    input.onHand = *std::move(onHand);
    input.used = *std::move(used);
    input.printedPhotos = *std::move(printed);
    for (const PrintOnHand& print : input.used) {
        input.usedSizes.push_back(print.look.paper);
    }
    return input;
}

PrintPlanLimits limitsOf(const PrintPlanCommand& command) {
    PrintPlanLimits limits;
    limits.cuts.time = std::chrono::milliseconds(
        static_cast<std::chrono::milliseconds::rep>(1000 * command.seconds));
    return limits;
}

Result<PlannedPrints> planned(PlanInput input, const PrintPlanLimits& limits) {
    Result<PrintPlan> plan = planPrints(input, limits);
    if (!plan) {
        return std::unexpected(plan.error());
    }
    PlannedPrints prints{std::move(input), *std::move(plan), {}};
    for (std::size_t sheet = 0; sheet < prints.plan.sheets.size(); ++sheet) {
        prints.offers.push_back(offersFor(prints.plan, prints.input, sheet));
    }
    return prints;
}

bool isAccepted(const PlanInput& input, const PrintOffer& offer) {
    return std::ranges::any_of(input.ahead, [&](const AheadPrint& ahead) {
        return ahead.photo.content == offer.print.photo.content;
    });
}

// What is sharp enough, each photo once.
Result<PlannedPrints> filled(PlannedPrints prints, const PrintPlanLimits& limits) {
    for (int round = 0; round < mostFillings; ++round) {
        PlanInput next = prints.input;
        for (const std::vector<PrintOffer>& offers : prints.offers) {
            const auto offer = std::ranges::find_if(offers, [&](const PrintOffer& one) {
                return one.warning.empty() && !isAccepted(next, one);
            });
            if (offer != offers.end()) {
                next = accepted(next, *offer);
            }
        }
        if (next.ahead.size() == prints.input.ahead.size()) {
            break;
        }
        Result<PlannedPrints> more = planned(std::move(next), limits);
        if (!more) {
            return more;
        }
        prints = *std::move(more);
    }
    return prints;
}

int makeFolder(const std::filesystem::path& folder, BatchPorts& ports) {
    std::error_code problem;
    std::filesystem::create_directories(folder, problem);
    return problem ? fail(ports, CouldNotWrite,
                          {ErrorCode::WriteFailed,
                           fmt::format("The folder cannot be made ({}).", problem.message()),
                           folder.string()})
                   : Done;
}

int writeSheets(const PrintPlanCommand& command, const PlannedPrints& prints, BatchPorts& ports) {
    PrintOptions options;
    options.cutMarks = command.cutMarks;
    const auto files = sheetFiles(prints.plan, prints.input.printers, options);
    if (!files) {
        const bool isPhoto = files.error().code != ErrorCode::WriteFailed;
        return fail(ports, isPhoto ? InputRefused : CouldNotWrite, files.error());
    }
    if (const int code = makeFolder(command.pdf, ports); code != Done) {
        return code;
    }
    for (const SheetFile& file : *files) {
        const std::string count =
            fmt::format("{} sheet{}", file.sheets.size(), file.sheets.size() == 1 ? "" : "s");
        const int code = writeNewFile(command.pdf / file.name, file.bytes,
                                      toldUnless(command.json, count), ports);
        if (code != Done) {
            return code;
        }
    }
    return Done;
}

int writeCuts(const PrintPlanCommand& command, const PlannedPrints& prints, BatchPorts& ports) {
    std::vector<PlannedSheet> sheets;
    sheets.reserve(prints.plan.sheets.size());
    for (std::size_t i = 0; i < prints.plan.sheets.size(); ++i) {
        sheets.push_back(
            drawnSheet(prints.plan, prints.input, i, scaleFor(prints.plan.sheets[i].size)));
    }
    PlanPagesOptions options;
    options.title = "Sheets of prints";
    options.summary = {prints.plan.bound};
    std::vector<PdfPage> pages;
    for (Drawing& page : planPages(sheets, options)) {
        pages.push_back({std::move(page), options.paper, std::nullopt, {}});
    }
    ports.startPainting();
    const Result<QByteArray> pdf = pdfBytes(pages, QString::fromStdString(options.title));
    if (!pdf) {
        return fail(ports, CouldNotWrite,
                    {pdf.error().code, pdf.error().sentence, command.cuts.string()});
    }
    return writeNewFile(command.cuts,
                        std::string_view(pdf->constData(), static_cast<std::size_t>(pdf->size())),
                        toldUnless(command.json, "how the sheets are cut"), ports);
}

// The sheets are printed, so they are recorded even where prints on hand went meanwhile.
int recorded(const PrintPlanCommand& command, const PlannedPrints& prints, PrintingStore& store,
             BatchPorts& ports) {
    if (prints.plan.sheets.empty() && prints.plan.taken.empty()) {
        return Done;
    }
    std::vector<PrintOnHandId> gone;
    const auto done = recordPrinted(store, prints.plan, prints.input, today(), "", &gone);
    if (!done) {
        return fail(ports, CouldNotWrite, done.error());
    }
    if (!command.json) {
        ports.out << "Recorded as printed; \"prints-on-hand undo\" takes it back.\n";
    }
    for (const PrintOnHandId print : gone) {
        complain(ports, fmt::format("print {}", print.value),
                 "It was to be taken, but is not on hand any more. Plan again to have it printed.");
    }
    return gone.empty() ? Done : Findings;
}

int carryOut(const PrintPlanCommand& command, const PlannedPrints& prints, PrintingStore& store,
             BatchPorts& ports) {
    ports.out << (command.json ? textOf(planJson(prints)) + '\n' : planText(prints));
    int code = Done;
    const bool hasFiles = !command.pdf.empty() || !command.cuts.empty();
    if (hasFiles && prints.plan.sheets.empty() && !command.json) {
        ports.out << "There is nothing to print, so no files were made.\n";
    }
    if (!command.pdf.empty() && !prints.plan.sheets.empty()) {
        code = writeSheets(command, prints, ports);
    }
    if (code == Done && !command.cuts.empty() && !prints.plan.sheets.empty()) {
        code = writeCuts(command, prints, ports);
    }
    if (code == Done && command.printed) {
        code = recorded(command, prints, store, ports);
    }
    return code == Done && !prints.plan.leftOut.empty() ? Findings : code;
}

}  // namespace

int runPrintPlan(const PrintPlanCommand& command, BatchPorts& ports) {
    if (!command.cuts.empty() && !hasSuffix(command.cuts, ".pdf")) {
        return refuseSuffix(command.cuts, ".pdf", ports);
    }
    auto pages = readPages(command.pages, ports);
    auto waiting = pages ? readPages(command.waiting, ports) : pages;
    if (!waiting) {
        return waiting.error();
    }
    auto store = openPrinting(command.store, ports);
    if (!store) {
        return store.error();
    }
    Result<PlanInput> input = inputFrom(command, *store);
    if (!input) {
        return fail(ports, InputRefused, input.error());
    }
    input->pages = *std::move(pages);
    input->waiting = *std::move(waiting);
    Result<PlannedPrints> prints = planned(*std::move(input), limitsOf(command));
    if (prints && command.fill) {
        prints = filled(*std::move(prints), limitsOf(command));
    }
    if (!prints) {
        return fail(ports, InputRefused, prints.error());
    }
    return carryOut(command, *prints, *store, ports);
}

}  // namespace matwright::app
