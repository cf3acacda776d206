// SPDX-License-Identifier: MIT
#include "tests/core/sketchfile/example.h"

#include <fmt/format.h>

#include <stdexcept>
#include <utility>

namespace matwright::test {

namespace {

constexpr Length inch = Length::inches(1);

Piece pieceAt(PieceKind kind, Point place, Size size) {
    Piece piece;
    piece.kind = kind;
    piece.place = place;
    piece.size = size;
    return piece;
}

Piece examplePhoto() {
    Piece photo = pieceAt(PieceKind::PhotoSlot, {inch, 2 * inch}, {4 * inch, 6 * inch});
    photo.printSize = photo.size;
    photo.mats = {{Length::inches(0, 1, 8), {}, "white cardstock"},
                  {Length::inches(0, 1, 4), Length::inches(0, 3, 4), "", true}};
    photo.name = "Focal photo";
    return photo;
}

Piece exampleJournaling() {
    Piece text = pieceAt(PieceKind::Journaling, {6 * inch, 8 * inch}, {3 * inch, 2 * inch});
    text.shape = RoundedRectangleShape{Length::inches(0, 1, 4)};
    text.note = "Who <was> there & when?\n  The weather.\n";
    return text;
}

}  // namespace

Sketch exampleSketch() {
    Sketch sketch;
    sketch.name = "One of everything";
    sketch.note = "For a day \"out\".";
    Piece strip = pieceAt(PieceKind::Strip, {Length(), 5 * inch}, {12 * inch, 2 * inch});
    strip.paper = "patterned, 6 x 12";
    Piece flag = pieceAt(PieceKind::Embellishment, {9 * inch, inch}, {2 * inch, inch});
    flag.shape = PolygonShape{{{}, {2 * inch, Length()}, {2 * inch, inch}}};
    flag.rotation = Angle::millidegrees(12'500);
    flag.locked = true;
    Piece title = pieceAt(PieceKind::Title, {6 * inch, Length::inches(0, 1, 2)}, {2 * inch, inch});
    title.shape = OvalShape{};
    sketch.pieces = {{PieceId{1}, examplePhoto()},
                     {PieceId{2}, strip},
                     {PieceId{5}, flag},
                     {PieceId{6}, title},
                     {PieceId{9}, exampleJournaling()}};
    sketch.order = {PieceId{2}, PieceId{1}, PieceId{9}, PieceId{5}, PieceId{6}};
    return sketch;
}

std::string fileAround(std::string_view model) {
    return fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\">\n"
        "<sketch version=\"1\" unit=\"1/914400 in\" xmlns=\"urn:matwright:sketch\">\n"
        "{}</sketch>\n</svg>\n",
        model);
}

std::string modelWith(std::string_view pieces) {
    return fmt::format(
        "<page width=\"10972800\" height=\"10972800\" gutter=\"228600\">\n"
        "<margins left=\"457200\" top=\"457200\" right=\"457200\" bottom=\"457200\"/>\n"
        "</page>\n<pieces>\n{}</pieces>\n",
        pieces);
}

std::string block(int id, std::string_view attributes, std::string_view children) {
    return fmt::format(
        "<piece id=\"{}\" kind=\"block\" x=\"0\" y=\"0\" width=\"914400\" height=\"914400\" "
        "shape=\"rectangle\" {}>{}</piece>\n",
        id, attributes, children);
}

std::string replaced(std::string text, std::string_view from, std::string_view to) {
    const std::size_t at = text.find(from);
    if (at == std::string::npos || text.find(from, at + 1) != std::string::npos) {
        throw std::logic_error(fmt::format("not exactly one {} in the text", from));
    }
    return std::move(text.replace(at, from.size(), to));
}

}  // namespace matwright::test
