// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "core/error/error.h"

namespace matwright {

// More elements than any sketch needs; a bound on what the parser builds from a small file.
inline constexpr std::size_t maxSketchFileElements = 1'000'000;

// Looks over foreign bytes in one pass, without recursion and without building anything, before an
// XML parser sees them. Returns the first fault; `where` names the line.
//
// - NotXml: empty, UTF-16 or UTF-32, not UTF-8, control characters, text or a second element beside
//   the root, markup that is not closed, a reference to an entity XML does not define by itself
// - WrongFormat: a document type declaration (the only way to define entities or to name other
//   files in XML)
// - TooLarge: deeper than maxSketchFileDepth, more than maxSketchFileElements elements
//
// It does not check that the text is well-formed: start and end tags may not match.
std::optional<Error> findXmlFault(std::string_view bytes);

// Without the UTF-8 byte order mark, where there is one.
std::string_view withoutByteOrderMark(std::string_view bytes);

// "line 12", counted from 1, for a place in the bytes.
std::string lineText(std::string_view bytes, std::size_t offset);

}  // namespace matwright
