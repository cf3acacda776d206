// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <queue>
#include <unordered_map>
#include <vector>

#include "core/sheets/search/layout.h"
#include "core/sheets/search/value_bounds.h"

namespace matwright::sheets {

// The most valuable cut of a sheet with limited copies, exact. Patterns are built bottom-up from
// two smaller ones side by side or one above the other (Wang, Oper. Res. 31, 1983), the most
// promising first, each new one joined with all that came before (Viswanathan & Bagchi, Oper. Res.
// 41, 1993); a pattern whose value and bound for its surroundings do not beat the best is dropped,
// and so is one no smaller than another with the same pieces. From memory.
class LimitedValue {
  public:
    // Copies are kept as bytes below 128, so that a whole word is compared at once; what a kind has
    // beyond that is not used.
    static constexpr int mostCopies = 127;

    LimitedValue(const Reduced& reduced, const Stock& stock, std::vector<std::int64_t> values,
                 const ValueBounds& bounds);

    // False where the work ended first.
    bool run(Work& work);
    // A value known to be possible: patterns that cannot beat it are dropped.
    void startFrom(std::int64_t value, Layout layout);

    std::int64_t best() const { return m_best; }
    // No cut is worth more; best() after run() said true.
    std::int64_t bound() const;
    Layout layout() const;

  private:
    struct Pattern {
        std::int32_t w = 0;
        std::int32_t h = 0;
        std::int64_t value = 0;
        std::int64_t promise = 0;
        std::int32_t first = -1;
        std::int32_t second = -1;
        std::int32_t kind = -1;
        Group::Form form = Group::Form::Piece;
        bool turned = false;
        std::uint64_t key = 0;
    };

    void addPieces();
    void join(std::int32_t a, std::int32_t b);
    void offer(Pattern pattern, const std::uint64_t* a, const std::uint64_t* b);
    bool withinCopies(const std::uint64_t* a, const std::uint64_t* b) const;
    bool isDominated(const Pattern& pattern);
    std::int32_t layOut(Layout& layout, std::int32_t index) const;
    const std::uint64_t* countsOf(std::int32_t index) const {
        return &m_counts[static_cast<std::size_t>(index) * m_words];
    }

    const Reduced& m_reduced;
    Stock m_stock;
    std::vector<std::int64_t> m_values;
    const ValueBounds& m_bounds;
    std::size_t m_words;
    std::vector<std::uint64_t> m_most;  // 127 less the copies, by kind, as bytes
    std::vector<std::uint64_t> m_none;
    std::vector<Pattern> m_patterns;
    std::vector<std::uint64_t> m_counts;  // m_words a pattern
    std::priority_queue<std::pair<std::int64_t, std::int32_t>> m_open;
    std::vector<std::int32_t> m_closed;
    std::unordered_map<std::uint64_t, std::vector<std::pair<std::int32_t, std::int32_t>>> m_sizes;
    std::int64_t m_best = 0;
    std::int32_t m_bestPattern = -1;
    Layout m_startLayout;
};

}  // namespace matwright::sheets
