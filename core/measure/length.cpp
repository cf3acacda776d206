// SPDX-License-Identifier: MIT
#include "core/measure/length.h"

#include <cmath>

namespace matwright {

namespace {

// 128-bit middle so that a product of two in-range tick counts never overflows.
__extension__ using Wide = __int128;

std::int64_t dividedHalfAway(Wide numerator, Wide denominator) {
    if (denominator < 0) {
        numerator = -numerator;
        denominator = -denominator;
    }
    const Wide half = denominator / 2;
    const Wide shifted = numerator < 0 ? numerator - half : numerator + half;
    return static_cast<std::int64_t>(shifted / denominator);
}

}  // namespace

Length Length::roundedFromTicks(double ticks) {
    return Length(std::llround(ticks));
}

Length Length::roundedFromInches(double inches) {
    return roundedFromTicks(inches * ticksPerInch);
}

Length Length::roundedFromMillimetres(double mm) {
    return roundedFromTicks(mm * ticksPerMillimetre);
}

Length Length::roundedTo(Length step) const {
    return step * dividedHalfAway(m_ticks, step.m_ticks);
}

Length Length::scaledRounded(std::int64_t numerator, std::int64_t denominator) const {
    return Length(dividedHalfAway(static_cast<Wide>(m_ticks) * numerator, denominator));
}

Length Length::scaledRounded(double factor) const {
    return roundedFromTicks(static_cast<double>(m_ticks) * factor);
}

}  // namespace matwright
