// SPDX-License-Identifier: MIT
#include "core/sheets/search/limited_value.h"

#include <algorithm>

#include "core/sheets/search/tree_search.h"

namespace matwright::sheets {

namespace {

constexpr std::uint64_t highBits = 0x8080808080808080U;

}  // namespace

LimitedValue::LimitedValue(const Reduced& reduced, const Stock& stock,
                           std::vector<std::int64_t> values, const ValueBounds& bounds)
    : m_reduced(reduced),
      m_stock(stock),
      m_values(std::move(values)),
      m_bounds(bounds),
      m_words((reduced.kinds.size() + 7) / 8),
      m_most(m_words, 0),
      m_none(m_words, 0) {
    for (std::size_t k = 0; k < reduced.kinds.size(); ++k) {
        const int copies = std::min(reduced.kinds[k].count, mostCopies);
        m_most[k / 8] |= static_cast<std::uint64_t>(mostCopies - copies) << (k % 8 * 8);
    }
}

void LimitedValue::startFrom(std::int64_t value, Layout layout) {
    if (value > m_best) {
        m_best = value;
        m_startLayout = std::move(layout);
    }
}

bool LimitedValue::run(Work& work) {
    addPieces();
    while (!m_open.empty() && m_open.top().first > m_best) {
        const std::int32_t next = m_open.top().second;
        m_open.pop();
        m_closed.push_back(next);
        for (const std::int32_t closed : m_closed) {
            join(next, closed);
        }
        if (!work.spend(1 + m_closed.size() / 8)) {
            return m_open.empty() || m_open.top().first <= m_best;
        }
    }
    return true;
}

std::int64_t LimitedValue::bound() const {
    return m_open.empty() ? m_best : std::max(m_best, m_open.top().first);
}

void LimitedValue::addPieces() {
    for (std::size_t k = 0; k < m_reduced.kinds.size(); ++k) {
        const Kind& kind = m_reduced.kinds[k];
        if (m_values[k] <= 0 || kind.count <= 0) {
            continue;
        }
        std::vector<std::uint64_t> one(m_words, 0);
        one[k / 8] = std::uint64_t{1} << (k % 8 * 8);
        for (const bool turned : {false, true}) {
            Pattern piece;
            piece.w = turned ? kind.h : kind.w;
            piece.h = turned ? kind.w : kind.h;
            piece.value = m_values[k];
            piece.kind = static_cast<std::int32_t>(k);
            piece.turned = turned;
            piece.key = scattered(k);
            if (!turned || kind.turn) {
                offer(piece, one.data(), m_none.data());
            }
        }
    }
}

bool LimitedValue::withinCopies(const std::uint64_t* a, const std::uint64_t* b) const {
    // A byte beyond its copies carries into its highest bit; sums stay below 256 as a and b are
    // each within the copies.
    std::uint64_t over = 0;
    for (std::size_t i = 0; i < m_words; ++i) {
        over |= (a[i] + b[i] + m_most[i]) & highBits;
    }
    return over == 0;
}

void LimitedValue::join(std::int32_t aIndex, std::int32_t bIndex) {
    const Pattern& a = m_patterns[static_cast<std::size_t>(aIndex)];
    const Pattern& b = m_patterns[static_cast<std::size_t>(bIndex)];
    const bool row = a.w + b.w <= m_stock.w;
    const bool stack = a.h + b.h <= m_stock.h;
    if ((!row && !stack) || !withinCopies(countsOf(aIndex), countsOf(bIndex))) {
        return;
    }
    Pattern joined;
    joined.value = a.value + b.value;
    joined.first = aIndex;
    joined.second = bIndex;
    joined.key = a.key + b.key;
    // Copies, because offer() may move the lists.
    const std::int32_t rowW = a.w + b.w;
    const std::int32_t rowH = std::max(a.h, b.h);
    const std::int32_t stackW = std::max(a.w, b.w);
    const std::int32_t stackH = a.h + b.h;
    if (row) {
        joined.form = Group::Form::Row;
        joined.w = rowW;
        joined.h = rowH;
        offer(joined, countsOf(aIndex), countsOf(bIndex));
    }
    if (stack) {
        joined.form = Group::Form::Stack;
        joined.w = stackW;
        joined.h = stackH;
        offer(joined, countsOf(aIndex), countsOf(bIndex));
    }
}

void LimitedValue::offer(Pattern pattern, const std::uint64_t* a, const std::uint64_t* b) {
    if (pattern.w > m_stock.w || pattern.h > m_stock.h) {
        return;
    }
    pattern.promise = pattern.value + m_bounds.around(pattern.w, pattern.h);
    if (pattern.promise <= m_best || isDominated(pattern)) {
        return;
    }
    const auto index = static_cast<std::int32_t>(m_patterns.size());
    if (pattern.value > m_best) {
        m_best = pattern.value;
        m_bestPattern = index;
    }
    std::vector<std::uint64_t> sum(m_words);
    for (std::size_t i = 0; i < m_words; ++i) {
        sum[i] = a[i] + b[i];
    }
    m_patterns.push_back(pattern);
    m_counts.insert(m_counts.end(), sum.begin(), sum.end());
    m_open.emplace(pattern.promise, index);
}

bool LimitedValue::isDominated(const Pattern& pattern) {
    auto& sizes = m_sizes[pattern.key];
    for (const auto& [w, h] : sizes) {
        if (w <= pattern.w && h <= pattern.h) {
            return true;
        }
    }
    sizes.emplace_back(pattern.w, pattern.h);
    return false;
}

Layout LimitedValue::layout() const {
    if (m_bestPattern < 0) {
        return m_startLayout;
    }
    Layout layout;
    layOut(layout, m_bestPattern);
    return layout;
}

std::int32_t LimitedValue::layOut(Layout& layout, std::int32_t index) const {
    const Pattern& pattern = m_patterns[static_cast<std::size_t>(index)];
    if (pattern.form == Group::Form::Piece) {
        return addPiece(layout, m_reduced.kinds[static_cast<std::size_t>(pattern.kind)],
                        pattern.kind, pattern.turned);
    }
    const std::int32_t first = layOut(layout, pattern.first);
    const std::int32_t second = layOut(layout, pattern.second);
    return addJoint(layout, pattern.form, first, second);
}

}  // namespace matwright::sheets
