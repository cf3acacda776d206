// SPDX-License-Identifier: MIT
#pragma once

#include "app/batch/command_parts.h"
#include "app/batch/library_commands.h"

namespace matwright::app {

// What the command lines of `library` are read into.
struct LibraryCommandLines {
    SearchCommand list;
    SearchCommand search;
    LibraryListCommand families;
    LibraryListCommand problems;
    ImportCommand import;
    ExportCommand out;
    LabelCommand label;
};

// `lines` and `ports` outlive the run.
void addLibraryCommands(CLI::App& app, LibraryCommandLines& lines, BatchPorts& ports,
                        const AddCommand& add);

}  // namespace matwright::app
