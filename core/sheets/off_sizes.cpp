// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "core/sheets/cut_steps.h"

namespace matwright {

namespace {

// What the blade takes; 0 where no cut tells.
Length kerfOf(const SheetPlan& sheet) {
    for (const CutPart& part : sheet.parts) {
        if (part.use == CutPart::Use::Cut && part.second >= 0) {
            const Rect& behind = sheet.parts[static_cast<std::size_t>(part.second)].area;
            return (part.direction == CutDirection::Upright ? behind.left() : behind.top()) -
                   part.at;
        }
    }
    return {};
}

std::string offWords(Length by, const char* where) {
    const char* const way = by.isPositive() ? "long" : "short";
    // Finer than anybody sees on a ruler.
    return abs(by) < Length::inches(0, 1, 64)
               ? fmt::format("a hair ({}) too {} {}", exactText(abs(by)), way, where)
               : fmt::format("{} too {} {}", exactText(abs(by)), way, where);
}

}  // namespace

std::map<int, OffSize> offSizes(const SheetSteps& steps, const SheetPlan& sheet) {
    std::map<int, OffSize> off;
    for (std::size_t i = 0; i < sheet.parts.size(); ++i) {
        if (sheet.parts[i].use == CutPart::Use::Piece) {
            off[static_cast<int>(i)] = {{}, {}, true};
        }
    }
    if (off.empty()) {
        return off;
    }
    const auto table =
        carriedOut(steps, sheet.parts.front().area.size(), kerfOf(sheet), SettingUsed::Shown);
    for (const CutOff& part : table.value_or(std::vector<CutOff>())) {
        const auto piece = off.find(part.part);
        if (piece != off.end()) {
            const Size wanted = sheet.parts[static_cast<std::size_t>(part.part)].area.size();
            piece->second = {part.size.width - wanted.width, part.size.height - wanted.height};
        }
    }
    std::erase_if(off, [](const auto& piece) { return piece.second == OffSize(); });
    return off;
}

std::string offText(std::string_view name, const OffSize& off) {
    if (off.isLost) {
        return fmt::format("{} does not come out: the scale is too coarse for it.", name);
    }
    std::string text = fmt::format("{} comes out ", name);
    if (!off.width.isZero()) {
        text += offWords(off.width, "from left to right");
        text += off.height.isZero() ? "" : " and ";
    }
    if (!off.height.isZero()) {
        text += offWords(off.height, "from top to bottom");
    }
    return text + ".";
}

}  // namespace matwright
