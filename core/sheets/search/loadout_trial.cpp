// SPDX-License-Identifier: MIT
#include "core/sheets/search/loadout_trial.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/sheets/search/loadout_scale.h"
#include "core/sheets/search/tree_search.h"

namespace matwright::sheets {

namespace {

constexpr int mostRounds = 6;
constexpr std::size_t mostFailed = 4'000'000;

bool isEmpty(const Counts& counts) {
    return std::ranges::all_of(counts, [](std::int16_t n) { return n == 0; });
}

}  // namespace

LoadoutTrial::LoadoutTrial(const std::vector<SelectionList>& lists, const Counts& asked,
                           const SmallWeights& areas, Loadout loadout)
    : m_lists(lists), m_asked(asked), m_left(std::move(loadout)) {
    for (std::size_t s = 0; s < m_lists.size(); ++s) {
        if (m_left[s] == 0) {
            m_lists[s].clear();
        }
    }
    add(areas);
}

LoadoutTrial::Outcome LoadoutTrial::run(std::uint64_t end, Work& work) {
    m_work = &work;
    m_end = end;
    if (!m_struckOut) {
        m_impossible = !strikeOut(work);
        m_struckOut = true;
    }
    if (m_impossible) {
        return Outcome::Impossible;
    }
    std::vector<Option> options;
    for (std::size_t s = 0; s < m_lists.size(); ++s) {
        for (const Counts& counts : m_lists[s]) {
            options.push_back({s, &counts, 0, {}});
        }
    }
    m_chosen.clear();
    if (cover(m_asked, options, 0)) {
        return Outcome::Found;
    }
    m_impossible = goesOn();
    return m_impossible ? Outcome::Impossible : Outcome::NotYet;
}

// Capacities are counted from the lists.
void LoadoutTrial::add(const SmallWeights& weights) {
    Measure measure{weights, {}};
    for (const SelectionList& list : m_lists) {
        std::int64_t most = 0;
        for (const Counts& counts : list) {
            most = std::max<std::int64_t>(most, weightOf(counts, weights));
        }
        measure.capacity.push_back(most);
    }
    m_measures.push_back(std::move(measure));
}

// What the sheets that are left can take.
std::int64_t LoadoutTrial::room(const Measure& measure) const {
    std::int64_t room = 0;
    for (std::size_t s = 0; s < m_left.size(); ++s) {
        room += m_left[s] * measure.capacity[s];
    }
    return room;
}

bool LoadoutTrial::isCovered() const {
    for (std::size_t k = 0; k < mostCountedKinds; ++k) {
        const auto has = [&](const Counts& counts) { return counts[k] > 0; };
        const auto hasOne = [&](const SelectionList& list) {
            return std::ranges::any_of(list, has);
        };
        if (m_asked[k] > 0 && std::ranges::none_of(m_lists, hasOne)) {
            return false;
        }
    }
    return true;
}

// False where that shows the loadout to be too small.
bool LoadoutTrial::strikeOut(Work& work) {
    const auto selections = [&] {
        std::size_t sum = 0;
        for (const SelectionList& list : m_lists) {
            sum += list.size();
        }
        return sum;
    };
    if (!strikeOutBy(m_measures.back())) {
        return false;
    }
    for (int round = 0; round < mostRounds && !work.over(); ++round) {
        const std::size_t before = selections();
        if (!isCovered()) {
            return false;
        }
        LoadoutScale scale(m_lists, m_asked, m_left);
        scale.run(400, work);
        add(scale.smallPrices());
        if (!strikeOutBy(m_measures.back())) {
            return false;
        }
        if (selections() > before - before / 10) {
            break;
        }
    }
    // Those of the first lists and the last are not far from the best; each costs time.
    constexpr std::size_t kept = 3;
    if (m_measures.size() > kept) {
        m_measures.erase(m_measures.begin() + 1, m_measures.end() - (kept - 1));
    }
    const auto old = std::exchange(m_measures, {});
    for (const Measure& measure : old) {
        add(measure.ofKind);
    }
    return isCovered();
}

bool LoadoutTrial::strikeOutBy(const Measure& measure) {
    const std::int64_t spare = room(measure) - weightOf(m_asked, measure.ofKind);
    for (std::size_t s = 0; s < m_lists.size(); ++s) {
        std::erase_if(m_lists[s], [&](const Counts& counts) {
            return weightOf(counts, measure.ofKind) < measure.capacity[s] - spare;
        });
    }
    return spare >= 0;
}

std::uint64_t LoadoutTrial::keyOf(const Counts& state) const {
    std::uint64_t key = 0;
    for (const std::int16_t n : state) {
        key = (key ^ static_cast<std::uint64_t>(n)) * 0x9E3779B97F4A7C15U;
        key ^= key >> 29;
    }
    for (const int left : m_left) {
        key = (key ^ static_cast<std::uint64_t>(left)) * 0x9E3779B97F4A7C15U;
        key ^= key >> 29;
    }
    return scattered(key);
}

bool LoadoutTrial::cover(const Counts& state, std::span<const Option> options, std::size_t depth) {
    if (isEmpty(state)) {
        return true;
    }
    m_work->spend(1 + options.size() / 16);
    const std::uint64_t key = keyOf(state);
    if (!goesOn() || m_failed.contains(key)) {
        return false;
    }
    std::vector<Option> kept;
    if (keepPossible(state, options, kept)) {
        for (const Option& option : branches(state, kept)) {
            Choice choice{option.stock, state};
            for (std::size_t k = 0; k < mostCountedKinds; ++k) {
                choice.taken[k] = static_cast<std::int16_t>(choice.taken[k] - option.rest[k]);
            }
            m_chosen.push_back(choice);
            --m_left[option.stock];
            const bool found = cover(option.rest, kept, depth + 1);
            ++m_left[option.stock];
            if (found) {
                return true;
            }
            m_chosen.pop_back();
        }
    }
    if (goesOn() && m_failed.size() < mostFailed) {
        m_failed.insert(key);
    }
    return false;
}

// Those after which the other sheets left could take the rest. False where none could.
bool LoadoutTrial::keepPossible(const Counts& state, std::span<const Option> options,
                                std::vector<Option>& kept) {
    std::vector<std::int64_t> room_;
    for (const Measure& measure : m_measures) {
        const std::int64_t all = room(measure);
        if (all < weightOf(state, measure.ofKind)) {
            return false;
        }
        room_.push_back(all);
    }
    const std::int32_t before = weightOf(state, m_measures[0].ofKind);
    for (const Option& option : options) {
        if (m_left[option.stock] == 0) {
            continue;
        }
        Option now = option;
        now.rest = without(state, *option.counts);
        bool possible = true;
        for (std::size_t m = 0; m < m_measures.size() && possible; ++m) {
            const std::int32_t weight = weightOf(now.rest, m_measures[m].ofKind);
            possible = weight <= room_[m] - m_measures[m].capacity[option.stock];
            now.covered = m == 0 ? before - weight : now.covered;
        }
        if (possible && now.covered > 0) {
            kept.push_back(now);
        }
    }
    return !kept.empty();
}

// The piece that the fewest selections hold: one of these has to be cut.
std::vector<LoadoutTrial::Option> LoadoutTrial::branches(const Counts& state,
                                                         const std::vector<Option>& kept) const {
    std::array<std::size_t, mostCountedKinds> holders{};
    for (const Option& option : kept) {
        for (std::size_t k = 0; k < mostCountedKinds; ++k) {
            holders[k] += option.rest[k] < state[k];
        }
    }
    std::size_t rarest = mostCountedKinds;
    for (std::size_t k = 0; k < mostCountedKinds; ++k) {
        if (state[k] > 0 && (rarest == mostCountedKinds || holders[k] < holders[rarest])) {
            rarest = k;
        }
    }
    std::vector<Option> branches;
    for (const Option& option : kept) {
        if (option.rest[rarest] < state[rarest]) {
            branches.push_back(option);
        }
    }
    std::ranges::stable_sort(branches, std::greater{}, &Option::covered);
    return branches;
}

}  // namespace matwright::sheets
