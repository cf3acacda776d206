// SPDX-License-Identifier: MIT
#pragma once

namespace matwright::app {

// The desktop program: reads the command line, opens the window and runs until it is closed.
// Gives the exit code: 0 when all went well, 1 for a command line that makes no sense or where
// there is no display. --help, --version and --check-parts need none.
int startDesktop(int argc, char** argv);

}  // namespace matwright::app
