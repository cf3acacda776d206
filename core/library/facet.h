// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <utility>
#include <vector>

#include "core/library/bits.h"

namespace matwright {

// One property of entries (its tags, its page size, …): which entries have which of its values. An
// entry may have any number of them.
class Facet {
  public:
    struct Has {
        std::uint32_t entry;
        std::uint32_t value;
    };

    Facet() = default;
    // `pairs` by entry; no pair twice; entries below `entries`, values below `values`.
    Facet(std::size_t entries, std::size_t values, std::span<const Has> pairs);

    std::size_t values() const { return m_totals.size(); }
    // The entries that have the value, as a set of its own.
    Bits having(std::size_t value) const;
    // For every value, how many of `base` have it.
    std::vector<std::uint32_t> countsIn(const Bits& base) const;
    // For every value, how many entries have it.
    const std::vector<std::uint32_t>& totals() const { return m_totals; }

    // Hands each member to `visit`, to be written or read.
    template <typename Self, typename Visit>
    static void visitParts(Self& self, Visit& visit) {
        visit(self.m_entries);
        visit(self.m_totals);
        visit(self.m_valueStarts);
        visit(self.m_values);
        visit(self.m_dense);
        visit(self.m_sparseStarts);
        visit(self.m_sparse);
        visit(self.m_denseCount);
    }

  private:
    std::vector<std::uint32_t> countsByEntry(const Bits& base) const;
    std::vector<std::uint32_t> countsByValue(const Bits& base) const;

    std::size_t m_entries = 0;
    std::vector<std::uint32_t> m_totals;
    // Both ways round: the values of entry e are m_values[m_valueStarts[e] .. m_valueStarts[e +
    // 1]).
    std::vector<std::uint32_t> m_valueStarts;
    std::vector<std::uint32_t> m_values;
    // Of values that many entries have, a set of bits; of the others a list of entries. The one or
    // the other is empty.
    std::vector<Bits> m_dense;
    std::vector<std::uint32_t> m_sparseStarts;
    std::vector<std::uint32_t> m_sparse;
    std::size_t m_denseCount = 0;
};

}  // namespace matwright
