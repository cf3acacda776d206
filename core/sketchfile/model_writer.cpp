// SPDX-License-Identifier: MIT
#include "core/sketchfile/model_writer.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/sketchfile/file_text.h"
#include "core/sketchfile/sketch_file.h"
#include "core/sketchfile/vocabulary.h"

namespace matwright {

using Node = pugi::xml_node;

void set(Node node, const char* name, const char* value) {
    node.append_attribute(name).set_value(value);
}

void set(Node node, const char* name, const std::string& value) {
    set(node, name, value.c_str());
}

void set(Node node, const char* name, Length value) {
    set(node, name, lengthToText(value));
}

void set(Node node, Size size) {
    set(node, words::width, size.width);
    set(node, words::height, size.height);
}

void appendText(Node parent, const char* name, const std::string& text) {
    if (!text.empty()) {
        parent.append_child(name).append_child(pugi::node_pcdata).set_value(text.c_str());
    }
}

namespace {

void appendPage(Node parent, const PageSetup& setup) {
    const Node page = parent.append_child(words::page);
    set(page, setup.size);
    set(page, words::gutter, setup.gutter);
    if (setup.doublePage) {
        set(page, words::foldGap, setup.foldGap);
    }
    const Node margins = Node(page).append_child(words::margins);
    set(margins, words::left, setup.margins.left);
    set(margins, words::top, setup.margins.top);
    set(margins, words::right, setup.margins.right);
    set(margins, words::bottom, setup.margins.bottom);
}

const char* wordOf(PieceKind kind) {
    return std::ranges::find(words::kindWords, kind, &words::KindWord::kind)->word;
}

void setShape(Node piece, const Shape& shape) {
    set(piece, words::shape, words::shapeWords[shape.index()]);
    if (const auto* rounded = std::get_if<RoundedRectangleShape>(&shape)) {
        set(piece, words::radius, rounded->radius);
    } else if (const auto* polygon = std::get_if<PolygonShape>(&shape)) {
        set(piece, words::corners, cornersToText(polygon->corners));
    }
}

void appendMat(Node parent, const Mat& mat) {
    const Node element = parent.append_child(words::mat);
    set(element, words::border, mat.border);
    if (mat.bottomBorder) {
        set(element, words::bottom, *mat.bottomBorder);
    }
    if (mat.gutted) {
        set(element, words::gut, words::yes);
    }
    appendText(element, words::paper, mat.paper);
}

void appendPiece(Node parent, PieceId id, const Piece& piece) {
    Node element = parent.append_child(words::piece);
    set(element, words::id, fmt::to_string(id.value));
    set(element, words::kind, wordOf(piece.kind));
    set(element, words::x, piece.place.x);
    set(element, words::y, piece.place.y);
    set(element, piece.size);
    if (!piece.rotation.isZero()) {
        set(element, words::turn, angleToText(piece.rotation));
    }
    setShape(element, piece.shape);
    if (piece.locked) {
        set(element, words::locked, words::yes);
    }
    appendText(element, words::name, piece.name);
    if (piece.printSize) {
        set(element.append_child(words::print), *piece.printSize);
    }
    for (const Mat& mat : piece.mats) {
        appendMat(element, mat);
    }
    appendText(element, words::paper, piece.paper);
    appendText(element, words::note, piece.note);
}

}  // namespace

void appendModel(Node parent, const Sketch& sketch) {
    Node model = parent.append_child(words::sketch);
    set(model, words::version, fmt::to_string(sketchFormatVersion));
    set(model, words::unit, words::unitValue);
    set(model, "xmlns", sketchNamespace);
    appendText(model, words::name, sketch.name);
    appendText(model, words::note, sketch.note);
    appendPage(model, sketch.page);
    const Node pieces = model.append_child(words::pieces);
    for (const PieceId id : sketch.order) {
        appendPiece(pieces, id, sketch.pieces.at(id));
    }
}

}  // namespace matwright
