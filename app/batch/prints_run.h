// SPDX-License-Identifier: MIT
#pragma once

#include "app/batch/photo_commands.h"

namespace matwright::app {

int runPrints(const PrintsCommand& command, BatchPorts& ports);
int runDoubleCheck(const DoubleCheckCommand& command, BatchPorts& ports);

}  // namespace matwright::app
