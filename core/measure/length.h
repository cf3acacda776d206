// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>

namespace matwright {

// A distance on an integer grid of 914,400 ticks per inch (the EMU of ECMA-376).
//
// Exact: every whole number of inches, 1/32 in, 1/72 in (PDF point), 1/100 mm; sums, differences
// and whole multiples of lengths. Not exact, and therefore named as rounding: everything that comes
// from a double, and division. (1/64 in is not exact: 14,287.5 ticks.)
//
// There is no implicit conversion from a number. Coordinates and sizes in a sketch stay within
// +-coordinateLimit() so that a cross product of two differences fits in 64 bits.
class Length {
  public:
    static constexpr std::int64_t ticksPerInch = 914'400;
    static constexpr std::int64_t ticksPerMillimetre = 36'000;
    static constexpr std::int64_t ticksPerPoint = 12'700;

    constexpr Length() = default;

    static constexpr Length fromTicks(std::int64_t ticks) { return Length(ticks); }
    static constexpr Length inches(std::int64_t whole) { return Length(whole * ticksPerInch); }
    // whole + numerator/denominator inches. Exact where the denominator divides 914,400 (1, 2, 4,
    // 8, 16, 32, 3, 5, 6, 10, 72 and more do), else the fraction goes to the nearest tick, half
    // away from zero (1/64 in is 14,288 ticks). `whole` and `numerator` have the same sign, or one
    // is zero; `denominator` is positive.
    static constexpr Length inches(std::int64_t whole, std::int64_t numerator,
                                   std::int64_t denominator) {
        const std::int64_t half = numerator < 0 ? -denominator : denominator;
        return Length(whole * ticksPerInch +
                      (2 * numerator * ticksPerInch + half) / (2 * denominator));
    }
    static constexpr Length millimetres(std::int64_t mm) { return Length(mm * ticksPerMillimetre); }
    static constexpr Length hundredthMillimetres(std::int64_t n) {
        return Length(n * (ticksPerMillimetre / 100));
    }
    static constexpr Length points(std::int64_t pt) { return Length(pt * ticksPerPoint); }

    // To the nearest tick, half away from zero. The argument must be finite and within +-1e9
    // inches; callers that read foreign text check this first.
    static Length roundedFromTicks(double ticks);
    static Length roundedFromInches(double inches);
    static Length roundedFromMillimetres(double mm);

    // The largest magnitude a coordinate of a sketch may have: 1,000 in.
    static constexpr Length coordinateLimit() { return inches(1000); }

    constexpr std::int64_t ticks() const { return m_ticks; }
    // Derived doubles; relative error below 2^-52.
    constexpr double toInches() const { return static_cast<double>(m_ticks) / ticksPerInch; }
    constexpr double toMillimetres() const {
        return static_cast<double>(m_ticks) / ticksPerMillimetre;
    }
    constexpr double toPoints() const { return static_cast<double>(m_ticks) / ticksPerPoint; }

    constexpr bool isZero() const { return m_ticks == 0; }
    constexpr bool isNegative() const { return m_ticks < 0; }
    constexpr bool isPositive() const { return m_ticks > 0; }
    // `step` must be positive.
    constexpr bool isMultipleOf(Length step) const { return m_ticks % step.m_ticks == 0; }
    // The nearest multiple of a positive `step`; halves go away from zero.
    Length roundedTo(Length step) const;
    // The half, rounded towards minus infinity when the tick count is odd.
    constexpr Length halfRoundedDown() const { return Length(m_ticks >> 1); }
    // this * numerator / denominator to the nearest tick, halves away from zero. Exact in the
    // middle for |this| and |numerator| up to 1,000 in worth of ticks; denominator not zero.
    Length scaledRounded(std::int64_t numerator, std::int64_t denominator) const;
    // this * factor to the nearest tick.
    Length scaledRounded(double factor) const;

    constexpr Length operator-() const { return Length(-m_ticks); }
    constexpr Length& operator+=(Length other) {
        m_ticks += other.m_ticks;
        return *this;
    }
    constexpr Length& operator-=(Length other) {
        m_ticks -= other.m_ticks;
        return *this;
    }
    friend constexpr Length operator+(Length a, Length b) { return Length(a.m_ticks + b.m_ticks); }
    friend constexpr Length operator-(Length a, Length b) { return Length(a.m_ticks - b.m_ticks); }
    friend constexpr Length operator*(Length a, std::int64_t n) { return Length(a.m_ticks * n); }
    friend constexpr Length operator*(std::int64_t n, Length a) { return Length(a.m_ticks * n); }
    friend constexpr auto operator<=>(Length, Length) = default;

  private:
    explicit constexpr Length(std::int64_t ticks) : m_ticks(ticks) {}

    std::int64_t m_ticks = 0;
};

constexpr Length abs(Length a) {
    return a.isNegative() ? -a : a;
}

// a / b as a double; b must not be zero.
constexpr double ratio(Length a, Length b) {
    return static_cast<double>(a.ticks()) / static_cast<double>(b.ticks());
}

}  // namespace matwright
