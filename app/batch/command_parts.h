// SPDX-License-Identifier: MIT
#pragma once

#include <CLI/CLI.hpp>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>

#include "core/measure/length_text.h"

namespace matwright::app {

// Parts of several command lines.

// Adds a command below another; `run` runs it when it was chosen.
using AddCommand =
    std::function<CLI::App*(CLI::App& parent, const std::string& name, const std::string& what,
                            const char* examples, std::function<int()> run)>;

// The sketch file, needed.
void addInput(CLI::App* command, std::filesystem::path& input);
// -o, needed.
void addOutput(CLI::App* command, std::filesystem::path& output, const std::string& what);

// --scale, the step lengths are shown to.
void addScale(CLI::App* command, std::optional<Scale>& scale);

}  // namespace matwright::app
