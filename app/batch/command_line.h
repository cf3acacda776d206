// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "app/batch/ports.h"

namespace matwright::app {

// Reads the arguments (without the program's name) and runs the command. Gives the ExitCode.
int runBatch(const std::vector<std::string>& arguments, BatchPorts& ports);

}  // namespace matwright::app
