// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <limits>
#include <span>
#include <vector>

#include "core/sheets/search/layout.h"
#include "core/sheets/search/weights.h"
#include "core/sheets/search/work.h"

namespace matwright::sheets {

// For every selection from a handful of pieces: the smallest boxes it can be cut from, none of
// which fits into another. Exact and complete: a selection fits on a sheet if and only if one of
// its boxes does.
//
// A box of a selection is two boxes of its halves side by side or one above the other, so the
// shapes of a selection follow from those of all its splits; two lists of boxes, sorted by width,
// are joined in one pass (Stockmeyer 1983, optimal orientations of cells in slicing floorplans,
// used here on all splits as Wang 1983 builds guillotine patterns bottom-up; both from memory).
// Equal pieces are counted, not told apart.
//
// With three stages there are two chains of tables instead of one: rows, stacks of rows, rows of
// stacks of rows, and the same the other way round.
class ShapeTable {
  public:
    struct Limits {
        std::int32_t maxW = 0;  // wider or higher boxes are of no use
        std::int32_t maxH = 0;
        std::int64_t maxArea = 0;    // nor are selections of more area
        std::int64_t maxWaste = -1;  // nor boxes with more waste inside; -1 for no limit
        bool wholeOnly = false;      // ask only whether the whole selection fits, and stop there
        // Selections that these weights forbid on every stock are passed over; may be nullptr.
        const std::vector<Weights>* weights = nullptr;
    };

    // counts[i] pieces of reduced.kinds[i]; kinds with 0 are left out.
    ShapeTable(const Reduced& reduced, std::span<const int> counts, Limits limits);

    // Too large to be tried: the number of selections would exceed `most`.
    static bool isTooLarge(std::span<const int> counts, std::size_t most);

    // Goes on for about this many steps. True once the table is complete; until then nothing may be
    // concluded.
    bool fill(Work& work, std::uint64_t steps = std::numeric_limits<std::uint64_t>::max());

    std::size_t states() const { return m_areas.size(); }
    // The state with all pieces.
    std::size_t whole() const { return m_areas.size() - 1; }
    std::int64_t areaOf(std::size_t state) const { return m_areas[state]; }
    // What one more piece of the kind adds to the number of a state; 0 for a kind left out.
    std::size_t strideOf(int kind) const { return m_strideOfKind[static_cast<std::size_t>(kind)]; }
    std::vector<int> countsOf(std::size_t state) const;

    bool fits(std::size_t state, std::int32_t w, std::int32_t h) const;
    bool hasShape(std::size_t state) const;
    // All boxes of a state that fit, as layouts.
    std::vector<Layout> layoutsOf(std::size_t state, std::int32_t w, std::int32_t h) const;

  private:
    struct Box {
        std::int32_t w;
        std::int32_t h;
        std::int32_t first;   // of a leaf: the kind
        std::int32_t second;  // of a leaf: -1, turned -2
        Group::Form form;
    };
    struct Range {
        std::uint32_t begin = 0;
        std::uint32_t end = 0;
    };
    struct Digit {
        int kind;
        int count;
        std::size_t stride;
    };
    struct Table {
        bool rows;
        bool stacks;
        int inherits;  // an earlier table, or -1: pieces alone
        bool root;     // a whole sheet may be one of these
    };

    void addTables(bool threeStages);
    bool isForbidden() const;
    void fillState(std::size_t state, Work& work);
    void addLeaves(std::size_t state, std::size_t table);
    void addSplits(std::size_t state, std::size_t table, Work& work);
    void joinRows(Range a, Range b);
    void joinStacks(Range a, Range b);
    void offer(Box box);
    bool wholeFound(std::size_t state, std::size_t table) const;
    std::int32_t layOut(Layout& layout, std::size_t box) const;
    Range& range(std::size_t state, std::size_t table) {
        return m_ranges[state * m_tables.size() + table];
    }
    const Range& range(std::size_t state, std::size_t table) const {
        return m_ranges[state * m_tables.size() + table];
    }

    const Reduced& m_reduced;
    Limits m_limits;
    std::vector<Table> m_tables;
    std::vector<Digit> m_digits;
    std::vector<std::size_t> m_strideOfKind;
    std::vector<std::int64_t> m_areas;
    std::vector<Range> m_ranges;
    std::vector<Box> m_boxes;
    std::vector<Box> m_front;  // of the state in hand: w ascending, h descending
    std::vector<int> m_now;    // counts of the state in hand
    std::vector<std::size_t> m_subs;
    std::int64_t m_area = 0;
    std::size_t m_next = 1;  // the first state not yet filled
};

}  // namespace matwright::sheets
