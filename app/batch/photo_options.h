// SPDX-License-Identifier: MIT
#pragma once

#include "app/batch/command_parts.h"
#include "app/batch/photo_commands.h"
#include "app/batch/printing_options.h"

namespace matwright::app {

// What the command lines of `photos`, `page`, `prints` and `double-check` are read into.
struct PhotoCommandLines {
    PhotosCommand photos;
    PageCommand page;
    PrintsCommand prints;
    DoubleCheckCommand doubleCheck;
    PrintingCommandLines printing;
};

// `lines` and `ports` outlive the run.
void addPhotoCommands(CLI::App& app, PhotoCommandLines& lines, BatchPorts& ports,
                      const AddCommand& add);

}  // namespace matwright::app
