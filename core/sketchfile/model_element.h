// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/sketchfile/file_text.h"
#include "core/sketchfile/reading.h"

namespace matwright {

// One element of the model while it is read. Each attribute and child is asked for by name; what
// nobody asked for is not known to this version, and finish() warns of it. A value that is missing
// or breaks its rule fails the reading (Malformed) and comes back as a default.
class ModelElement {
  public:
    // `prefix` is how the file spells the model's namespace: "" or "p:". Both must outlive this.
    ModelElement(Reading& reading, pugi::xml_node node, std::string_view prefix,
                 std::string_view modelNamespace)
        : m_reading(reading), m_node(node), m_prefix(prefix), m_namespace(modelNamespace) {}

    Length length(const char* name) { return optionalLength(name, true).value_or(Length()); }
    std::optional<Length> optionalLength(const char* name) { return optionalLength(name, false); }
    Size size(const char* width, const char* height) { return {length(width), length(height)}; }
    std::int64_t whole(const char* name, std::int64_t low, std::int64_t high);
    Angle optionalAngle(const char* name);
    bool optionalFlag(const char* name);
    std::vector<Point> corners(const char* name);
    std::string_view word(const char* name);
    std::optional<std::int64_t> optionalWhole(const char* name, std::int64_t low,
                                              std::int64_t high);
    // Nothing where it is not there.
    std::optional<std::string_view> optionalWord(const char* name);

    // The text of the one child of this name, every space and line break as it stands; empty where
    // there is none.
    std::string childText(const char* name);
    // Calls `read` with each child of this name, in order, and finishes it, until a reading fails.
    void forEach(const char* name, const std::function<void(ModelElement&)>& read);
    // The same for a child that may be there at most once; false where it is not there.
    bool once(const char* name, const std::function<void(ModelElement&)>& read);
    // The same for a child that must be there.
    void exactlyOnce(const char* name, const std::function<void(ModelElement&)>& read);

    // A model of another namespace that stands in this one; it must be there once. Finished by
    // this.
    void exactlyOnceIn(const char* otherNamespace, const char* name,
                       const std::function<void(ModelElement&)>& read);

    void fail(std::string sentence) const;
    void fail(Error error) const { m_reading.fail(m_node, std::move(error)); }
    bool hasFailed() const { return m_reading.hasFailed(); }
    pugi::xml_node node() const { return m_node; }

    // Warns of every part nobody asked for. An attribute given twice is a fault.
    void finish() const;

  private:
    std::optional<Length> optionalLength(const char* name, bool isRequired);
    pugi::xml_attribute find(const char* name, bool isRequired);
    template <typename T>
    std::optional<T> valueOf(pugi::xml_attribute attribute, const FromText<T>& value,
                             std::string_view expected) const;
    bool isOurs(pugi::xml_node node) const;
    void finishAttributes() const;
    void finishChild(pugi::xml_node child) const;

    Reading& m_reading;
    pugi::xml_node m_node;
    std::string_view m_prefix;
    std::string_view m_namespace;
    std::vector<pugi::xml_node> m_askedForeign;
    std::vector<std::string_view> m_askedAttributes;
    std::vector<std::string_view> m_askedChildren;
};

}  // namespace matwright
