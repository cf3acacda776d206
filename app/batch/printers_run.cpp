// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <ostream>

#include "app/batch/json_values.h"
#include "app/batch/printing_commands.h"
#include "app/batch/printing_place.h"
#include "app/batch/table.h"
#include "core/library/printable.h"
#include "core/printers/test_sheet.h"

namespace matwright::app {

namespace {

std::string atHandText(const PrinterPaper& paper) {
    return paper.atHand ? fmt::format("{}", *paper.atHand) : "plenty";
}

std::string correctionWords(const PrinterPaper& paper) {
    if (!paper.correction()) {
        return "not measured";
    }
    const auto percent = [](const AxisMeasure& axis) { return 100 * (1 / axis.factor() - 1); };
    return fmt::format("{:+.1f} % across, {:+.1f} % down", percent(paper.correction()->across),
                       percent(paper.correction()->down));
}

Json measureJson(const std::optional<Correction>& correction) {
    if (!correction) {
        return nullptr;
    }
    const auto axis = [](const AxisMeasure& measure) {
        return Json{{"wished", json(measure.wished)}, {"measured", json(measure.measured)}};
    };
    return {{"across", axis(correction->across)},
            {"down", axis(correction->down)},
            {"date", correction->date}};
}

Json paperJson(const PrinterPaper& paper) {
    Json one{{"name", paper.name},
             {"size", json(paper.size)},
             {"borderless", paper.borderless},
             {"margin",
              {{"left", json(paper.margin.left)},
               {"top", json(paper.margin.top)},
               {"right", json(paper.margin.right)},
               {"bottom", json(paper.margin.bottom)}}},
             {"price", paper.price},
             {"atHand", nullptr},
             {"withBorders", measureJson(paper.withBorders)},
             {"withoutBorders", measureJson(paper.withoutBorders)}};
    if (paper.atHand) {
        one["atHand"] = *paper.atHand;
    }
    return one;
}

Json printersJson(const std::vector<Printer>& printers) {
    Json all = Json::array();
    for (const Printer& printer : printers) {
        Json papers = Json::array();
        for (const PrinterPaper& paper : printer.papers) {
            papers.push_back(paperJson(paper));
        }
        all.push_back({{"name", printer.name},
                       {"kind", printer.kind == PrinterKind::PrintShop ? "print shop" : "at home"},
                       {"queue", printer.queue},
                       {"papers", std::move(papers)}});
    }
    return all;
}

int list(const PrintersCommand& command, PrintingStore& store, BatchPorts& ports) {
    const Result<std::vector<Printer>> printers = store.printers();
    if (!printers) {
        return fail(ports, InputRefused, printers.error());
    }
    if (command.json) {
        ports.out << textOf(printersJson(*printers)) << '\n';
        return Done;
    }
    Table table({"Printer", "Paper", "Size", "Borders", "Price", "At hand", "Comes out"}, {4, 5});
    for (const Printer& printer : *printers) {
        for (const PrinterPaper& paper : printer.papers) {
            table.addRow({printablePath(printer.name), printablePath(paper.name),
                          naturalSizeText(paper.size), paper.borderless ? "without" : "with",
                          fmt::format("{}", paper.price), atHandText(paper),
                          correctionWords(paper)});
        }
        if (printer.papers.empty()) {
            table.addRow({printablePath(printer.name), "none", "", "", "", "", ""});
        }
    }
    ports.out << (printers->empty() ? "There is no printer yet.\n" : table.text());
    return Done;
}

PrinterPaper paperFor(const PrintersCommand& command, Size size) {
    PrinterPaper paper;
    paper.name = naturalSizeText(size);
    paper.size = size;
    paper.borderless = !command.margin;
    const Length margin = command.margin.value_or(Length());
    paper.margin = {margin, margin, margin, margin};
    paper.price = command.price;
    paper.atHand = command.atHand;
    return paper;
}

// A printer that is there gets more papers.
int addPrinter(const PrintersCommand& command, PrintingStore& store, BatchPorts& ports) {
    const Result<std::vector<Printer>> printers = store.printers();
    if (!printers) {
        return fail(ports, InputRefused, printers.error());
    }
    const Result<Printer> before = printerNamed(*printers, command.printer);
    if (!before && before.error().code != ErrorCode::NotFound) {
        return fail(ports, InputRefused, before.error());
    }
    Printer after = before.value_or(Printer{});
    if (!before) {
        after.name = command.printer;
    }
    if (command.isShop) {
        after.kind = PrinterKind::PrintShop;
    }
    if (!command.queue.empty()) {
        after.queue = command.queue;
    }
    for (const Size size : command.sizes) {
        after.papers.push_back(paperFor(command, size));
    }
    const Result<Printer> kept = before ? store.change(*before, after) : store.add(after);
    if (!kept) {
        return fail(ports, CouldNotWrite, kept.error());
    }
    ports.out << fmt::format("{} {}: {} paper{}\n", before ? "Changed" : "Added",
                             printablePath(kept->name), kept->papers.size(),
                             kept->papers.size() == 1 ? "" : "s");
    return Done;
}

int removeIt(const PrintersCommand& command, const Printer& printer, PrintingStore& store,
             BatchPorts& ports) {
    if (command.paper.empty()) {
        const Result<void> removed = store.remove(printer.id);
        if (!removed) {
            return fail(ports, CouldNotWrite, removed.error());
        }
        ports.out << "Took out " << printablePath(printer.name) << '\n';
        return Done;
    }
    const Result<PrinterPaper> paper = paperNamed(printer, command.paper);
    if (!paper) {
        return fail(ports, InputRefused, paper.error());
    }
    Printer after = printer;
    std::erase_if(after.papers, [&](const PrinterPaper& one) { return one.id == paper->id; });
    const Result<Printer> kept = store.change(printer, after);
    if (!kept) {
        return fail(ports, CouldNotWrite, kept.error());
    }
    ports.out << fmt::format("Took {} out of {}\n", printablePath(paper->name),
                             printablePath(printer.name));
    return Done;
}

// Of the way that is not told what was measured before is kept.
Result<std::optional<Correction>> measuredCorrection(const PrintersCommand& command,
                                                     const PrinterPaper& paper, bool borderless) {
    if (!command.across && !command.down) {
        return std::nullopt;
    }
    const auto& known = borderless ? paper.withoutBorders : paper.withBorders;
    if (!known && (!command.across || !command.down)) {
        return std::unexpected(Error{ErrorCode::BadText,
                                     "Nothing was measured on this paper before. Measure both ways "
                                     "and give --across and --down.",
                                     paper.name});
    }
    const Size marks = testMarks(paper, borderless ? Borders::Without : Borders::With);
    const auto axis = [](const std::optional<Length>& told, Length mark, AxisMeasure before) {
        return told ? AxisMeasure{mark, *told} : before;
    };
    const Correction before = known.value_or(Correction{});
    const AxisMeasure across = axis(command.across, marks.width, before.across);
    const AxisMeasure down = axis(command.down, marks.height, before.down);
    return correctionOf({across.wished, down.wished}, {across.measured, down.measured}, today());
}

int measured(const PrintersCommand& command, const Printer& printer, PrintingStore& store,
             BatchPorts& ports) {
    const Result<PrinterPaper> paper = paperNamed(printer, command.paper);
    if (!paper) {
        return fail(ports, InputRefused, paper.error());
    }
    const bool borderless = command.withBorders ? !*command.withBorders : paper->borderless;
    const auto correction = measuredCorrection(command, *paper, borderless);
    if (!correction) {
        return fail(ports, WrongUse, correction.error());
    }
    if (const Result<void> kept = store.keep(paper->id, borderless, *correction); !kept) {
        return fail(ports, CouldNotWrite, kept.error());
    }
    ports.out << printablePath(printer.name + ", " + paper->name)
              << (borderless ? ", without borders: " : ", with borders: ")
              << (*correction ? correctionText(paper->size, borderless, **correction)
                              : "what was measured is forgotten.")
              << '\n';
    return Done;
}

}  // namespace

int runPrinters(const PrintersCommand& command, BatchPorts& ports) {
    auto store = openPrinting(command.store, ports);
    if (!store) {
        return store.error();
    }
    if (command.act == PrintersCommand::Act::List) {
        return list(command, *store, ports);
    }
    if (command.act == PrintersCommand::Act::Add) {
        return addPrinter(command, *store, ports);
    }
    const Result<std::vector<Printer>> printers = store->printers();
    const Result<Printer> printer = printers ? printerNamed(*printers, command.printer)
                                             : Result<Printer>(std::unexpected(printers.error()));
    if (!printer) {
        return fail(ports, InputRefused, printer.error());
    }
    return command.act == PrintersCommand::Act::Remove ? removeIt(command, *printer, *store, ports)
                                                       : measured(command, *printer, *store, ports);
}

}  // namespace matwright::app
