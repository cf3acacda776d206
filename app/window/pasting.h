// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/sketch/sketch.h"

namespace matwright::app {

// How far a copy is laid from its original, to the right and down, so that it is seen.
inline constexpr Point copyOffset = {Length::inches(0, 1, 4), Length::inches(0, 1, 4)};

// The pieces moved by the smallest number of copyOffsets that leaves none of them exactly on an
// equal piece of the sketch, and back onto the page where they would lie wholly beside it.
std::vector<Piece> placedForPaste(const Sketch& sketch, std::vector<Piece> pieces);

}  // namespace matwright::app
