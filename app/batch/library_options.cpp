// SPDX-License-Identifier: MIT
#include "app/batch/library_options.h"

#include "app/batch/filter_parts.h"
#include "app/batch/help.h"
#include "core/measure/catalogue.h"

namespace matwright::app {

namespace {

void addPlace(CLI::App* command, LibraryPlace& place) {
    command->add_option("--folder", place.folder, "The library; without it your own")
        ->type_name("DIR");
    command->add_flag_callback(
        "--no-index", [&place] { place.useIndex = false; },
        "Read every sketch anew, keep nothing in the cache");
}

void addJson(CLI::App* command, bool& json) {
    command->add_flag("--json", json, "As JSON, exact");
}

void addWords(CLI::App* command, const std::string& name, Query& query) {
    command
        ->add_option_function<std::vector<std::string>>(
            name,
            [&query](const std::vector<std::string>& words) {
                for (const std::string& word : words) {
                    query.words += (query.words.empty() ? "" : " ") + word;
                }
            },
            "Words of the name, notes, tags, file or sub-folder; all must be there")
        ->type_name(name == "WORDS" ? "" : "WORDS");
}

void addCounts(CLI::App* command, bool& counts) {
    command->add_flag("--counts", counts,
                      "Instead of the sketches, how many each further choice would leave");
}

void addFinding(CLI::App& library, LibraryCommandLines& lines, BatchPorts& ports,
                const AddCommand& add) {
    CLI::App* command = add(library, "list", "All sketches of the library", libraryListExamples,
                            [&] { return runLibrarySearch(lines.list, ports); });
    addPlace(command, lines.list.library);
    addFolder(command, lines.list.query);
    addOrder(command, lines.list.query);
    addJson(command, lines.list.json);

    command = add(library, "search", "Sketches by words and filters; exit code 1 if none",
                  librarySearchExamples, [&] { return runLibrarySearch(lines.search, ports); });
    addWords(command, "WORDS", lines.search.query);
    addPlace(command, lines.search.library);
    addFilters(command, lines.search);
    addOrder(command, lines.search.query);
    addCounts(command, lines.search.counts);
    addJson(command, lines.search.json);

    command =
        add(library, "families", "Sketches that are alike; exit code 1 if none",
            libraryFamiliesExamples, [&] { return runLibraryFamilies(lines.families, ports); });
    addPlace(command, lines.families.library);
    addJson(command, lines.families.json);

    command =
        add(library, "problems", "What cannot be used; exit code 1 if anything",
            libraryProblemsExamples, [&] { return runLibraryProblems(lines.problems, ports); });
    addPlace(command, lines.problems.library);
    addJson(command, lines.problems.json);
}

void addImport(CLI::App& library, LibraryCommandLines& lines, BatchPorts& ports,
               const AddCommand& add) {
    ImportCommand& to = lines.import;
    CLI::App* command =
        add(library, "import", "Copies sketch files and folders into the library",
            libraryImportExamples, [&to, &ports] { return runLibraryImport(to, ports); });
    command->add_option("FILE", to.sources, "Sketch files, and folders that hold some")
        ->required()
        ->type_name("");
    addPlace(command, to.library);
    command->add_option("--into", to.into, "The sub-folder they go to; made where it is missing")
        ->type_name("SUBFOLDER");
    addJson(command, to.json);
}

void addSheets(CLI::App* command, ContactSheetOptions& sheets) {
    sheets.title = "Sketches";
    command
        ->add_option_function<std::string>(
            "--paper", [&sheets](const std::string& id) { sheets.sheet = findSheetSize(id)->size; },
            "Of a contact sheet: letter or a4")
        ->check(CLI::IsMember(std::vector<std::string>{"letter", "a4"}))
        ->type_name("PAPER")
        ->default_str("letter");
    command->add_option("--columns", sheets.columns, "Of a contact sheet: pictures side by side")
        ->check(CLI::Range(1, 10))
        ->type_name("N")
        ->capture_default_str();
    command->add_option("--title", sheets.title, "Of a contact sheet: the heading")
        ->type_name("TEXT")
        ->capture_default_str();
}

void addExport(CLI::App& library, LibraryCommandLines& lines, BatchPorts& ports,
               const AddCommand& add) {
    ExportCommand& to = lines.out;
    CLI::App* command =
        add(library, "export", "Sketches as a zip, or as a contact sheet to print",
            libraryExportExamples, [&to, &ports] { return runLibraryExport(to, ports); });
    command->add_option("SKETCH", to.named, "Sketches by path or name; else the filters choose")
        ->type_name("");
    addOutput(command, to.output, "The result; its name ends in .zip or .pdf");
    addPlace(command, to.library);
    addWords(command, "--words", to.query);
    addFilters(command, to);
    addOrder(command, to.query);
    addSheets(command, to.sheets);
}

void addLabel(CLI::App& library, LibraryCommandLines& lines, BatchPorts& ports,
              const AddCommand& add) {
    LabelCommand& to = lines.label;
    CLI::App* command =
        add(library, "label", "Tags, favourite and note of sketches: shows them, sets them",
            libraryLabelExamples, [&to, &ports] { return runLibraryLabel(to, ports); });
    command->add_option("SKETCH", to.named, "Sketches by path or name")->required()->type_name("");
    addPlace(command, to.library);
    command->add_option("--tag", to.tags, "Gives this tag; may be repeated")
        ->allow_extra_args(false)
        ->type_name("TAG");
    command->add_option("--untag", to.tagsOff, "Takes this tag away; may be repeated")
        ->allow_extra_args(false)
        ->type_name("TAG");
    CLI::Option* favourite = command->add_flag_callback(
        "--favourite", [&to] { to.favourite = true; }, "Makes them favourites");
    command
        ->add_flag_callback(
            "--no-favourite", [&to] { to.favourite = false; }, "Makes them none any more")
        ->excludes(favourite);
    command->add_option("--note", to.note, "Your note to them; an empty one takes it away")
        ->type_name("TEXT");
}

}  // namespace

void addLibraryCommands(CLI::App& app, LibraryCommandLines& lines, BatchPorts& ports,
                        const AddCommand& add) {
    CLI::App* library = add(app, "library", "Your library of sketches: find, bring in, take out",
                            libraryExamples, {});
    library->require_subcommand(1);
    addFinding(*library, lines, ports, add);
    addImport(*library, lines, ports, add);
    addExport(*library, lines, ports, add);
    addLabel(*library, lines, ports, add);
}

}  // namespace matwright::app
