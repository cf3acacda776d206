// SPDX-License-Identifier: MIT
#include "core/sketchfile/reading.h"

#include <fmt/format.h>

#include <utility>

#include "core/sketch/utf8.h"
#include "core/sketchfile/xml_guard.h"

namespace matwright {

void Reading::fail(pugi::xml_node at, ErrorCode code, std::string sentence) {
    fail(at, Error{code, std::move(sentence), {}});
}

void Reading::fail(pugi::xml_node at, Error error) {
    if (m_error) {
        return;
    }
    if (!error.where.empty()) {
        error.where.insert(0, ", ");
    }
    error.where.insert(0, placeOf(at));
    m_error = std::move(error);
}

void Reading::warn(pugi::xml_node at, std::string_view sentence) {
    if (m_warnings.size() + 1 < mostWarnings) {
        m_warnings.push_back(fmt::format("{}: {}", placeOf(at), sentence));
    } else {
        ++m_unsaidWarnings;
    }
}

std::vector<std::string> Reading::takeWarnings() {
    if (m_unsaidWarnings > 0) {
        m_warnings.push_back(
            fmt::format("{} more parts of the file are not known to this version "
                        "and would be lost on saving.",
                        m_unsaidWarnings));
    }
    return std::move(m_warnings);
}

std::string Reading::placeOf(pugi::xml_node node) const {
    while (node && node.offset_debug() < 0) {
        node = node.parent();
    }
    const auto offset = node ? node.offset_debug() : 0;
    return lineText(m_bytes, static_cast<std::size_t>(offset));
}

std::string inQuotes(std::string_view foreign) {
    constexpr std::size_t longest = 40;
    std::string text = "\"";
    while (!foreign.empty() && text.size() < longest) {
        const std::size_t length = utf8SequenceLength(foreign);
        const auto first = static_cast<unsigned char>(foreign.front());
        const bool isPlain = length > 1 || (length == 1 && first >= 0x20 && first != 0x7F);
        text += isPlain ? foreign.substr(0, length) : "?";
        foreign.remove_prefix(length == 0 ? 1 : length);
    }
    return text + (foreign.empty() ? "\"" : "…\"");
}

}  // namespace matwright
