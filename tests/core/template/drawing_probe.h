// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/sketch/sketch.h"

namespace matwright::test {

// What a reader of a template sees, taken from the drawing's items alone and measured anew: nothing
// here uses the code that placed them. In ticks.
struct InkBox {
    double left, top, right, bottom;
    std::string text;
};
struct InkLine {
    Vertex from;
    Vertex to;
    std::size_t item;  // lines of one item belong together
};

const Layer* findLayer(const Drawing& drawing, std::string_view id);

// A box around each text: figures, capitals and descenders at its baseline, as wide as the bound.
std::vector<InkBox> textBoxes(const Layer& layer);
// The straight stroked lines.
std::vector<InkLine> strokedLines(const Layer& layer);
// The text lines of the label that starts with "number · ", in one string.
std::string labelOf(const Layer& labels, std::size_t number);

bool overlap(const InkBox& a, const InkBox& b);
bool crosses(const InkLine& line, const InkBox& box);
bool crosses(const InkLine& a, const InkLine& b);

// The leftmost and uppermost place of the trim line, from the piece's figures alone.
struct Extremes {
    double left;
    double top;
};
Extremes trimExtremes(const Piece& piece);
// The same of the outermost mat, or of the trim line where there is none. From the piece's figures
// too, but for matted polygons, whose mitres core/outline works out.
Extremes outerExtremes(const Piece& piece);

}  // namespace matwright::test
