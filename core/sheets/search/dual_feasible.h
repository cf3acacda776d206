// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

namespace matwright::sheets {

// A dual feasible function over whole lengths 0 .. side: whatever lengths fit side by side into
// `side`, their images add up to at most `capacity`. (Fekete & Schepers, Math. Programming 91,
// 2001; Carlier, Clautiaux & Moukrim, Computers & OR 34, 2007; formulas from memory, the property
// itself is tested.)
class DualFeasible {
  public:
    enum class Form {
        Identity,
        Steps,      // u(k): multiples of side / (k + 1), parameter k
        Threshold,  // U(e): below e nothing, above side - e all, parameter e
        Halves,     // larger than a half against multiples of k, parameter k
    };

    DualFeasible(Form form, std::int64_t side, std::int64_t parameter)
        : m_form(form), m_side(side), m_parameter(parameter) {}

    std::int64_t capacity() const;
    std::int64_t operator()(std::int64_t length) const;

  private:
    Form m_form;
    std::int64_t m_side;
    std::int64_t m_parameter;
};

// Those that can matter for pieces with these sides.
std::vector<DualFeasible> dualFeasibleFor(std::int64_t side,
                                          const std::vector<std::int64_t>& sides);

}  // namespace matwright::sheets
