// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/prints/pixel_places.h"

namespace matwright {

// Hairlines in line with the prints' edges, on bare paper only: one pixel wide, just outside of the
// print, 1/64 in away from its corner, at most 1/8 in long, none where there is less than 1/32 in.
// Nothing is ever drawn on a print.
void drawSheetMarks(Raster& sheet, const std::vector<PixelRect>& prints, int ppi);

}  // namespace matwright
