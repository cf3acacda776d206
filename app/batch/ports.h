// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <iosfwd>

#include "core/error/error.h"
#include "core/filestore/file_store.h"

namespace matwright::app {

// What the program answers to its caller; scripts may rely on these numbers.
enum ExitCode {
    Done = 0,
    Findings = 1,       // `check` found something to mend
    WrongUse = 2,       // the command line cannot be followed
    InputRefused = 3,   // the sketch file cannot be read
    CouldNotWrite = 4,  // the result could not be made or written
};

// The world around a command; a test gives its own.
struct BatchPorts {
    FileStore& files;
    std::ostream& out;                    // results
    std::ostream& err;                    // "matwright-batch: FILE: sentence"
    std::function<void()> startPainting;  // makes sure that fonts can be used; called when needed
};

// Writes the error and gives `code` back.
int fail(BatchPorts& ports, ExitCode code, const Error& error);

}  // namespace matwright::app
