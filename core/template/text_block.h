// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/drawing/drawing.h"

namespace matwright {

// Lines of text set under each other, measured before they are placed.
struct TextBlock {
    std::vector<std::string> lines;
    Length height;           // font size of every line
    bool firstBold = false;  // the first line is a heading
    bool centred = false;    // else the lines start together
    bool upright = false;    // turned to read from bottom to top
    Colour colour = {40, 40, 40};
};

// From one baseline to the next, in font sizes.
inline constexpr double linePitch = 1.2;

// The room the block takes on the sheet, turned if it is upright: an upper bound of its width, and
// every line with its ascenders and descenders.
Size roomOf(const TextBlock& block);

// The block with its room's top left corner at `at`.
std::vector<DrawingItem> itemsAt(const TextBlock& block, Point at);

// At most `count` characters; what was cut off is marked by "…".
std::string shortened(const std::string& text, std::size_t count);

}  // namespace matwright
