// SPDX-License-Identifier: MIT
#pragma once

#include "app/batch/command_parts.h"
#include "app/batch/commands.h"

namespace matwright::app {

// What the command lines of `carry-over` and `turn` are read into.
struct NewSketchCommandLines {
    CarryOverCommand carryOver;
    TurnCommand turn;
};

// `lines` and `ports` outlive the run.
void addNewSketchCommands(CLI::App& app, NewSketchCommandLines& lines, BatchPorts& ports,
                          const AddCommand& add);

}  // namespace matwright::app
