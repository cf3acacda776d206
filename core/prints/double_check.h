// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/measure/length_text.h"
#include "core/prints/print_job.h"

namespace matwright {

// A sheet to look over before prints are ordered or made: every print of a page with a small
// picture, its size, the photo, how finely it comes out and how much of the photo is cut off.

struct SmallPrint {
    Rect place;        // on the sheet
    std::string jpeg;  // fills it
};

// Whoever paints it paints the drawing first, then the pictures; nothing of the drawing is under
// them but their frames.
struct DoubleCheckSheet {
    Drawing drawing;
    std::vector<SmallPrint> pictures;
};

// As many sheets as are needed, two columns each, in the order of the prints; texts that are too
// long for their column go on in the next line, a word that is ends in "…". `sheet` is at least 6 x
// 6 in. A photo that is out of reach leaves its frame empty and says so.
std::vector<DoubleCheckSheet> doubleCheckSheets(const Making& making,
                                                const std::vector<Print>& prints, Size sheet,
                                                Scale scale);

}  // namespace matwright
