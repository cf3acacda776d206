// SPDX-License-Identifier: MIT
#include "core/sheets/search/exact_cover.h"

#include <algorithm>
#include <functional>

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

std::int64_t mostWaste(const Reduced& reduced, std::span<const Loadout> loadouts) {
    std::int64_t most = 0;
    for (const Loadout& loadout : loadouts) {
        std::int64_t area = 0;
        for (std::size_t s = 0; s < loadout.size(); ++s) {
            area += loadout[s] * reduced.stocks[s].area();
        }
        most = std::max(most, area - reduced.area());
    }
    return most;
}

ShapeTable::Limits limitsFor(const Reduced& reduced, std::int64_t mostWaste,
                             const Prospects& prospects) {
    ShapeTable::Limits limits;
    limits.prospects = &prospects;
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
    constexpr std::uint64_t mostStates = std::uint64_t{1} << 60U;
    constexpr double mostSplits = 1e10;
    const std::vector<int> counts = allCounts(reduced);
    const auto many = [](int count) { return count > mostCountedCopies; };
    return counts.size() > mostCountedKinds || std::ranges::any_of(counts, many) ||
           ShapeTable::isTooLarge(counts, mostStates) || splits(reduced) > mostSplits;
}

double ExactCover::splits(const Reduced& reduced) {
    std::int64_t largest = 1;
    for (const Stock& stock : reduced.stocks) {
        largest = std::max(largest, stock.area());
    }
    return ShapeTable::splits(reduced, allCounts(reduced), largest) * (reduced.threeStages ? 6 : 1);
}

ExactCover::ExactCover(const Reduced& reduced, const std::vector<Weights>& weights,
                       std::span<const Loadout> loadouts, Work& work)
    : m_reduced(reduced),
      m_mostWaste(mostWaste(reduced, loadouts)),
      m_prospects(reduced, weights, allCounts(reduced), loadouts, work),
      m_table(reduced, allCounts(reduced), limitsFor(reduced, m_mostWaste, m_prospects)) {
    std::int64_t largest = 1;
    for (const Kind& kind : reduced.kinds) {
        largest = std::max(largest, kind.area());
    }
    for (std::size_t k = 0; k < reduced.kinds.size(); ++k) {
        const std::int64_t area = reduced.kinds[k].area() * heaviest / largest;
        m_areas[k] = static_cast<std::int16_t>(std::max<std::int64_t>(area, 1));
        m_asked[k] = static_cast<std::int16_t>(reduced.kinds[k].count);
    }
}

bool ExactCover::prepare(std::uint64_t steps, Work& work) {
    if (m_lists.empty() && m_table.fill(work, steps)) {
        m_lists = fullSelections(m_table, m_reduced, m_mostWaste, work);
    }
    return !m_lists.empty();
}

ExactCover::Outcome ExactCover::run(std::span<const Loadout> loadouts, std::uint64_t steps,
                                    Work& work) {
    const std::uint64_t end = work.spent() + steps;
    if (!prepare(steps, work)) {
        return Outcome::NotYet;
    }
    for (const Loadout& loadout : loadouts) {
        const Outcome outcome = tryLoadout(loadout, end, work);
        if (outcome != Outcome::Impossible) {
            return outcome;
        }
    }
    return Outcome::Impossible;
}

ExactCover::Outcome ExactCover::tryLoadout(const Loadout& loadout, std::uint64_t end, Work& work) {
    if (isKnownTooSmall(loadout)) {
        return Outcome::Impossible;
    }
    if (work.over() || work.spent() >= end) {
        return Outcome::NotYet;
    }
    if (!m_trial || m_tried != loadout) {
        m_trial.emplace(m_lists, m_asked, m_areas, loadout);
        m_tried = loadout;
    }
    Outcome outcome = m_trial->run(end, work);
    if (outcome == Outcome::Impossible) {
        m_tooSmall.push_back(loadout);
    } else if (outcome == Outcome::Found && !layOut(m_trial->found())) {
        outcome = Outcome::NotYet;
    }
    return outcome;
}

bool ExactCover::isKnownTooSmall(const Loadout& loadout) const {
    return std::ranges::any_of(m_tooSmall, [&](const Loadout& known) {
        return std::ranges::equal(loadout, known, std::less_equal{});
    });
}

// All of the sheets' waste is within the limit, so every choice has a shape.
bool ExactCover::layOut(const std::vector<LoadoutTrial::Choice>& choices) {
    m_filled.clear();
    for (const auto& choice : choices) {
        const Stock& stock = m_reduced.stocks[choice.stock];
        std::size_t state = 0;
        for (std::size_t k = 0; k < m_reduced.kinds.size(); ++k) {
            state +=
                static_cast<std::size_t>(choice.taken[k]) * m_table.strideOf(static_cast<int>(k));
        }
        auto layouts = m_table.layoutsOf(state, stock.w, stock.h);
        if (layouts.empty()) {
            return false;
        }
        m_filled.push_back({static_cast<int>(choice.stock), std::move(layouts.front())});
    }
    return true;
}

}  // namespace matwright::sheets
