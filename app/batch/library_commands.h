// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "app/batch/ports.h"
#include "core/contactsheet/contact_sheet.h"
#include "core/library/search.h"

namespace matwright::app {

// The commands on a library, their command lines already read. Each gives the ExitCode: Findings
// where no sketch was found. All name what is wrong in the library on `err`, one line a file.

struct LibraryPlace {
    std::optional<std::filesystem::path> folder;  // without it the person's own
    bool useIndex = true;                         // else every sketch is read anew
};

struct SelectionCommand {
    LibraryPlace library;
    Query query;           // its family is not looked at
    std::string familyOf;  // a sketch of the library; empty for all
};

struct SearchCommand : SelectionCommand {
    bool counts = false;  // what each choice of a filter would leave, instead of the sketches
    bool json = false;
};
int runLibrarySearch(const SearchCommand& command, BatchPorts& ports);

struct LibraryListCommand {
    LibraryPlace library;
    bool json = false;
};
// The problems on `out`; Findings where there are any.
int runLibraryProblems(const LibraryListCommand& command, BatchPorts& ports);
int runLibraryFamilies(const LibraryListCommand& command, BatchPorts& ports);

struct ImportCommand {
    LibraryPlace library;
    std::vector<std::filesystem::path> sources;  // files and folders
    std::string into;                            // a sub-folder; made where it is missing
    bool json = false;
};
// Makes the person's own library where it is missing. InputRefused where a source was no readable
// sketch, CouldNotWrite where one could not be written; the others are there all the same.
int runLibraryImport(const ImportCommand& command, BatchPorts& ports);

struct ExportCommand : SelectionCommand {
    std::vector<std::string> named;  // sketches; empty: what the query finds
    std::filesystem::path output;    // ends in .zip or .pdf, in any case
    ContactSheetOptions sheets;      // of a .pdf
};
int runLibraryExport(const ExportCommand& command, BatchPorts& ports);

struct LabelCommand {
    LibraryPlace library;
    std::vector<std::string> named;
    std::vector<std::string> tags;
    std::vector<std::string> tagsOff;
    std::optional<bool> favourite;
    std::optional<std::string> note;
};
// Changes nothing unless all sketches are there, and says every sketch's labels as they are then.
int runLibraryLabel(const LabelCommand& command, BatchPorts& ports);

}  // namespace matwright::app
