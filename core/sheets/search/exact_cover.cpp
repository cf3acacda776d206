// SPDX-License-Identifier: MIT
#include "core/sheets/search/exact_cover.h"

#include <algorithm>

#include "core/sheets/search/tree_search.h"

namespace matwright::sheets {

namespace {

std::vector<int> allCounts(const Reduced& reduced) {
    std::vector<int> counts;
    counts.reserve(reduced.kinds.size());
    for (const Kind& kind : reduced.kinds) {
        counts.push_back(kind.count);
    }
    return counts;
}

ShapeTable::Limits limitsFor(const Reduced& reduced, std::int64_t mostWaste,
                             const std::vector<Weights>& weights) {
    ShapeTable::Limits limits;
    limits.weights = &weights;
    limits.maxWaste = mostWaste;
    for (const Stock& stock : reduced.stocks) {
        limits.maxW = std::max(limits.maxW, stock.w);
        limits.maxH = std::max(limits.maxH, stock.h);
        limits.maxArea = std::max(limits.maxArea, stock.area());
    }
    return limits;
}

}  // namespace

bool ExactCover::isTooLarge(const Reduced& reduced) {
    return ShapeTable::isTooLarge(allCounts(reduced),
                                  reduced.threeStages ? mostStates / 4 : mostStates);
}

ExactCover::ExactCover(const Reduced& reduced, const std::vector<Weights>& weights,
                       std::int64_t mostWaste)
    : m_reduced(reduced),
      m_weights(weights),
      m_table(reduced, allCounts(reduced), limitsFor(reduced, mostWaste, weights)) {}

ExactCover::Outcome ExactCover::run(std::int64_t budget, std::uint64_t steps, Work& work) {
    m_work = &work;
    m_end = work.spent() + steps;
    if (!m_table.fill(work, steps)) {
        return Outcome::NotYet;
    }
    if (m_part.empty()) {
        markParts();
    }
    m_left.clear();
    for (const Stock& stock : m_reduced.stocks) {
        m_left.push_back(stock.count);
    }
    m_chosen.clear();
    if (!cover(m_table.whole(), budget)) {
        return goesOn() ? Outcome::Impossible : Outcome::NotYet;
    }
    m_filled.clear();
    for (const Choice& choice : m_chosen) {
        const Stock& stock = m_reduced.stocks[static_cast<std::size_t>(choice.stock)];
        m_filled.push_back(
            {choice.stock, m_table.layoutsOf(choice.state, stock.w, stock.h).front()});
    }
    return Outcome::Found;
}

int ExactCover::countOf(std::size_t state, std::size_t kind) const {
    const std::size_t stride = m_table.strideOf(static_cast<int>(kind));
    return static_cast<int>(state / stride %
                            (static_cast<std::size_t>(m_reduced.kinds[kind].count) + 1));
}

std::uint64_t ExactCover::keyOf(std::size_t state) const {
    std::uint64_t key = scattered(state);
    for (const int left : m_left) {
        key = scattered(key ^ static_cast<std::uint64_t>(left));
    }
    return key;
}

// A part of a selection may have no shape of its own where waste is limited: its pieces may lie
// apart, with others between them.
void ExactCover::markParts() {
    m_part.assign(m_table.states(), 0);
    for (std::size_t state = m_table.states(); state-- > 0;) {
        bool part = state == 0 || m_table.hasShape(state);
        for (std::size_t kind = 0; kind < m_reduced.kinds.size() && !part; ++kind) {
            part = countOf(state, kind) < m_reduced.kinds[kind].count &&
                   m_part[state + m_table.strideOf(static_cast<int>(kind))];
        }
        m_part[state] = part ? 1 : 0;
    }
    m_work->spend(m_table.states());
}

bool ExactCover::cover(std::size_t state, std::int64_t budget) {
    if (state == 0) {
        return true;
    }
    if (!goesOn() || !isEnough(state, budget)) {
        return false;
    }
    const std::uint64_t key = keyOf(state);
    if (const auto failed = m_failed.find(key);
        failed != m_failed.end() && failed->second >= budget) {
        return false;
    }
    std::vector<Choice> choices;
    std::size_t largest = 0;
    while (countOf(state, largest) == 0) {
        ++largest;
    }
    collect(largest, m_table.strideOf(static_cast<int>(largest)), state, budget, choices);
    std::ranges::stable_sort(choices, std::greater{},
                             [&](const Choice& c) { return m_table.areaOf(c.state); });
    for (const Choice& choice : choices) {
        const auto s = static_cast<std::size_t>(choice.stock);
        --m_left[s];
        m_chosen.push_back(choice);
        if (cover(state - choice.state, budget - m_reduced.stocks[s].price)) {
            return true;
        }
        m_chosen.pop_back();
        ++m_left[s];
    }
    if (!goesOn()) {
        return false;
    }
    std::int64_t& failed = m_failed.try_emplace(key, budget).first->second;
    failed = std::max(failed, budget);
    return false;
}

// Adds pieces kind by kind, as long as some selection with all of them has a shape.
void ExactCover::collect(std::size_t kind, std::size_t sub, std::size_t state, std::int64_t budget,
                         std::vector<Choice>& choices) {
    if (!goesOn() || !m_part[sub]) {
        return;
    }
    if (kind == m_reduced.kinds.size()) {
        addChoices(sub, state, budget, choices);
        return;
    }
    const std::size_t stride = m_table.strideOf(static_cast<int>(kind));
    const int more = countOf(state, kind) - countOf(sub, kind);
    for (int n = 0; n <= more; ++n) {
        const std::size_t next = sub + static_cast<std::size_t>(n) * stride;
        if (!m_part[next]) {
            break;
        }
        collect(kind + 1, next, state, budget, choices);
    }
}

void ExactCover::addChoices(std::size_t sub, std::size_t state, std::int64_t budget,
                            std::vector<Choice>& choices) {
    for (std::size_t s = 0; s < m_left.size(); ++s) {
        const Stock& stock = m_reduced.stocks[s];
        if (m_left[s] > 0 && stock.price <= budget && m_table.fits(sub, stock.w, stock.h) &&
            !canGrow(sub, state, stock)) {
            choices.push_back({sub, static_cast<int>(s)});
        }
    }
}

bool ExactCover::canGrow(std::size_t sub, std::size_t state, const Stock& stock) const {
    for (std::size_t kind = 0; kind < m_reduced.kinds.size(); ++kind) {
        if (countOf(state, kind) > countOf(sub, kind) &&
            m_table.fits(sub + m_table.strideOf(static_cast<int>(kind)), stock.w, stock.h)) {
            return true;
        }
    }
    return false;
}

// Whether the sheets left could be enough within the budget, by fractions of sheets.
bool ExactCover::isEnough(std::size_t state, std::int64_t budget) const {
    const std::vector<int> counts = m_table.countsOf(state);
    for (const Weights& weights : m_weights) {
        auto need = static_cast<double>(weights.total(counts));
        double perPrice = 0;
        for (std::size_t s = 0; s < m_left.size(); ++s) {
            const Stock& stock = m_reduced.stocks[s];
            const auto capacity = static_cast<double>(weights.capacity[s]);
            if (stock.price == 0) {
                need -= capacity * m_left[s];
            } else if (m_left[s] > 0 && stock.price <= budget) {
                perPrice = std::max(perPrice, capacity / static_cast<double>(stock.price));
            }
        }
        if (need > perPrice * static_cast<double>(budget) * (1 + 1e-9) + 1e-6) {
            return false;
        }
    }
    return true;
}

}  // namespace matwright::sheets
