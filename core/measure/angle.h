// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <string>

namespace matwright {

// A turn, clockwise as seen on the page (y points down), on an integer grid of 1/1000 degree and
// always held in [0, 360) degrees. Exact: sums, quarter turns, negation.
class Angle {
  public:
    constexpr Angle() = default;
    static constexpr Angle degrees(std::int64_t whole) { return Angle(whole % 360 * 1000); }
    static constexpr Angle millidegrees(std::int64_t n) { return Angle(n % 360'000); }
    // To the nearest 1/1000 degree; the argument must be finite and within +-1e9.
    static Angle roundedFromDegrees(double degrees);

    // 0 .. 359,999
    constexpr std::int32_t toMillidegrees() const { return m_millidegrees; }
    constexpr double toDegrees() const { return m_millidegrees / 1000.0; }
    double toRadians() const;
    constexpr bool isZero() const { return m_millidegrees == 0; }
    constexpr bool isQuarterTurn() const { return m_millidegrees % 90'000 == 0; }
    // The nearest multiple of a positive `step` that divides 360 degrees; halves go up.
    Angle roundedTo(Angle step) const;

    // Cosine and sine; exactly 0 and +-1 at quarter turns, else within 1 ulp of the library's.
    double cosine() const;
    double sine() const;

    friend constexpr Angle operator+(Angle a, Angle b) {
        return Angle(std::int64_t{a.m_millidegrees} + b.m_millidegrees);
    }
    friend constexpr Angle operator-(Angle a, Angle b) {
        return Angle(std::int64_t{a.m_millidegrees} - b.m_millidegrees);
    }
    constexpr Angle operator-() const { return Angle(-std::int64_t{m_millidegrees}); }
    friend constexpr auto operator<=>(Angle, Angle) = default;

  private:
    explicit constexpr Angle(std::int64_t n)
        : m_millidegrees(static_cast<std::int32_t>((n % 360'000 + 360'000) % 360'000)) {}

    std::int32_t m_millidegrees = 0;
};

// A turn as it is said everywhere, the short way round: "6° to the left", "12.5° to the right",
// "180°", "0°".
std::string turnText(Angle turn);

}  // namespace matwright
