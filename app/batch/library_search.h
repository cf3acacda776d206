// SPDX-License-Identifier: MIT
#pragma once

#include <expected>

#include "app/batch/open_library.h"

namespace matwright::app {

// The library with what a selection finds in it.
struct SearchedLibrary {
    OpenedLibrary library;
    Query query;  // as it was searched, its family filled in
    Found found;
    std::string whyNothing;  // a sentence where nothing was found, else empty
};

// Complains and gives the exit code where the library cannot be searched; says its problems.
std::expected<SearchedLibrary, int> searchedLibrary(const SelectionCommand& command,
                                                    BatchPorts& ports);

}  // namespace matwright::app
