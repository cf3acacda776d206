// SPDX-License-Identifier: MIT
#include "core/library/facet.h"

#include <numeric>

namespace matwright {

namespace {

// A list of this many entries costs about as much as a set of bits, in memory and in time.
bool isDense(std::size_t total, std::size_t entries) {
    return total * 32 >= entries;
}

}  // namespace

Facet::Facet(std::size_t entries, std::size_t values, std::span<const Has> pairs)
    : m_entries(entries),
      m_totals(values),
      m_valueStarts(entries + 1),
      m_dense(values),
      m_sparseStarts(values + 1) {
    m_values.reserve(pairs.size());
    for (const Has& has : pairs) {
        ++m_totals[has.value];
        ++m_valueStarts[has.entry + 1];
        m_values.push_back(has.value);
    }
    std::partial_sum(m_valueStarts.begin(), m_valueStarts.end(), m_valueStarts.begin());
    for (std::size_t value = 0; value < values; ++value) {
        const bool dense = isDense(m_totals[value], entries);
        m_dense[value] = dense ? Bits(entries) : Bits();
        m_denseCount += dense ? 1 : 0;
        m_sparseStarts[value + 1] = m_sparseStarts[value] + (dense ? 0 : m_totals[value]);
    }
    m_sparse.resize(m_sparseStarts.back());
    std::vector<std::uint32_t> next(m_sparseStarts.begin(), m_sparseStarts.end() - 1);
    for (const Has& has : pairs) {
        if (m_dense[has.value].wordCount() != 0) {
            m_dense[has.value].set(has.entry);
        } else {
            m_sparse[next[has.value]++] = has.entry;
        }
    }
}

Bits Facet::having(std::size_t value) const {
    if (m_dense[value].wordCount() != 0) {
        return m_dense[value];
    }
    Bits bits(m_entries);
    for (std::uint32_t i = m_sparseStarts[value]; i < m_sparseStarts[value + 1]; ++i) {
        bits.set(m_sparse[i]);
    }
    return bits;
}

std::vector<std::uint32_t> Facet::countsIn(const Bits& base) const {
    // In units of about half a nanosecond.
    const std::size_t costByValue = m_denseCount * base.wordCount() + 2 * m_sparse.size();
    const std::size_t costByEntry =
        m_entries == 0 ? 0 : base.count() * (2 + 2 * m_values.size() / m_entries);
    return costByValue < costByEntry ? countsByValue(base) : countsByEntry(base);
}

std::vector<std::uint32_t> Facet::countsByEntry(const Bits& base) const {
    std::vector<std::uint32_t> counts(values());
    base.forEach([&](std::size_t entry) {
        for (std::uint32_t i = m_valueStarts[entry]; i < m_valueStarts[entry + 1]; ++i) {
            ++counts[m_values[i]];
        }
    });
    return counts;
}

std::vector<std::uint32_t> Facet::countsByValue(const Bits& base) const {
    std::vector<std::uint32_t> counts(values());
    for (std::size_t value = 0; value < counts.size(); ++value) {
        if (m_dense[value].wordCount() != 0) {
            counts[value] = static_cast<std::uint32_t>(countCommon(m_dense[value], base));
            continue;
        }
        for (std::uint32_t i = m_sparseStarts[value]; i < m_sparseStarts[value + 1]; ++i) {
            counts[value] += base.has(m_sparse[i]) ? 1 : 0;
        }
    }
    return counts;
}

}  // namespace matwright
