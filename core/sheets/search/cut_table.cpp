// SPDX-License-Identifier: MIT
#include "core/sheets/search/cut_table.h"

#include <algorithm>

namespace matwright::sheets {

std::optional<CutTable> CutTable::made(const Reduced& reduced, const Stock& stock,
                                       std::span<const std::int64_t> values, bool limitedPoints,
                                       std::int64_t mostWork) {
    constexpr std::size_t mostPoints = 4000;
    auto xs = normalPoints(reduced, values, stock, false, limitedPoints, mostPoints);
    auto ys = normalPoints(reduced, values, stock, true, limitedPoints, mostPoints);
    if (!xs || !ys) {
        return std::nullopt;
    }
    const auto nx = static_cast<std::int64_t>(xs->size());
    const auto ny = static_cast<std::int64_t>(ys->size());
    if (nx * ny * (nx + ny) / 4 > mostWork) {
        return std::nullopt;
    }
    CutTable table;
    table.m_reduced = &reduced;
    table.m_xs = std::move(*xs);
    table.m_ys = std::move(*ys);
    table.collectPieces(values);
    table.fill();
    return table;
}

void CutTable::collectPieces(std::span<const std::int64_t> values) {
    for (std::size_t i = 0; i < m_reduced->kinds.size(); ++i) {
        const Kind& kind = m_reduced->kinds[i];
        if (values[i] <= 0) {
            continue;
        }
        m_pieces.push_back({kind.w, kind.h, static_cast<int>(i), false, values[i]});
        if (kind.turn) {
            m_pieces.push_back({kind.h, kind.w, static_cast<int>(i), true, values[i]});
        }
    }
}

void CutTable::fill() {
    m_values.assign(m_xs.size() * m_ys.size(), 0);
    for (std::size_t x = 1; x < m_xs.size(); ++x) {
        startColumn(x);
        for (std::size_t k = 1; k < x && 2 * m_xs[k] <= m_xs[x]; ++k) {
            const std::size_t rest = pointBelow(m_xs, m_xs[x] - m_xs[k]);
            const std::int64_t* a = &at(k, 0);
            const std::int64_t* b = &at(rest, 0);
            std::int64_t* to = &at(x, 0);
            for (std::size_t y = 0; y < m_ys.size(); ++y) {
                to[y] = std::max(to[y], a[y] + b[y]);
            }
        }
        cutAcrossColumn(x);
    }
}

void CutTable::startColumn(std::size_t x) {
    std::copy_n(&at(x - 1, 0), m_ys.size(), &at(x, 0));
    for (const Piece& piece : m_pieces) {
        if (piece.w <= m_xs[x] && piece.h <= m_ys.back()) {
            const auto y =
                static_cast<std::size_t>(std::ranges::lower_bound(m_ys, piece.h) - m_ys.begin());
            at(x, y) = std::max(at(x, y), piece.value);
        }
    }
}

void CutTable::cutAcrossColumn(std::size_t x) {
    std::int64_t* column = &at(x, 0);
    for (std::size_t y = 1; y < m_ys.size(); ++y) {
        std::int64_t best = std::max(column[y], column[y - 1]);
        std::size_t rest = y - 1;
        for (std::size_t k = 1; k < y && 2 * m_ys[k] <= m_ys[y]; ++k) {
            while (m_ys[rest] > m_ys[y] - m_ys[k]) {
                --rest;
            }
            best = std::max(best, column[k] + column[rest]);
        }
        column[y] = best;
    }
}

std::int64_t CutTable::valueOf(std::int32_t w, std::int32_t h) const {
    return at(pointBelow(m_xs, w), pointBelow(m_ys, h));
}

std::vector<int> CutTable::bestCounts() const {
    return contents(bestLayout(), m_reduced->kinds.size());
}

Layout CutTable::bestLayout() const {
    Layout layout;
    layOut(layout, m_xs.size() - 1, m_ys.size() - 1);
    return layout;
}

std::int32_t CutTable::layOut(Layout& layout, std::size_t x, std::size_t y) const {
    const std::int64_t value = at(x, y);
    if (value == 0) {
        return -1;
    }
    for (const Piece& piece : m_pieces) {
        if (piece.value == value && piece.w <= m_xs[x] && piece.h <= m_ys[y]) {
            return addPiece(layout, m_reduced->kinds[static_cast<std::size_t>(piece.kind)],
                            piece.kind, piece.turned);
        }
    }
    if (x > 0 && at(x - 1, y) == value) {
        return layOut(layout, x - 1, y);
    }
    if (y > 0 && at(x, y - 1) == value) {
        return layOut(layout, x, y - 1);
    }
    return layOutCut(layout, x, y);
}

std::int32_t CutTable::layOutCut(Layout& layout, std::size_t x, std::size_t y) const {
    const std::int64_t value = at(x, y);
    const auto join = [&](Group::Form form, std::size_t x1, std::size_t y1, std::size_t x2,
                          std::size_t y2) {
        const std::int32_t first = layOut(layout, x1, y1);
        const std::int32_t second = layOut(layout, x2, y2);
        return first < 0 || second < 0 ? std::max(first, second)
                                       : addJoint(layout, form, first, second);
    };
    for (std::size_t k = 1; k < x; ++k) {
        const std::size_t rest = pointBelow(m_xs, m_xs[x] - m_xs[k]);
        if (at(k, y) + at(rest, y) == value) {
            return join(Group::Form::Row, k, y, rest, y);
        }
    }
    for (std::size_t k = 1; k < y; ++k) {
        const std::size_t rest = pointBelow(m_ys, m_ys[y] - m_ys[k]);
        if (at(x, k) + at(x, rest) == value) {
            return join(Group::Form::Stack, x, k, x, rest);
        }
    }
    return -1;
}

}  // namespace matwright::sheets
