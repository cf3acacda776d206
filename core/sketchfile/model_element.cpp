// SPDX-License-Identifier: MIT
#include "core/sketchfile/model_element.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "core/sketchfile/document.h"
#include "core/sketchfile/vocabulary.h"

namespace matwright {

namespace {

constexpr const char* remedy = "Correct it, or open an earlier copy of the file.";

bool isNamespaceDeclaration(std::string_view attributeName) {
    return attributeName == "xmlns" || attributeName.starts_with("xmlns:");
}

bool isTextNode(pugi::xml_node node) {
    return node.type() == pugi::node_pcdata || node.type() == pugi::node_cdata;
}

bool contains(const std::vector<std::string_view>& asked, std::string_view name) {
    return std::ranges::find(asked, name) != asked.end();
}

bool isBlank(std::string_view text) {
    return text.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

}  // namespace

std::int64_t ModelElement::whole(const char* name, std::int64_t low, std::int64_t high) {
    (void)find(name, true);
    return optionalWhole(name, low, high).value_or(low);
}

std::optional<std::int64_t> ModelElement::optionalWhole(const char* name, std::int64_t low,
                                                        std::int64_t high) {
    const auto attribute = find(name, false);
    return valueOf(attribute, wholeFromText(attribute.value(), low, high),
                   fmt::format("a whole number from {} to {}", low, high));
}

std::optional<Length> ModelElement::optionalLength(const char* name, bool isRequired) {
    const auto attribute = find(name, isRequired);
    return valueOf(attribute, lengthFromText(attribute.value()),
                   "a whole number of 1/914,400 in, at most 1,000 in");
}

Angle ModelElement::optionalAngle(const char* name) {
    const auto attribute = find(name, false);
    return valueOf(attribute, angleFromText(attribute.value()),
                   "an angle in degrees from 0 to 359.999")
        .value_or(Angle());
}

bool ModelElement::optionalFlag(const char* name) {
    const pugi::xml_attribute attribute = find(name, false);
    const std::string_view value = attribute.value();
    if (attribute && value != words::yes && value != words::no) {
        fail(fmt::format(R"({} is {}, but must be "yes" or "no". {})", name, inQuotes(value),
                         remedy));
    }
    return value == words::yes;
}

std::vector<Point> ModelElement::corners(const char* name) {
    const auto attribute = find(name, true);
    return valueOf(attribute, cornersFromText(attribute.value()),
                   "corners as \"x,y x,y x,y\" in whole numbers, at most 1,000 in")
        .value_or(std::vector<Point>());
}

std::string_view ModelElement::word(const char* name) {
    return find(name, true).value();
}

std::optional<std::string_view> ModelElement::optionalWord(const char* name) {
    const auto attribute = find(name, false);
    return attribute ? std::optional<std::string_view>(attribute.value()) : std::nullopt;
}

std::string ModelElement::childText(const char* name) {
    std::string text;
    once(name, [&](ModelElement& element) {
        for (const pugi::xml_node part : element.m_node.children()) {
            if (isTextNode(part)) {
                text += part.value();
            }
        }
        element.m_askedChildren.emplace_back("");  // the text itself
    });
    return text;
}

void ModelElement::forEach(const char* name, const std::function<void(ModelElement&)>& read) {
    m_askedChildren.emplace_back(name);
    for (const pugi::xml_node child : m_node.children()) {
        if (hasFailed()) {
            return;
        }
        if (isOurs(child) && std::string_view(child.name()).substr(m_prefix.size()) == name) {
            ModelElement element(m_reading, child, m_prefix, m_namespace);
            read(element);
            element.finish();
        }
    }
}

bool ModelElement::once(const char* name, const std::function<void(ModelElement&)>& read) {
    bool isThere = false;
    forEach(name, [&](ModelElement& element) {
        if (isThere) {
            element.fail(
                fmt::format("There is a second <{}> where only one may be. {}", name, remedy));
            return;
        }
        isThere = true;
        read(element);
    });
    return isThere;
}

void ModelElement::exactlyOnce(const char* name, const std::function<void(ModelElement&)>& read) {
    if (!once(name, read)) {
        fail(fmt::format("<{}> has no <{}>, which it needs. {}", m_node.name(), name, remedy));
    }
}

void ModelElement::exactlyOnceIn(const char* otherNamespace, const char* name,
                                 const std::function<void(ModelElement&)>& read) {
    for (const pugi::xml_node child : m_node.children()) {
        if (hasFailed() || !isNamed(child, name, otherNamespace)) {
            continue;
        }
        ModelElement element(m_reading, child, prefixOf(child), otherNamespace);
        if (!m_askedForeign.empty()) {
            element.fail(
                fmt::format("There is a second <{}> where only one may be. {}", name, remedy));
            return;
        }
        m_askedForeign.push_back(child);
        read(element);
        element.finish();
    }
    if (m_askedForeign.empty()) {
        fail(fmt::format("<{}> has no <{}>, which it needs. {}", m_node.name(), name, remedy));
    }
}

void ModelElement::fail(std::string sentence) const {
    m_reading.fail(m_node, ErrorCode::Malformed, std::move(sentence));
}

void ModelElement::finish() const {
    if (hasFailed()) {
        return;
    }
    finishAttributes();
    for (const pugi::xml_node child : m_node.children()) {
        finishChild(child);
    }
}

pugi::xml_attribute ModelElement::find(const char* name, bool isRequired) {
    m_askedAttributes.emplace_back(name);
    const pugi::xml_attribute attribute = m_node.attribute(name);
    if (!attribute && isRequired) {
        fail(fmt::format("<{}> has no {}, which it needs. {}", m_node.name(), name, remedy));
    }
    return attribute;
}

template <typename T>
std::optional<T> ModelElement::valueOf(pugi::xml_attribute attribute, const FromText<T>& value,
                                       std::string_view expected) const {
    if (!attribute) {
        return std::nullopt;
    }
    if (!value) {
        fail(fmt::format("{} is {}, which is {}; it must be {}. {}", attribute.name(),
                         inQuotes(attribute.value()),
                         value.error() == NumberFault::OutOfRange ? "out of range" : "no number",
                         expected, remedy));
        return std::nullopt;
    }
    return *value;
}

bool ModelElement::isOurs(pugi::xml_node node) const {
    const std::string_view name = node.name();
    if (node.type() != pugi::node_element || !name.starts_with(m_prefix) ||
        name.substr(m_prefix.size()).contains(':')) {
        return false;
    }
    const std::string declaration =
        m_prefix.empty() ? "xmlns"
                         : fmt::format("xmlns:{}", m_prefix.substr(0, m_prefix.size() - 1));
    const pugi::xml_attribute redeclared = node.attribute(declaration.c_str());
    return !redeclared || std::string_view(redeclared.value()) == m_namespace;
}

void ModelElement::finishAttributes() const {
    std::set<std::string_view> seen;
    for (const pugi::xml_attribute attribute : m_node.attributes()) {
        const std::string_view name = attribute.name();
        if (!seen.insert(name).second) {
            fail(fmt::format("<{}> has {} twice. {}", m_node.name(), inQuotes(name), remedy));
            return;
        }
        if (!isNamespaceDeclaration(name) && !contains(m_askedAttributes, name)) {
            m_reading.warn(m_node, fmt::format("The {} of <{}> is not known to this version and "
                                               "would be lost on saving.",
                                               inQuotes(name), m_node.name()));
        }
    }
}

void ModelElement::finishChild(pugi::xml_node child) const {
    const std::string_view name = child.name();
    if (isTextNode(child)) {
        if (!contains(m_askedChildren, "") && !isBlank(child.value())) {
            m_reading.warn(m_node, fmt::format("The text in <{}> has no place there and would be "
                                               "lost on saving.",
                                               m_node.name()));
        }
    } else if (std::ranges::find(m_askedForeign, child) != m_askedForeign.end()) {
        return;
    } else if (!isOurs(child) || !contains(m_askedChildren, name.substr(m_prefix.size()))) {
        m_reading.warn(child, fmt::format("The part {} in <{}> is not known to this version and "
                                          "would be lost on saving.",
                                          inQuotes(name), m_node.name()));
    }
}

}  // namespace matwright
