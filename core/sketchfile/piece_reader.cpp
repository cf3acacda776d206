// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "core/sketchfile/model_reader.h"
#include "core/sketchfile/vocabulary.h"

namespace matwright {

namespace {

PieceKind readKind(ModelElement& element) {
    const std::string_view word = element.word(words::kind);
    const auto* found = std::ranges::find(words::kindWords, word, [](const words::KindWord& entry) {
        return std::string_view(entry.word);
    });
    if (found == std::end(words::kindWords)) {
        element.fail(
            fmt::format("{} is no kind of piece. Correct it, or open the file with the "
                        "program version it was made with.",
                        inQuotes(word)));
        return PieceKind::Block;
    }
    return found->kind;
}

Shape readShape(ModelElement& element) {
    const std::string_view word = element.word(words::shape);
    const auto* found = std::ranges::find(words::shapeWords, word);
    switch (found - std::begin(words::shapeWords)) {
        case 0:
            return RectangleShape{};
        case 1:
            return RoundedRectangleShape{element.length(words::radius)};
        case 2:
            return OvalShape{};
        case 3:
            return PolygonShape{element.corners(words::corners)};
        default:
            element.fail(
                fmt::format("{} is no shape this version can draw. Correct it, or open "
                            "the file with the program version it was made with.",
                            inQuotes(word)));
            return RectangleShape{};
    }
}

Mat readMat(ModelElement& element) {
    return {element.length(words::border), element.optionalLength(words::bottom),
            element.childText(words::paper), element.optionalFlag(words::gut)};
}

}  // namespace

Piece readPiece(ModelElement& element) {
    Piece piece;
    piece.kind = readKind(element);
    piece.place = {element.length(words::x), element.length(words::y)};
    piece.size = element.size(words::width, words::height);
    piece.rotation = element.optionalAngle(words::turn);
    piece.shape = readShape(element);
    piece.locked = element.optionalFlag(words::locked);
    piece.name = element.childText(words::name);
    element.once(words::print, [&](ModelElement& print) {
        piece.printSize = print.size(words::width, words::height);
    });
    element.forEach(words::mat, [&](ModelElement& mat) { piece.mats.push_back(readMat(mat)); });
    piece.paper = element.childText(words::paper);
    piece.note = element.childText(words::note);
    return piece;
}

}  // namespace matwright
