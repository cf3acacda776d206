// SPDX-License-Identifier: MIT
#pragma once

#include "app/batch/photo_commands.h"

namespace matwright::app {

int runPage(const PageCommand& command, BatchPorts& ports);

}  // namespace matwright::app
