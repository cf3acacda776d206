// SPDX-License-Identifier: MIT
#include "core/sheets/search/shape_table.h"

#include <algorithm>
#include <numeric>

namespace matwright::sheets {

namespace {

std::uint64_t statesOf(std::span<const int> counts) {
    std::uint64_t states = 1;
    for (const int count : counts) {
        states *= static_cast<std::uint64_t>(count) + 1;
    }
    return states;
}

}  // namespace

bool ShapeTable::isTooLarge(std::span<const int> counts, std::uint64_t most) {
    std::uint64_t states = 1;
    for (const int count : counts) {
        states *= static_cast<std::uint64_t>(count) + 1;
        if (states > most) {
            return true;
        }
    }
    return false;
}

double ShapeTable::splits(const Reduced& reduced, std::span<const int> counts,
                          std::int64_t maxArea) {
    constexpr std::size_t areaSteps = 500;
    std::vector<double> ways(areaSteps + 1, 0);
    ways[0] = 1;
    for (std::size_t k = 0; k < counts.size(); ++k) {
        const double share =
            static_cast<double>(reduced.kinds[k].area()) / static_cast<double>(maxArea);
        std::vector<double> more = ways;
        for (int n = 1; n <= counts[k] && n * share <= 1; ++n) {
            const auto by = static_cast<std::size_t>(n * share * areaSteps);
            for (std::size_t at = by; at <= areaSteps; ++at) {
                more[at] += (n + 1) * ways[at - by];
            }
        }
        ways = std::move(more);
    }
    return std::accumulate(ways.begin(), ways.end(), 0.0);
}

ShapeTable::ShapeTable(const Reduced& reduced, std::span<const int> counts, Limits limits)
    : m_reduced(reduced),
      m_limits(limits),
      m_strideOfKind(counts.size(), 0),
      m_slots(statesOf(counts)),
      m_stateOf(1, 0) {
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] > 0) {
            m_digits.push_back({static_cast<int>(i), counts[i], m_states});
            m_strideOfKind[i] = m_states;
            m_states *= static_cast<std::size_t>(counts[i]) + 1;
        }
    }
    m_now.assign(m_digits.size(), 0);
    m_weights.assign(m_limits.prospects ? m_limits.prospects->measures() : 0, 0);
    addTables(reduced.threeStages);
    m_ranges.assign(m_tables.size(), {});
    m_parts.resize(m_digits.size() + 1);
    m_parts[0] = {m_digits.size(), {0}, {0}};
    m_depth = 1;
    m_complete = m_digits.empty();
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

// The next number in the mixed base, from m_digit up. False after the last.
bool ShapeTable::advance() {
    for (std::size_t d = 0; d < m_digit; ++d) {
        m_state -= static_cast<std::size_t>(m_now[d]) * m_digits[d].stride;
        m_now[d] = 0;
    }
    for (; m_digit < m_digits.size(); ++m_digit) {
        const Digit& digit = m_digits[m_digit];
        if (m_now[m_digit] < digit.count) {
            ++m_now[m_digit];
            m_state += digit.stride;
            return true;
        }
        m_state -= static_cast<std::size_t>(m_now[m_digit]) * digit.stride;
        m_now[m_digit] = 0;
    }
    return false;
}

void ShapeTable::weigh() {
    m_area = 0;
    std::ranges::fill(m_weights, 0);
    for (std::size_t d = 0; d < m_digits.size(); ++d) {
        if (m_now[d] > 0) {
            const auto kind = static_cast<std::size_t>(m_digits[d].kind);
            m_area += m_now[d] * m_reduced.kinds[kind].area();
            for (std::size_t m = 0; m < m_weights.size(); ++m) {
                m_weights[m] += m_now[d] * m_limits.prospects->weightOf(m, kind);
            }
        }
    }
}

bool ShapeTable::fill(Work& work, std::uint64_t steps) {
    constexpr std::size_t mostBoxes = 6'000'000;
    const std::uint64_t start = work.spent();
    while (!m_complete && work.spent() - start < steps && m_boxes.size() < mostBoxes) {
        if (!advance()) {
            m_complete = true;
            break;
        }
        work.spend();
        weigh();
        // With more of the same, or of kinds before, it would be too much as well.
        const bool tooMuch = m_area > m_limits.maxArea ||
                             (m_limits.prospects && m_limits.prospects->isTooMuch(m_weights));
        if (!tooMuch) {
            fillState(work);
        }
        m_digit = tooMuch ? m_digit + 1 : 0;
        if (work.over()) {
            // This state may be unfinished, and so the table is for good.
            return false;
        }
    }
    return m_complete;
}

// Only parts with pieces of the lowest kind are new.
void ShapeTable::findParts() {
    while (m_depth > 1 && m_parts[m_depth - 1].digit <= m_digit) {
        --m_depth;
    }
    const Parts& before = m_parts[m_depth - 1];
    Parts& now = m_parts[m_depth++];
    now.digit = m_digit;
    const std::size_t old = before.states.size();
    const auto copies = static_cast<std::size_t>(m_now[m_digit]);
    now.states.resize(old * (copies + 1));
    now.slots.resize(now.states.size());
    std::ranges::copy(before.states, now.states.begin());
    std::ranges::copy(before.slots, now.slots.begin());
    for (std::size_t n = 1; n <= copies; ++n) {
        for (std::size_t k = 0; k < old; ++k) {
            const std::size_t part = before.states[k] + n * m_digits[m_digit].stride;
            now.states[n * old + k] = part;
            now.slots[n * old + k] = m_slots.find(part);
        }
    }
}

void ShapeTable::fillState(Work& work) {
    findParts();
    work.spend(m_parts[m_depth - 1].states.size() / 4);
    const std::size_t slot = m_stateOf.size();
    m_ranges.resize((slot + 1) * m_tables.size());
    const std::size_t boxes = m_boxes.size();
    for (std::size_t table = 0; table < m_tables.size(); ++table) {
        m_front.clear();
        addLeaves(slot, table);
        addSplits(table, work);
        Range& own = range(slot, table);
        own.begin = static_cast<std::uint32_t>(m_boxes.size());
        m_boxes.insert(m_boxes.end(), m_front.begin(), m_front.end());
        own.end = static_cast<std::uint32_t>(m_boxes.size());
        if (wholeFound(m_state, table)) {
            break;
        }
    }
    if (m_boxes.size() > boxes) {
        m_stateOf.push_back(m_state);
        m_slots.add(m_state, static_cast<std::uint32_t>(slot));
        m_parts[m_depth - 1].slots.back() = static_cast<std::uint32_t>(slot);
    } else {
        m_ranges.resize(slot * m_tables.size());
    }
}

void ShapeTable::addLeaves(std::size_t slot, std::size_t table) {
    if (const int inherits = m_tables[table].inherits; inherits >= 0) {
        const Range& below = range(slot, static_cast<std::size_t>(inherits));
        m_front.assign(m_boxes.begin() + below.begin, m_boxes.begin() + below.end);
        return;
    }
    for (const Digit& digit : m_digits) {
        if (digit.stride == m_state) {
            const Kind& kind = m_reduced.kinds[static_cast<std::size_t>(digit.kind)];
            offer({kind.w, kind.h, digit.kind, -1, Group::Form::Piece});
            if (kind.turn) {
                offer({kind.h, kind.w, digit.kind, -2, Group::Form::Piece});
            }
        }
    }
}

void ShapeTable::addSplits(std::size_t table, Work& work) {
    const std::vector<std::uint32_t>& slots = m_parts[m_depth - 1].slots;
    for (std::size_t i = 1; 2 * i < slots.size(); ++i) {
        const std::uint32_t first = slots[i];
        const std::uint32_t second = slots[slots.size() - 1 - i];
        if (first == 0 || second == 0) {
            continue;
        }
        const Range a = range(first, table);
        const Range b = range(second, table);
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
        if (work.over() || (m_limits.wholeOnly && m_state == whole() && !m_front.empty())) {
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
    if (m_limits.prospects && !m_limits.prospects->keeps(m_weights, box.w, box.h)) {
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

std::int64_t ShapeTable::areaOf(std::size_t state) const {
    std::int64_t area = 0;
    for (const Digit& digit : m_digits) {
        area += static_cast<std::int64_t>(state / digit.stride %
                                          (static_cast<std::size_t>(digit.count) + 1)) *
                m_reduced.kinds[static_cast<std::size_t>(digit.kind)].area();
    }
    return area;
}

bool ShapeTable::fits(std::size_t state, std::int32_t w, std::int32_t h) const {
    const std::size_t slot = m_slots.find(state);
    for (std::size_t table = 0; table < m_tables.size(); ++table) {
        if (!m_tables[table].root) {
            continue;
        }
        const Range own = range(slot, table);
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
    const std::size_t slot = m_slots.find(state);
    std::vector<Layout> layouts;
    for (std::size_t table = 0; table < m_tables.size(); ++table) {
        const Range own = range(slot, table);
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
