// SPDX-License-Identifier: MIT
#include "core/paperplan/plan_words.h"

#include <fmt/format.h>

#include <algorithm>

namespace matwright {

namespace {

// Whether the piece lies within the sheet, as it may lie.
bool fitsOn(Size sheet, Size piece, bool mayTurn) {
    return sheet.contains(piece) || (mayTurn && sheet.contains(piece.turned()));
}

}  // namespace

std::vector<std::string> pieceSentences(const PaperPiece& piece, bool hasUp) {
    std::vector<std::string> said;
    for (const std::string& text : {piece.byHand, piece.remark}) {
        if (!text.empty()) {
            said.push_back(text);
        }
    }
    if (hasUp && piece.isAngled) {
        said.emplace_back("It lies at an angle on the page, and so will its pattern.");
    }
    return said;
}

std::string whyNotCut(const PaperPiece& piece, const PaperJob& job, Scale scale, bool endedEarly) {
    const std::string key = paperKey(piece.paper);
    const auto paper = std::ranges::find_if(
        job.papers, [&](const JobPaper& other) { return paperKey(other.name) == key; });
    const auto number = static_cast<int>(paper - job.papers.begin());
    bool isThere = false;
    bool fits = false;
    for (const SheetKindOfJob& sheet : job.sheets) {
        if (sheet.cut.paper == number && sheet.cut.atHand.value_or(1) > 0) {
            isThere = true;
            fits = fits || fitsOn(sheet.cut.size, piece.size, !paper->hasUp);
        }
    }
    if (!isThere) {
        return fmt::format("There is no {} on hand. Buy some, or choose another paper.",
                           piece.paper);
    }
    return fits ? fmt::format(
                      "No room was found for it on what is on hand. {} some {}, or choose another "
                      "paper.",
                      endedEarly ? "Look longer, buy" : "Buy", paper->name)
                : fmt::format(
                      "With {} it fits on no sheet of {}{}. Find a larger sheet, or cut it "
                      "in parts.",
                      sizeText(piece.size, scale), paper->name,
                      paper->hasUp ? " (which is not turned, because of its pattern)" : "");
}

std::string paperBound(const CutAnswer& answer, const CutJob& job,
                       std::span<const PaperSheet> sheets) {
    const bool isWhole = std::ranges::all_of(answer.plan.uncut, [](int n) { return n == 0; });
    const bool isOnePrice = std::ranges::all_of(
        job.sheets, [&](const CutSheet& sheet) { return sheet.price == job.sheets.front().price; });
    if (!isWhole || answer.provedCheapest || isOnePrice) {
        return boundText(answer, job);
    }
    const auto bought = std::ranges::count_if(sheets, [](const PaperSheet& sheet) {
        return std::holds_alternative<ToBuy>(sheet.source);
    });
    return fmt::format("{} sheet{}, {} to buy; not proved cheapest", sheets.size(),
                       sheets.size() == 1 ? "" : "s",
                       bought == 0 ? std::string("none") : fmt::to_string(bought));
}

std::vector<std::string> buyingLines(std::span<const PaperSheet> sheets, Scale scale) {
    std::vector<std::pair<std::string, int>> wanted;
    for (const PaperSheet& sheet : sheets) {
        if (!std::holds_alternative<ToBuy>(sheet.source)) {
            continue;
        }
        const std::string what =
            fmt::format("{}, {}", sheet.paper, sizeText(sheet.planned.size, scale));
        const auto known = std::ranges::find(wanted, what, &std::pair<std::string, int>::first);
        if (known == wanted.end()) {
            wanted.emplace_back(what, 1);
        } else {
            ++known->second;
        }
    }
    std::vector<std::string> lines;
    lines.reserve(wanted.size());
    for (const auto& [what, count] : wanted) {
        lines.push_back(fmt::format("{} {} of {}", count, count == 1 ? "sheet" : "sheets", what));
    }
    return lines;
}

std::vector<std::string> planRemarks(const PaperJob& job, std::span<const PaperSheet> sheets) {
    std::vector<std::string> remarks;
    std::vector<std::string> names;
    for (const JobPaper& paper : job.papers) {
        if (!paper.isOnHand) {
            names.push_back(paper.name);
        }
    }
    if (!names.empty()) {
        remarks.push_back(fmt::format("Nothing is on hand of {}: planned without an up direction.",
                                      fmt::join(names, ", ")));
    }
    for (const JobPaper& paper : job.papers) {
        const bool isLeft = std::ranges::any_of(sheets, [&](const PaperSheet& sheet) {
            return sheet.paper == paper.name && !sheet.leftovers.empty();
        });
        if (isLeft && paper.name.size() > maxPaperNameBytes) {
            remarks.push_back(
                fmt::format("The name {} is too long for the list of papers on hand: "
                            "leftovers of it are not kept there.",
                            paper.name));
        }
    }
    return remarks;
}

}  // namespace matwright
