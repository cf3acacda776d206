// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/library/facet.h"
#include "core/library/holdings_inside.h"
#include "core/library/packed_entry.h"

namespace matwright {

// Fills the facets and columns of an Inside from its entries, one after another in their order.
class FacetCollector {
  public:
    explicit FacetCollector(Holdings::Inside& inside) : m_inside(inside) {}
    void add(const EntryView& entry);
    // After the last entry, once.
    void finish();

  private:
    using Pairs = std::vector<Facet::Has>;
    // Values get numbers as they come; they are sorted and renumbered at the end.
    template <typename Value>
    struct Numbering {
        std::vector<Value> values;
        Pairs pairs;
    };
    void addPhotos(const EntryView& entry);
    void addSwitches(const EntryView& entry);
    void addTags(const EntryView& entry);
    void addFolders(std::string_view path);
    Facet facetOf(std::size_t values, const Pairs& pairs) const;

    Holdings::Inside& m_inside;
    std::uint32_t m_entry = 0;
    Pairs m_photos, m_doublePages, m_photoWays, m_switches;
    Numbering<Size> m_pages, m_prints;
    Numbering<std::string> m_tags, m_folders;
    std::unordered_map<std::string, std::uint32_t> m_tagNumbers, m_folderNumbers;
    // The folders of the entry before: neighbours often share them.
    std::string m_lastFolder;
    std::vector<std::uint32_t> m_lastFolders;
};

}  // namespace matwright
