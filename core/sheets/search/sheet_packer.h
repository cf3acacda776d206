// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <unordered_map>
#include <vector>

#include "core/sheets/search/few_pieces.h"
#include "core/sheets/search/layout.h"
#include "core/sheets/search/shape_table.h"
#include "core/sheets/search/tree_search.h"
#include "core/sheets/search/weights.h"

namespace matwright::sheets {

// Answers whether some pieces go together on one sheet, and remembers it. Yes is always true. No is
// exact up to `exactPieces` pieces (FewPieces, ShapeTable) and wherever weights or a pair of pieces
// forbid it; above that it means "not found" by a short tree search.
class SheetPacker {
  public:
    static constexpr int exactPieces = FewPieces::most;

    SheetPacker(const Reduced& reduced, const std::vector<Weights>& weights);

    // `kinds`: one entry a piece.
    bool packs(std::span<const int> kinds, int stock, Work& work);
    // How they lie, after packs() or remember() said yes; of at least one piece.
    Layout layout(std::span<const int> kinds, int stock);
    void remember(const Layout& layout, int stock);
    // How wide the short tree search is; what was not found is asked anew.
    void setQueue(std::size_t queue) { m_queue = queue; }

  private:
    bool isImpossible(std::span<const int> kinds, int stock) const;
    bool findLayout(std::span<const int> kinds, int stock, Work& work, std::uint64_t key);
    ShapeTable::Limits limitsFor(std::span<const int> kinds, const Stock& stock) const;
    bool packsExactly(std::span<const int> kinds, int stock, Work& work);
    bool findByTree(std::span<const int> kinds, int stock, Work& work, std::uint64_t key);
    std::uint64_t keyOf(std::span<const int> kinds, int stock) const;
    std::vector<int> countsOf(std::span<const int> kinds) const;

    static constexpr std::int32_t exactYes = -2;

    const Reduced& m_reduced;
    const std::vector<Weights>& m_weights;
    TreeSearch m_tree;
    FewPieces m_few;
    std::size_t m_queue = 4;
    std::vector<std::vector<char>> m_apart;  // by stock: pairs of kinds that never share a sheet
    std::unordered_map<std::uint64_t, std::int32_t> m_yes;  // index of a layout, or exactYes
    std::unordered_map<std::uint64_t, std::size_t> m_no;    // the queue it was not found with
    std::vector<Layout> m_layouts;
};

}  // namespace matwright::sheets
