// SPDX-License-Identifier: MIT
#include "core/template/label_text.h"

#include <fmt/format.h>

#include "core/template/cut_lines.h"
#include "core/template/text_block.h"

namespace matwright {

namespace {

constexpr std::size_t longestPaper = 24;
constexpr std::size_t longestRowName = 24;

std::string withPaper(const std::string& text, const std::string& paper) {
    return paper.empty() ? text : text + ", " + shortened(paper, longestPaper);
}

std::string shapeWord(const Shape& shape, Size size) {
    if (std::holds_alternative<OvalShape>(shape)) {
        return size.width == size.height ? "round " : "oval ";
    }
    return "";
}

std::vector<std::string> sizeLines(const Piece& piece, Scale scale) {
    std::vector<std::string> lines;
    if (piece.printSize) {
        lines.push_back(fmt::format("print {}", sizeText(*piece.printSize, scale)));
    }
    const std::string own = shapeWord(piece.shape, piece.size) + sizeText(piece.size, scale);
    lines.push_back(withPaper((isCut(piece.kind) ? "trim " : "size ") + own, piece.paper));
    for (std::size_t i = 0; i < piece.mats.size(); ++i) {
        const std::string word = piece.mats.size() == 1 ? "mat" : fmt::format("mat {}", i + 1);
        lines.push_back(
            withPaper(word + " " + sizeText(matBox(piece, i).size(), scale), piece.mats[i].paper));
    }
    if (!piece.rotation.isZero()) {
        lines.push_back("turned " + turnText(piece.rotation));
    }
    return lines;
}

std::string distanceText(const ScenePiece& piece, Scale scale, ToldDistances told) {
    std::string text = piece.mats.empty() ? "" : "mat ";
    if (told.left) {
        text += fmt::format("left {}", figureText(piece.left(), scale));
    }
    if (told.top) {
        text += fmt::format("{}top {}", told.left ? ", " : "", figureText(piece.top(), scale));
    }
    return text;
}

}  // namespace

std::vector<std::string> labelLines(const ScenePiece& piece, Scale scale, ToldDistances told,
                                    std::size_t longestName) {
    const Piece& it = *piece.piece;
    const bool isNamed = it.name.find_first_not_of(' ') != std::string::npos;
    const std::string name = isNamed ? it.name : std::string(kindName(it.kind));
    std::vector<std::string> lines{
        fmt::format("{} \u00B7 {}", piece.number, shortened(name, longestName))};
    std::ranges::move(sizeLines(it, scale), std::back_inserter(lines));
    if (told.any()) {
        lines.push_back(distanceText(piece, scale, told));
    }
    return lines;
}

std::string labelRow(const ScenePiece& piece, Scale scale, ToldDistances told) {
    return fmt::format("{}", fmt::join(labelLines(piece, scale, told, longestRowName), " \u00B7 "));
}

}  // namespace matwright
