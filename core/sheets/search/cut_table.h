// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/sheets/search/layout.h"

namespace matwright::sheets {

// The most value that can be cut from any box up to a sheet's size with any number of copies of
// each kind, by the dynamic programme of Gilmore & Gomory (Oper. Res. 14, 1966) over normal points
// (Herz 1972; Christofides & Whitlock 1977): only sums of piece sides matter as places of cuts, and
// only up to the half of a box. As in Beasley 1985 and Cintra et al. 2008; all from memory. Exact
// for unlimited copies, and an upper bound where copies are limited or the stages are.
class CutTable {
  public:
    // Nothing where the table would cost more than `mostWork` additions. values[i] is of one piece
    // of reduced.kinds[i] and 0 or more; kinds worth 0 play no part. `limitedPoints`: places of
    // cuts only from as many copies as there are (enough for a bound on limited copies).
    static std::optional<CutTable> made(const Reduced& reduced, const Stock& stock,
                                        std::span<const std::int64_t> values, bool limitedPoints,
                                        std::int64_t mostWork);

    std::int64_t best() const { return m_values.back(); }
    // Of a box of any size up to the sheet's.
    std::int64_t valueOf(std::int32_t w, std::int32_t h) const;
    // The patterns' pieces: counts by kind, and how they lie.
    std::vector<int> bestCounts() const;
    Layout bestLayout() const;

    const std::vector<std::int32_t>& widths() const { return m_xs; }
    const std::vector<std::int32_t>& heights() const { return m_ys; }

  private:
    struct Piece {
        std::int32_t w;
        std::int32_t h;
        int kind;
        bool turned;
        std::int64_t value;
    };

    CutTable() = default;
    void collectPieces(std::span<const std::int64_t> values);
    void fill();
    void startColumn(std::size_t x);
    void cutAcrossColumn(std::size_t x);
    std::int64_t& at(std::size_t x, std::size_t y) { return m_values[x * m_ys.size() + y]; }
    std::int64_t at(std::size_t x, std::size_t y) const { return m_values[x * m_ys.size() + y]; }
    std::int32_t layOut(Layout& layout, std::size_t x, std::size_t y) const;
    std::int32_t layOutCut(Layout& layout, std::size_t x, std::size_t y) const;

    const Reduced* m_reduced = nullptr;
    std::vector<Piece> m_pieces;
    std::vector<std::int32_t> m_xs;  // ascending, from 0
    std::vector<std::int32_t> m_ys;
    std::vector<std::int64_t> m_values;
};

// The sums of sides (width, or height for `level`) up to `limit`, ascending from 0; with limited
// copies where asked for. Kinds with value 0 left out. Nothing where there are more than `most`.
std::optional<std::vector<std::int32_t>> normalPoints(const Reduced& reduced,
                                                      std::span<const std::int64_t> values,
                                                      const Stock& stock, bool level, bool limited,
                                                      std::size_t most);
// Index of the largest point that is not above the length.
std::size_t pointBelow(const std::vector<std::int32_t>& points, std::int32_t length);

}  // namespace matwright::sheets
