// SPDX-License-Identifier: MIT
#include "core/library/importing.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <ostream>

#include "app/batch/library_json.h"
#include "app/batch/open_library.h"
#include "core/library/folder_lock.h"
#include "core/library/printable.h"

namespace matwright::app {

namespace {

std::vector<KeyedSketch> sketchesOf(const Holdings& holdings) {
    std::vector<KeyedSketch> all;
    all.reserve(holdings.size());
    for (std::size_t index = 0; index < holdings.size(); ++index) {
        all.push_back({std::string(holdings.path(index)), holdings.content(index)});
    }
    return all;
}

std::string_view outcomeWord(ImportOutcome outcome) {
    switch (outcome) {
        case ImportOutcome::Imported:
            return "imported";
        case ImportOutcome::AlreadyThere:
            return "already there";
        case ImportOutcome::NotASketch:
            return "not a sketch";
        case ImportOutcome::Unreadable:
            return "unreadable";
        case ImportOutcome::NotWritten:
            return "not written";
    }
    std::abort();
}

bool isRefusal(ImportOutcome outcome) {
    return outcome != ImportOutcome::Imported && outcome != ImportOutcome::AlreadyThere;
}

Json reportJson(const std::filesystem::path& library, const ImportReport& report) {
    Json files = Json::array();
    for (const ImportedFile& file : report.files) {
        files.push_back({{"file", printablePath(file.source.native())},
                         {"outcome", outcomeWord(file.outcome)},
                         {"path", printablePath(file.sketch)},
                         {"sentence", file.said}});
    }
    return {{"library", printablePath(library.native())}, {"files", std::move(files)}};
}

void printReport(const std::filesystem::path& library, const ImportReport& report,
                 BatchPorts& ports) {
    for (const ImportedFile& file : report.files) {
        if (!isRefusal(file.outcome)) {
            ports.out << printablePath(file.source.native()) << ": "
                      << (file.outcome == ImportOutcome::Imported
                              ? fmt::format("imported as {}", printablePath(file.sketch))
                              : "not imported")
                      << (file.said.empty() ? "." : ". ") << file.said << '\n';
        }
    }
    const auto refused = std::ranges::count_if(
        report.files, [](const ImportedFile& file) { return isRefusal(file.outcome); });
    ports.out << fmt::format("{} imported, {} already there, {} left out; library {}\n",
                             report.count(ImportOutcome::Imported),
                             report.count(ImportOutcome::AlreadyThere), refused,
                             printablePath(library.native()));
}

int codeOf(const ImportReport& report) {
    if (report.count(ImportOutcome::NotWritten) > 0) {
        return CouldNotWrite;
    }
    return report.count(ImportOutcome::NotASketch) + report.count(ImportOutcome::Unreadable) > 0
               ? InputRefused
               : Done;
}

// The person's own is made; a folder that was named or chosen and is not there is rather a slip, or
// on a drive that is not connected.
std::expected<OpenedLibrary, int> openedForImport(const LibraryPlace& place, BatchPorts& ports) {
    if (!place.folder && !ports.libraryIsChosen && !ports.libraryFolder.empty()) {
        if (const Result<void> made = makeLibrary(ports.libraryFolder); !made) {
            return std::unexpected(fail(ports, CouldNotWrite, made.error()));
        }
    }
    return openLibraryAloud(place, ports);
}

}  // namespace

int runLibraryImport(const ImportCommand& command, BatchPorts& ports) {
    const auto library = openedForImport(command.library, ports);
    if (!library) {
        return library.error();
    }
    const std::vector<KeyedSketch> known = sketchesOf(*library->holdings);
    ImportOptions options;
    options.intoFolder = command.into;
    options.known = known;
    const auto report = importSketches(ports.files, library->folder, command.sources, options);
    if (!report) {
        return fail(ports, report.error().code == ErrorCode::WriteFailed ? CouldNotWrite : WrongUse,
                    report.error());
    }
    for (const ImportedFile& file : report->files) {
        if (isRefusal(file.outcome)) {
            complain(ports, file.source, file.said);
        }
    }
    if (command.json) {
        ports.out << textOf(reportJson(library->folder, *report)) << '\n';
    } else {
        printReport(library->folder, *report, ports);
    }
    if (report->files.empty()) {
        complain(ports, {}, "No sketch file is in there. Sketch files end in \".sketch.svg\".");
        return InputRefused;
    }
    return codeOf(*report);
}

}  // namespace matwright::app
