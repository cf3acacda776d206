// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <unordered_set>
#include <vector>

#include "core/sheets/search/layout.h"
#include "core/sheets/search/work.h"

namespace matwright::sheets {

// Which plans in the making look good. Waste is what lies before the frontier and is not covered.
enum class Guide {
    LeastWaste,       // waste / area before the frontier
    LeastWasteLarge,  // (0.1 + that) / mean area of the pieces laid: large pieces first
};

struct TreeSearchResult {
    bool complete = false;        // every piece lies on a sheet
    std::int64_t packedArea = 0;  // of the best node
    std::vector<Layout> layouts;  // one for each sheet asked for, some may be empty
};

// Lays pieces one after the other: into the row in hand, a new row on the strip in hand, a new
// strip, or the next sheet, so that every plan has three stages. The most promising plan in the
// making is carried on; of the others only the `queue` best are kept.
//
// After Libralesso & Fontan, An anytime tree search algorithm for the 2018 ROADEF/EURO challenge
// glass cutting problem (EJOR 2021), from memory: the branching and the guides. An insertion that
// fits into waste already there rules out all that open something new: from any plan without it
// the piece can be moved there.
class TreeSearch {
  public:
    explicit TreeSearch(const Reduced& reduced);

    struct Task {
        std::span<const int> counts;  // of each kind
        std::span<const int> sheets;  // stocks in the order they are filled
        Guide guide = Guide::LeastWaste;
        bool stripsLevel = false;  // the first cuts go level instead of upright
        std::size_t queue = 1;
        std::size_t maxNodes = 200'000;
        bool mayLeave = false;  // pieces may be left over; else plans that must are dropped
    };
    // Deterministic for the task, unless the work ends first; then what there is by then.
    TreeSearchResult run(const Task& task, Work& work);

  private:
    struct Node {
        std::int32_t parent = -1;
        std::int32_t kind = -1;
        bool turned = false;
        std::uint8_t depth = 0;  // 0 new sheet, 1 new strip, 2 new row, 3 same row
        std::int32_t sheet = -1;
        std::int32_t x1p = 0, x1 = 0, y2p = 0, y2 = 0, x3 = 0;
        std::int64_t packed = 0;
        std::int32_t laid = 0;
        std::uint64_t key = 0;  // of the pieces laid
    };
    struct Side {
        std::int32_t w;
        std::int32_t h;
    };

    void expand(std::int32_t parent);
    void skipSheet(const Node& node, std::size_t row);
    // Whether the piece fits into waste: then nothing may be opened.
    bool insert(const Node& node, int kind, bool turned, int depth);
    void consider(const Node& child);
    std::int64_t frontier(const Node& node) const;
    double guideOf(const Node& node) const;
    std::vector<Layout> layoutsOf(std::int32_t node) const;
    void prepare(const Task& task);
    Side sideOf(int kind, bool turned) const {
        return m_sides[static_cast<std::size_t>(kind) * 2 + turned];
    }
    Side sheetOf(int sheet) const { return m_sheets[static_cast<std::size_t>(sheet)]; }

    const Reduced& m_reduced;
    const Task* m_task = nullptr;
    Work* m_work = nullptr;
    std::vector<std::uint64_t> m_codes;  // of the kinds
    std::vector<Side> m_sides;           // of the kinds, as they are and turned
    std::vector<char> m_turn;
    std::vector<Side> m_sheets;          // of the task
    std::vector<int> m_used;             // kinds in the task
    std::vector<std::int64_t> m_before;  // area of the sheets before each
    std::vector<Node> m_nodes;
    std::vector<std::uint16_t> m_left;                    // pieces left, by node and used kind
    std::vector<std::pair<double, std::int32_t>> m_open;  // best last
    std::unordered_set<std::uint64_t> m_seen;
    std::size_t m_dropped = 0;  // of m_open: the worst, no longer in the queue
    std::int64_t m_total = 0;
    std::int32_t m_best = 0;
    int m_pieces = 0;
    std::int32_t m_parent = 0;
    std::size_t m_slot = 0;
    bool m_complete = false;
};

// A spread-out 64-bit number for n (SplitMix64, Vigna; from memory).
constexpr std::uint64_t scattered(std::uint64_t n) {
    n += 0x9E3779B97F4A7C15U;
    n = (n ^ (n >> 30)) * 0xBF58476D1CE4E5B9U;
    n = (n ^ (n >> 27)) * 0x94D049BB133111EBU;
    return n ^ (n >> 31);
}

}  // namespace matwright::sheets
