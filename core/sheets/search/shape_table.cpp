// SPDX-License-Identifier: MIT
#include "core/sheets/search/shape_table.h"

#include <algorithm>
#include <bit>

namespace matwright::sheets {

bool ShapeTable::isTooLarge(std::span<const int> counts, std::size_t most) {
    std::size_t states = 1;
    for (const int count : counts) {
        states *= static_cast<std::size_t>(count) + 1;
        if (states > most) {
            return true;
        }
    }
    return false;
}

ShapeTable::ShapeTable(const Reduced& reduced, std::span<const int> counts, Limits limits)
    : m_reduced(reduced), m_limits(limits), m_strideOfKind(counts.size(), 0) {
    std::size_t states = 1;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] > 0) {
            m_digits.push_back({static_cast<int>(i), counts[i], states});
            m_strideOfKind[i] = states;
            states *= static_cast<std::size_t>(counts[i]) + 1;
        }
    }
    m_areas.assign(states, 0);
    m_now.assign(m_digits.size(), 0);
    addTables(reduced.threeStages);
    m_ranges.assign(states * m_tables.size(), {});
}

void ShapeTable::addTables(bool threeStages) {
    if (!threeStages) {
        m_tables.push_back({true, true, -1, true});
        return;
    }
    for (const bool rowsFirst : {true, false}) {
        const int base = static_cast<int>(m_tables.size());
        m_tables.push_back({rowsFirst, !rowsFirst, -1, false});
        m_tables.push_back({!rowsFirst, rowsFirst, base, false});
        m_tables.push_back({rowsFirst, !rowsFirst, base + 1, true});
    }
}

bool ShapeTable::fill(Work& work, std::uint64_t steps) {
    const std::uint64_t start = work.spent();
    while (m_next < m_areas.size() && work.spent() - start < steps) {
        const std::size_t state = m_next++;
        // The next number in the mixed base.
        std::size_t digit = 0;
        while (m_now[digit] == m_digits[digit].count) {
            m_now[digit++] = 0;
        }
        ++m_now[digit];
        const Kind& kind = m_reduced.kinds[static_cast<std::size_t>(m_digits[digit].kind)];
        m_areas[state] = m_areas[state - m_digits[digit].stride] + kind.area();
        if (m_areas[state] <= m_limits.maxArea && !isForbidden()) {
            fillState(state, work);
        }
        if (work.over()) {
            // This state may be unfinished, and so the table is for good.
            return false;
        }
    }
    return m_next == m_areas.size();
}

bool ShapeTable::isForbidden() const {
    if (!m_limits.weights) {
        return false;
    }
    std::uint64_t forbidden = 0;  // stocks as bits; those beyond 64 are never forbidden
    const std::size_t stocks = m_reduced.stocks.size();
    for (const Weights& weights : *m_limits.weights) {
        std::int64_t total = 0;
        for (std::size_t d = 0; d < m_digits.size(); ++d) {
            total += m_now[d] * weights.ofKind[static_cast<std::size_t>(m_digits[d].kind)];
        }
        for (std::size_t s = 0; s < std::min<std::size_t>(stocks, 64); ++s) {
            forbidden |= std::uint64_t{total > weights.capacity[s]} << s;
        }
    }
    return stocks <= 64 && static_cast<std::size_t>(std::popcount(forbidden)) == stocks;
}

void ShapeTable::fillState(std::size_t state, Work& work) {
    m_area = m_areas[state];
    m_subs.clear();
    // Every part of the state up to the half, as numbers: one more digit at a time.
    m_subs.push_back(0);
    for (std::size_t d = 0; d < m_digits.size(); ++d) {
        const std::size_t before = m_subs.size();
        for (int n = 1; n <= m_now[d]; ++n) {
            for (std::size_t k = 0; k < before; ++k) {
                m_subs.push_back(m_subs[k] + static_cast<std::size_t>(n) * m_digits[d].stride);
            }
        }
    }
    for (std::size_t table = 0; table < m_tables.size(); ++table) {
        m_front.clear();
        addLeaves(state, table);
        addSplits(state, table, work);
        Range& own = range(state, table);
        own.begin = static_cast<std::uint32_t>(m_boxes.size());
        m_boxes.insert(m_boxes.end(), m_front.begin(), m_front.end());
        own.end = static_cast<std::uint32_t>(m_boxes.size());
        if (wholeFound(state, table)) {
            return;
        }
    }
    work.spend(m_subs.size() / 2);
}

void ShapeTable::addLeaves(std::size_t state, std::size_t table) {
    if (const int inherits = m_tables[table].inherits; inherits >= 0) {
        const Range& below = range(state, static_cast<std::size_t>(inherits));
        m_front.assign(m_boxes.begin() + below.begin, m_boxes.begin() + below.end);
        return;
    }
    for (const Digit& digit : m_digits) {
        if (digit.stride == state) {
            const Kind& kind = m_reduced.kinds[static_cast<std::size_t>(digit.kind)];
            offer({kind.w, kind.h, digit.kind, -1, Group::Form::Piece});
            if (kind.turn) {
                offer({kind.h, kind.w, digit.kind, -2, Group::Form::Piece});
            }
        }
    }
}

void ShapeTable::addSplits(std::size_t state, std::size_t table, Work& work) {
    for (const std::size_t sub : m_subs) {
        if (sub == 0 || sub > state - sub) {
            continue;
        }
        const Range a = range(sub, table);
        const Range b = range(state - sub, table);
        if (a.begin == a.end || b.begin == b.end) {
            continue;
        }
        work.spend(1 + (a.end - a.begin + b.end - b.begin) / 4);
        if (m_tables[table].rows) {
            joinRows(a, b);
        }
        if (m_tables[table].stacks) {
            joinStacks(a, b);
        }
        if (work.over() || (m_limits.wholeOnly && state == whole() && !m_front.empty())) {
            return;
        }
    }
}

void ShapeTable::joinRows(Range a, Range b) {
    while (a.begin < a.end && b.begin < b.end) {
        const Box& left = m_boxes[a.begin];
        const Box& right = m_boxes[b.begin];
        if (left.w + right.w > m_limits.maxW) {
            return;
        }
        offer({left.w + right.w, std::max(left.h, right.h), static_cast<std::int32_t>(a.begin),
               static_cast<std::int32_t>(b.begin), Group::Form::Row});
        // Only a lower taller side can make the row lower.
        const bool leftTaller = left.h >= right.h;
        const bool rightTaller = right.h >= left.h;
        a.begin += leftTaller;
        b.begin += rightTaller;
    }
}

void ShapeTable::joinStacks(Range a, Range b) {
    while (a.begin < a.end && b.begin < b.end) {
        const Box& upper = m_boxes[a.end - 1];
        const Box& lower = m_boxes[b.end - 1];
        if (upper.h + lower.h > m_limits.maxH) {
            return;
        }
        offer({std::max(upper.w, lower.w), upper.h + lower.h, static_cast<std::int32_t>(a.end - 1),
               static_cast<std::int32_t>(b.end - 1), Group::Form::Stack});
        const bool upperWider = upper.w >= lower.w;
        const bool lowerWider = lower.w >= upper.w;
        a.end -= upperWider;
        b.end -= lowerWider;
    }
}

void ShapeTable::offer(Box box) {
    if (box.w > m_limits.maxW || box.h > m_limits.maxH ||
        (m_limits.maxWaste >= 0 && std::int64_t{box.w} * box.h - m_area > m_limits.maxWaste)) {
        return;
    }
    auto at = std::ranges::lower_bound(m_front, box.w, {}, &Box::w);
    if ((at != m_front.begin() && std::prev(at)->h <= box.h) ||
        (at != m_front.end() && at->w == box.w && at->h <= box.h)) {
        return;
    }
    auto last = at;
    while (last != m_front.end() && last->h >= box.h) {
        ++last;
    }
    if (last == at) {
        m_front.insert(at, box);
    } else {
        *at = box;
        m_front.erase(at + 1, last);
    }
}

bool ShapeTable::wholeFound(std::size_t state, std::size_t table) const {
    return m_limits.wholeOnly && state == whole() && m_tables[table].root && !m_front.empty();
}

std::vector<int> ShapeTable::countsOf(std::size_t state) const {
    std::vector<int> counts(m_strideOfKind.size(), 0);
    for (const Digit& digit : m_digits) {
        counts[static_cast<std::size_t>(digit.kind)] =
            static_cast<int>(state / digit.stride % (static_cast<std::size_t>(digit.count) + 1));
    }
    return counts;
}

bool ShapeTable::fits(std::size_t state, std::int32_t w, std::int32_t h) const {
    for (std::size_t table = 0; table < m_tables.size(); ++table) {
        if (!m_tables[table].root) {
            continue;
        }
        const Range own = range(state, table);
        for (std::uint32_t i = own.begin; i < own.end; ++i) {
            if (m_boxes[i].w <= w && m_boxes[i].h <= h) {
                return true;
            }
        }
    }
    return false;
}

bool ShapeTable::hasShape(std::size_t state) const {
    return fits(state, m_limits.maxW, m_limits.maxH);
}

std::vector<Layout> ShapeTable::layoutsOf(std::size_t state, std::int32_t w, std::int32_t h) const {
    std::vector<Layout> layouts;
    for (std::size_t table = 0; table < m_tables.size(); ++table) {
        const Range own = range(state, table);
        for (std::uint32_t i = own.begin; m_tables[table].root && i < own.end; ++i) {
            if (m_boxes[i].w <= w && m_boxes[i].h <= h) {
                layOut(layouts.emplace_back(), i);
            }
        }
    }
    return layouts;
}

std::int32_t ShapeTable::layOut(Layout& layout, std::size_t index) const {
    const Box& box = m_boxes[index];
    if (box.form == Group::Form::Piece) {
        return addPiece(layout, m_reduced.kinds[static_cast<std::size_t>(box.first)], box.first,
                        box.second == -2);
    }
    const std::int32_t first = layOut(layout, static_cast<std::size_t>(box.first));
    const std::int32_t second = layOut(layout, static_cast<std::size_t>(box.second));
    return addJoint(layout, box.form, first, second);
}

}  // namespace matwright::sheets
