// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/drawing/drawing.h"

namespace matwright {

// The text broken between words so that no line is wider than `room` (by textWidthBound()); a word
// that is wider alone is shortened with "…". No empty lines, unless the text is empty.
std::vector<std::string> brokenLines(const std::string& text, Length room, Length height,
                                     bool bold = false);

namespace cutink {

// The pens of plan pictures; all survive a grey print.
inline constexpr Colour strong{30, 30, 30};
inline constexpr Colour quiet{95, 95, 95};
inline constexpr Colour pale{190, 190, 190};
inline constexpr Colour hatch{205, 205, 205};
inline constexpr Colour white{255, 255, 255};
inline constexpr Colour blade{0, 105, 115};
inline constexpr Colour knife{160, 40, 20};

}  // namespace cutink

TextItem textAt(Point at, const std::string& text, Length height, Colour colour, bool bold = false,
                TextAnchor anchor = TextAnchor::Start);
PathItem filledBox(const Rect& box, std::optional<Colour> fill, std::optional<Stroke> stroke);
PathItem strokedLine(Point from, Point to, Stroke stroke);
// Thin slanting lines across the box and its pale fill, for what is left over.
std::vector<DrawingItem> hatchedBox(const Rect& box, Length pitch);
// Towards white: 0 is the colour itself, 1 is white.
Colour paler(Colour colour, double by);

}  // namespace matwright
