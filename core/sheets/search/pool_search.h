// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "core/sheets/search/layout.h"
#include "core/sheets/search/sheet_packer.h"

namespace matwright::sheets {

// Tries to get all pieces onto a given set of sheets. Every sheet always holds a selection that can
// be cut; the other pieces wait in a pool. Pieces of a sheet change places with pieces of the pool,
// or of another sheet, until the pool is empty.
//
// The neighbourhood of Buljubasic & Vasquez (Consistent neighborhood search for one-dimensional bin
// packing and two-dimensional vector packing, Computers & OR 76, 2016), with the acceptance of
// simulated annealing in place of their tabu list; from memory. Its random numbers come from the
// seed, so a run is deterministic for its seed and steps.
class PoolSearch {
  public:
    PoolSearch(const Reduced& reduced, SheetPacker& packer, std::uint64_t seed);

    // `sheets`: a stock each. Layouts may be empty; pieces they do not hold go to the pool.
    void start(const std::vector<int>& sheets, const std::vector<Layout>& layouts);
    // True once the pool is empty; false after `moves`, about so many steps, or when the work ends.
    // Cools down over all of them, so a long run is more than two short ones.
    bool run(std::uint64_t moves, std::uint64_t steps, Work& work);

    std::vector<FilledSheet> filled();

  private:
    struct Sheet {
        int stock;
        std::vector<int> kinds;
        double load = 0;  // share of its area that is covered
    };

    void fillFromPool(Work& work);
    void swapWithPool(double heat, Work& work);
    void swapSheets(double heat, Work& work);
    double worthOf(int kind) const { return m_worth[static_cast<std::size_t>(kind)]; }
    double shareOf(int kind, const Sheet& sheet) const;
    std::uint64_t random();
    std::size_t below(std::size_t n) { return static_cast<std::size_t>(random() % n); }
    bool accepts(double loss, double heat);

    const Reduced& m_reduced;
    SheetPacker& m_packer;
    std::uint64_t m_state;
    std::vector<double> m_worth;
    double m_meanWorth = 0;
    std::vector<Sheet> m_sheets;
    std::vector<int> m_pool;
    std::vector<int> m_kinds;  // a sheet's pieces as they would be
    std::vector<int> m_others;
};

}  // namespace matwright::sheets
