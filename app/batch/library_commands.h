// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "app/batch/ports.h"
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

}  // namespace matwright::app
