// SPDX-License-Identifier: MIT
#include "app/batch/new_sketch_options.h"

#include <map>

#include "app/batch/help.h"
#include "app/batch/typed_size.h"

namespace matwright::app {

namespace {

void addCarryOver(CLI::App& app, CarryOverCommand& carried, BatchPorts& ports,
                  const AddCommand& add) {
    CLI::App* command =
        add(app, "carry-over", "The same sketch on a page of another size", carryOverExamples,
            [&carried, &ports] { return runCarryOver(carried, ports); });
    addInput(command, carried.input);
    addOutput(command, carried.output, "The new sketch; its name ends in .sketch.svg");
    command
        ->add_option_function<std::string>(
            "--to",
            [&carried](const std::string& text) {
                const Result<Size> size = parsePageSize(text);
                if (!size) {
                    throw CLI::ValidationError("--to", size.error().sentence);
                }
                carried.page = *size;
            },
            "The page: a name of the list that \"sizes\" shows, or width x height")
        ->required()
        ->type_name("PAGE");
    CLI::Option* single = command->add_flag_callback(
        "--single-page", [&carried] { carried.doublePage = false; }, "A double page on one page");
    command
        ->add_flag_callback(
            "--double-page", [&carried] { carried.doublePage = true; },
            "A single page on the left one of two")
        ->excludes(single);
    command->add_flag("--json", carried.json, "As JSON");
}

// Two ways to say the same kind of thing; exactly one of them is needed.
void addWholeTurn(CLI::App* command, std::optional<WholeTurn>& turn) {
    static const std::map<std::string, WholeTurn> mirrors = {
        {"left-right", WholeTurn::MirroredLeftRight}, {"top-bottom", WholeTurn::MirroredTopBottom}};
    static const std::map<std::string, WholeTurn> turns = {
        {"upside-down", WholeTurn::UpsideDown},
        {"clockwise", WholeTurn::QuarterClockwise},
        {"counter-clockwise", WholeTurn::QuarterCounterClockwise}};
    const auto option = [&](const char* name, const std::map<std::string, WholeTurn>& words,
                            const char* type, const char* what) {
        std::vector<std::string> known;
        known.reserve(words.size());
        for (const auto& [word, meant] : words) {
            known.push_back(word);
        }
        return command
            ->add_option_function<std::string>(
                name, [&turn, &words](const std::string& word) { turn = words.at(word); }, what)
            ->check(CLI::IsMember(known))
            ->type_name(type);
    };
    CLI::Option* mirror =
        option("--mirror", mirrors, "WAY", "left-right, as in a mirror beside it; or top-bottom");
    option("--turn", turns, "HOW", "clockwise or counter-clockwise by a quarter; or upside-down")
        ->excludes(mirror);
}

void addTurn(CLI::App& app, TurnCommand& turn, BatchPorts& ports, const AddCommand& add) {
    CLI::App* command = add(app, "turn", "The same sketch mirrored or turned, photos upright",
                            turnExamples, [&turn, &ports] { return runTurn(turn, ports); });
    addInput(command, turn.input);
    addOutput(command, turn.output, "The new sketch; its name ends in .sketch.svg");
    addWholeTurn(command, turn.turn);
}

}  // namespace

void addNewSketchCommands(CLI::App& app, NewSketchCommandLines& lines, BatchPorts& ports,
                          const AddCommand& add) {
    addCarryOver(app, lines.carryOver, ports, add);
    addTurn(app, lines.turn, ports, add);
}

}  // namespace matwright::app
