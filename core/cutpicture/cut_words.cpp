// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>

#include "core/cutpicture/planned_sheet.h"

namespace matwright {

namespace {

std::string letterOf(int index) {
    std::string letters;
    for (int rest = index; rest >= 0; rest = rest / 26 - 1) {
        letters.insert(letters.begin(), static_cast<char>('A' + rest % 26));
    }
    return letters;
}

struct LetterRange {
    int first = 0;
    int last = -1;
};

class Lettering {
  public:
    explicit Lettering(const SheetPlan& plan) : m_plan(plan), m_letters(plan.parts.size()) {
        if (!plan.parts.empty()) {
            visit(0);
        }
    }
    std::vector<std::string> letters() { return std::move(m_letters); }

  private:
    // Trees of cuts are no deeper than there are pieces.
    LetterRange visit(int index) {
        const CutPart& part = m_plan.parts[static_cast<std::size_t>(index)];
        LetterRange range{m_next, m_next - 1};
        if (part.use == CutPart::Use::Piece) {
            range.last = m_next++;
        } else if (part.use == CutPart::Use::Cut) {
            for (const int child : {part.first, part.second}) {
                if (child >= 0) {
                    range.last = visit(child).last;
                }
            }
            range.last = m_next - 1;
        }
        if (range.last >= range.first) {
            m_letters[static_cast<std::size_t>(index)] =
                range.first == range.last
                    ? letterOf(range.first)
                    : fmt::format("{}–{}", letterOf(range.first), letterOf(range.last));
        }
        return range;
    }

    const SheetPlan& m_plan;
    std::vector<std::string> m_letters;
    int m_next = 0;
};

std::string partName(const PlannedSheet& sheet, const std::vector<std::string>& letters,
                     int index) {
    if (index == 0) {
        return "the sheet";
    }
    const auto at = static_cast<std::size_t>(index);
    switch (sheet.plan.parts[at].use) {
        case CutPart::Use::Piece:
            return letters[at];
        case CutPart::Use::Leftover:
            return "a leftover";
        case CutPart::Use::Cut:
            break;
    }
    return letters[at].empty() ? "a leftover" : "the part with " + letters[at];
}

// Which way the cut was made that the part came off by; nothing for the sheet.
std::optional<CutDirection> cutBefore(const SheetPlan& plan, int part) {
    const auto cut = std::ranges::find_if(plan.parts, [part](const CutPart& other) {
        return other.use == CutPart::Use::Cut && (other.first == part || other.second == part);
    });
    return cut == plan.parts.end() ? std::nullopt : std::optional(cut->direction);
}

// How the whole sheet is laid down for the first cut; empty where any way is right.
std::string layingText(const PlannedSheet& sheet, CutDirection direction) {
    const bool isUpright = direction == CutDirection::Upright;
    const Size lies = isUpright ? sheet.size : sheet.size.turned();
    const bool isSquare = lies.width == lies.height;
    const std::string size =
        isSquare ? std::string()
                 : fmt::format(" {} wide and {} high", lengthText(lies.width, sheet.scale),
                               lengthText(lies.height, sheet.scale));
    const std::string edge = !isUpright    ? "its top edge to the left"
                             : sheet.hasUp ? "its pattern upright"
                                           : "";
    if (edge.empty()) {
        return isSquare ? std::string() : fmt::format("Lay the sheet{}. ", size);
    }
    return fmt::format("Lay the sheet{}{} {}. ", size, isSquare ? " with" : ",", edge);
}

// How a part is laid that may lie otherwise; from the trimmer's side, as the step's picture has it.
std::string turningText(const PlannedSheet& sheet, std::size_t step) {
    const CutStep& cut = sheet.steps.steps[step];
    if (cut.direction == CutDirection::Level) {
        return ", turned with its top edge to the left";
    }
    const bool hasTurned = sheet.steps.steps[step - 1].direction == CutDirection::Level ||
                           cutBefore(sheet.plan, cut.part) == CutDirection::Level;
    return hasTurned ? ", upright as it lay on the sheet" : "";
}

std::string cutText(const PlannedSheet& sheet, const std::vector<std::string>& letters,
                    std::size_t step) {
    const CutStep& cut = sheet.steps.steps[step];
    std::string text = step == 0 ? layingText(sheet, cut.direction) : std::string();
    text += cut.set ? fmt::format("Set the trimmer to {} and cut ",
                                  lengthText(cut.setting, sheet.scale))
                    : std::string("At the same setting cut ");
    text += partName(sheet, letters, cut.part);
    if (step > 0) {
        text += turningText(sheet, step);
    }
    std::vector<std::string> gives;
    for (const int part : {cut.first, cut.second}) {
        if (part >= 0) {
            gives.push_back(partName(sheet, letters, part));
        }
    }
    return text + fmt::format(": {}.", fmt::join(gives, " and "));
}

}  // namespace

std::vector<std::string> partLetters(const SheetPlan& plan) {
    return Lettering(plan).letters();
}

std::string pieceName(const PlannedSheet& sheet, int piece) {
    const auto named = sheet.names.find(piece);
    return named == sheet.names.end() ? fmt::format("piece {}", piece + 1) : named->second;
}

std::vector<std::string> pieceLines(const PlannedSheet& sheet) {
    const std::vector<std::string> letters = partLetters(sheet.plan);
    std::vector<std::pair<std::string, std::string>> lines;
    for (std::size_t i = 0; i < letters.size(); ++i) {
        const CutPart& part = sheet.plan.parts[i];
        if (part.use == CutPart::Use::Piece) {
            lines.emplace_back(letters[i],
                               fmt::format("{}: {}, {}", letters[i], pieceName(sheet, part.piece),
                                           sizeText(part.area.size(), sheet.scale)));
        }
    }
    std::ranges::sort(lines, {},
                      [](const auto& line) { return std::pair(line.first.size(), line.first); });
    std::vector<std::string> texts;
    texts.reserve(lines.size());
    for (auto& line : lines) {
        texts.push_back(std::move(line.second));
    }
    return texts;
}

std::vector<std::string> stepSentences(const PlannedSheet& sheet) {
    const std::vector<std::string> letters = partLetters(sheet.plan);
    const std::map<int, OffSize> off = offSizes(sheet.steps, sheet.plan);
    std::vector<std::string> texts;
    texts.reserve(sheet.steps.steps.size());
    for (std::size_t i = 0; i < sheet.steps.steps.size(); ++i) {
        const CutStep& cut = sheet.steps.steps[i];
        texts.push_back(cutText(sheet, letters, i));
        for (const int part : {cut.first, cut.second}) {
            if (const auto found = off.find(part); found != off.end()) {
                const std::string& name = letters[static_cast<std::size_t>(part)];
                texts.back() += fmt::format(" {}", offText(name, found->second));
            }
        }
    }
    return texts;
}

std::string stepSentence(const PlannedSheet& sheet, std::size_t step) {
    return stepSentences(sheet)[step];
}

std::string knifeSentence(const PlannedSheet& sheet, const KnifeCut& cut) {
    const Rect piece = sheet.plan.parts[static_cast<std::size_t>(cut.part)].area;
    const auto text = [&](Length length) { return lengthText(length, sheet.scale); };
    const Length left = cut.area.left() - piece.left();
    const Length top = cut.area.top() - piece.top();
    const Length right = piece.right() - cut.area.right();
    const Length bottom = piece.bottom() - cut.area.bottom();
    const bool isEven = left == top && top == right && right == bottom;
    const std::string where =
        isEven ? fmt::format("{} inside its edges", text(left))
               : fmt::format(
                     "{} inside its left edge, {} inside the top, {} inside the right and "
                     "{} inside the bottom edge (as in the picture)",
                     text(left), text(top), text(right), text(bottom));
    return fmt::format("With a knife cut the middle out of {}, {}: {}. {}",
                       partLetters(sheet.plan)[static_cast<std::size_t>(cut.part)], where, cut.what,
                       knifeCaution);
}

}  // namespace matwright
