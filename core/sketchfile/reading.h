// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <pugixml.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"

namespace matwright {

// What goes wrong while one file is read: the first fault wins, and readers go on with default
// values until they next look at hasFailed(). At most mostWarnings sentences are kept, the last of
// which counts the rest.
class Reading {
  public:
    // `bytes` must be those the nodes were parsed from, and must outlive this.
    explicit Reading(std::string_view bytes) : m_bytes(bytes) {}

    static constexpr std::size_t mostWarnings = 50;

    void fail(pugi::xml_node at, ErrorCode code, std::string sentence);
    // A fault of the model, found at `at`; its own `where` is kept behind the line.
    void fail(pugi::xml_node at, Error error);
    void warn(pugi::xml_node at, std::string_view sentence);

    bool hasFailed() const { return m_error.has_value(); }
    const Error& error() const { return *m_error; }  // only after a failure
    std::vector<std::string> takeWarnings();

  private:
    std::string placeOf(pugi::xml_node node) const;

    std::string_view m_bytes;
    std::optional<Error> m_error;
    std::vector<std::string> m_warnings;
    std::size_t m_unsaidWarnings = 0;
};

// Foreign text for use in a sentence: in quotes, cut short, without control characters.
std::string inQuotes(std::string_view foreign);

}  // namespace matwright
