// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <utility>
#include <vector>

namespace matwright::carry {

// x[b] - x[a], plus `shift`, in ticks. Point 0 never moves: its x is 0.
struct Stretch {
    std::size_t a = 0;
    std::size_t b = 0;
    double shift = 0;
};

// A stretch that would like to be `rest` long. It gives way in proportion to its length, so that of
// several in a row each takes its share.
struct Spring {
    Stretch stretch;
    double rest = 0;
    double weight = 1;
};

// A stretch that may not be shorter than `least`.
struct Bound {
    Stretch stretch;
    double least = 0;
};

// Points on a line, springs between them, bounds and exact linear equations.
//
// The springs' energy is least under the equations (eliminated first, so they hold to rounding) and
// the bounds (an active set, each kept by a very stiff spring). Shares in proportion: a spring's
// stiffness is its weight over the mean of its length at rest and its length as it becomes, the
// same seen from either side. Even shares: it is the weight alone, so that places are a linear
// function of the ends and stretching back exactly undoes stretching.
class Springs {
  public:
    enum class Shares { InProportion, Even };

    // `start` are the points' places to begin from; where nothing else says, they stay near.
    Springs(std::vector<double> start, Shares shares);

    // Sum of coefficient * x = value. False, and nothing changes, where it contradicts earlier
    // equations by more than a tick.
    using Terms = std::vector<std::pair<std::size_t, double>>;
    bool require(const Terms& terms, double value);

    void add(const Spring& spring) { m_springs.push_back(spring); }
    void add(const Bound& bound) { m_bounds.push_back(bound); }

    // The places at rest.
    std::vector<double> settle() const;
    // Whether some bound is missed at `places` by more than at `settled` and `forgiven` ticks.
    bool missesMore(const std::vector<double>& places, const std::vector<double>& settled,
                    double forgiven) const;
    // Whether the equations say where the point is once others are known.
    bool isDependent(std::size_t point) const { return m_pivotRow[point] != none; }
    // The dependent points worked out anew from the others.
    void followEquations(std::vector<double>& places) const;

  private:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);
    struct Row {
        std::vector<double> coefficients;
        double value = 0;
        std::size_t pivot = none;
    };

    std::vector<double> solved(const std::vector<double>& stiffness,
                               const std::vector<bool>& active) const;
    bool updateActive(const std::vector<double>& places, std::vector<bool>& active) const;

    std::vector<double> m_start;
    Shares m_shares;
    std::vector<Row> m_rows;
    std::vector<std::size_t> m_pivotRow;
    std::vector<Spring> m_springs;
    std::vector<Bound> m_bounds;
};

double lengthOf(const Stretch& stretch, const std::vector<double>& places);

}  // namespace matwright::carry
