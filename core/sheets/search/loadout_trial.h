// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <unordered_set>
#include <vector>

#include "core/sheets/search/loadout.h"
#include "core/sheets/search/selection_lists.h"
#include "core/sheets/search/work.h"

namespace matwright::sheets {

// Whether one loadout holds all pieces, by branching over the full selections of its sheets, where
// all of these are known.
//
// Before that, weights that make the loadout's capacity small against the pieces (LoadoutScale)
// strike out selections: what the sheets could take more than the pieces weigh is all that one
// sheet may waste, so a selection that wastes more is in no solution (reduced cost fixing, as in
// branch and price; Vance, Barnhart, Johnson & Nemhauser 1994). Fewer selections make for smaller
// capacities and better weights, so that is done in rounds.
class LoadoutTrial {
  public:
    // `areas`: of the kinds. The lists are all stocks'.
    LoadoutTrial(const std::vector<SelectionList>& lists, const Counts& asked,
                 const SmallWeights& areas, Loadout loadout);

    enum class Outcome { Found, Impossible, NotYet };
    // Goes on until about this many steps have been spent in all. Called again, it begins the
    // branching anew, but knows what failed.
    Outcome run(std::uint64_t end, Work& work);

    struct Choice {
        std::size_t stock = 0;
        Counts taken{};  // exactly what this sheet holds
    };
    const std::vector<Choice>& found() const { return m_chosen; }

  private:
    struct Measure {
        SmallWeights ofKind;
        std::vector<std::int64_t> capacity;  // of each stock
    };
    struct Option {
        std::size_t stock = 0;
        const Counts* counts = nullptr;
        std::int32_t covered = 0;  // by the first measure
        Counts rest{};
    };

    bool strikeOut(Work& work);
    bool isCovered() const;
    void add(const SmallWeights& weights);
    bool strikeOutBy(const Measure& measure);
    bool cover(const Counts& state, std::span<const Option> options, std::size_t depth);
    bool keepPossible(const Counts& state, std::span<const Option> options,
                      std::vector<Option>& kept);
    std::vector<Option> branches(const Counts& state, const std::vector<Option>& kept) const;
    std::int64_t room(const Measure& measure) const;
    std::uint64_t keyOf(const Counts& state) const;
    bool goesOn() { return !m_work->over() && m_work->spent() < m_end; }

    std::vector<SelectionList> m_lists;
    Counts m_asked;
    Loadout m_left;
    std::vector<Measure> m_measures;
    bool m_struckOut = false;
    bool m_impossible = false;
    Work* m_work = nullptr;
    std::uint64_t m_end = 0;
    std::vector<Choice> m_chosen;
    std::unordered_set<std::uint64_t> m_failed;
};

}  // namespace matwright::sheets
