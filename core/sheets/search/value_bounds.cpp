// SPDX-License-Identifier: MIT
#include "core/sheets/search/value_bounds.h"

#include <algorithm>
#include <cmath>

namespace matwright::sheets {

std::optional<ValueBounds> ValueBounds::made(const Reduced& reduced, const Stock& stock,
                                             const std::vector<std::int64_t>& values, Work& work,
                                             std::int64_t mostWork) {
    constexpr std::size_t mostPoints = 4000;
    auto xs = normalPoints(reduced, values, stock, false, true, mostPoints);
    auto ys = normalPoints(reduced, values, stock, true, true, mostPoints);
    if (!xs || !ys) {
        return std::nullopt;
    }
    const auto nx = static_cast<std::int64_t>(xs->size());
    const auto ny = static_cast<std::int64_t>(ys->size());
    if (nx * ny * (nx + ny) > mostWork) {
        return std::nullopt;
    }
    ValueBounds bounds;
    bounds.m_xs = std::move(*xs);
    bounds.m_ys = std::move(*ys);
    bounds.m_xIndex = denseIndex(bounds.m_xs);
    bounds.m_yIndex = denseIndex(bounds.m_ys);
    bounds.fillInside(reduced, values);
    bounds.fillAround();
    work.spend(static_cast<std::uint64_t>(nx * ny * (nx + ny)) / 16);
    return bounds;
}

std::vector<std::int32_t> ValueBounds::denseIndex(const std::vector<std::int32_t>& points) {
    constexpr std::int32_t mostLengths = 4'000'000;
    std::vector<std::int32_t> dense;
    if (points.back() > mostLengths) {
        return dense;
    }
    for (std::size_t i = 0; i < points.size(); ++i) {
        const std::int32_t next = i + 1 < points.size() ? points[i + 1] : points[i] + 1;
        dense.resize(static_cast<std::size_t>(next), static_cast<std::int32_t>(i));
    }
    return dense;
}

std::int64_t ValueBounds::byArea(const Reduced& reduced, const std::vector<std::int64_t>& values,
                                 std::int32_t w, std::int32_t h) const {
    double room = static_cast<double>(w) * h;
    double value = 0;
    for (const int k : m_byDensity) {
        const Kind& kind = reduced.kinds[static_cast<std::size_t>(k)];
        if (!Stock{w, h, 0, 0, 0}.holds(kind)) {
            continue;
        }
        const double taken =
            std::min(static_cast<double>(kind.count), room / static_cast<double>(kind.area()));
        value += taken * static_cast<double>(values[static_cast<std::size_t>(k)]);
        room -= taken * static_cast<double>(kind.area());
        if (room <= 0) {
            break;
        }
    }
    return static_cast<std::int64_t>(std::floor(value * (1 + 1e-12) + 1e-6));
}

void ValueBounds::fillInside(const Reduced& reduced, const std::vector<std::int64_t>& values) {
    m_byDensity.clear();
    for (std::size_t i = 0; i < reduced.kinds.size(); ++i) {
        if (values[i] > 0) {
            m_byDensity.push_back(static_cast<int>(i));
        }
    }
    std::ranges::stable_sort(m_byDensity, std::greater{}, [&](int k) {
        const auto i = static_cast<std::size_t>(k);
        return static_cast<double>(values[i]) / static_cast<double>(reduced.kinds[i].area());
    });
    const std::size_t nx = m_xs.size();
    const std::size_t ny = m_ys.size();
    m_inside.assign(nx * ny, 0);
    for (std::size_t x = 1; x < nx; ++x) {
        for (std::size_t y = 1; y < ny; ++y) {
            std::int64_t best = std::max(m_inside[(x - 1) * ny + y], m_inside[x * ny + y - 1]);
            for (const int k : m_byDensity) {
                const auto i = static_cast<std::size_t>(k);
                if (values[i] > best && Stock{m_xs[x], m_ys[y], 0, 0, 0}.holds(reduced.kinds[i])) {
                    best = values[i];
                }
            }
            for (std::size_t k = 1; k < x && 2 * m_xs[k] <= m_xs[x]; ++k) {
                const std::size_t rest = indexOf(m_xIndex, m_xs, m_xs[x] - m_xs[k]);
                best = std::max(best, m_inside[k * ny + y] + m_inside[rest * ny + y]);
            }
            for (std::size_t k = 1; k < y && 2 * m_ys[k] <= m_ys[y]; ++k) {
                const std::size_t rest = indexOf(m_yIndex, m_ys, m_ys[y] - m_ys[k]);
                best = std::max(best, m_inside[x * ny + k] + m_inside[x * ny + rest]);
            }
            m_inside[x * ny + y] = std::min(best, byArea(reduced, values, m_xs[x], m_ys[y]));
        }
    }
}

void ValueBounds::fillAround() {
    const std::size_t nx = m_xs.size();
    const std::size_t ny = m_ys.size();
    m_around.assign(nx * ny, 0);
    for (std::size_t x = nx; x-- > 0;) {
        for (std::size_t y = ny; y-- > 0;) {
            std::int64_t best = 0;
            for (std::size_t to = x + 1; to < nx; ++to) {
                const std::size_t by = indexOf(m_xIndex, m_xs, m_xs[to] - m_xs[x]);
                best = std::max(best, m_around[to * ny + y] + m_inside[by * ny + y]);
            }
            for (std::size_t to = y + 1; to < ny; ++to) {
                const std::size_t by = indexOf(m_yIndex, m_ys, m_ys[to] - m_ys[y]);
                best = std::max(best, m_around[x * ny + to] + m_inside[x * ny + by]);
            }
            m_around[x * ny + y] = best;
        }
    }
}

}  // namespace matwright::sheets
