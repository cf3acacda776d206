// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <iosfwd>

#include "core/error/error.h"
#include "core/filestore/file_store.h"

namespace matwright::app {

// What the program answers to its caller; scripts may rely on these numbers.
enum ExitCode {
    Done = 0,
    Findings = 1,       // something to mend was found, or no sketch
    WrongUse = 2,       // the command line cannot be followed
    InputRefused = 3,   // a sketch file or the library cannot be read
    CouldNotWrite = 4,  // the result could not be made or written
};

class PhotoCommands;  // photo_commands.h

// The world around a command; a test gives its own.
struct BatchPorts {
    FileStore& files;
    std::ostream& out;                    // results
    std::ostream& err;                    // "matwright-batch: FILE: sentence"
    std::function<void()> startPainting;  // makes sure that fonts can be used; called when needed
    // Of a person who names no other: the library, and where its index is kept.
    std::filesystem::path libraryFolder;
    std::filesystem::path cacheFolder;
    // The person chose that folder in the window. It may lie on a drive that is not connected, so
    // it is never made anew.
    bool libraryIsChosen = false;
    // The commands that read photos, from their part; opened when one of them is called.
    std::function<Result<PhotoCommands*>()> photoCommands = {};
    // Where a person's own lists are kept, such as the papers on hand.
    std::filesystem::path dataFolder = {};
};

// One sentence on `err`; `where` may be empty and is shown printable.
void complain(BatchPorts& ports, const std::filesystem::path& where, std::string_view sentence);
// Writes the error and gives `code` back.
int fail(BatchPorts& ports, ExitCode code, const Error& error);

}  // namespace matwright::app
