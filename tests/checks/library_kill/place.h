// SPDX-License-Identifier: MIT
#pragma once

#include <atomic>
#include <filesystem>
#include <string>
#include <vector>

#include "core/library/trash.h"
#include "tests/checks/library_kill/journal.h"
#include "tests/support/random_sketch.h"

namespace matwright::check {

// In memory that all processes share.
struct Shared {
    std::atomic<int> begun = 0;  // operations
    std::atomic<int> versions = 0;
};

// Where everybody works.
struct Place {
    std::filesystem::path library;
    std::filesystem::path cache;
    TrashPlaces trash;
    Journal journal;
    Shared* shared;

    int newVersion() const { return ++shared->versions; }
};

// The sketch files there are, sub-folders too, from the library down.
std::vector<std::string> sketchesIn(const std::filesystem::path& library);
// One of them, or nothing in an empty library.
std::string anySketch(const Place& place, test::Random& random);

}  // namespace matwright::check
