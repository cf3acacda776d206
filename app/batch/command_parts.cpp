// SPDX-License-Identifier: MIT
#include "app/batch/command_parts.h"

#include <map>
#include <vector>

namespace matwright::app {

namespace {

const std::map<std::string, Scale> scaleWords = {{"1/8in", Scale::EighthInch},
                                                 {"1/16in", Scale::SixteenthInch},
                                                 {"1/32in", Scale::ThirtySecondInch},
                                                 {"1mm", Scale::WholeMillimetre},
                                                 {"0.5mm", Scale::HalfMillimetre}};

}  // namespace

void addInput(CLI::App* command, std::filesystem::path& input) {
    command->add_option("IN", input, "The sketch file")->required();
}

void addOutput(CLI::App* command, std::filesystem::path& output, const std::string& what) {
    command->add_option("-o,--output", output, what)->required()->type_name("OUT");
}

void addScale(CLI::App* command, std::optional<Scale>& scale) {
    command
        ->add_option_function<std::string>(
            "--scale", [&scale](const std::string& word) { scale = scaleWords.at(word); },
            "What lengths are shown to; without it 1/16in, or 1mm for metric pages")
        ->check(
            CLI::IsMember(std::vector<std::string>{"1/8in", "1/16in", "1/32in", "1mm", "0.5mm"}))
        ->type_name("STEP");
}

}  // namespace matwright::app
