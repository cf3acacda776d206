// SPDX-License-Identifier: MIT
#include "core/sheets/search/sheet_packer.h"

#include <algorithm>
#include <array>
#include <limits>

namespace matwright::sheets {

namespace {

constexpr std::size_t alwaysNo = std::numeric_limits<std::size_t>::max();
constexpr std::size_t mostRemembered = 1'000'000;

bool shareSheet(const Kind& a, const Kind& b, const Stock& stock) {
    for (const bool aTurned : {false, true}) {
        for (const bool bTurned : {false, true}) {
            if ((aTurned && !a.turn) || (bTurned && !b.turn)) {
                continue;
            }
            const std::int32_t aw = aTurned ? a.h : a.w;
            const std::int32_t ah = aTurned ? a.w : a.h;
            const std::int32_t bw = bTurned ? b.h : b.w;
            const std::int32_t bh = bTurned ? b.w : b.h;
            if ((aw + bw <= stock.w && std::max(ah, bh) <= stock.h) ||
                (ah + bh <= stock.h && std::max(aw, bw) <= stock.w)) {
                return true;
            }
        }
    }
    return false;
}

}  // namespace

SheetPacker::SheetPacker(const Reduced& reduced, const std::vector<Weights>& weights)
    : m_reduced(reduced), m_weights(weights), m_tree(reduced), m_few(reduced) {
    const std::size_t n = reduced.kinds.size();
    for (const Stock& stock : reduced.stocks) {
        auto& apart = m_apart.emplace_back(n * n, 0);
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t k = 0; k < n; ++k) {
                apart[i * n + k] =
                    static_cast<char>(!shareSheet(reduced.kinds[i], reduced.kinds[k], stock));
            }
        }
    }
}

bool SheetPacker::packs(std::span<const int> kinds, int stock, Work& work) {
    if (kinds.empty()) {
        return true;
    }
    const std::uint64_t key = keyOf(kinds, stock);
    if (m_yes.contains(key)) {
        return true;
    }
    if (const auto no = m_no.find(key); no != m_no.end() && no->second >= m_queue) {
        return false;
    }
    if (isImpossible(kinds, stock)) {
        return false;
    }
    if (m_yes.size() + m_no.size() > mostRemembered) {
        m_no.clear();
    }
    return findLayout(kinds, stock, work, key);
}

bool SheetPacker::isImpossible(std::span<const int> kinds, int stock) const {
    const auto s = static_cast<std::size_t>(stock);
    const std::size_t n = m_reduced.kinds.size();
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        const auto kind = static_cast<std::size_t>(kinds[i]);
        if (!m_reduced.stocks[s].holds(m_reduced.kinds[kind])) {
            return true;
        }
        for (std::size_t k = i + 1; k < kinds.size(); ++k) {
            if (m_apart[s][kind * n + static_cast<std::size_t>(kinds[k])]) {
                return true;
            }
        }
    }
    return std::ranges::any_of(m_weights, [&](const Weights& weights) {
        std::int64_t sum = 0;
        for (const int kind : kinds) {
            sum += weights.ofKind[static_cast<std::size_t>(kind)];
        }
        return sum > weights.capacity[s];
    });
}

bool SheetPacker::findLayout(std::span<const int> kinds, int stock, Work& work, std::uint64_t key) {
    // A greedy look first: it is often enough, and quick.
    const bool exact = static_cast<int>(kinds.size()) <= exactPieces;
    if (kinds.size() > 6 && findByTree(kinds, stock, work, key)) {
        return true;
    }
    if (exact) {
        const bool yes = packsExactly(kinds, stock, work);
        if (yes) {
            m_yes[key] = exactYes;
        } else if (!work.over()) {
            m_no[key] = alwaysNo;
        }
        return yes;
    }
    if (!work.over()) {
        m_no[key] = m_queue;
    }
    return false;
}

// What is not covered in the end is not covered in any part of it.
ShapeTable::Limits SheetPacker::limitsFor(std::span<const int> kinds, const Stock& stock) const {
    std::int64_t area = 0;
    for (const int kind : kinds) {
        area += m_reduced.kinds[static_cast<std::size_t>(kind)].area();
    }
    return {stock.w, stock.h, area, stock.area() - area, true, nullptr};
}

bool SheetPacker::packsExactly(std::span<const int> kinds, int stock, Work& work) {
    const Stock& s = m_reduced.stocks[static_cast<std::size_t>(stock)];
    const std::vector<int> counts = countsOf(kinds);
    // Where many are equal there are fewer selections to count than pieces to tell apart.
    if (!ShapeTable::isTooLarge(counts, std::uint64_t{1} << (kinds.size() - 1))) {
        ShapeTable table(m_reduced, counts, limitsFor(kinds, s));
        return table.fill(work) && table.hasShape(table.whole());
    }
    return m_few.fit(kinds, s, work);
}

bool SheetPacker::findByTree(std::span<const int> kinds, int stock, Work& work, std::uint64_t key) {
    const std::vector<int> counts = countsOf(kinds);
    const std::array<int, 1> sheets{stock};
    const bool exact = static_cast<int>(kinds.size()) <= exactPieces;
    for (const bool level : {false, true}) {
        for (const Guide guide : {Guide::LeastWaste, Guide::LeastWasteLarge}) {
            const TreeSearch::Task task{counts, sheets, guide, level, exact ? 1 : m_queue, 4000};
            TreeSearchResult result = m_tree.run(task, work);
            if (result.complete) {
                m_yes[key] = static_cast<std::int32_t>(m_layouts.size());
                m_layouts.push_back(std::move(result.layouts.front()));
                return true;
            }
        }
    }
    return false;
}

Layout SheetPacker::layout(std::span<const int> kinds, int stock) {
    const std::uint64_t key = keyOf(kinds, stock);
    const auto yes = m_yes.find(key);
    if (yes != m_yes.end() && yes->second >= 0) {
        return m_layouts[static_cast<std::size_t>(yes->second)];
    }
    const Stock& s = m_reduced.stocks[static_cast<std::size_t>(stock)];
    ShapeTable table(m_reduced, countsOf(kinds), limitsFor(kinds, s));
    Work free(std::numeric_limits<std::uint64_t>::max(), Work::Clock::time_point::max());
    table.fill(free);
    auto layouts = table.layoutsOf(table.whole(), s.w, s.h);
    return layouts.empty() ? Layout{} : std::move(layouts.front());
}

void SheetPacker::remember(const Layout& layout, int stock) {
    std::vector<int> kinds;
    for (const Group& group : layout) {
        if (group.form == Group::Form::Piece) {
            kinds.push_back(group.kind);
        }
    }
    m_yes[keyOf(kinds, stock)] = static_cast<std::int32_t>(m_layouts.size());
    m_layouts.push_back(layout);
}

std::uint64_t SheetPacker::keyOf(std::span<const int> kinds, int stock) const {
    std::uint64_t key = scattered(1'000'000 + static_cast<std::uint64_t>(stock));
    for (const int kind : kinds) {
        key += scattered(static_cast<std::uint64_t>(kind));
    }
    return key;
}

std::vector<int> SheetPacker::countsOf(std::span<const int> kinds) const {
    std::vector<int> counts(m_reduced.kinds.size(), 0);
    for (const int kind : kinds) {
        ++counts[static_cast<std::size_t>(kind)];
    }
    return counts;
}

}  // namespace matwright::sheets
