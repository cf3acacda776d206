// SPDX-License-Identifier: MIT
#include "core/carry/springs.h"

#include <algorithm>
#include <cmath>

#include "core/measure/length.h"

namespace matwright::carry {

namespace {

constexpr double inch = Length::ticksPerInch;
// Stretches shorter than this are as stiff as if they were this long.
constexpr double shortest = inch / 8;
// Of a bound that is reached, against an ordinary spring of an inch.
constexpr double boundStiffness = 1e7 / inch;
constexpr double anchorStiffness = 1e-4 / inch;
constexpr int mostRounds = 40;

// A symmetric, positive definite system solved by Cholesky's method; `m` is overwritten.
std::vector<double> solvedSystem(std::vector<std::vector<double>>& m, std::vector<double> b) {
    const std::size_t n = b.size();
    for (std::size_t j = 0; j < n; ++j) {
        for (std::size_t k = 0; k < j; ++k) {
            for (std::size_t i = j; i < n; ++i) {
                m[i][j] -= m[i][k] * m[j][k];
            }
        }
        // Rounding may take the last digit of what is hardly held.
        const double root = std::sqrt(std::max(m[j][j], 1e-15));
        for (std::size_t i = j; i < n; ++i) {
            m[i][j] /= root;
        }
    }
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            b[i] -= m[i][k] * b[k];
        }
        b[i] /= m[i][i];
    }
    for (std::size_t i = n; i-- > 0;) {
        for (std::size_t k = i + 1; k < n; ++k) {
            b[i] -= m[k][i] * b[k];
        }
        b[i] /= m[i][i];
    }
    return b;
}

}  // namespace

double lengthOf(const Stretch& stretch, const std::vector<double>& places) {
    return places[stretch.b] - places[stretch.a] + stretch.shift;
}

Springs::Springs(std::vector<double> start, Shares shares)
    : m_start(std::move(start)), m_shares(shares), m_pivotRow(m_start.size(), none) {}

bool Springs::require(const Terms& terms, double value) {
    Row row;
    row.coefficients.resize(m_start.size());
    row.value = value;
    for (const auto& [point, coefficient] : terms) {
        if (point != 0) {
            row.coefficients[point] += coefficient;
        }
    }
    const auto subtract = [](Row& from, const Row& other, double factor) {
        for (std::size_t i = 0; i < from.coefficients.size(); ++i) {
            from.coefficients[i] -= factor * other.coefficients[i];
        }
        from.value -= factor * other.value;
    };
    for (const Row& earlier : m_rows) {
        subtract(row, earlier, row.coefficients[earlier.pivot]);
    }
    const auto largest =
        std::ranges::max_element(row.coefficients, {}, [](double c) { return std::abs(c); });
    if (largest == row.coefficients.end() || std::abs(*largest) < 1e-6) {
        return std::abs(row.value) <= 1.5;
    }
    row.pivot = static_cast<std::size_t>(largest - row.coefficients.begin());
    const double scale = *largest;
    for (double& c : row.coefficients) {
        c = std::abs(c) < 1e-9 ? 0 : c / scale;
    }
    row.value /= scale;
    for (Row& earlier : m_rows) {
        subtract(earlier, row, earlier.coefficients[row.pivot]);
    }
    m_pivotRow[row.pivot] = m_rows.size();
    m_rows.push_back(std::move(row));
    return true;
}

void Springs::followEquations(std::vector<double>& places) const {
    for (const Row& row : m_rows) {
        double place = row.value;
        for (std::size_t i = 1; i < places.size(); ++i) {
            if (i != row.pivot && m_pivotRow[i] == none) {
                place -= row.coefficients[i] * places[i];
            }
        }
        places[row.pivot] = place;
    }
}

std::vector<double> Springs::solved(const std::vector<double>& stiffness,
                                    const std::vector<bool>& active) const {
    // Free points take the columns; a dependent one is a sum of free ones.
    std::vector<std::size_t> column(m_start.size(), none);
    std::vector<std::size_t> points;
    for (std::size_t i = 1; i < m_start.size(); ++i) {
        if (m_pivotRow[i] == none) {
            column[i] = points.size();
            points.push_back(i);
        }
    }
    const std::size_t n = points.size();
    std::vector<std::vector<double>> matrix(n, std::vector<double>(n));
    std::vector<double> right(n);
    std::vector<double> line(n);
    std::vector<std::size_t> used;
    double constant = 0;
    const auto put = [&](std::size_t point, double sign) {
        if (point == 0) {
            return;
        }
        if (column[point] != none) {
            line[column[point]] += sign;
            used.push_back(column[point]);
            return;
        }
        const Row& row = m_rows[m_pivotRow[point]];
        constant += sign * row.value;
        for (std::size_t k = 0; k < n; ++k) {
            if (row.coefficients[points[k]] != 0) {
                line[k] -= sign * row.coefficients[points[k]];
                used.push_back(k);
            }
        }
    };
    const auto pull = [&](const Stretch& stretch, double target, double k) {
        used.clear();
        constant = stretch.shift;
        put(stretch.b, 1);
        put(stretch.a, -1);
        std::ranges::sort(used);
        used.erase(std::ranges::unique(used).begin(), used.end());
        for (const std::size_t i : used) {
            for (const std::size_t j : used) {
                matrix[i][j] += k * line[i] * line[j];
            }
            right[i] += k * line[i] * (target - constant);
        }
        for (const std::size_t i : used) {
            line[i] = 0;
        }
    };
    for (std::size_t i = 1; i < m_start.size(); ++i) {
        pull({0, i, 0}, m_start[i], anchorStiffness);
    }
    for (std::size_t s = 0; s < m_springs.size(); ++s) {
        pull(m_springs[s].stretch, m_springs[s].rest, stiffness[s]);
    }
    for (std::size_t s = 0; s < m_bounds.size(); ++s) {
        if (active[s]) {
            pull(m_bounds[s].stretch, m_bounds[s].least, boundStiffness);
        }
    }
    const std::vector<double> values = solvedSystem(matrix, std::move(right));
    std::vector<double> places(m_start.size());
    for (std::size_t k = 0; k < n; ++k) {
        places[points[k]] = values[k];
    }
    followEquations(places);
    return places;
}

bool Springs::updateActive(const std::vector<double>& places, std::vector<bool>& active) const {
    bool changed = false;
    for (std::size_t i = 0; i < m_bounds.size(); ++i) {
        const double over = lengthOf(m_bounds[i].stretch, places) - m_bounds[i].least;
        const bool needed = active[i] ? over <= 0 : over < -1;
        changed |= needed != active[i];
        active[i] = needed;
    }
    return changed;
}

bool Springs::missesMore(const std::vector<double>& places, const std::vector<double>& settled,
                         double forgiven) const {
    return std::ranges::any_of(m_bounds, [&](const Bound& bound) {
        const double missed = bound.least - lengthOf(bound.stretch, places);
        const double before = bound.least - lengthOf(bound.stretch, settled);
        return missed > std::max(before, 0.0) + forgiven;
    });
}

std::vector<double> Springs::settle() const {
    std::vector<double> places = m_start;
    followEquations(places);
    std::vector<bool> active(m_bounds.size());
    std::vector<double> stiffness(m_springs.size());
    for (int round = 0; round < mostRounds; ++round) {
        for (std::size_t i = 0; i < m_springs.size(); ++i) {
            const Spring& spring = m_springs[i];
            // At first nothing is known of the length to come.
            const double length = round == 0 ? spring.rest : lengthOf(spring.stretch, places);
            stiffness[i] =
                spring.weight /
                (m_shares == Shares::Even ? inch : std::max((spring.rest + length) / 2, shortest));
        }
        std::vector<double> next = solved(stiffness, active);
        double moved = 0;
        for (std::size_t i = 0; i < next.size(); ++i) {
            moved = std::max(moved, std::abs(next[i] - places[i]));
        }
        places = std::move(next);
        if (!updateActive(places, active) && moved < 1) {
            break;
        }
    }
    return places;
}

}  // namespace matwright::carry
