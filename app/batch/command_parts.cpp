// SPDX-License-Identifier: MIT
#include "app/batch/command_parts.h"

namespace matwright::app {

void addInput(CLI::App* command, std::filesystem::path& input) {
    command->add_option("IN", input, "The sketch file, or a page in the making")->required();
}

void addSheet(CLI::App* command, const NamedSize*& sheet, const std::string& what) {
    std::vector<std::string> ids;
    for (const NamedSize& size : sheetSizes()) {
        ids.emplace_back(size.id);
    }
    command
        ->add_option_function<std::string>(
            "--sheet", [&sheet](const std::string& id) { sheet = findSheetSize(id); }, what)
        ->check(CLI::IsMember(ids))
        ->type_name("SHEET")
        ->default_str("letter");
}

void addOutput(CLI::App* command, std::filesystem::path& output, const std::string& what) {
    command->add_option("-o,--output", output, what)->required()->type_name("OUT");
}

}  // namespace matwright::app
