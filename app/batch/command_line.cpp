// SPDX-License-Identifier: MIT
#include "app/batch/command_line.h"

#include <CLI/CLI.hpp>
#include <cctype>
#include <ostream>
#include <utility>

#include "app/batch/command_parts.h"
#include "app/batch/commands.h"
#include "app/batch/help.h"
#include "app/batch/library_options.h"
#include "app/batch/new_sketch_options.h"
#include "app/batch/paper_options.h"
#include "app/batch/photo_options.h"

namespace matwright::app {

namespace {

// A length as people write it. `smallest` is the least that makes sense.
template <typename Target>  // Length, or std::optional<Length>
CLI::Option* addLength(CLI::App* command, const std::string& name, Target& length, Length smallest,
                       const std::string& what) {
    return command
        ->add_option_function<std::string>(
            name,
            [&length, name, smallest](const std::string& text) {
                const Result<Length> read = parseLength(text, Unit::Inch);
                if (!read) {
                    throw CLI::ValidationError(name, read.error().sentence);
                }
                if (*read < smallest) {
                    throw CLI::ValidationError(name, smallest.isZero()
                                                         ? "It has to be 0 or more."
                                                         : "It has to be more than 0.");
                }
                length = *read;
            },
            what)
        ->type_name("LENGTH");
}

void addSheet(CLI::App* command, const NamedSize*& sheet) {
    std::vector<std::string> ids;
    for (const NamedSize& size : sheetSizes()) {
        ids.emplace_back(size.id);
    }
    command
        ->add_option_function<std::string>(
            "--sheet", [&sheet](const std::string& id) { sheet = findSheetSize(id); },
            "Paper in the printer")
        ->check(CLI::IsMember(ids))
        ->type_name("SHEET")
        ->default_str("letter");
}

// Every command line of the program; `chosen` runs what was asked for.
struct CommandLine {
    explicit CommandLine(BatchPorts& givenPorts);

    BatchPorts& ports;
    CLI::App app{
        "Turns sketches of scrapbook pages into templates, cut lines, lists, pictures and prints."};
    TemplateCommand templateCommand;
    FileCommand cutLines;
    PictureCommand picture;
    NewSketchCommandLines newSketches;
    ListCommand check;
    ListCommand pieces;
    LibraryCommandLines library;
    PhotoCommandLines photos;
    PaperCommandLines papers;
    std::function<int()> chosen;

  private:
    CLI::App* addBelow(CLI::App& parent, const std::string& name, const std::string& what,
                       const char* examples, std::function<int()> run);
    CLI::App* add(const std::string& name, const std::string& what, const char* examples,
                  std::function<int()> run);
    void addTemplate();
    void addFiles();
    void addLists();
};

CommandLine::CommandLine(BatchPorts& givenPorts) : ports(givenPorts) {
    app.name("matwright-batch");
    app.footer(helpFooter);
    app.require_subcommand(1);
    app.set_version_flag("--version", std::string("matwright-batch ") + MATWRIGHT_VERSION);
    addTemplate();
    addFiles();
    const AddCommand addTo = [this](CLI::App& parent, const std::string& name,
                                    const std::string& what, const char* examples,
                                    std::function<int()> run) {
        return addBelow(parent, name, what, examples, std::move(run));
    };
    addNewSketchCommands(app, newSketches, ports, addTo);
    addLists();
    addPhotoCommands(app, photos, ports, addTo);
    addPaperCommands(app, papers, ports, addTo);
    addLibraryCommands(app, library, ports, addTo);
}

CLI::App* CommandLine::addBelow(CLI::App& parent, const std::string& name, const std::string& what,
                                const char* examples, std::function<int()> run) {
    CLI::App* command = parent.add_subcommand(name, what);
    command->footer(examples);
    if (run) {
        command->callback([this, run = std::move(run)] { chosen = run; });
    }
    return command;
}

CLI::App* CommandLine::add(const std::string& name, const std::string& what, const char* examples,
                           std::function<int()> run) {
    return addBelow(app, name, what, examples, std::move(run));
}

void CommandLine::addTemplate() {
    TemplateCommand& to = templateCommand;
    const TilingOptions usual;
    to.printerMargin = usual.printerMargin;
    to.overlap = usual.overlap;
    CLI::App* command = add("template", "The measured template, true to size, as SVG or PDF",
                            templateExamples, [&to, this] { return runTemplate(to, ports); });
    addInput(command, to.input);
    addOutput(command, to.output, "The result; its name ends in .svg or .pdf");
    addScale(command, to.scale);
    CLI::Option* tiled = command->add_flag(
        "--tiled", to.tiled, "In parts for a home printer: one PDF, or one SVG a sheet");
    addSheet(command, to.sheet);
    addLength(command, "--printer-margin", to.printerMargin, {},
              "What the printer cannot reach, on all sides")
        ->default_str("1/4");
    addLength(command, "--overlap", to.overlap, {}, "What neighbouring sheets share")
        ->default_str("1/4");
    for (const char* name : {"--sheet", "--printer-margin", "--overlap"}) {
        command->get_option(name)->needs(tiled);
    }
    command->add_flag_callback(
        "--no-labels", [&to] { to.look.labels = false; }, "Leave out numbers, names and sizes");
    command->add_flag_callback(
        "--no-dimensions", [&to] { to.look.dimensions = false; }, "Leave out dimension lines");
    command->add_flag_callback(
        "--no-guides", [&to] { to.look.guides = false; },
        "Leave out margins, fold and centre ticks");
    command->add_flag_callback(
        "--no-check-squares", [&to] { to.look.checkSquares = false; },
        "Leave out the check squares");
    command->add_option("--note", to.look.note, "A line under the title")->type_name("TEXT");
}

void CommandLine::addFiles() {
    CLI::App* command = add("cutlines", "Closed outlines only, as SVG in mm for cutting machines",
                            cutLinesExamples, [this] { return runCutLines(cutLines, ports); });
    addInput(command, cutLines.input);
    addOutput(command, cutLines.output, "The result; its name ends in .svg");

    command = add("picture", "A picture of the sketch as PNG", pictureExamples,
                  [this] { return runPicture(picture, ports); });
    addInput(command, picture.input);
    addOutput(command, picture.output, "The result; its name ends in .png");
    command->add_option("--width", picture.width, "How wide, in pixels")
        ->check(CLI::Range(1, maxPictureWidth))
        ->type_name("PX")
        ->capture_default_str();
}

void CommandLine::addLists() {
    CLI::App* command = add("check", "What a person may want to mend; exit code 1 if anything",
                            checkExamples, [this] { return runCheck(check, ports); });
    addInput(command, check.input);
    command->add_flag("--json", check.json, "As JSON");
    addScale(command, check.scale);
    addLength(command, "--trimmer-step", check.trimmerStep, Length::fromTicks(1),
              "The step of the trimmer's scale; without it 1/16, or 1mm for metric pages");

    command = add("pieces", "Every piece with its sizes and place", piecesExamples,
                  [this] { return runPieces(pieces, ports); });
    addInput(command, pieces.input);
    command->add_flag("--json", pieces.json, "As JSON, exact");
    addScale(command, pieces.scale);

    add("sizes", "The catalogue of page, print and sheet sizes", "",
        [this] { return runSizes(ports); });
}

// "-o" and "--scale", but not "-1/4".
bool isOption(const std::string& argument) {
    return argument.size() > 1 && argument.front() == '-' &&
           (argument[1] == '-' || std::isalpha(static_cast<unsigned char>(argument[1])));
}

bool hasCommands(const CLI::App& app) {
    return !app.get_subcommands([](const CLI::App*) { return true; }).empty();
}

// The first word that names nothing, as a sentence; empty where all are known. The library
// complains of what is missing before it looks at what is wrong.
std::string unknownWord(const CLI::App& app, const std::vector<std::string>& arguments) {
    const CLI::App* command = &app;
    for (const std::string& argument : arguments) {
        const std::string name = argument.substr(0, argument.find('='));
        if (isOption(argument)) {
            if (!command->get_option_no_throw(name)) {
                return "There is no option \"" + name + "\".";
            }
        } else if (hasCommands(*command)) {
            const auto found = command->get_subcommands(
                [&](const CLI::App* known) { return known->get_name() == argument; });
            if (found.empty()) {
                return "There is no command \"" + argument + "\".";
            }
            command = found.front();
        }
    }
    return "";
}

// The library's complaint as ours.
int refuse(CLI::App& app, const CLI::ParseError& complaint,
           const std::vector<std::string>& arguments, BatchPorts& ports) {
    const std::string unknown = unknownWord(app, arguments);
    const std::string sentence = unknown.empty() ? complaint.what() : unknown;
    std::string helpCall = app.get_name();
    for (const CLI::App* command = &app; !command->get_subcommands().empty();) {
        command = command->get_subcommands().front();
        helpCall += " " + command->get_name();
    }
    ports.err << app.get_name() << ": " << sentence << "\nTry: " << helpCall << " --help\n";
    return WrongUse;
}

}  // namespace

int runBatch(const std::vector<std::string>& arguments, BatchPorts& ports) {
    CommandLine line(ports);
    try {
        // The library takes them from the back.
        line.app.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend()));
    } catch (const CLI::Success& asked) {  // --help, --version
        line.app.exit(asked, ports.out, ports.err);
        return Done;
    } catch (const CLI::ParseError& complaint) {
        return refuse(line.app, complaint, arguments, ports);
    }
    return line.chosen();
}

}  // namespace matwright::app
