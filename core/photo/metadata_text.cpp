// SPDX-License-Identifier: MIT
#include "core/photo/metadata_text.h"

#include <fmt/format.h>

#include <charconv>
#include <chrono>
#include <pugixml.hpp>

namespace matwright {

namespace {

constexpr std::string_view xmpSpace = "http://ns.adobe.com/xap/1.0/";
constexpr std::string_view exifSpace = "http://ns.adobe.com/exif/1.0/";
constexpr std::string_view rdfSpace = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";

// The number that the digits at `at` are; nothing where there is anything else.
std::optional<int> digits(std::string_view text, std::size_t at, std::size_t count) {
    if (text.size() < at + count) {
        return std::nullopt;
    }
    int number = 0;
    for (const char c : text.substr(at, count)) {
        if (c < '0' || c > '9') {
            return std::nullopt;
        }
        number = 10 * number + (c - '0');
    }
    return number;
}

std::optional<std::string> dayText(std::string_view text, char between) {
    using namespace std::chrono;
    const auto y = digits(text, 0, 4);
    const auto m = digits(text, 5, 2);
    const auto d = digits(text, 8, 2);
    if (!y || !m || !d || text[4] != between || text[7] != between || *y == 0) {
        return std::nullopt;
    }
    const year_month_day date{year(*y), month(static_cast<unsigned>(*m)),
                              day(static_cast<unsigned>(*d))};
    if (!date.ok()) {
        return std::nullopt;
    }
    return fmt::format("{:04}-{:02}-{:02}", *y, *m, *d);
}

// Of "16:03" or "16:03:22" from `at` on. A leap second is a second of its own.
std::optional<std::string> clockText(std::string_view text, std::size_t at, bool needsSeconds) {
    const auto hour = digits(text, at, 2);
    const auto minute = digits(text, at + 3, 2);
    if (!hour || !minute || text[at + 2] != ':' || *hour > 23 || *minute > 59) {
        return std::nullopt;
    }
    const bool hasSeconds = text.size() > at + 5 && text[at + 5] == ':';
    const auto second = hasSeconds ? digits(text, at + 6, 2) : std::optional(0);
    if (!second || *second > 60 || (needsSeconds && !hasSeconds)) {
        return std::nullopt;
    }
    return fmt::format("{:02}:{:02}:{:02}", *hour, *minute, *second);
}

std::optional<std::string> timeText(const std::optional<std::string>& day,
                                    const std::optional<std::string>& clock) {
    return day && clock ? std::optional(*day + " " + *clock) : std::nullopt;
}

// A name as it is written, "xmp:Rating", and where it is written, to say what its prefix means.
bool isNamed(std::string_view written, pugi::xml_node at, std::string_view space,
             std::string_view local) {
    const std::size_t colon = written.find(':');
    if (colon == std::string_view::npos || written.substr(colon + 1) != local) {
        return false;
    }
    const std::string declaration = "xmlns:" + std::string(written.substr(0, colon));
    for (pugi::xml_node node = at; node; node = node.parent()) {
        if (const pugi::xml_attribute found = node.attribute(declaration.c_str())) {
            return found.value() == space;
        }
    }
    return false;
}

// The properties of all descriptions in the packet; the first of a name counts.
class Properties {
  public:
    explicit Properties(pugi::xml_node rdf) : m_rdf(rdf) {}

    std::optional<std::string_view> find(std::string_view space, std::string_view local) const {
        for (const pugi::xml_node node : m_rdf.children()) {
            if (!isNamed(node.name(), node, rdfSpace, "Description")) {
                continue;
            }
            for (const pugi::xml_attribute attribute : node.attributes()) {
                if (isNamed(attribute.name(), node, space, local)) {
                    return attribute.value();
                }
            }
            for (const pugi::xml_node child : node.children()) {
                if (isNamed(child.name(), child, space, local)) {
                    return child.child_value();
                }
            }
        }
        return std::nullopt;
    }

  private:
    pugi::xml_node m_rdf;
};

pugi::xml_node rdfOf(const pugi::xml_document& document) {
    for (const pugi::xml_node outer : document.children()) {
        if (isNamed(outer.name(), outer, rdfSpace, "RDF")) {
            return outer;
        }
        for (const pugi::xml_node inner : outer.children()) {
            if (isNamed(inner.name(), inner, rdfSpace, "RDF")) {
                return inner;
            }
        }
    }
    return {};
}

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view blank(" \t\r\n\0", 5);
    const std::size_t first = text.find_first_not_of(blank);
    return first == std::string_view::npos
               ? ""
               : text.substr(first, text.find_last_not_of(blank) - first + 1);
}

// "3" or "3.0"; halves are no rating of ours.
std::optional<int> ratingOf(std::string_view text) {
    text = trimmed(text);
    double rating = 0;
    const auto [end, failure] =
        std::from_chars(text.data(), text.data() + text.size(), rating, std::chars_format::fixed);
    const bool isWhole = failure == std::errc() && end == text.data() + text.size();
    if (!isWhole || !(rating >= -1 && rating <= 5) || rating != static_cast<int>(rating)) {
        return std::nullopt;
    }
    return static_cast<int>(rating);
}

}  // namespace

std::optional<std::string> exifTime(std::string_view text) {
    if (text.size() < 19 || text[10] != ' ') {
        return std::nullopt;
    }
    return timeText(dayText(text, ':'), clockText(text, 11, true));
}

std::optional<std::string> xmpTime(std::string_view text) {
    text = trimmed(text);
    if (text.size() < 16 || text[10] != 'T') {
        return std::nullopt;
    }
    return timeText(dayText(text, '-'), clockText(text, 11, false));
}

XmpFacts readXmp(std::string_view packet) {
    if (packet.size() > maxXmpBytes) {
        return {};
    }
    const std::size_t last = packet.find_last_not_of('\0');
    packet = packet.substr(0, last == std::string_view::npos ? 0 : last + 1);
    pugi::xml_document document;
    constexpr unsigned options = pugi::parse_minimal | pugi::parse_escapes | pugi::parse_eol |
                                 pugi::parse_wconv_attribute | pugi::parse_doctype;
    const auto parsed = document.load_buffer(packet.data(), packet.size(), options);
    if (!parsed) {
        return {};
    }
    for (const pugi::xml_node node : document.children()) {
        if (node.type() == pugi::node_doctype) {
            return {};
        }
    }
    const Properties properties(rdfOf(document));
    XmpFacts facts;
    facts.rating = ratingOf(properties.find(xmpSpace, "Rating").value_or(""));
    facts.taken = xmpTime(properties.find(exifSpace, "DateTimeOriginal").value_or(""));
    if (!facts.taken) {
        facts.taken = xmpTime(properties.find(xmpSpace, "CreateDate").value_or(""));
    }
    return facts;
}

}  // namespace matwright
