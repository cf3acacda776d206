// SPDX-License-Identifier: MIT
#include "core/sheets/search/tree_search.h"

#include <algorithm>

namespace matwright::sheets {

TreeSearch::TreeSearch(const Reduced& reduced) : m_reduced(reduced) {
    for (std::size_t i = 0; i < reduced.kinds.size(); ++i) {
        m_codes.push_back(scattered(i));
    }
}

// Sides as the search sees them: strips always run upright.
void TreeSearch::prepare(const Task& task) {
    m_used.clear();
    m_left.clear();
    m_sides.clear();
    m_turn.clear();
    m_sheets.clear();
    m_pieces = 0;
    m_total = 0;
    for (std::size_t i = 0; i < task.counts.size(); ++i) {
        const Kind& kind = m_reduced.kinds[i];
        const Side asIs{kind.w, kind.h};
        const Side turned{kind.h, kind.w};
        m_sides.push_back(task.stripsLevel ? turned : asIs);
        m_sides.push_back(task.stripsLevel ? asIs : turned);
        m_turn.push_back(static_cast<char>(kind.turn));
        if (task.counts[i] > 0) {
            m_used.push_back(static_cast<int>(i));
            m_left.push_back(static_cast<std::uint16_t>(task.counts[i]));
            m_pieces += task.counts[i];
            m_total += kind.area() * task.counts[i];
        }
    }
    m_before.assign(1, 0);
    for (const int stock : task.sheets) {
        const Stock& s = m_reduced.stocks[static_cast<std::size_t>(stock)];
        m_sheets.push_back(task.stripsLevel ? Side{s.h, s.w} : Side{s.w, s.h});
        m_before.push_back(m_before.back() + s.area());
    }
}

TreeSearchResult TreeSearch::run(const Task& task, Work& work) {
    m_task = &task;
    m_work = &work;
    prepare(task);
    m_nodes.assign(1, {});
    m_open.assign(1, {0.0, 0});
    m_seen.clear();
    m_dropped = 0;
    m_best = 0;
    m_complete = m_pieces == 0;
    while (m_open.size() > m_dropped && !m_complete && m_nodes.size() < task.maxNodes) {
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
            if (m_turn[static_cast<std::size_t>(kind)]) {
                fitsWaste = insert(node, kind, true, depth) || fitsWaste;
            }
        }
        if (fitsWaste || m_complete) {
            return;
        }
    }
    skipSheet(node, row);
}

// Where the next sheet takes no piece, a later one may.
void TreeSearch::skipSheet(const Node& node, std::size_t row) {
    Node skip = node;
    skip.parent = m_parent;
    skip.kind = -1;
    ++skip.sheet;
    if (skip.sheet >= static_cast<int>(m_sheets.size())) {
        return;
    }
    skip.x1p = skip.x1 = skip.y2p = skip.y2 = skip.x3 = 0;
    const Side sheet = sheetOf(skip.sheet);
    const auto fits = [&](int kind, bool turned) {
        const Side side = sideOf(kind, turned);
        return side.w <= sheet.w && side.h <= sheet.h;
    };
    for (m_slot = 0; m_slot < m_used.size(); ++m_slot) {
        const int kind = m_used[m_slot];
        if (m_left[row + m_slot] > 0 &&
            (fits(kind, false) || (m_turn[static_cast<std::size_t>(kind)] && fits(kind, true)))) {
            return;
        }
    }
    consider(skip);
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
    if (!m_task->mayLeave && m_total - child.packed > m_before.back() - frontier(child)) {
        return;
    }
    const double guide = guideOf(child);
    if (m_open.size() - m_dropped >= m_task->queue && guide >= m_open[m_dropped].first &&
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
    const auto begin = m_open.begin() + static_cast<std::ptrdiff_t>(m_dropped);
    const auto at = std::lower_bound(begin, m_open.end(), guide,
                                     [](const auto& open, double g) { return open.first > g; });
    m_open.insert(at, {guide, index});
    if (m_open.size() - m_dropped > m_task->queue) {
        ++m_dropped;
    }
    if (m_dropped > 4 * m_task->queue + 64) {
        m_open.erase(m_open.begin(), m_open.begin() + static_cast<std::ptrdiff_t>(m_dropped));
        m_dropped = 0;
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
