// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <sstream>
#include <string>
#include <vector>

#include "app/batch/command_line.h"
#include "app/batch/photo_commands.h"
#include "core/sketch/sketch.h"

namespace matwright::app {

// A run of the companion on files in memory.
struct BatchRun {
    MemoryFileStore files;
    // Where a person's own library and its index are; on the disk.
    std::filesystem::path libraryFolder;
    std::filesystem::path cacheFolder;
    std::filesystem::path dataFolder;
    bool libraryIsChosen = false;
    FileStore* disk = nullptr;               // used instead of `files` where there is one
    PhotoCommands* photoCommands = nullptr;  // the part that reads photos, where there is one
    std::string out;
    std::string err;
    int paintingStarts = 0;

    void addSketch(const std::string& name, const Sketch& sketch);
    int run(const std::vector<std::string>& arguments);
};

// A 12x12 page: a mat-bordered 4x6 print lying at (1, 1) in, and a strip.
Sketch smallSketch();

}  // namespace matwright::app
