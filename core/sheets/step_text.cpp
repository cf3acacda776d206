// SPDX-License-Identifier: MIT
#include <vector>

#include <fmt/format.h>

#include "core/sheets/cut_steps.h"

namespace matwright {

namespace {

std::string nameOf(int index, const SheetPlan& sheet) {
    if (index == 0) {
        return "the sheet";
    }
    const CutPart& part = sheet.parts[static_cast<std::size_t>(index)];
    switch (part.use) {
        case CutPart::Use::Piece:
            return fmt::format("piece {}", part.piece + 1);
        case CutPart::Use::Leftover:
            return "a leftover";
        case CutPart::Use::Cut:
            break;
    }
    return fmt::format("part {}", index + 1);
}

}  // namespace

std::string stepText(const CutStep& step, const SheetPlan& sheet, Scale scale) {
    std::string text = step.turn ? "Turn. " : "";
    text += step.set ? fmt::format("Set the trimmer to {}, cut ", lengthText(step.setting, scale))
                     : fmt::format("At the same setting cut ");
    text += nameOf(step.part, sheet) + ": ";
    std::vector<std::string> gives;
    for (const int part : {step.first, step.second}) {
        if (part >= 0) {
            gives.push_back(nameOf(part, sheet));
        }
    }
    return text + fmt::format("{}.", fmt::join(gives, " and "));
}

std::vector<std::string> stepTexts(const SheetSteps& steps, const SheetPlan& sheet, Scale scale) {
    const std::map<int, OffSize> off = offSizes(steps, sheet);
    std::vector<std::string> texts;
    texts.reserve(steps.steps.size());
    for (const CutStep& step : steps.steps) {
        texts.push_back(stepText(step, sheet, scale));
        for (const int part : {step.first, step.second}) {
            if (const auto found = off.find(part); found != off.end()) {
                const int piece = sheet.parts[static_cast<std::size_t>(part)].piece;
                const std::string name = fmt::format("Piece {}", piece + 1);
                texts.back() += fmt::format(" {}", offText(name, found->second));
            }
        }
    }
    return texts;
}

}  // namespace matwright
