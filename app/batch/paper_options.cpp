// SPDX-License-Identifier: MIT
#include "app/batch/paper_options.h"

#include "app/batch/number_within.h"
#include "app/batch/paper_help.h"
#include "app/batch/typed_size.h"
#include "core/drawing/colour_text.h"

namespace matwright::app {

namespace {

constexpr double mostSeconds = 3600;

Length lengthFor(const std::string& option, const std::string& text, bool mayBeZero) {
    const Result<Length> read = parseLength(text, Unit::Inch);
    if (!read) {
        throw CLI::ValidationError(option, read.error().sentence);
    }
    if (read->isNegative() || (read->isZero() && !mayBeZero)) {
        throw CLI::ValidationError(
            option, mayBeZero ? "It has to be 0 or more." : "It has to be more than 0.");
    }
    return *read;
}

// Sheets of paper have the sizes pages have.
Size sheetFor(const std::string& option, const std::string& text) {
    const Result<Size> read = parsePageSize(text);
    if (!read) {
        throw CLI::ValidationError(option, read.error().sentence);
    }
    return *read;
}

void addStore(CLI::App* command, PapersCommand& papers) {
    command->add_option("--store", papers.store, "The list of papers; without it your own")
        ->type_name("FILE");
}

Colour colourFor(const std::string& text) {
    const std::optional<Colour> read = parseColour(text);
    if (!read) {
        throw CLI::ValidationError("--colour", "Write a colour such as #c8aa82.");
    }
    return *read;
}

void addPaperLook(CLI::App* command, PaperOnHand& paper) {
    command->add_option("--thickness", paper.thickness, R"(As you say it: "216 gsm", "80 lb")")
        ->type_name("TEXT");
    command
        ->add_option_function<std::string>(
            "--colour", [&paper](const std::string& text) { paper.colour = colourFor(text); },
            "Such as #c8aa82")
        ->type_name("COLOUR");
    CLI::Option* picture = command
                               ->add_option_function<std::string>(
                                   "--picture",
                                   [&paper](const std::string& path) {
                                       paper.picture = std::filesystem::absolute(path).string();
                                   },
                                   "A picture of the paper")
                               ->type_name("FILE");
    CLI::Option* width = command
                             ->add_option_function<std::string>(
                                 "--picture-width",
                                 [&paper](const std::string& text) {
                                     paper.pictureWidth = lengthFor("--picture-width", text, false);
                                 },
                                 "How wide what the picture shows is in truth")
                             ->type_name("LENGTH")
                             ->needs(picture);
    picture->needs(width);
}

void addAdding(CLI::App& papers, PapersAddCommand& adding, BatchPorts& ports,
               const AddCommand& add) {
    CLI::App* command = add(papers, "add", "Add a paper to the list", papersExamples,
                            [&] { return runPapersAdd(adding, ports); });
    PaperOnHand& paper = adding.paper;
    command->add_option("NAME", paper.name, "Its name, as pages name it")->required();
    command
        ->add_option_function<std::string>(
            "--size", [&paper](const std::string& text) { paper.size = sheetFor("--size", text); },
            "Width x height as its pattern stands: 12x12, \"5 1/2 x 7\", a4")
        ->required()
        ->type_name("SIZE");
    command->add_option("--count", paper.count, "How many sheets")
        ->check(CLI::Range(0, maxPaperCount))
        ->type_name("N")
        ->capture_default_str();
    command->add_flag_callback(
        "--scrap", [&paper] { paper.kind = PaperKind::Scrap; }, "What was left of a sheet");
    command->add_flag_callback(
        "--up", [&paper] { paper.pattern = PaperPattern::HasUp; },
        "Its pattern has an up direction: it is not turned");
    command->add_flag_callback(
        "--two-sided", [&paper] { paper.sides = PaperSides::Two; }, "Good on both sides");
    addPaperLook(command, paper);
    addStore(command, adding.papers);
}

void addPapers(CLI::App& app, PaperCommandLines& lines, BatchPorts& ports, const AddCommand& add) {
    CLI::App* papers = add(app, "papers", "The craft papers on hand", papersExamples, {});
    papers->require_subcommand(1);
    CLI::App* command = add(*papers, "list", "All papers on hand", papersExamples,
                            [&] { return runPapersList(lines.list, ports); });
    addStore(command, lines.list);
    command->add_flag("--json", lines.list.json, "As JSON, exact");
    addAdding(*papers, lines.add, ports, add);
    command = add(*papers, "import", "Add the papers of a table (.csv)", papersImportExamples,
                  [&] { return runPapersImport(lines.import, ports); });
    command->add_option("FILE", lines.import.file, "The table, a .csv file")->required();
    addStore(command, lines.import.papers);
    command->add_flag("--all", lines.import.all, "Also what is on the list already");
    command = add(*papers, "export", "Write the list as a table (.csv)", papersExportExamples,
                  [&] { return runPapersExport(lines.out, ports); });
    command->add_option("FILE", lines.out.file, "The table; its name ends in .csv")->required();
    addStore(command, lines.out.papers);
    command = add(*papers, "undo", "Take back the last change of the list", papersExamples,
                  [&] { return runPapersUndo(lines.undo, ports); });
    addStore(command, lines.undo);
    command = add(*papers, "redo", "Bring back what was taken back last", papersExamples,
                  [&] { return runPapersRedo(lines.redo, ports); });
    addStore(command, lines.redo);
}

void addPlanning(CLI::App* command, CutCommand& cut) {
    command
        ->add_option_function<std::string>(
            "--glue-edge",
            [&cut](const std::string& text) {
                cut.options.glueEdge = lengthFor("--glue-edge", text, true);
            },
            "What stays of a gutted mat under the layer above, on each side")
        ->type_name("LENGTH")
        ->default_str("1/2");
    CLI::Option* buy = command
                           ->add_option_function<std::vector<std::string>>(
                               "--buy",
                               [&cut](const std::vector<std::string>& texts) {
                                   cut.options.toBuy.clear();
                                   for (const std::string& text : texts) {
                                       cut.options.toBuy.push_back(sheetFor("--buy", text));
                                   }
                               },
                               "A size every paper can be bought in; may be given more than once")
                           ->type_name("SIZE")
                           ->allow_extra_args(false)
                           ->default_str("12x12");
    command->add_flag("--buy-nothing", cut.buyNothing, "Only what is on hand")->excludes(buy);
    command
        ->add_option_function<double>(
            "--seconds",
            [&cut](double seconds) {
                cut.options.limits.time =
                    std::chrono::milliseconds(static_cast<std::int64_t>(seconds * 1000));
            },
            "How long to look for a better plan")
        ->check(numberWithin(0, mostSeconds))
        ->type_name("N")
        ->default_str("1");
}

void addCut(CLI::App& app, CutCommand& cut, BatchPorts& ports, const AddCommand& add) {
    CLI::App* command = add(app, "cut", "How the papers of pages are cut, step by step",
                            cutExamples, [&] { return runCut(cut, ports); });
    command->add_option("PAGE", cut.pages, "Sketch files and page files")->required();
    addStore(command, cut.papers);
    addPlanning(command, cut);
    addScale(command, cut.scale);
    command->add_flag("--json", cut.papers.json, "As JSON, exact");
    command->add_option("--pdf", cut.pdf, "The plan on paper; its name ends in .pdf")
        ->type_name("FILE");
    command
        ->add_option_function<std::string>(
            "--sheet", [&cut](const std::string& id) { cut.sheet = findSheetSize(id); },
            "Paper of the PDF: letter or a4")
        ->check(CLI::IsMember(std::vector<std::string>{"letter", "a4"}))
        ->type_name("SHEET")
        ->default_str("letter");
    command->add_option("--svg", cut.svgFolder, "A picture of every sheet, in this folder")
        ->type_name("FOLDER");
    CLI::Option* takeOff = command->add_flag(
        "--take-off", cut.takeOff, "Take what is cut off the list and put usable leftovers back");
    command->add_flag("--again", cut.again, "Also where these papers were taken off before")
        ->needs(takeOff);
}

}  // namespace

void addPaperCommands(CLI::App& app, PaperCommandLines& lines, BatchPorts& ports,
                      const AddCommand& add) {
    addPapers(app, lines, ports, add);
    addCut(app, lines.cut, ports, add);
}

}  // namespace matwright::app
