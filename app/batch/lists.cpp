// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <ostream>

#include "app/batch/commands.h"
#include "app/batch/files.h"
#include "app/batch/json.h"
#include "app/batch/table.h"
#include "core/checks/photo_checks.h"

namespace matwright::app {

Scale naturalScale(const Sketch& sketch) {
    const Size page = sketch.page.size;
    const auto isMeasuredIn = [&](Length step) {
        return page.width.isMultipleOf(step) && page.height.isMultipleOf(step);
    };
    return !isMeasuredIn(Length::inches(0, 1, 32)) && isMeasuredIn(Length::millimetres(1))
               ? Scale::WholeMillimetre
               : Scale::SixteenthInch;
}

int runCheck(const ListCommand& command, BatchPorts& ports) {
    const auto making = readPage(command.input, ports);
    if (!making) {
        return making.error();
    }
    const Sketch& sketch = making->sketch;
    const Scale scale = command.scale.value_or(naturalScale(sketch));
    const Length trimmerStep = command.trimmerStep.value_or(stepOf(naturalScale(sketch)));
    const std::vector<CheckFinding> findings = checkMaking(*making, {trimmerStep, scale});
    if (command.json) {
        ports.out << findingsJson(sketch, findings) << '\n';
    } else if (findings.empty()) {
        ports.out << "Nothing to mend.\n";
    } else {
        for (const CheckFinding& finding : findings) {
            ports.out << checkWord(finding.kind) << ": " << finding.sentence << '\n';
        }
    }
    return findings.empty() ? Done : Findings;
}

int runPieces(const ListCommand& command, BatchPorts& ports) {
    const auto sketch = readInput(command.input, ports);
    if (!sketch) {
        return sketch.error();
    }
    if (command.json) {
        ports.out << piecesJson(*sketch) << '\n';
    } else {
        ports.out << piecesTable(*sketch, command.scale.value_or(naturalScale(*sketch)));
    }
    return Done;
}

namespace {

void list(std::string_view heading, std::span<const NamedSize> sizes, BatchPorts& ports) {
    Table table({"", "", "", ""}, {});
    for (const NamedSize& size : sizes) {
        table.addRow({"  " + std::string(size.id), std::string(size.name),
                      sizeText(size.size, Scale::SixteenthInch),
                      sizeText(size.size, Scale::HalfMillimetre)});
    }
    ports.out << heading << '\n' << table.text();
}

}  // namespace

int runSizes(BatchPorts& ports) {
    list("Pages", pageSizes(), ports);
    list("Prints", printSizes(), ports);
    list("Sheets (for --sheet)", sheetSizes(), ports);
    return Done;
}

}  // namespace matwright::app
