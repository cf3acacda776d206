// SPDX-License-Identifier: MIT
#include "app/batch/command_parts.h"

namespace matwright::app {

void addInput(CLI::App* command, std::filesystem::path& input) {
    command->add_option("IN", input, "The sketch file")->required();
}

void addOutput(CLI::App* command, std::filesystem::path& output, const std::string& what) {
    command->add_option("-o,--output", output, what)->required()->type_name("OUT");
}

}  // namespace matwright::app
