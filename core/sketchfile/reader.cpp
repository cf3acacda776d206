// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cctype>
#include <pugixml.hpp>

#include "core/sketch/soundness.h"
#include "core/sketchfile/file_text.h"
#include "core/sketchfile/model_reader.h"
#include "core/sketchfile/reading.h"
#include "core/sketchfile/sketch_file.h"
#include "core/sketchfile/vocabulary.h"
#include "core/sketchfile/xml_guard.h"

namespace matwright {

namespace {

using Node = pugi::xml_node;

constexpr const char* svgNamespace = "http://www.w3.org/2000/svg";

// "" or "p:", as the name is spelled.
std::string_view prefixOf(Node element) {
    const std::string_view name = element.name();
    const std::size_t colon = name.find(':');
    return colon == std::string_view::npos ? std::string_view() : name.substr(0, colon + 1);
}

// The namespace of the root, or of a child of the root.
std::string_view namespaceOf(Node element) {
    const std::string_view prefix = prefixOf(element);
    const std::string declaration =
        prefix.empty() ? "xmlns" : fmt::format("xmlns:{}", prefix.substr(0, prefix.size() - 1));
    const pugi::xml_attribute own = element.attribute(declaration.c_str());
    return own ? own.value() : element.parent().attribute(declaration.c_str()).value();
}

bool isNamed(Node element, std::string_view localName, std::string_view inNamespace) {
    const std::string_view name = element.name();
    return name.substr(prefixOf(element).size()) == localName &&
           namespaceOf(element) == inNamespace;
}

void checkEncoding(const pugi::xml_document& document, Reading& reading) {
    const Node declaration =
        document.find_child([](Node node) { return node.type() == pugi::node_declaration; });
    std::string encoding = declaration.attribute("encoding").value();
    std::ranges::transform(encoding, encoding.begin(),
                           [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    if (!encoding.empty() && encoding != "utf-8" && encoding != "us-ascii") {
        reading.fail(document, ErrorCode::NotXml,
                     fmt::format("The file keeps its letters in a way this program does not read "
                                 "({}). Open another copy of it, or save it again as UTF-8 with "
                                 "the program it comes from.",
                                 inQuotes(encoding)));
    }
}

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

// An older version is brought up to the newest here, before its model is read: one step a version,
// each in a file of its own. There is no older version yet.
void checkVersion(ModelElement& model, Reading& reading) {
    const std::string_view text = model.word(words::version);
    const bool isNumber =
        !text.empty() && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
    const bool isThisOne = text == std::to_string(sketchFormatVersion);
    if (isNumber && !isThisOne && text.front() != '0') {
        reading.fail(model.node(), ErrorCode::NewerVersion,
                     fmt::format("The sketch is of file version {}, and this program reads up to "
                                 "version {}. Open it with a newer version of the program.",
                                 inQuotes(text), sketchFormatVersion));
    } else if (!isThisOne) {
        model.fail(fmt::format("{} is no file version. Open an earlier copy of the file.",
                               inQuotes(text)));
    }
    if (const auto unit = model.word(words::unit); unit != words::unitValue) {
        model.fail(
            fmt::format("The sketch counts in {} instead of {}. Open an earlier copy of "
                        "the file.",
                        inQuotes(unit), inQuotes(words::unitValue)));
    }
}

Sketch readDocument(const pugi::xml_document& document, Reading& reading) {
    checkEncoding(document, reading);
    const Node node = findModel(document.document_element(), reading);
    if (reading.hasFailed()) {
        return {};
    }
    ModelElement model(reading, node, prefixOf(node));
    checkVersion(model, reading);
    if (reading.hasFailed()) {
        return {};
    }
    Sketch sketch = readModel(model);
    model.finish();
    return sketch;
}

Error parseError(const pugi::xml_parse_result& result, std::string_view bytes) {
    return {ErrorCode::NotXml, "The file is damaged or was cut off here. Open another copy of it.",
            lineText(bytes, static_cast<std::size_t>(std::max<std::ptrdiff_t>(result.offset, 0)))};
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
    // White space is text like any other here; references to entities are the predefined ones only.
    const unsigned options = pugi::parse_cdata | pugi::parse_escapes | pugi::parse_eol |
                             pugi::parse_wconv_attribute | pugi::parse_ws_pcdata |
                             pugi::parse_declaration;
    const auto result =
        document.load_buffer(bytes.data(), bytes.size(), options, pugi::encoding_utf8);
    if (!result) {
        return std::unexpected(parseError(result, bytes));
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
