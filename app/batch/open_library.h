// SPDX-License-Identifier: MIT
#pragma once

#include <expected>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "app/batch/library_commands.h"
#include "core/library/index.h"

namespace matwright::app {

struct OpenedLibrary {
    std::filesystem::path folder;
    std::shared_ptr<const Holdings> holdings;  // as the folder is now
    std::vector<LibraryProblem> problems;
};

// The folder that is meant; complains and gives the exit code where there is none.
std::expected<std::filesystem::path, int> folderOfLibrary(const LibraryPlace& place,
                                                          BatchPorts& ports);

// Looks through the library. On failure complains and gives the exit code. What is wrong inside is
// in `problems` and not said yet.
std::expected<OpenedLibrary, int> openLibrary(const LibraryPlace& place, BatchPorts& ports);

// The same, with the problems said on `err`.
std::expected<OpenedLibrary, int> openLibraryAloud(const LibraryPlace& place, BatchPorts& ports);

// A sketch of the library as a person names it: its path as the lists show it, with or without
// ".sketch.svg", the path of its file on disk, or its name or its file's where no other sketch has
// the same. Error: NotFound.
Result<std::size_t> sketchNamed(const OpenedLibrary& library, const std::string& named);

}  // namespace matwright::app
