// SPDX-License-Identifier: MIT
#include "core/printplan/drawn_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

namespace matwright {

namespace {

constexpr Colour photoPaper{250, 250, 248};

std::string headingOf(const PlanInput& input, const PrintSheet& sheet, std::size_t number) {
    const Printer* printer = find(input.printers, sheet.printer);
    const PrinterPaper* paper = printer != nullptr ? find(*printer, sheet.paper) : nullptr;
    if (paper == nullptr) {
        return fmt::format("Sheet {}", number);
    }
    return fmt::format("Sheet {}: {} ({})", number, paperText(*paper), printer->name);
}

std::vector<std::string> notesOf(const PlanInput& input, const PrintSheet& sheet) {
    std::vector<std::string> notes;
    if (!sheet.room.empty()) {
        notes.push_back("There is " + roomText(sheet.room.front()) + ".");
    }
    const Printer* printer = find(input.printers, sheet.printer);
    const PrinterPaper* paper = printer != nullptr ? find(*printer, sheet.paper) : nullptr;
    if (paper != nullptr && paper->correction()) {
        notes.push_back(correctionText(paper->size, paper->borderless, *paper->correction()));
    }
    return notes;
}

}  // namespace

std::string letterOn(const PrintSheet& sheet, std::size_t print) {
    const auto& parts = sheet.cuts.parts;
    const auto at = std::ranges::find_if(parts, [print](const CutPart& part) {
        return part.use == CutPart::Use::Piece && part.piece == static_cast<int>(print);
    });
    return at == parts.end()
               ? std::string()
               : partLetters(sheet.cuts)[static_cast<std::size_t>(at - parts.begin())];
}

std::string printText(const PlannedPrint& print, const PlanInput& input) {
    const std::string photo = std::filesystem::path(print.photo.path).stem().string();
    return print.page && !photo.empty() ? fmt::format("{}: {}, for {}", photo, print.print.name,
                                                      input.pages[*print.page].name)
           : print.page ? fmt::format("{}, for {}", print.print.name, input.pages[*print.page].name)
                        : print.print.name + ", on hand afterwards";
}

PlannedSheet drawnSheet(const PrintPlan& plan, const PlanInput& input, std::size_t sheet,
                        Scale scale) {
    const PrintSheet& from = plan.sheets.at(sheet);
    PlannedSheet drawn;
    drawn.heading = headingOf(input, from, sheet + 1);
    drawn.size = from.size;
    drawn.plan = from.cuts;
    drawn.steps = stepsOf(from, scale);
    drawn.scale = scale;
    for (const Gang::Place& place : from.gang.places) {
        drawn.names.emplace(static_cast<int>(place.print),
                            printText(plan.prints.at(place.print), input));
    }
    drawn.notes = notesOf(input, from);
    drawn.colour = photoPaper;
    return drawn;
}

}  // namespace matwright
