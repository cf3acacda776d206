// SPDX-License-Identifier: MIT
#include "core/measure/angle.h"

#include <fmt/format.h>

#include <cmath>
#include <numbers>

namespace matwright {

Angle Angle::roundedFromDegrees(double degrees) {
    return Angle(std::llround(degrees * 1000.0));
}

double Angle::toRadians() const {
    return toDegrees() * std::numbers::pi / 180.0;
}

Angle Angle::roundedTo(Angle step) const {
    const std::int64_t s = step.m_millidegrees;
    return Angle((m_millidegrees + s / 2) / s * s);
}

double Angle::cosine() const {
    switch (m_millidegrees) {
        case 0:
            return 1;
        case 90'000:
        case 270'000:
            return 0;
        case 180'000:
            return -1;
        default:
            return std::cos(toRadians());
    }
}

double Angle::sine() const {
    switch (m_millidegrees) {
        case 0:
        case 180'000:
            return 0;
        case 90'000:
            return 1;
        case 270'000:
            return -1;
        default:
            return std::sin(toRadians());
    }
}

std::string turnText(Angle turn) {
    if (turn.isZero() || turn == Angle::degrees(180)) {
        return fmt::format("{}\u00B0", turn.toDegrees());
    }
    const bool toTheRight = turn < Angle::degrees(180);
    return toTheRight ? fmt::format("{}\u00B0 to the right", turn.toDegrees())
                      : fmt::format("{}\u00B0 to the left", (-turn).toDegrees());
}

}  // namespace matwright
