// SPDX-License-Identifier: MIT
#include "tests/checks/true_size/raster.h"

#include <algorithm>
#include <cmath>

namespace matwright::check {

namespace {

constexpr double leastInk =
    4.0;  // grey levels times mm over the scan: a third of the thinnest line

}  // namespace

// Bilinear; a pixel's value is that of its middle.
double Raster::darkness(double x, double y) const {
    const double px = x / 25.4 * resolution - 0.5;
    const double py = y / 25.4 * resolution - 0.5;
    const int left = static_cast<int>(std::floor(px));
    const int top = static_cast<int>(std::floor(py));
    const auto at = [&](int column, int row) -> double {
        if (column < 0 || row < 0 || column >= m_grey.width() || row >= m_grey.height()) {
            return 0;
        }
        return 255 - m_grey.constScanLine(row)[column];
    };
    const double fx = px - left;
    const double fy = py - top;
    return (at(left, top) * (1 - fx) + at(left + 1, top) * fx) * (1 - fy) +
           (at(left, top + 1) * (1 - fx) + at(left + 1, top + 1) * fx) * fy;
}

std::optional<double> Raster::lineOffset(const Sample& sample, double reach) const {
    constexpr double step = 0.01;
    double ink = 0;
    double moment = 0;
    for (double t = -reach; t <= reach; t += step) {
        const double dark = darkness(sample.x + sample.nx * t, sample.y + sample.ny * t);
        ink += dark * step;
        moment += dark * t * step;
    }
    return ink < leastInk ? std::nullopt : std::optional(moment / ink);
}

}  // namespace matwright::check
