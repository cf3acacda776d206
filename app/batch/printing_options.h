// SPDX-License-Identifier: MIT
#pragma once

#include "app/batch/command_parts.h"
#include "app/batch/photo_commands.h"

namespace matwright::app {

// What the command lines of `print-plan`, `printers`, `prints-on-hand` and `test-sheet` are read
// into.
struct PrintingCommandLines {
    PrintPlanCommand plan;
    PrintersCommand printers;
    PrintsOnHandCommand prints;
    TestSheetCommand testSheet;
};

// Opens the part that reads photos and runs a command of it.
using WithPhotos = std::function<std::function<int()>(std::function<int(PhotoCommands&)>)>;

// `lines` and `ports` outlive the run.
void addPrintingCommands(CLI::App& app, PrintingCommandLines& lines, BatchPorts& ports,
                         const AddCommand& add, const WithPhotos& with);

}  // namespace matwright::app
