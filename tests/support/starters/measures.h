// SPDX-License-Identifier: MIT
#pragma once

#include "core/measure/rect.h"

namespace matwright::test {

// 3.25_in and 3_in, on the trimmer's scale of 1/16 in: any other figure does not compile.
consteval Length operator""_in(long double figure) {
    const auto sixteenths = static_cast<std::int64_t>(figure * 16);
    if (static_cast<long double>(sixteenths) != figure * 16) {
        throw "not a multiple of 1/16 in";
    }
    return Length::inches(0, sixteenths, 16);
}
consteval Length operator""_in(unsigned long long figure) {
    return Length::inches(static_cast<std::int64_t>(figure));
}
consteval Length operator""_mm(unsigned long long figure) {
    return Length::millimetres(static_cast<std::int64_t>(figure));
}

constexpr Rect box(Length x, Length y, Length width, Length height) {
    return Rect::at({x, y}, {width, height});
}

// Print sizes, width first: p4x6 stands upright, p6x4 lies.
inline constexpr Size p2x2{2_in, 2_in};
inline constexpr Size p25x25{2.5_in, 2.5_in};
inline constexpr Size p3x3{3_in, 3_in};
inline constexpr Size p3x4{3_in, 4_in};
inline constexpr Size p4x3 = p3x4.turned();
inline constexpr Size p4x4{4_in, 4_in};
inline constexpr Size p35x5{3.5_in, 5_in};
inline constexpr Size p5x35 = p35x5.turned();
inline constexpr Size p4x6{4_in, 6_in};
inline constexpr Size p6x4 = p4x6.turned();
inline constexpr Size p5x5{5_in, 5_in};
inline constexpr Size p5x7{5_in, 7_in};
inline constexpr Size p7x5 = p5x7.turned();
inline constexpr Size p6x8{6_in, 8_in};
inline constexpr Size p8x6 = p6x8.turned();
inline constexpr Size p8x10{8_in, 10_in};
inline constexpr Size p10x8 = p8x10.turned();
inline constexpr Size p10x15cm{100_mm, 150_mm};
inline constexpr Size p15x10cm = p10x15cm.turned();
inline constexpr Size p13x18cm{130_mm, 180_mm};
inline constexpr Size p18x13cm = p13x18cm.turned();

}  // namespace matwright::test
