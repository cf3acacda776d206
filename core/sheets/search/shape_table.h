// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <limits>
#include <span>
#include <vector>

#include "core/sheets/search/layout.h"
#include "core/sheets/search/prospects.h"
#include "core/sheets/search/state_index.h"
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
        // Boxes that these do not keep are of no use either; may be nullptr.
        const Prospects* prospects = nullptr;
    };

    // counts[i] pieces of reduced.kinds[i]; kinds with 0 are left out.
    ShapeTable(const Reduced& reduced, std::span<const int> counts, Limits limits);

    // How many ways there are to part selections of at most this area in two: what a table costs at
    // most. Areas are counted in steps of a 500th, so the last digits mean nothing.
    static double splits(const Reduced& reduced, std::span<const int> counts, std::int64_t maxArea);
    // The number of selections would exceed `most`.
    static bool isTooLarge(std::span<const int> counts, std::uint64_t most);

    // Goes on for about this many steps. True once the table is complete; until then nothing may be
    // concluded.
    bool fill(Work& work, std::uint64_t steps = std::numeric_limits<std::uint64_t>::max());

    // A state is a selection's number, below this.
    std::size_t states() const { return m_states; }
    // The state with all pieces.
    std::size_t whole() const { return m_states - 1; }
    // Those that have a shape, ascending.
    std::span<const std::size_t> shaped() const { return std::span(m_stateOf).subspan(1); }
    std::int64_t areaOf(std::size_t state) const;
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
    // The parts of a selection of the higher kinds up to one: the last in the list complements the
    // first, and so on. From the numbers' end on, so that lower kinds are added to what is known.
    struct Parts {
        std::size_t digit = 0;
        std::vector<std::size_t> states;
        std::vector<std::uint32_t> slots;
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
    bool advance();
    void weigh();
    void findParts();
    void fillState(Work& work);
    void addLeaves(std::size_t slot, std::size_t table);
    void addSplits(std::size_t table, Work& work);
    void joinRows(Range a, Range b);
    void joinStacks(Range a, Range b);
    void offer(Box box);
    bool wholeFound(std::size_t state, std::size_t table) const;
    std::int32_t layOut(Layout& layout, std::size_t box) const;
    Range& range(std::size_t slot, std::size_t table) {
        return m_ranges[slot * m_tables.size() + table];
    }
    const Range& range(std::size_t slot, std::size_t table) const {
        return m_ranges[slot * m_tables.size() + table];
    }

    const Reduced& m_reduced;
    Limits m_limits;
    std::vector<Table> m_tables;
    std::vector<Digit> m_digits;
    std::vector<std::size_t> m_strideOfKind;
    std::size_t m_states = 1;
    StateIndex m_slots;                  // of the states that have a shape
    std::vector<std::size_t> m_stateOf;  // of a slot; slot 0 is none
    std::vector<Range> m_ranges;         // a slot's, by table
    std::vector<Box> m_boxes;
    std::vector<Box> m_front;    // of the state in hand: w ascending, h descending
    std::size_t m_state = 0;     // in hand
    std::vector<int> m_now;      // its counts
    std::vector<Parts> m_parts;  // of it, kind by kind from the last one it has to the first
    std::size_t m_depth = 0;     // how many of m_parts are in use
    std::int64_t m_area = 0;
    std::vector<std::int64_t> m_weights;  // by the prospects' measures
    std::size_t m_digit = 0;              // the digit that made it, or that is to be raised next
    bool m_complete = false;
};

}  // namespace matwright::sheets
