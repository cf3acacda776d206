// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "tests/app/batch/batch_run.h"
#include "tests/support/temporary_folder.h"

namespace matwright::app {

// Runs of the companion with a library on the disk.
struct LibraryRun : BatchRun {
    LibraryRun();

    test::TemporaryFolder folder;  // "library", "cache" and whatever a test makes
    DiskFileStore store;

    // Writes a sketch into the library; makes sub-folders.
    void keep(const std::string& path, const Sketch& sketch);
    // "library" in front.
    int library(std::vector<std::string> arguments);
    // The answer as JSON; run() must have been asked for it.
    nlohmann::json answer() const { return nlohmann::json::parse(out); }
    // The paths of the sketches in the answer.
    std::vector<std::string> paths() const;
};

struct PhotoSpot {
    Size print;
    Point place;
};
// A page of that name with these photos, 12x12 where nothing else is said.
Sketch pageOf(const std::string& name, const std::vector<PhotoSpot>& photos);
// A spot for a print of whole inches at a place in whole inches.
PhotoSpot spot(int width, int height, int left, int top);
// The sketch with a piece of that kind at the bottom of the page.
Sketch withPlaceFor(Sketch sketch, PieceKind kind);

}  // namespace matwright::app
