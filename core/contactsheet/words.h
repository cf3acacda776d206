// SPDX-License-Identifier: MIT
#pragma once

#include "core/measure/length.h"

namespace matwright {

// The words of a contact sheet, from top to bottom.
inline constexpr Length headingText = Length::points(14);
inline constexpr Length headingRoom = Length::points(28);
inline constexpr Length nameText = Length::points(8);
inline constexpr Length factsText = Length::points(7);
// Below a picture: a gap, the name, and the facts in one line or, where the cells are narrow, two.
inline constexpr Length nameBaseline = Length::points(10);
inline constexpr Length factsPitch = Length::points(9);
constexpr int factsLines(int columns) {
    return columns > 4 ? 2 : 1;
}
// With descenders.
constexpr Length wordsRoom(int columns) {
    return nameBaseline + factsPitch * factsLines(columns) + Length::points(4);
}
inline constexpr Length cellGap = Length::points(14);

}  // namespace matwright
