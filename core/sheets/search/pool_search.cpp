// SPDX-License-Identifier: MIT
#include "core/sheets/search/pool_search.h"

#include <algorithm>
#include <cmath>

namespace matwright::sheets {

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

bool PoolSearch::run(std::uint64_t moves, Work& work) {
    fillFromPool(work);
    constexpr std::uint64_t cycle = 6000;
    for (std::uint64_t move = 0; move < moves && !m_pool.empty() && work.spend(); ++move) {
        // From warm to cold, again and again.
        const double age = static_cast<double>(move % cycle) / cycle;
        const double heat = m_meanWorth * 0.4 * std::pow(0.05, age);
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
    std::vector<int> kinds = sheet.kinds;
    std::vector<int> pool = m_pool;
    const std::size_t in = pool.size() > 1 && below(3) == 0 ? 2 : 1;
    const std::size_t out = std::min(kinds.size(), below(3));
    double loss = 0;
    double load = sheet.load;
    std::vector<int> coming;
    for (std::size_t i = 0; i < in; ++i) {
        const std::size_t at = below(pool.size());
        coming.push_back(pool[at]);
        loss -= worthOf(pool[at]);
        load += shareOf(pool[at], sheet);
        pool[at] = pool.back();
        pool.pop_back();
    }
    for (std::size_t i = 0; i < out; ++i) {
        const std::size_t at = below(kinds.size());
        pool.push_back(kinds[at]);
        loss += worthOf(kinds[at]);
        load -= shareOf(kinds[at], sheet);
        kinds[at] = kinds.back();
        kinds.pop_back();
    }
    kinds.insert(kinds.end(), coming.begin(), coming.end());
    if (load > 1 + 1e-9 || !accepts(loss, heat) ||
        !m_packer.packs(kinds, sheet.stock, work)) {
        return;
    }
    sheet.kinds = std::move(kinds);
    sheet.load = load;
    m_pool = std::move(pool);
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
    std::vector<int> aKinds = a.kinds;
    std::vector<int> bKinds = b.kinds;
    const std::size_t i = below(aKinds.size());
    const std::size_t k = below(bKinds.size() + 1);
    const int going = aKinds[i];
    double aLoad = a.load - shareOf(going, a);
    double bLoad = b.load + shareOf(going, b);
    aKinds[i] = aKinds.back();
    aKinds.pop_back();
    if (k < bKinds.size()) {
        if (bKinds[k] == going) {
            return;
        }
        aKinds.push_back(bKinds[k]);
        aLoad += shareOf(bKinds[k], a);
        bLoad -= shareOf(bKinds[k], b);
        bKinds[k] = going;
    } else {
        bKinds.push_back(going);
    }
    // Uneven sheets are better: what is free should be free in one place.
    const double loss = a.load * a.load + b.load * b.load - aLoad * aLoad - bLoad * bLoad;
    if (aLoad > 1 + 1e-9 || bLoad > 1 + 1e-9 || !accepts(loss * 0.5, heat) ||
        !m_packer.packs(bKinds, b.stock, work) || !m_packer.packs(aKinds, a.stock, work)) {
        return;
    }
    a.kinds = std::move(aKinds);
    b.kinds = std::move(bKinds);
    a.load = aLoad;
    b.load = bLoad;
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
