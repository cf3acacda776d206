// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "core/sheets/search/selection_lists.h"
#include "core/sheets/search/work.h"

namespace matwright::sheets {

// By how much a loadout would have to be multiplied to hold the pieces if sheets could be divided:
// the linear programme over selections (Gilmore & Gomory, Oper. Res. 9, 1961; from memory), solved
// by the revised simplex method with the basis' inverse, columns taken from the lists as they are
// needed. What it is solved for is its prices: of all weights of pieces they make the loadout's
// capacity smallest against the pieces' sum. Rounding errors do no harm: the prices become whole
// weights, and capacities are counted anew from the lists.
class LoadoutScale {
  public:
    // lists[s] and loadout[s] of each stock; every kind asked for is in a list of a stock of the
    // loadout. Lists may become longer between calls.
    LoadoutScale(const std::vector<SelectionList>& lists, const Counts& asked,
                 std::span<const int> loadout);

    // At most so many steps.
    void run(int steps, Work& work);
    // The prices by now, of the dearest kind 1.
    std::vector<double> prices() const;
    SmallWeights smallPrices() const;

  private:
    struct Column {
        std::size_t stock;
        const Counts* counts;
    };

    double dearest() const;
    void start();
    void invert();
    bool step(Work& work);
    Column bestColumn(Work& work) const;
    bool enter(const std::vector<double>& column);
    double& inverse(std::size_t row, std::size_t column) { return m_inverse[row * m_n + column]; }
    double inverse(std::size_t row, std::size_t column) const {
        return m_inverse[row * m_n + column];
    }

    const std::vector<SelectionList>& m_lists;
    std::vector<std::size_t> m_kinds;   // rows: kinds asked for,
    std::vector<std::size_t> m_stocks;  // then stocks of the loadout
    std::vector<double> m_asked;
    std::vector<double> m_count;  // sheets of each of m_stocks
    std::size_t m_n = 0;
    std::size_t m_scaleRow = 0;     // where the scale stands in the basis
    std::vector<double> m_basis;    // to begin with; columns one after the other
    std::vector<double> m_inverse;  // rows one after the other
    std::vector<double> m_amount;   // of the basis' columns
};

}  // namespace matwright::sheets
