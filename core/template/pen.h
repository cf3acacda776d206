// SPDX-License-Identifier: MIT
#pragma once

#include "core/drawing/drawing.h"

namespace matwright::pen {

// The line weights of a template, from what one cuts along down to what one looks past. All dark
// enough to survive a grey laser print.
constexpr Length hundredths(std::int64_t n) {
    return Length::hundredthMillimetres(n);
}
inline constexpr Colour black = {20, 20, 20};
inline constexpr Colour ink = {40, 40, 40};       // texts
inline constexpr Colour matEdge = {0, 105, 115};  // the only colour, for the second kind of cut
inline constexpr Colour measure = {95, 95, 95};
inline constexpr Colour faint = {165, 165, 165};

inline Stroke trim() {
    return {hundredths(35), black, {}};
}
inline Stroke mat() {
    return {hundredths(20), matEdge, {}};
}
inline Stroke hiddenTrim() {
    return {hundredths(20), {90, 90, 90}, {hundredths(160), hundredths(110)}};
}
inline Stroke hiddenMat() {
    return {hundredths(15), matEdge, {hundredths(90), hundredths(90)}};
}
inline Stroke page() {
    return {hundredths(30), black, {}};
}
inline Stroke guide() {
    return {hundredths(12), faint, {hundredths(300), hundredths(150)}};
}
inline Stroke fold() {
    return {hundredths(20),
            measure,
            {hundredths(500), hundredths(120), hundredths(60), hundredths(120)}};
}
inline Stroke foldBand() {
    return {hundredths(35), {255, 255, 255}, {}};
}
inline Stroke tick() {
    return {hundredths(20), measure, {}};
}
inline Stroke dimension() {
    return {hundredths(12), measure, {}};
}
inline Stroke leader() {
    return {hundredths(12), ink, {}};
}
inline Stroke checkSquare() {
    return {hundredths(20), black, {}};
}

}  // namespace matwright::pen
