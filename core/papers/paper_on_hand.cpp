// SPDX-License-Identifier: MIT
#include "core/papers/paper_on_hand.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "core/library/text_fold.h"
#include "core/sketch/soundness.h"

namespace matwright {

namespace {

Error paperFault(const PaperOnHand& paper, std::string sentence) {
    return {
        ErrorCode::Malformed, std::move(sentence),
        paper.name.size() <= maxPaperNameBytes && isValidText(paper.name, false) ? paper.name : ""};
}

bool isPaperSide(Length side) {
    return side >= smallestPaperSide && side <= largestPaperSide;
}

bool isLineOf(const std::string& text, std::size_t bytes) {
    return text.size() <= bytes && isValidText(text, false);
}

// How many letters of valid text begin within so many bytes.
std::ptrdiff_t lettersIn(std::string_view text, std::size_t bytes) {
    return std::ranges::count_if(text.substr(0, bytes), [](char c) { return (c & 0xC0) != 0x80; });
}

// Letters are counted as people see them, though not all take equally much room.
std::optional<std::string> faultOfLine(std::string_view what, const std::string& text) {
    if (text.size() <= maxPaperNameBytes) {
        return isValidText(text, false)
                   ? std::nullopt
                   : std::optional(fmt::format("{} is one line of letters that can be saved; it "
                                               "has others.",
                                               what));
    }
    const std::ptrdiff_t fitting = lettersIn(text, maxPaperNameBytes + 1) - 1;
    return fmt::format("{} is too long: {} of its {} letters fit. Shorten it.", what, fitting,
                       lettersIn(text, text.size()));
}

std::optional<Error> findFaultOfWords(const PaperOnHand& paper) {
    if (paperKey(paper.name).empty()) {
        return paperFault(paper, "A paper needs a name.");
    }
    for (const auto& [what, text] : {std::pair("The paper's name", &paper.name),
                                     std::pair("The paper's thickness", &paper.thickness)}) {
        if (auto fault = faultOfLine(what, *text)) {
            return paperFault(paper, *std::move(fault));
        }
    }
    if (!isLineOf(paper.picture, maxPicturePathBytes)) {
        return paperFault(paper, "The path of the paper's picture cannot be kept; choose another.");
    }
    return std::nullopt;
}

}  // namespace

std::optional<Error> findFault(const PaperOnHand& paper) {
    if (const auto fault = findFaultOfWords(paper)) {
        return fault;
    }
    if (!isPaperSide(paper.size.width) || !isPaperSide(paper.size.height)) {
        return paperFault(paper,
                          fmt::format("A sheet's sides are {} to {}.", exactText(smallestPaperSide),
                                      exactText(largestPaperSide)));
    }
    if (paper.count < 0 || paper.count > maxPaperCount) {
        return paperFault(
            paper, fmt::format("Of one paper there are 0 to {} sheets on hand.", maxPaperCount));
    }
    const bool hasWidth =
        paper.pictureWidth.isPositive() && paper.pictureWidth <= Length::inches(200);
    if (paper.picture.empty() ? !paper.pictureWidth.isZero() : !hasWidth) {
        return paperFault(paper, paper.picture.empty()
                                     ? "Without a picture a paper has no width of its picture."
                                     : "Say how wide what the picture shows is in truth, at most "
                                       "200 in.");
    }
    return std::nullopt;
}

std::string paperKey(std::string_view name) {
    std::string key;
    for (const char c : foldedText(name)) {
        const bool isBlank = c == ' ' || c == '\t';
        if (!isBlank) {
            key += c;
        } else if (!key.empty() && key.back() != ' ') {
            key += ' ';
        }
    }
    key.erase(key.find_last_not_of(' ') + 1);
    return key;
}

std::string paperText(const PaperOnHand& paper, Scale scale) {
    return fmt::format("{}, {}{}", paper.name, sizeText(paper.size, scale),
                       paper.kind == PaperKind::Scrap ? ", a scrap" : "");
}

}  // namespace matwright
