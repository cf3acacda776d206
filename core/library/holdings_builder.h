// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/library/holdings.h"
#include "core/library/packed_entry.h"

namespace matwright {

// Collects entries in any order and makes Holdings of them.
class HoldingsBuilder {
  public:
    void reserve(std::size_t entries, std::size_t bytes);
    // Paths must differ. An entry whose bytes are not what packedFacts() and packedLabels() wrote
    // is left out; then it returns false.
    bool add(const PackedEntry& entry, int family);
    std::size_t size() const { return m_items.size(); }

    // Equal for the same entries added in the same order.
    ContentKey fingerprint() const;

    std::shared_ptr<const Holdings> build();

  private:
    // The first eight bytes of the key decide most comparisons.
    struct Item {
        std::uint64_t keyStart8;
        std::uint32_t key, keyEnd;
        std::uint32_t packed, packedEnd;
        std::int32_t family;
    };
    bool isBefore(const Item& a, const Item& b) const;

    std::string m_packed;
    std::string m_keys;  // the order of the name, a zero byte, and the path
    std::vector<Item> m_items;
    EntryView m_view;
};

}  // namespace matwright
