// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <cassert>
#include <pugixml.hpp>

#include "core/sketch/soundness.h"
#include "core/sketchfile/document.h"
#include "core/sketchfile/model_reader.h"
#include "core/sketchfile/reading.h"
#include "core/sketchfile/sketch_file.h"
#include "core/sketchfile/vocabulary.h"
#include "core/sketchfile/xml_guard.h"

namespace matwright {

namespace {

using Node = pugi::xml_node;

// The one model in the picture; no node after a failure.
Node findModel(Node root, Reading& reading) {
    if (!isNamed(root, "svg", svgNamespace)) {
        reading.fail(root, ErrorCode::WrongFormat,
                     fmt::format("The file is no sketch: it begins with {} instead of a picture. "
                                 "Choose one that was saved with this program.",
                                 inQuotes(root.name())));
        return {};
    }
    Node model;
    for (const Node child : root.children()) {
        if (!isNamed(child, words::sketch, sketchNamespace)) {
            continue;
        }
        if (model) {
            reading.fail(child, ErrorCode::Malformed,
                         "The file has a second sketch in it; only one may be. Open an earlier "
                         "copy of the file.");
            return {};
        }
        model = child;
    }
    if (!model) {
        reading.fail(root, ErrorCode::WrongFormat,
                     "The file is a picture without a sketch in it. Choose one that was saved with "
                     "this program; another program that saved the picture again may have lost "
                     "the sketch.");
    }
    return model;
}

Sketch readDocument(const pugi::xml_document& document, Reading& reading) {
    checkEncoding(document, reading);
    const Node node = findModel(document.document_element(), reading);
    if (reading.hasFailed()) {
        return {};
    }
    ModelElement model(reading, node, prefixOf(node), sketchNamespace);
    Sketch sketch = readWholeModel(model, reading);
    if (reading.hasFailed()) {
        return {};
    }
    model.finish();
    return sketch;
}

}  // namespace

Result<LoadedSketch> readSketch(std::string_view bytes) {
    if (bytes.size() > maxSketchFileBytes) {
        return std::unexpected(Error{
            ErrorCode::TooLarge,
            fmt::format("The file is larger than the {} MB a sketch may have. Check that it is the "
                        "right file.",
                        maxSketchFileBytes >> 20),
            "line 1"});
    }
    bytes = withoutByteOrderMark(bytes);
    if (auto fault = findXmlFault(bytes)) {
        return std::unexpected(*std::move(fault));
    }
    pugi::xml_document document;
    if (auto fault = parseDocument(bytes, document)) {
        return std::unexpected(*std::move(fault));
    }
    Reading reading(bytes);
    Sketch sketch = readDocument(document, reading);
    if (reading.hasFailed()) {
        return std::unexpected(reading.error());
    }
    assert(!findFault(sketch));
    return LoadedSketch{std::move(sketch), reading.takeWarnings()};
}

}  // namespace matwright
