// SPDX-License-Identifier: MIT
#include "core/sketchfile/document.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

#include "core/sketchfile/vocabulary.h"
#include "core/sketchfile/xml_guard.h"

namespace matwright {

namespace {

using Node = pugi::xml_node;

class StringWriter final : public pugi::xml_writer {
  public:
    void write(const void* data, std::size_t size) override {
        text.append(static_cast<const char*>(data), size);
    }
    std::string text;
};

}  // namespace

std::optional<Error> parseDocument(std::string_view bytes, pugi::xml_document& document) {
    // White space is text like any other here; references to entities are the predefined ones only.
    const unsigned options = pugi::parse_cdata | pugi::parse_escapes | pugi::parse_eol |
                             pugi::parse_wconv_attribute | pugi::parse_ws_pcdata |
                             pugi::parse_declaration;
    const auto result =
        document.load_buffer(bytes.data(), bytes.size(), options, pugi::encoding_utf8);
    if (result) {
        return std::nullopt;
    }
    return Error{
        ErrorCode::NotXml, "The file is damaged or was cut off here. Open another copy of it.",
        lineText(bytes, static_cast<std::size_t>(std::max<std::ptrdiff_t>(result.offset, 0)))};
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

std::string_view prefixOf(Node element) {
    const std::string_view name = element.name();
    const std::size_t colon = name.find(':');
    return colon == std::string_view::npos ? std::string_view() : name.substr(0, colon + 1);
}

std::string_view namespaceOf(Node element) {
    const std::string_view prefix = prefixOf(element);
    const std::string declaration =
        prefix.empty() ? "xmlns" : fmt::format("xmlns:{}", prefix.substr(0, prefix.size() - 1));
    for (Node node = element; node; node = node.parent()) {
        if (const pugi::xml_attribute found = node.attribute(declaration.c_str())) {
            return found.value();
        }
    }
    return {};
}

bool isNamed(Node element, std::string_view localName, std::string_view inNamespace) {
    const std::string_view name = element.name();
    return name.substr(prefixOf(element).size()) == localName &&
           namespaceOf(element) == inNamespace;
}

void checkVersion(ModelElement& model, Reading& reading, std::string_view what, int version) {
    const std::string_view text = model.word(words::version);
    const bool isNumber =
        !text.empty() && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
    const bool isThisOne = text == std::to_string(version);
    if (isNumber && !isThisOne && text.front() != '0') {
        reading.fail(model.node(), ErrorCode::NewerVersion,
                     fmt::format("The {} is of file version {}, and this program reads up to "
                                 "version {}. Open it with a newer version of the program.",
                                 what, inQuotes(text), version));
    } else if (!isThisOne) {
        model.fail(fmt::format("{} is no file version. Open an earlier copy of the file.",
                               inQuotes(text)));
    }
}

std::string documentText(const pugi::xml_document& document) {
    StringWriter out;
    document.save(out, " ", pugi::format_indent, pugi::encoding_utf8);
    return std::move(out.text);
}

pugi::xml_node appendSvgRoot(pugi::xml_document& document) {
    Node declaration = document.append_child(pugi::node_declaration);
    declaration.append_attribute("version").set_value("1.0");
    declaration.append_attribute("encoding").set_value("UTF-8");
    Node svg = document.append_child("svg");
    svg.append_attribute("xmlns").set_value(svgNamespace);
    return svg;
}

}  // namespace matwright
