// SPDX-License-Identifier: MIT
#include "core/sheets/search/few_pieces.h"

#include <algorithm>
#include <bit>

namespace matwright::sheets {

FewPieces::FewPieces(const Reduced& reduced) : m_reduced(reduced) {
    if (!reduced.threeStages) {
        m_tables.push_back({true, true, -1, true, {}});
        return;
    }
    for (const bool rowsFirst : {true, false}) {
        const int base = static_cast<int>(m_tables.size());
        m_tables.push_back({rowsFirst, !rowsFirst, -1, false, {}});
        m_tables.push_back({!rowsFirst, rowsFirst, base, false, {}});
        m_tables.push_back({rowsFirst, !rowsFirst, base + 1, true, {}});
    }
}

void FewPieces::start(std::span<const int> kinds, const Stock& stock) {
    m_kinds = kinds;
    m_w = stock.w;
    m_h = stock.h;
    m_boxes.clear();
    m_areas[0] = 0;
    for (std::size_t set = 1; set < std::size_t{1} << kinds.size(); ++set) {
        const auto lowest = static_cast<std::size_t>(std::countr_zero(set));
        m_areas[set] = m_areas[set & (set - 1)] +
                       m_reduced.kinds[static_cast<std::size_t>(kinds[lowest])].area();
    }
}

bool FewPieces::fit(std::span<const int> kinds, const Stock& stock, Work& work) {
    start(kinds, stock);
    const std::size_t whole = (std::size_t{1} << kinds.size()) - 1;
    // What is not covered in the end is not covered in any part of it.
    const std::int64_t spare = stock.area() - m_areas[whole];
    if (spare < 0) {
        return false;
    }
    for (std::size_t set = 1; set <= whole; ++set) {
        m_mostBox = m_areas[set] + spare;
        if (set == whole && kinds.size() > 1) {
            return std::ranges::any_of(
                m_tables, [&](const Table& t) { return t.root && fitsWhole(t, whole); });
        }
        std::uint64_t steps = 1;
        for (Table& table : m_tables) {
            steps += fill(table, set);
        }
        if (!work.spend(steps)) {
            return false;
        }
    }
    return !m_boxes.empty();
}

// The boxes of one set, from those of its parts. Gives the steps it took.
std::uint64_t FewPieces::fill(Table& table, std::size_t set) {
    m_front.clear();
    if (table.inherits >= 0) {
        const Range below = m_tables[static_cast<std::size_t>(table.inherits)].ranges[set];
        m_front.assign(m_boxes.begin() + below.begin, m_boxes.begin() + below.end);
    } else if (std::has_single_bit(set)) {
        addLeaf(static_cast<std::size_t>(std::countr_zero(set)));
    }
    std::uint64_t steps = 0;
    const std::size_t others = set & (set - 1);
    for (std::size_t second = others; second > 0; second = (second - 1) & others) {
        const Range a = table.ranges[set ^ second];
        const Range b = table.ranges[second];
        if (a.begin == a.end || b.begin == b.end) {
            continue;
        }
        steps += 1 + (a.end - a.begin + b.end - b.begin) / 4;
        if (table.rows) {
            joinRows(a, b);
        }
        if (table.stacks) {
            joinStacks(a, b);
        }
    }
    Range& own = table.ranges[set];
    own.begin = static_cast<std::uint32_t>(m_boxes.size());
    m_boxes.insert(m_boxes.end(), m_front.begin(), m_front.end());
    own.end = static_cast<std::uint32_t>(m_boxes.size());
    return steps;
}

void FewPieces::addLeaf(std::size_t piece) {
    const Kind& kind = m_reduced.kinds[static_cast<std::size_t>(m_kinds[piece])];
    offer({kind.w, kind.h});
    if (kind.turn) {
        offer({kind.h, kind.w});
    }
}

// In one pass: only a lower taller side can make the row lower.
void FewPieces::joinRows(Range a, Range b) {
    while (a.begin < a.end && b.begin < b.end) {
        const Box left = m_boxes[a.begin];
        const Box right = m_boxes[b.begin];
        if (left.w + right.w > m_w) {
            return;
        }
        offer({left.w + right.w, std::max(left.h, right.h)});
        a.begin += left.h >= right.h;
        b.begin += right.h >= left.h;
    }
}

void FewPieces::joinStacks(Range a, Range b) {
    while (a.begin < a.end && b.begin < b.end) {
        const Box upper = m_boxes[a.end - 1];
        const Box lower = m_boxes[b.end - 1];
        if (upper.h + lower.h > m_h) {
            return;
        }
        offer({std::max(upper.w, lower.w), upper.h + lower.h});
        a.end -= upper.w >= lower.w;
        b.end -= lower.w >= upper.w;
    }
}

void FewPieces::offer(Box box) {
    if (box.w > m_w || box.h > m_h || std::int64_t{box.w} * box.h > m_mostBox) {
        return;
    }
    auto at = m_front.begin();
    while (at != m_front.end() && at->w < box.w) {
        ++at;
    }
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

// All boxes fit, so it is enough that the least sides of two parts fit beside each other.
bool FewPieces::fitsWhole(const Table& table, std::size_t whole) const {
    if (table.inherits >= 0) {
        const Table& below = m_tables[static_cast<std::size_t>(table.inherits)];
        if (fitsWhole(below, whole)) {
            return true;
        }
    }
    const std::size_t others = whole & (whole - 1);
    for (std::size_t second = others; second > 0; second = (second - 1) & others) {
        const Range a = table.ranges[whole ^ second];
        const Range b = table.ranges[second];
        if (a.begin == a.end || b.begin == b.end) {
            continue;
        }
        const bool beside = table.rows && m_boxes[a.begin].w + m_boxes[b.begin].w <= m_w;
        const bool above = table.stacks && m_boxes[a.end - 1].h + m_boxes[b.end - 1].h <= m_h;
        if (beside || above) {
            return true;
        }
    }
    return false;
}

}  // namespace matwright::sheets
