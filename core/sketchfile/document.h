// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <pugixml.hpp>
#include <string>
#include <string_view>

#include "core/error/error.h"
#include "core/sketchfile/model_element.h"
#include "core/sketchfile/reading.h"

namespace matwright {

// What every file of ours has in common: an SVG picture with a model in it.

inline constexpr const char* svgNamespace = "http://www.w3.org/2000/svg";

// Parses what findXmlFault() has been over; `bytes` without a byte order mark. NotXml where start
// and end tags do not match and the like.
std::optional<Error> parseDocument(std::string_view bytes, pugi::xml_document& document);
// A stated encoding other than UTF-8 is a fault.
void checkEncoding(const pugi::xml_document& document, Reading& reading);

// "" or "p:", as the name is spelled.
std::string_view prefixOf(pugi::xml_node element);
// Of an element, from its own declarations and those around it.
std::string_view namespaceOf(pugi::xml_node element);
bool isNamed(pugi::xml_node element, std::string_view localName, std::string_view inNamespace);

// NewerVersion or Malformed unless the model's version is this one. `what` it is, for a sentence:
// "sketch".
void checkVersion(ModelElement& model, Reading& reading, std::string_view what, int version);

// The document as text, one space of indent a level.
std::string documentText(const pugi::xml_document& document);
// An SVG document's root, behind an XML declaration.
pugi::xml_node appendSvgRoot(pugi::xml_document& document);

}  // namespace matwright
