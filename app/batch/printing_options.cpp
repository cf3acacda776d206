// SPDX-License-Identifier: MIT
#include "app/batch/printing_options.h"

#include "app/batch/number_within.h"
#include "app/batch/printing_help.h"
#include "app/batch/typed_size.h"
#include "core/measure/length_text.h"
#include "core/printers/printer.h"

namespace matwright::app {

namespace {

void addStore(CLI::App* command, std::filesystem::path& store) {
    command->add_option("--store", store, "The file of printers and prints; without it your own")
        ->type_name("FILE");
}

void addTyped(CLI::App* command, const std::string& name, std::optional<Length>& length,
              const std::string& what) {
    command
        ->add_option_function<std::string>(
            name,
            [&length, name](const std::string& text) {
                const Result<Length> read = parseLength(text, Unit::Inch);
                if (!read || read->isNegative()) {
                    throw CLI::ValidationError(
                        name, read ? "It has to be 0 or more." : read.error().sentence);
                }
                length = *read;
            },
            what)
        ->type_name("LENGTH");
}

void addBorders(CLI::App* command, std::optional<bool>& withBorders) {
    CLI::Option* with = command->add_flag_callback(
        "--with-borders", [&withBorders] { withBorders = true; }, "Printed with borders");
    command
        ->add_flag_callback(
            "--without-borders", [&withBorders] { withBorders = false; },
            "Printed without; without either as the paper is printed now")
        ->excludes(with);
}

void addPlan(CLI::App& app, PrintPlanCommand& plan, BatchPorts& ports, const AddCommand& add,
             const WithPhotos& with) {
    CLI::App* command = add(
        app, "print-plan", "Which prints come out on which photo papers, and the files for it",
        printPlanExamples, with([&](PhotoCommands& run) { return run.printPlan(plan, ports); }));
    command->add_option("PAGE", plan.pages, "Page files (.page.svg)")->required();
    command->add_option("--waiting", plan.waiting, "Pages whose photos may fill what room is left")
        ->type_name("PAGE");
    addStore(command, plan.store);
    command->add_option("--printer", plan.printers, "Only by this printer; may be given again")
        ->type_name("NAME");
    command->add_option("--pdf", plan.pdf, "Makes one PDF a printer in this folder")
        ->type_name("FOLDER");
    command->add_option("--cuts", plan.cuts, "Makes a PDF of how the sheets are cut")
        ->type_name("FILE");
    command->add_option("--seconds", plan.seconds, "How long a better plan is looked for")
        ->check(numberWithin(0.05, 600))
        ->type_name("N")
        ->capture_default_str();
    command->add_flag("--cut-marks", plan.cutMarks, "Hairlines on bare paper beside the prints");
    command->add_flag("--fill", plan.fill, "Fills the room that is left with the best offers");
    command->add_flag("--printed", plan.printed, "Records the plan as printed");
    command->add_flag("--json", plan.json, "As JSON");
}

void addPapers(CLI::App* command, PrintersCommand& printers) {
    command
        ->add_option_function<std::vector<std::string>>(
            "--paper",
            [&printers](const std::vector<std::string>& texts) {
                for (const std::string& text : texts) {
                    const Result<Size> read = parsePaperSize(text);
                    if (!read) {
                        throw CLI::ValidationError("--paper", read.error().sentence);
                    }
                    printers.sizes.push_back(*read);
                }
            },
            "A paper it takes, by size; may be given again")
        ->type_name("SIZE");
    addTyped(command, "--margin", printers.margin,
             "What it cannot reach on each side; without it the papers have no borders");
    command->add_option("--price", printers.price, "Of one paper, in any unit that all share")
        ->check(CLI::Range(std::int64_t{0}, maxSheetPrice))
        ->type_name("N")
        ->capture_default_str();
    command->add_option("--at-hand", printers.atHand, "How many there are; without it plenty")
        ->check(CLI::Range(0, maxPapersAtHand))
        ->type_name("N");
}

// One way of `printers`; each has the whole of the command's value.
void addPrinterWays(CLI::App& parent, PrintersCommand& printers, BatchPorts& ports,
                    const AddCommand& add, const WithPhotos& with) {
    using Act = PrintersCommand::Act;
    const auto way = [&](const char* name, const char* what, Act act) {
        CLI::App* command = add(parent, name, what, printersExamples,
                                with([&printers, &ports, act](PhotoCommands& run) {
                                    printers.act = act;
                                    return run.printers(printers, ports);
                                }));
        addStore(command, printers.store);
        if (act != Act::List) {
            command->add_option("PRINTER", printers.printer, "Its name")->required();
        }
        return command;
    };
    way("list", "All printers and their papers", Act::List)
        ->add_flag("--json", printers.json, "As JSON, exact");
    CLI::App* command = way("add", "A printer, or more papers for one", Act::Add);
    addPapers(command, printers);
    command->add_flag("--print-shop", printers.isShop, "It is a print shop");
    command->add_option("--queue", printers.queue, "The system's print queue")->type_name("NAME");
    way("remove", "Takes a printer out, or one paper of it", Act::Remove)
        ->add_option("--paper", printers.paper, "Only this paper, by name or size")
        ->type_name("PAPER");
    command = way("measured", "What a ruler showed on a test sheet", Act::Measured);
    command->add_option("PAPER", printers.paper, "By name or size")->required();
    addTyped(command, "--across", printers.across, "From mark A to mark B");
    addTyped(command, "--down", printers.down, "From mark C to mark D");
    addBorders(command, printers.withBorders);
}

void addPrintWays(CLI::App& parent, PrintsOnHandCommand& prints, BatchPorts& ports,
                  const AddCommand& add, const WithPhotos& with) {
    using Act = PrintsOnHandCommand::Act;
    const auto way = [&](const char* name, const char* what, Act act) {
        CLI::App* command = add(parent, name, what, printsOnHandExamples,
                                with([&prints, &ports, act](PhotoCommands& run) {
                                    prints.act = act;
                                    return run.printsOnHand(prints, ports);
                                }));
        addStore(command, prints.store);
        if (act != Act::List && act != Act::Undo) {
            command->add_option("PRINT", prints.prints, "Numbers that list shows")->required();
        }
        return command;
    };
    CLI::App* command = way("list", "All prints on hand", Act::List);
    command->add_flag("--all", prints.all, "Used and wasted ones too");
    command->add_flag("--json", prints.json, "As JSON");
    way("use", "Takes prints for a page", Act::Use)
        ->add_option("--page", prints.page, "The page's name")
        ->required()
        ->type_name("NAME");
    way("put-back", "Used or wasted prints are on hand again", Act::PutBack);
    way("waste", "Prints that are spoiled", Act::Waste);
    way("undo", "Takes the last change of prints back", Act::Undo);
}

void addTestSheet(CLI::App& app, TestSheetCommand& sheet, BatchPorts& ports, const AddCommand& add,
                  const WithPhotos& with) {
    CLI::App* command = add(app, "test-sheet", "A sheet that tells by how much a printer enlarges",
                            testSheetExamples,
                            with([&](PhotoCommands& run) { return run.testSheet(sheet, ports); }));
    command->add_option("PRINTER", sheet.printer, "Its name")->required();
    command->add_option("PAPER", sheet.paper, "By name or size")->required();
    command->add_option("FILE", sheet.output, "The result; its name ends in .pdf")->required();
    addStore(command, sheet.store);
    addBorders(command, sheet.withBorders);
    command->add_flag("--corrected", sheet.corrected,
                      "With what was measured made up for, as a check");
}

}  // namespace

void addPrintingCommands(CLI::App& app, PrintingCommandLines& lines, BatchPorts& ports,
                         const AddCommand& add, const WithPhotos& with) {
    addPlan(app, lines.plan, ports, add, with);
    CLI::App* printers = add(app, "printers", "Your printers and the photo papers they take",
                             printersExamples, nullptr);
    printers->require_subcommand(1);
    addPrinterWays(*printers, lines.printers, ports, add, with);
    CLI::App* prints =
        add(app, "prints-on-hand", "Prints that were made ahead", printsOnHandExamples, nullptr);
    prints->require_subcommand(1);
    addPrintWays(*prints, lines.prints, ports, add, with);
    addTestSheet(app, lines.testSheet, ports, add, with);
}

}  // namespace matwright::app
