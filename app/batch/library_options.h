// SPDX-License-Identifier: MIT
#pragma once

#include <CLI/CLI.hpp>
#include <functional>
#include <string>

#include "app/batch/library_commands.h"

namespace matwright::app {

// What the command lines of `library` are read into.
struct LibraryCommandLines {
    SearchCommand list;
    SearchCommand search;
    LibraryListCommand families;
    LibraryListCommand problems;
};

// Adds a command below another, runs it when it was chosen.
using AddCommand =
    std::function<CLI::App*(CLI::App& parent, const std::string& name, const std::string& what,
                            const char* examples, std::function<int()> run)>;

// `lines` and `ports` outlive the run.
void addLibraryCommands(CLI::App& app, LibraryCommandLines& lines, BatchPorts& ports,
                        const AddCommand& add);

}  // namespace matwright::app
