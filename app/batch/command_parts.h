// SPDX-License-Identifier: MIT
#pragma once

#include <CLI/CLI.hpp>
#include <filesystem>
#include <functional>
#include <string>

#include "core/measure/catalogue.h"

namespace matwright::app {

// Parts of several command lines.

// Adds a command below another; `run` runs it when it was chosen.
using AddCommand =
    std::function<CLI::App*(CLI::App& parent, const std::string& name, const std::string& what,
                            const char* examples, std::function<int()> run)>;

// The sketch file, needed.
void addInput(CLI::App* command, std::filesystem::path& input);
// --sheet, one of the catalogue's.
void addSheet(CLI::App* command, const NamedSize*& sheet, const std::string& what);
// -o, needed.
void addOutput(CLI::App* command, std::filesystem::path& output, const std::string& what);

}  // namespace matwright::app
