// SPDX-License-Identifier: MIT
#include "core/sheets/search/tree_search.h"

#include <algorithm>

namespace matwright::sheets {

TreeSearch::TreeSearch(const Reduced& reduced) : m_reduced(reduced) {
    for (std::size_t i = 0; i < reduced.kinds.size(); ++i) {
        m_codes.push_back(scattered(i));
    }
}

TreeSearch::Side TreeSearch::sideOf(int kind, bool turned) const {
    const Kind& k = m_reduced.kinds[static_cast<std::size_t>(kind)];
    return turned == m_task->stripsLevel ? Side{k.w, k.h} : Side{k.h, k.w};
}

TreeSearch::Side TreeSearch::sheetOf(int sheet) const {
    const int stock = m_task->sheets[static_cast<std::size_t>(sheet)];
    const Stock& s = m_reduced.stocks[static_cast<std::size_t>(stock)];
    return m_task->stripsLevel ? Side{s.h, s.w} : Side{s.w, s.h};
}

TreeSearchResult TreeSearch::run(const Task& task, Work& work) {
    m_task = &task;
    m_work = &work;
    m_used.clear();
    m_left.clear();
    m_pieces = 0;
    for (std::size_t i = 0; i < task.counts.size(); ++i) {
        if (task.counts[i] > 0) {
            m_used.push_back(static_cast<int>(i));
            m_left.push_back(static_cast<std::uint16_t>(task.counts[i]));
            m_pieces += task.counts[i];
        }
    }
    m_before.assign(1, 0);
    for (std::size_t i = 0; i < task.sheets.size(); ++i) {
        const Side side = sheetOf(static_cast<int>(i));
        m_before.push_back(m_before.back() + std::int64_t{side.w} * side.h);
    }
    m_total = 0;
    for (const int kind : m_used) {
        const auto k = static_cast<std::size_t>(kind);
        m_total += m_reduced.kinds[k].area() * task.counts[k];
    }
    m_nodes.assign(1, {});
    m_open.assign(1, {0.0, 0});
    m_seen.clear();
    m_best = 0;
    m_complete = m_pieces == 0;
    while (!m_open.empty() && !m_complete && m_nodes.size() < task.maxNodes) {
        const std::int32_t next = m_open.back().second;
        m_open.pop_back();
        expand(next);
        if (!work.spend(m_used.size())) {
            break;
        }
    }
    TreeSearchResult result;
    result.complete = m_complete;
    result.packedArea = m_nodes[static_cast<std::size_t>(m_best)].packed;
    result.layouts = layoutsOf(m_best);
    return result;
}

void TreeSearch::expand(std::int32_t parent) {
    m_parent = parent;
    const Node node = m_nodes[static_cast<std::size_t>(parent)];
    const std::size_t row = static_cast<std::size_t>(parent) * m_used.size();
    // From the finest insertion to the coarsest; what fits into waste ends the list.
    for (int depth = node.sheet < 0 ? 0 : 3; depth >= 0; --depth) {
        bool fitsWaste = false;
        for (m_slot = 0; m_slot < m_used.size() && !m_complete; ++m_slot) {
            if (m_left[row + m_slot] == 0 || (depth == 3 && m_used[m_slot] < node.kind)) {
                continue;
            }
            const int kind = m_used[m_slot];
            fitsWaste = insert(node, kind, false, depth) || fitsWaste;
            if (m_reduced.kinds[static_cast<std::size_t>(kind)].turn) {
                fitsWaste = insert(node, kind, true, depth) || fitsWaste;
            }
        }
        if (fitsWaste || m_complete) {
            return;
        }
    }
    // No sheet takes a piece: a smaller one later may.
    if (node.sheet + 1 < static_cast<int>(m_task->sheets.size())) {
        Node skip = node;
        skip.parent = parent;
        skip.kind = -1;
        skip.sheet = node.sheet + 1;
        skip.x1p = skip.x1 = skip.y2p = skip.y2 = skip.x3 = 0;
        const Side sheet = sheetOf(skip.sheet);
        bool some = false;
        for (m_slot = 0; m_slot < m_used.size(); ++m_slot) {
            const Kind& kind = m_reduced.kinds[static_cast<std::size_t>(m_used[m_slot])];
            some = some || (m_left[row + m_slot] > 0 &&
                            Stock{sheet.w, sheet.h, 0, 0, 0}.holds(
                                m_task->stripsLevel ? Kind{kind.h, kind.w, kind.turn, 0, {}}
                                                    : Kind{kind.w, kind.h, kind.turn, 0, {}}));
        }
        if (!some) {
            m_slot = m_used.size();
            consider(skip);
        }
    }
}

bool TreeSearch::insert(const Node& node, int kind, bool turned, int depth) {
    const Side piece = sideOf(kind, turned);
    Node child = node;
    child.parent = m_parent;
    child.kind = kind;
    child.turned = turned;
    child.depth = static_cast<std::uint8_t>(depth);
    if (depth == 0) {
        ++child.sheet;
        if (child.sheet >= static_cast<int>(m_task->sheets.size())) {
            return false;
        }
        child.x1p = child.x1 = 0;
    }
    if (depth <= 1) {
        child.x1p = child.x1;
        child.y2p = child.y2 = 0;
    }
    if (depth <= 2) {
        child.y2p = child.y2;
        child.x3 = child.x1p;
    }
    child.x3 += piece.w;
    child.y2 = std::max(child.y2, child.y2p + piece.h);
    child.x1 = std::max(child.x1, child.x3);
    const Side sheet = sheetOf(child.sheet);
    if (child.x1 > sheet.w || child.y2 > sheet.h) {
        return false;
    }
    child.packed += std::int64_t{piece.w} * piece.h;
    ++child.laid;
    child.key += m_codes[static_cast<std::size_t>(kind)];
    consider(child);
    switch (depth) {
        case 3:
            return child.x1 == node.x1 && child.y2 == node.y2;
        case 2:
            return child.x1 == node.x1;
        case 1:
            return true;
        default:
            return false;
    }
}

std::int64_t TreeSearch::frontier(const Node& node) const {
    const Side sheet = sheetOf(node.sheet);
    return m_before[static_cast<std::size_t>(node.sheet)] + std::int64_t{node.x1p} * sheet.h +
           std::int64_t{node.x1 - node.x1p} * node.y2p +
           std::int64_t{node.x3 - node.x1p} * (node.y2 - node.y2p);
}

double TreeSearch::guideOf(const Node& node) const {
    const auto before = static_cast<double>(frontier(node));
    const auto packed = static_cast<double>(node.packed);
    const double waste = before > 0 ? (before - packed) / before : 0;
    if (m_task->guide == Guide::LeastWaste) {
        return waste;
    }
    return (0.1 + waste) * node.laid / std::max(packed, 1.0);
}

void TreeSearch::consider(const Node& child) {
    if (m_total - child.packed > m_before.back() - frontier(child)) {
        return;
    }
    const double guide = guideOf(child);
    if (m_open.size() >= m_task->queue && guide >= m_open.front().first &&
        child.laid < m_pieces && child.packed <= m_nodes[static_cast<std::size_t>(m_best)].packed) {
        return;
    }
    std::uint64_t key = child.key;
    for (const std::int32_t n : {child.sheet, child.x1p, child.x1, child.y2p, child.y2, child.x3}) {
        key = scattered(key ^ static_cast<std::uint32_t>(n));
    }
    if (!m_seen.insert(key).second) {
        return;
    }
    const auto index = static_cast<std::int32_t>(m_nodes.size());
    m_nodes.push_back(child);
    const std::size_t row = static_cast<std::size_t>(m_parent) * m_used.size();
    m_left.resize(m_nodes.size() * m_used.size());
    std::copy_n(m_left.begin() + static_cast<std::ptrdiff_t>(row), m_used.size(),
                m_left.end() - static_cast<std::ptrdiff_t>(m_used.size()));
    if (m_slot < m_used.size()) {
        --m_left[m_left.size() - m_used.size() + m_slot];
    }
    if (child.packed > m_nodes[static_cast<std::size_t>(m_best)].packed) {
        m_best = index;
    }
    m_complete = m_complete || child.laid == m_pieces;
    // Worst first, the earlier of equals last.
    const auto at = std::ranges::lower_bound(m_open, guide, std::greater{},
                                             &std::pair<double, std::int32_t>::first);
    m_open.insert(at, {guide, index});
    if (m_open.size() > m_task->queue) {
        m_open.erase(m_open.begin());
    }
}

std::vector<Layout> TreeSearch::layoutsOf(std::int32_t node) const {
    std::vector<const Node*> path;
    for (std::int32_t i = node; i > 0; i = m_nodes[static_cast<std::size_t>(i)].parent) {
        if (m_nodes[static_cast<std::size_t>(i)].kind >= 0) {
            path.push_back(&m_nodes[static_cast<std::size_t>(i)]);
        }
    }
    std::ranges::reverse(path);
    std::vector<Layout> layouts(m_task->sheets.size());
    const auto along = m_task->stripsLevel ? Group::Form::Stack : Group::Form::Row;
    const auto across = m_task->stripsLevel ? Group::Form::Row : Group::Form::Stack;
    for (std::size_t i = 0; i < path.size();) {
        Layout& layout = layouts[static_cast<std::size_t>(path[i]->sheet)];
        std::int32_t sheet = -1;
        std::int32_t strip = -1;
        std::int32_t row = -1;
        const auto close = [&](std::int32_t& whole, std::int32_t& part, Group::Form form) {
            if (part >= 0) {
                whole = whole < 0 ? part : addJoint(layout, form, whole, part);
                part = -1;
            }
        };
        const std::int32_t number = path[i]->sheet;
        for (; i < path.size() && path[i]->sheet == number; ++i) {
            if (path[i]->depth <= 2) {
                close(strip, row, across);
            }
            if (path[i]->depth <= 1) {
                close(sheet, strip, along);
            }
            std::int32_t piece =
                addPiece(layout, m_reduced.kinds[static_cast<std::size_t>(path[i]->kind)],
                         path[i]->kind, path[i]->turned);
            close(row, piece, along);
        }
        close(strip, row, across);
        close(sheet, strip, along);
    }
    return layouts;
}

}  // namespace matwright::sheets
