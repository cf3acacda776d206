// SPDX-License-Identifier: MIT
#include "core/sheets/search/pool_search.h"

#include <algorithm>
#include <cmath>

namespace matwright::sheets {

namespace {

// The loss that is often accepted, in mean pieces, at the beginning and in the end.
constexpr double warmest = 0.1;
constexpr double coldest = 0.01;

}  // namespace

PoolSearch::PoolSearch(const Reduced& reduced, SheetPacker& packer, std::uint64_t seed)
    : m_reduced(reduced), m_packer(packer), m_state(scattered(seed)) {
    std::int64_t largest = 1;
    for (const Stock& stock : reduced.stocks) {
        largest = std::max(largest, stock.area());
    }
    double sum = 0;
    for (const Kind& kind : reduced.kinds) {
        // A little for being there at all, so that many small pieces are not as good as none.
        m_worth.push_back(static_cast<double>(kind.area()) / static_cast<double>(largest) + 0.01);
        sum += m_worth.back() * kind.count;
    }
    m_meanWorth = sum / std::max(reduced.pieces(), 1);
}

std::uint64_t PoolSearch::random() {
    return scattered(m_state++);
}

bool PoolSearch::accepts(double loss, double heat) {
    if (loss <= 0) {
        return true;
    }
    const double chance = static_cast<double>(random() >> 11) * 0x1p-53;
    return chance < std::exp(-loss / heat);
}

double PoolSearch::shareOf(int kind, const Sheet& sheet) const {
    return static_cast<double>(m_reduced.kinds[static_cast<std::size_t>(kind)].area()) /
           static_cast<double>(m_reduced.stocks[static_cast<std::size_t>(sheet.stock)].area());
}

void PoolSearch::start(const std::vector<int>& sheets, const std::vector<Layout>& layouts) {
    m_sheets.clear();
    m_pool.clear();
    std::vector<int> left;
    left.reserve(m_reduced.kinds.size());
    for (const Kind& kind : m_reduced.kinds) {
        left.push_back(kind.count);
    }
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        Sheet& sheet = m_sheets.emplace_back(Sheet{sheets[i], {}, 0});
        if (i >= layouts.size() || layouts[i].empty()) {
            continue;
        }
        m_packer.remember(layouts[i], sheets[i]);
        for (const Group& group : layouts[i]) {
            if (group.form == Group::Form::Piece) {
                sheet.kinds.push_back(group.kind);
                sheet.load += shareOf(group.kind, sheet);
                --left[static_cast<std::size_t>(group.kind)];
            }
        }
    }
    for (std::size_t k = 0; k < left.size(); ++k) {
        m_pool.insert(m_pool.end(), static_cast<std::size_t>(left[k]), static_cast<int>(k));
    }
}

// From warm to cold once, however long that takes: slow cooling finds more than many quick ones.
bool PoolSearch::run(std::uint64_t moves, std::uint64_t steps, Work& work) {
    const std::uint64_t start = work.spent();
    fillFromPool(work);
    for (std::uint64_t move = 0; move < moves && !m_pool.empty() && work.spend(); ++move) {
        const std::uint64_t spent = work.spent() - start;
        if (spent > steps) {
            break;
        }
        const double age = std::max(static_cast<double>(move) / static_cast<double>(moves),
                                    static_cast<double>(spent) / static_cast<double>(steps));
        const double heat = m_meanWorth * warmest * std::pow(coldest / warmest, age);
        if (move % 4 == 3) {
            swapSheets(heat, work);
        } else {
            swapWithPool(heat, work);
        }
    }
    return m_pool.empty();
}

void PoolSearch::fillFromPool(Work& work) {
    // Kinds are numbered from the largest, and so is the pool at the start.
    std::vector<int> waiting;
    for (const int kind : m_pool) {
        bool placed = false;
        for (Sheet& sheet : m_sheets) {
            sheet.kinds.push_back(kind);
            if (m_packer.packs(sheet.kinds, sheet.stock, work)) {
                sheet.load += shareOf(kind, sheet);
                placed = true;
                break;
            }
            sheet.kinds.pop_back();
        }
        if (!placed) {
            waiting.push_back(kind);
        }
    }
    m_pool = std::move(waiting);
}

void PoolSearch::swapWithPool(double heat, Work& work) {
    Sheet& sheet = m_sheets[below(m_sheets.size())];
    const std::size_t in = m_pool.size() > 1 && below(3) == 0 ? 2 : 1;
    const std::size_t out = std::min(sheet.kinds.size(), below(3));
    // What goes and what comes is moved to the end of its list; nothing is lost if it stays so.
    double loss = 0;
    double load = sheet.load;
    for (std::size_t i = 0; i < in; ++i) {
        const std::size_t last = m_pool.size() - 1 - i;
        std::swap(m_pool[below(last + 1)], m_pool[last]);
        loss -= worthOf(m_pool[last]);
        load += shareOf(m_pool[last], sheet);
    }
    for (std::size_t i = 0; i < out; ++i) {
        const std::size_t last = sheet.kinds.size() - 1 - i;
        std::swap(sheet.kinds[below(last + 1)], sheet.kinds[last]);
        loss += worthOf(sheet.kinds[last]);
        load -= shareOf(sheet.kinds[last], sheet);
    }
    if (load > 1 + 1e-9 || !accepts(loss, heat)) {
        return;
    }
    const auto going = sheet.kinds.end() - static_cast<std::ptrdiff_t>(out);
    const auto coming = m_pool.end() - static_cast<std::ptrdiff_t>(in);
    m_kinds.assign(sheet.kinds.begin(), going);
    m_kinds.insert(m_kinds.end(), coming, m_pool.end());
    if (!m_packer.packs(m_kinds, sheet.stock, work)) {
        return;
    }
    m_others.assign(going, sheet.kinds.end());
    m_pool.erase(coming, m_pool.end());
    m_pool.insert(m_pool.end(), m_others.begin(), m_others.end());
    std::swap(sheet.kinds, m_kinds);
    sheet.load = load;
}

void PoolSearch::swapSheets(double heat, Work& work) {
    if (m_sheets.size() < 2) {
        return;
    }
    const std::size_t first = below(m_sheets.size());
    const std::size_t second = (first + 1 + below(m_sheets.size() - 1)) % m_sheets.size();
    Sheet& a = m_sheets[first];
    Sheet& b = m_sheets[second];
    if (a.kinds.empty()) {
        return;
    }
    const std::size_t i = below(a.kinds.size());
    const std::size_t k = below(b.kinds.size() + 1);
    const int going = a.kinds[i];
    const int coming = k < b.kinds.size() ? b.kinds[k] : -1;
    const double aLoad = a.load - shareOf(going, a) + (coming >= 0 ? shareOf(coming, a) : 0);
    const double bLoad = b.load + shareOf(going, b) - (coming >= 0 ? shareOf(coming, b) : 0);
    // Uneven sheets are better: what is free should be free in one place.
    const double loss = a.load * a.load + b.load * b.load - aLoad * aLoad - bLoad * bLoad;
    if (coming == going || aLoad > 1 + 1e-9 || bLoad > 1 + 1e-9 || !accepts(loss * 0.5, heat)) {
        return;
    }
    m_kinds = a.kinds;
    m_others = b.kinds;
    if (coming >= 0) {
        m_kinds[i] = coming;
        m_others[k] = going;
    } else {
        m_kinds[i] = m_kinds.back();
        m_kinds.pop_back();
        m_others.push_back(going);
    }
    if (m_packer.packs(m_others, b.stock, work) && m_packer.packs(m_kinds, a.stock, work)) {
        std::swap(a.kinds, m_kinds);
        std::swap(b.kinds, m_others);
        a.load = aLoad;
        b.load = bLoad;
    }
}

std::vector<FilledSheet> PoolSearch::filled() {
    std::vector<FilledSheet> filled;
    for (const Sheet& sheet : m_sheets) {
        if (!sheet.kinds.empty()) {
            filled.push_back({sheet.stock, m_packer.layout(sheet.kinds, sheet.stock)});
        }
    }
    return filled;
}

}  // namespace matwright::sheets
