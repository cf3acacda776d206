// SPDX-License-Identifier: MIT
#include "core/carry/carry_over.h"

#include <fmt/format.h>

#include <ostream>

#include "app/batch/commands.h"
#include "app/batch/files.h"
#include "app/batch/json_values.h"
#include "core/library/names.h"
#include "core/library/printable.h"
#include "core/measure/length_text.h"
#include "core/sketch/soundness.h"

namespace matwright::app {

namespace {

std::string pageWords(const PageSetup& page) {
    return fmt::format("{} {}", naturalSizeText(page.size),
                       page.doublePage ? "double page" : "page");
}

std::expected<Sketch, int> inputFor(const std::filesystem::path& input,
                                    const std::filesystem::path& output, BatchPorts& ports) {
    if (!hasSketchSuffix(output.string())) {
        return std::unexpected(refuseSuffix(output, ".sketch.svg", ports));
    }
    return readInput(input, ports);
}

PageSetup targetOf(const CarryOverCommand& command, const PageSetup& page) {
    PageSetup target = onPageSize(page, command.page);
    target.doublePage = command.doublePage.value_or(page.doublePage);
    if (!target.doublePage) {
        target.foldGap = {};
    }
    return target;
}

std::string carriedJson(const CarryOverCommand& command, const CarriedOver& carried) {
    return textOf({{"written", printablePath(command.output.native())},
                   {"page",
                    {{"size", json(carried.sketch.page.size)},
                     {"doublePage", carried.sketch.page.doublePage}}},
                   {"gaveWay", carried.gaveWay}});
}

// One answer in JSON instead of the line that tells what was written.
struct QuietPorts {
    explicit QuietPorts(BatchPorts& ports)
        : unheard(nullptr),
          quiet{ports.files,         unheard,          ports.err, ports.startPainting,
                ports.libraryFolder, ports.cacheFolder} {}
    std::ostream unheard;
    BatchPorts quiet;
};

}  // namespace

int runCarryOver(const CarryOverCommand& command, BatchPorts& ports) {
    const auto sketch = inputFor(command.input, command.output, ports);
    if (!sketch) {
        return sketch.error();
    }
    const PageSetup target = targetOf(command, sketch->page);
    if (const auto fault = findFault(target)) {
        return fail(ports, WrongUse, {fault->code, fault->sentence, command.input.string()});
    }
    const CarriedOver carried = carriedOver(*sketch, target);
    QuietPorts unheard(ports);
    const int code = writeNewSketch(command.output, carried.sketch, pageWords(carried.sketch.page),
                                    command.json ? unheard.quiet : ports);
    if (code != Done) {
        return code;
    }
    if (command.json) {
        ports.out << carriedJson(command, carried) << '\n';
        return Done;
    }
    if (carried.gaveWay.empty()) {
        ports.out << "Nothing had to give.\n";
    }
    for (const std::string& sentence : carried.gaveWay) {
        ports.out << sentence << '\n';
    }
    return Done;
}

int runTurn(const TurnCommand& command, BatchPorts& ports) {
    if (!command.turn) {
        return fail(
            ports, WrongUse,
            {ErrorCode::Unsupported, "Say how it is turned: with --mirror or with --turn.", ""});
    }
    const auto sketch = inputFor(command.input, command.output, ports);
    if (!sketch) {
        return sketch.error();
    }
    const Result<Sketch> result = turned(*sketch, *command.turn);
    if (!result) {
        return fail(ports, WrongUse,
                    {result.error().code, result.error().sentence, command.input.string()});
    }
    return writeNewSketch(command.output, *result, pageWords(result->page), ports);
}

}  // namespace matwright::app
