// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "core/drawing/drawing.h"

namespace matwright {

// A ruler of a test sheet: a line between two marks with inches on one side and millimetres on the
// other.
struct TestRuler {
    Point start;    // the first mark
    Length length;  // to the second
    bool down = false;
    Interval
        free;  // along the ruler from `start`, without ticks and numbers: another crosses there
    std::string first;  // what is written at the marks
    std::string second;
};

inline constexpr Colour testInk{0, 0, 0};
inline constexpr Length testMarkLength = Length::inches(0, 1, 4);  // on either side of the line
inline constexpr Length testMarkWidth = Length::hundredthMillimetres(30);

// Ticks every 1/16 in and 1 mm, numbers every inch and centimetre. The marks are the only lines
// that reach testMarkLength, on both sides.
std::vector<DrawingItem> rulerItems(const TestRuler& ruler);

}  // namespace matwright
