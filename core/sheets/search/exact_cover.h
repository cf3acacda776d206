// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

#include "core/sheets/search/layout.h"
#include "core/sheets/search/loadout.h"
#include "core/sheets/search/shape_table.h"

namespace matwright::sheets {

// The cheapest sheets for a handful of pieces, proved: all selections that fit on some sheet
// (ShapeTable), then branching over which of them goes with the largest piece that is left. Only
// selections to which nothing could be added are tried, and states that failed within a budget are
// remembered.
class ExactCover {
  public:
    // More selections than this are not tried.
    static constexpr std::size_t mostStates = 4'500'000;

    // `mostWaste`: what the sheets that come into question have more than the pieces, in square
    // units; -1 where that is not known. No sheet can then have more waste than this.
    ExactCover(const Reduced& reduced, const std::vector<Weights>& weights, std::int64_t mostWaste);

    static bool isTooLarge(const Reduced& reduced);

    enum class Outcome { Found, Impossible, NotYet };
    // Whether all pieces can be cut at no more than this cost; NotYet after about so many steps.
    // Called again, it goes on: the table and the failed states are kept. The budget may only
    // become smaller, as far as mostWaste was meant for the first one.
    Outcome run(std::int64_t budget, std::uint64_t steps, Work& work);
    bool isFilled() const { return !m_part.empty(); }
    // Of the last run that found something.
    const std::vector<FilledSheet>& filled() const { return m_filled; }

  private:
    struct Choice {
        std::size_t state;
        int stock;
    };

    void markParts();
    bool cover(std::size_t state, std::int64_t budget);
    void collect(std::size_t digit, std::size_t sub, std::size_t state, std::int64_t budget,
                 std::vector<Choice>& choices);
    void addChoices(std::size_t sub, std::size_t state, std::int64_t budget,
                    std::vector<Choice>& choices);
    bool goesOn() { return m_work->spend() && m_work->spent() < m_end; }
    bool isEnough(std::size_t state, std::int64_t budget) const;
    bool canGrow(std::size_t sub, std::size_t state, const Stock& stock) const;
    int countOf(std::size_t state, std::size_t kind) const;
    std::uint64_t keyOf(std::size_t state) const;

    const Reduced& m_reduced;
    const std::vector<Weights>& m_weights;
    ShapeTable m_table;
    std::vector<char> m_part;  // by state: a part of a selection that has a shape, or all of it
    Work* m_work = nullptr;
    std::uint64_t m_end = 0;  // of this run, in steps spent
    std::vector<int> m_left;  // of each stock
    std::vector<Choice> m_chosen;
    std::unordered_map<std::uint64_t, std::int64_t> m_failed;  // largest budget that was too small
    std::vector<FilledSheet> m_filled;
};

}  // namespace matwright::sheets
