// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include "core/sheets/search/exact_cover.h"
#include "core/sheets/search/layout.h"
#include "core/sheets/search/loadout.h"
#include "core/sheets/search/pool_search.h"
#include "core/sheets/search/sheet_packer.h"
#include "core/sheets/search/tree_search.h"

namespace matwright::sheets {

// The search for one paper: a plan at once, then better ones until it is proved or the work ends.
// Bounds (weights over loadouts) say which sets of cheaper sheets could be enough; each of these is
// tried by exact cover where the pieces are few, else by tree search and pool search in turns with
// growing effort.
class PaperSearch {
  public:
    explicit PaperSearch(Reduced reduced);

    // A first plan, at once; nothing is known about its bound.
    void layFirst(Work& work);
    // Bounds, after that.
    void begin(Work& work);
    // Goes on for about this many steps. Does nothing once it is done.
    void goOn(std::uint64_t steps, Work& work);
    // Proved best, or nothing left to try.
    bool done() const { return m_proved || m_reduced.kinds.empty(); }

    bool proved() const { return m_proved; }
    const std::vector<FilledSheet>& filled() const { return m_filled; }
    std::int64_t cost() const;
    std::int64_t bound() const { return m_bound; }
    // Pieces that the sheets at hand had no room for, by kind.
    const std::vector<int>& missing() const { return m_missing; }
    bool isComplete() const;

    // The second goal: the largest leftover in one piece, on the sheets of the plan found.
    void gatherLeftover(Work& work);

  private:
    void tryOrder(const std::vector<int>& sheets, Work& work);
    void take(std::vector<FilledSheet> filled, const std::vector<int>& missing);
    void cheapenSheets();
    void refreshCandidates();
    void sharpen(Work& work);
    std::vector<Loadout> nearbyLoadouts() const;
    std::uint64_t exactShare() const;
    void tryExactly(std::uint64_t steps, Work& work);
    std::int64_t mostWaste() const;
    void tryNext(Work& work);
    bool tryTree(const std::vector<int>& sheets, Work& work, std::vector<Layout>& best);
    std::vector<int> expanded(const Loadout& loadout) const;

    const Reduced m_reduced;
    std::vector<int> m_counts;
    std::vector<Weights> m_weights;
    std::unique_ptr<LoadoutCover> m_cover;
    std::unique_ptr<SheetPacker> m_packer;
    std::unique_ptr<ExactCover> m_exact;
    std::int64_t m_exactWaste = 0;
    double m_splits = 0;  // what exact cover's table may cost
    bool m_mayBeExact = false;
    bool m_isSharp = false;  // improved as far as may be
    TreeSearch m_tree;
    std::vector<FilledSheet> m_filled;
    std::vector<int> m_missing;
    std::int64_t m_bound = 0;
    bool m_proved = false;
    std::vector<Loadout> m_candidates;
    bool m_allCandidates = false;  // if none of them is enough, no cheaper loadout is
    std::size_t m_next = 0;
    int m_round = 0;
    std::uint64_t m_seed = 1;
};

}  // namespace matwright::sheets
