// SPDX-License-Identifier: MIT
#pragma once

#include "app/batch/command_parts.h"
#include "app/batch/paper_commands.h"

namespace matwright::app {

// What the command lines of `papers` and `cut` are read into.
struct PaperCommandLines {
    PapersCommand list;
    PapersAddCommand add;
    PapersFileCommand import;
    PapersFileCommand out;
    PapersCommand undo;
    PapersCommand redo;
    CutCommand cut;
};

// `lines` and `ports` outlive the run.
void addPaperCommands(CLI::App& app, PaperCommandLines& lines, BatchPorts& ports,
                      const AddCommand& add);

}  // namespace matwright::app
