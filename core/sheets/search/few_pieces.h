// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <vector>

#include "core/sheets/search/reduced.h"
#include "core/sheets/search/work.h"

namespace matwright::sheets {

// Whether a few pieces go on one sheet: the method of ShapeTable, for pieces that are told apart
// and for this question alone, so nothing is kept of how they lie. Made once and asked very often.
class FewPieces {
  public:
    static constexpr std::size_t most = 9;

    explicit FewPieces(const Reduced& reduced);

    // `kinds`: one entry a piece, 1 to `most`. Exact; false as well where the work ends first.
    bool fit(std::span<const int> kinds, const Stock& stock, Work& work);

  private:
    struct Box {
        std::int32_t w;
        std::int32_t h;
    };
    struct Range {
        std::uint32_t begin = 0;
        std::uint32_t end = 0;
    };
    // As in ShapeTable: one table, or two chains of three where stages are limited.
    struct Table {
        bool rows;
        bool stacks;
        int inherits;                                      // an earlier table, or -1: pieces alone
        bool root;                                         // the whole may be one of these
        std::array<Range, std::size_t{1} << most> ranges;  // by the pieces' bits
    };

    void start(std::span<const int> kinds, const Stock& stock);
    std::uint64_t fill(Table& table, std::size_t set);
    void addLeaf(std::size_t piece);
    void joinRows(Range a, Range b);
    void joinStacks(Range a, Range b);
    void offer(Box box);
    bool fitsWhole(const Table& table, std::size_t whole) const;

    const Reduced& m_reduced;
    std::vector<Table> m_tables;
    std::vector<Box> m_boxes;  // each set's: w ascending, h descending
    std::vector<Box> m_front;  // of the set in hand
    std::array<std::int64_t, std::size_t{1} << most> m_areas{};
    std::span<const int> m_kinds;
    std::int32_t m_w = 0;
    std::int32_t m_h = 0;
    std::int64_t m_mostBox = 0;  // what a box of the set in hand may cover
};

}  // namespace matwright::sheets
