// SPDX-License-Identifier: MIT
#pragma once

#include <CLI/CLI.hpp>

#include "app/batch/library_commands.h"

namespace matwright::app {

// Parts of command lines: how the filters of a search are asked for.

// --order
void addOrder(CLI::App* command, Query& query);
// --in
void addFolder(CLI::App* command, Query& query);
// Every filter except the words; --in among them.
void addFilters(CLI::App* command, SelectionCommand& to);

}  // namespace matwright::app
